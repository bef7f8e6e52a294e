/** What git calls to merge a file of the ledger, and the same looked at beforehand. */

import { randomBytes } from 'node:crypto';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { loadArithmetic } from '../calc/arithmetic.ts';
import type { Io } from '../io.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { findRoot } from '../ledger/find-root.ts';
import { readLedger, settingsOf } from '../ledger/folder.ts';
import { mergedByLines } from '../ledger/git-write.ts';
import { decodeFile } from '../ledger/guard.ts';
import { faultsIn } from '../ledger/merge/faults.ts';
import { type MergedText, type MergeFault, mergeTexts, type NotMerged } from '../ledger/merge/merge-texts.ts';
import { readTime } from '../ledger/times.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, isProblemError, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { mergePlan, settleNotes, versionWords } from './merge-plan.ts';
import { type MergeSides, sidesOf } from './merge-sides.ts';
import { readPort } from './open-ledger.ts';

/** By this git knows that the driver failed, and not that there is something to settle. */
const failed = 129;
const usualMarker = 7;

export async function runMergeDriver(call: Call, io: Io): Promise<Outcome> {
  if (call.flags.has('plan')) return planned(call, io);
  try {
    return await driven(call, io);
  } catch (thrown) {
    throw new ProblemError(isProblemError(thrown) ? thrown.problems : [defect(thrown)], failed);
  }
}

const defect = (thrown: unknown): ProblemError['problems'][number] => ({
  code: 'driver-failed',
  severity: 'error',
  message: `the merge driver failed: ${thrown instanceof Error ? thrown.message : String(thrown)}`,
  hint: 'git merges the file by its lines instead; look through what it leaves',
});

async function planned(call: Call, io: Io): Promise<Outcome> {
  const sides = await sidesOf(call, io);
  const merged = await mergedSides(sides, call, io);
  return mergePlan(sides.path, merged);
}

async function driven(call: Call, io: Io): Promise<Outcome> {
  const sides = await sidesOf(call, io);
  const { files, path } = sides;
  if (!files)
    return fail('three-files', 'git names three files: BASE OURS THEIRS', 'see what it would do with --plan');
  const merged = await mergedSides(sides, call, io);
  if (merged.state !== 'not merged') {
    await writeOver(files.ours, new TextEncoder().encode(merged.text));
    return outcome(merged.state === 'clean' ? 0 : 1, path, settleNotes(path, merged));
  }
  const lines = await mergedByLines(io.workingFolder, {
    ...files,
    labels: labelsOf(call),
    markerSize: markerSizeOf(call),
  });
  if (!lines)
    return fail('no-line-merge', `${path} could not be merged by its lines either`, 'settle it by hand');
  await writeOver(files.ours, lines.bytes);
  const why = `${path}: ${versionWords[merged.version]} can't be read as a file of the ledger, so it was merged line by line`;
  return outcome(lines.isClean ? 0 : 1, path, [`${why}; neckring check says what is wrong`]);
}

const outcome = (exitCode: number, path: string, notes: readonly string[]): Outcome => ({
  exitCode,
  page: [],
  json: envelope({ schema: 'merge-driver@1', given: { path }, found: { isClean: exitCode === 0 } }),
  notes,
});

/** Whole, or not at all: what git handed over stays as it was when the disk refuses. */
async function writeOver(path: string, bytes: Uint8Array): Promise<void> {
  const standing = await nodeDisk.standing(path);
  const temporary = join(dirname(path), `.neckring-merge-${randomBytes(6).toString('hex')}.tmp`);
  try {
    await nodeDisk.writeNew(temporary, bytes, standing);
    await nodeDisk.rename(temporary, path);
  } catch (thrown) {
    await nodeDisk.remove(temporary).catch(() => undefined);
    throw thrown;
  }
}

/** Git before 2.44 knows no names of the sides and leaves its own words for them standing. */
function labelsOf(call: Call): { readonly ours: string; readonly theirs: string } {
  const label = (option: 'ours' | 'theirs'): string => {
    const typed = optionValue(call, option)?.replace(/\s+/gu, ' ').trim() ?? '';
    return typed === '' || /^%[A-Z]$/u.test(typed) ? option : typed;
  };
  return { ours: label('ours'), theirs: label('theirs') };
}

function markerSizeOf(call: Call): number {
  const typed = Number(optionValue(call, 'marker-size') ?? usualMarker);
  return Number.isInteger(typed) && typed > 0 && typed < 200 ? typed : usualMarker;
}

async function mergedSides(sides: MergeSides, call: Call, io: Io): Promise<MergedText | NotMerged> {
  const { path, bytes } = sides;
  const texts: { base?: string; ours?: string; theirs?: string } = {};
  for (const version of ['base', 'ours', 'theirs'] as const) {
    const decoded = decodeFile(path, bytes[version]);
    if ('problem' in decoded) return { state: 'not merged', version };
    texts[version] = decoded.text;
  }
  const { base = '', ours = '', theirs = '' } = texts;
  const look = await lookAt(resolve(io.workingFolder, path), io, [ours, theirs]);
  return mergeTexts({
    file: look.file,
    texts: { base, ours, theirs },
    labels: { ...labelsOf(call), size: markerSizeOf(call) },
    timeOf: look.timeOf,
    faultsOf: look.faultsOf,
  });
}

interface Look {
  readonly file: string;
  readonly timeOf: (text: string) => number | undefined;
  readonly faultsOf: (text: string) => readonly MergeFault[];
}

/** How the texts are read: with the bench of the ledger around the file, as it stands on the disk. */
async function lookAt(path: string, io: Io, texts: readonly string[]): Promise<Look> {
  const root = await findRoot(dirname(path));
  const file = root === undefined ? path : relative(root, path).split(sep).join('/');
  const ledger = root === undefined ? undefined : await readLedger(root, readPort(io));
  const settings = settingsOf(ledger?.bench);
  const { ingredients } = await import('../reference/library.ts');
  const faultsOf = faultsIn({ file, ledger, settings, ingredients });
  if (texts.some((text) => faultsOf(text).some(({ code }) => code === 'arithmetic-not-loaded'))) {
    await loadArithmetic();
    settings.amounts?.clear();
    settings.quantities?.clear();
  }
  const timeOf = (text: string): number | undefined => {
    const time = readTime(text, settings.zone);
    return time.ok ? time.value.epochMilliseconds : undefined;
  };
  return { file, timeOf, faultsOf };
}
