import { basename, resolve } from 'node:path';
import { loadArithmetic } from '../calc/arithmetic.ts';
import { makeBook } from '../calc/book.ts';
import type { Io } from '../io.ts';
import { checkLedger, openBookOf } from '../ledger/checks.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { naming } from '../ledger/disk-problem.ts';
import { readLedger } from '../ledger/folder.ts';
import { overlayPort } from '../ledger/give/overlay.ts';
import { type Gift, readGift } from '../ledger/give/read-gift.ts';
import { newProblems, planTake, type TakePlan } from '../ledger/give/take-plan.ts';
import { type Clash, type Settle, type Way, ways } from '../ledger/give/take-words.ts';
import { decodeFile, largestBytes, tooLarge } from '../ledger/guard.ts';
import { type Change, type FolderSeen, seeFolder } from '../ledger/land.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { landHere } from './land-text.ts';
import { type Here, openHere, readPort } from './open-ledger.ts';
import { comparedWarnings } from './take-compare.ts';
import { takeOutcome } from './take-page.ts';

const isError = ({ severity }: Problem): boolean => severity === 'error';

export async function runTake(call: Call, io: Io): Promise<Outcome> {
  const settled = typedWay(call);
  const here = await openHere(io);
  const { gift, problems } = await openGift(call.words[0] ?? '', here, io);
  const ways = await settledClashes(gift, here, { call, io, settled });
  let done: Taking | undefined;
  const make = async (): Promise<readonly Change[]> => {
    done = await taking(gift, here, io, (clash) => settled ?? ways.get(keyOf(clash)));
    refuseClashes(done.plan.clashes);
    const { changes } = done.plan;
    return changes.length === 0 ? [] : [...done.seen, ...changes];
  };
  if (call.flags.has('dry-run')) await make();
  else await landHere(here.root, call, io, make);
  if (!done) throw new Error('nothing was planned');
  return takeOutcome(call, done.plan, [...problems, ...done.warnings]);
}

/** The file as it was typed, from the working folder; no part of the ledger. */
async function openGift(
  typed: string,
  here: Here,
  io: Io,
): Promise<{ readonly gift: Gift; readonly problems: readonly Problem[] }> {
  const path = resolve(io.workingFolder, typed);
  const port = readPort(io);
  const size = port.sizeOf(path);
  if (size === undefined)
    return fail(
      'no-file',
      `there is no file ${typed}`,
      'name a file that neckring give wrote with --as yaml',
    );
  if (size > largestBytes) throw new ProblemError([tooLarge(basename(typed), size)]);
  const decoded = decodeFile(typed, await naming(typed, async () => port.read(path)));
  if ('problem' in decoded) throw new ProblemError([decoded.problem]);
  const { text } = decoded;
  let read = readGift(typed, text, here.settings);
  if (read.problems.some(({ code }) => code === 'arithmetic-not-loaded')) {
    await loadArithmetic();
    read = readGift(typed, text, here.settings);
  }
  const { card, problems } = read;
  if (card) return { gift: card, problems };
  throw new ProblemError(problems.filter(isError));
}

interface Taking {
  readonly plan: TakePlan;
  readonly seen: readonly FolderSeen[];
  readonly warnings: readonly Problem[];
}

/** The plan on the ledger as it stands now; refused where it would not pass the checks. */
async function taking(gift: Gift, here: Here, io: Io, settle: Settle): Promise<Taking> {
  const { ingredients } = await import('../reference/library.ts');
  const port = readPort(io);
  const seen = [
    await seeFolder(nodeDisk, here.root, 'trials'),
    await seeFolder(nodeDisk, here.root, 'formulas'),
  ];
  const ledger = await readLedger(here.root, port);
  if (ledger.ingredients && !ledger.ingredients.isSound)
    throw new ProblemError(
      ledger.problems.filter((one) => isError(one) && one.place?.file === 'ingredients.yaml'),
    );
  const plan = planTake(gift, {
    ledger,
    book: openBookOf(ledger, ingredients).book,
    reference: makeBook({ builtIn: ingredients, own: [] }).book,
    trialNames: seen[0]?.names ?? [],
    settle,
  });
  if (plan.clashes.length > 0) return { plan, seen, warnings: [] };
  const after = await readLedger(here.root, overlayPort(port, here.root, plan.changes));
  const found = newProblems(checkLedger(ledger, ingredients), checkLedger(after, ingredients)).map(
    otherBench,
  );
  if (found.some(isError)) throw new ProblemError(found.filter(isError));
  return { plan, seen, warnings: [...found, ...comparedWarnings(gift, plan, after, ingredients)] };
}

/** An aim that was met there and is missed here is for the person to settle, not a fault of the file. */
const otherBench = (one: Problem): Problem =>
  one.code === 'aim-missed' ? { ...one, severity: 'warning' } : one;

const keyOf = ({ kind, name }: Clash): string => `${kind} ${name}`;

interface Settling {
  readonly call: Call;
  readonly io: Io;
  readonly settled: Way | undefined;
}

/** Asks about each clash on a terminal; elsewhere they are refused with what settles them. */
async function settledClashes(
  gift: Gift,
  here: Here,
  { call, io, settled }: Settling,
): Promise<ReadonlyMap<string, Way>> {
  const said = new Map<string, Way>();
  if (settled) return said;
  for (;;) {
    const { plan } = await taking(gift, here, io, (clash) => said.get(keyOf(clash)));
    if (plan.clashes.length === 0) return said;
    if (!io.canAsk || call.flags.has('json')) refuseClashes(plan.clashes);
    for (const clash of plan.clashes) said.set(keyOf(clash), await askedWay(clash, io));
  }
}

async function askedWay({ text }: Clash, io: Io): Promise<Way> {
  for (;;) {
    const answer = await io.ask(`${text}. Rename theirs, keep mine, or take theirs instead? `);
    if (answer === undefined) return fail('left', 'nothing was taken in', 'type it again when it is settled');
    const word = answer.trim().toLowerCase();
    const way = ways.find((one) => word !== '' && one.startsWith(word));
    if (way) return way;
    io.out('  say rename, mine or theirs\n');
  }
}

function refuseClashes(clashes: readonly Clash[]): void {
  if (clashes.length === 0) return;
  throw new ProblemError(
    clashes.map(({ text }) => ({
      code: 'clash',
      severity: 'error',
      message: text,
      hint: '--rename takes theirs under a new name, --keep mine leaves it out, --keep theirs replaces mine',
    })),
  );
}

function typedWay(call: Call): Way | undefined {
  const keep = optionValue(call, 'keep');
  const isRenamed = call.flags.has('rename');
  if (isRenamed && keep !== undefined)
    return fail('given-twice', 'both --rename and --keep are given', 'say one of them');
  if (keep === undefined) return isRenamed ? 'rename' : undefined;
  return keep === 'mine' || keep === 'theirs'
    ? keep
    : fail('unknown-word', `--keep: "${keep}" is not understood`, 'say mine or theirs');
}
