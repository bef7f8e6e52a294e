import { extname } from 'node:path';
import { caffeineGate } from '../calc/slip-guard/caffeine.ts';
import type { Io } from '../io.ts';
import { servingOf } from '../ledger/check-slips.ts';
import { type Extra, extras } from '../ledger/give/giving.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, isProblemError, type Problem, ProblemError } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { askAboutCaffeine } from './caffeine-gate.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { stagesFor } from './give-batch.ts';
import { cardMarkdown } from './give-card.ts';
import { recipeCautions } from './give-cautions.ts';
import { type Gathered, gather } from './give-gather.ts';
import { giftOf } from './give-gift.ts';
import { leaksIn } from './give-leaks.ts';
import { openHereAt, problemsThen } from './open-at.ts';
import { designWords, openDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { writeOut } from './write-out.ts';

type Form = 'markdown' | 'yaml';

export async function runGive(call: Call, io: Io): Promise<Outcome> {
  const wanted = wantedExtras(call);
  const form = formOf(call);
  const { here, name, problems } = await openHereAt(io, call.words[0] ?? '');
  try {
    const design = await openDesign(here, io, name);
    const gathered = await gather(here, design, wanted);
    return await handOver({ call, io, here, wanted, form }, gathered, problems);
  } catch (thrown) {
    if (!isProblemError(thrown) || !here.revision) throw thrown;
    throw new ProblemError([...problems, ...problemsThen(thrown.problems, here.revision)], thrown.exitCode);
  }
}

interface Handing {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly wanted: ReadonlySet<Extra>;
  readonly form: Form;
}

async function handOver(handing: Handing, gathered: Gathered, before: readonly Problem[]): Promise<Outcome> {
  const { call, io, here, wanted, form } = handing;
  const { design, mixture } = gathered;
  await askAboutCaffeine(call, io, caffeineGate(mixture, servingOf(design.card, mixture)));
  const batch = optionValue(call, 'batch');
  if (batch !== undefined && form === 'yaml')
    fail('usage', '--batch goes with a card', 'a file that is taken in keeps its amounts as they are typed');
  const cautions = await recipeCautions(gathered, here);
  const text =
    form === 'yaml'
      ? giftOf(gathered, here, wanted)
      : await cardMarkdown({
          gathered,
          here,
          wanted,
          batch,
          stages: await withArithmetic(() => stagesFor(gathered, batch)),
          cautions,
        });
  const to = optionValue(call, 'to');
  const replace = call.flags.has('replace');
  const wrote =
    to === undefined ? [] : [await writeOut({ io, typed: to, text, replace, isGift: form === 'yaml' })];
  const problems = [...before, ...gathered.warnings, ...leaksIn(text, gathered, wanted)];
  return {
    exitCode: 0,
    page: to === undefined ? [{ kind: 'lines', lines: text.trimEnd().split('\n') }] : [],
    json: envelope({
      schema: 'give@1',
      given: { what: call.words[0] ?? '', as: form, with: [...wanted] },
      found: {
        what: designWords(design),
        trials: gathered.along.map(({ card }) => card.number),
        ingredients: gathered.ingredients.map((card) => gathered.names.get(card.name) ?? card.name),
        leftOut: extras.filter((one) => !wanted.has(one)),
        ...(to === undefined ? {} : { file: to }),
        text,
      },
      cautions,
      problems,
    }),
    problems,
    notes: [...wrote, ...leftOutNote(wanted)],
  };
}

function leftOutNote(wanted: ReadonlySet<Extra>): readonly string[] {
  const left = extras.filter((one) => !wanted.has(one));
  return left.length === 0 ? [] : [`left out: ${left.join(', ')}; --with gives them along`];
}

/** `--with lots,prices` and `--with lots --with prices` say the same. */
function wantedExtras(call: Call): ReadonlySet<Extra> {
  const typed = (call.values['with'] ?? []).flatMap((text) => text.split(',')).map((word) => word.trim());
  const words = typed.filter((word) => word !== '');
  if (words.includes('all')) return new Set(extras);
  return new Set(
    words.map((word) => {
      const known = extras.find((one) => one === word || one === `${word}s`);
      if (known) return known;
      const [near] = nearestNames(word, extras, 1);
      return fail(
        'unknown-word',
        `--with: "${word}" is not understood`,
        near === undefined ? `say ${extras.join(', ')} or all` : `did you mean ${near}?`,
      );
    }),
  );
}

/** As it is asked for, or by the ending of the file; a card to be read where neither says. */
function formOf(call: Call): Form {
  const typed = optionValue(call, 'as');
  const ending = extname(optionValue(call, 'to') ?? '').toLowerCase();
  const isYamlFile = ending === '.yaml' || ending === '.yml';
  if (typed === undefined) return isYamlFile ? 'yaml' : 'markdown';
  if (typed !== 'markdown' && typed !== 'yaml')
    return fail('unknown-word', `--as: "${typed}" is not understood`, 'say markdown or yaml');
  if (typed === 'markdown' && isYamlFile)
    return fail('usage', `--to: a card in Markdown is no ${ending}`, 'name it card.md, or leave --as out');
  return typed;
}
