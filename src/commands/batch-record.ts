/** Filing a batch: its plan, what was weighed and read, what is kept back, and what the drink came to. */

import { caffeineGate } from '../calc/slip-guard/caffeine.ts';
import type { Io } from '../io.ts';
import { type BatchText, batchText } from '../ledger/batch-text.ts';
import { servingOf } from '../ledger/check-slips.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { edit } from '../ledger/edit.ts';
import { addItemFact } from '../ledger/edit-item.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { fileRevision, revisionWords } from '../ledger/git-revision.ts';
import { seeFolder } from '../ledger/land.ts';
import { nameWords } from '../ledger/new-files.ts';
import { readText } from '../ledger/open-file.ts';
import { readBatchCard } from '../ledger/read-batch.ts';
import { hasFileIn, withoutSchemaLine, withSchemaLine } from '../ledger/schema-files.ts';
import type { TypedTime } from '../ledger/typed-time.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { quantityOption, someOption } from './batch-options.ts';
import { type BatchPlanText, batchPlanText } from './batch-plan-text.ts';
import { type BatchReport, batchReportOf, reportBlocks, reportJson } from './batch-report.ts';
import { samplesOf } from './batch-samples.ts';
import { weighedInto } from './batch-weighed.ts';
import { askAboutCaffeine } from './caffeine-gate.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { landHere, textNow } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import { readLookTime } from './look-time.ts';
import { factOf, optionProblem } from './observation-facts.ts';
import { observedFacts } from './observation-options.ts';
import { nextBatchName, type OpenedBatch } from './open-batch.ts';
import { type OpenedDesign, openDesign } from './open-formula.ts';
import { type Here, openHere } from './open-ledger.ts';

const folder = 'batches';

export async function runBatchRecord(call: Call, io: Io): Promise<Outcome> {
  const [, typed = '', ...figures] = call.words;
  if (typed === '')
    fail(
      'missing',
      'batch record needs what it is a batch of',
      'batch record FORMULA … or batch record TRIAL …',
    );
  const here = await openHere(io);
  const design = await openDesign(here, io, typed);
  const book = await bookOf(here);
  const plan = await batchPlanText(call, { here, design, book });
  const name = optionValue(call, 'name') ?? (await nextBatchName(here, io));
  const file = `${folder}/${nameWords(name)}.yaml`;
  const revision = revisionWords(await fileRevision(here.root, design.file));
  const facts = await withArithmetic(() => textOf({ call, io, here, design, plan, name, revision }));
  const draft = withSchemaLine(hasFileIn(here), 'batch', batchText(facts));
  const read = (text: string): OpenedBatch => opened(here, file, text);
  const weighed = await weighedInto({ call, here, book, plan, batch: read(draft), figures });
  const text = weighed.facts.reduce((before, { stage, index, key, value }) => {
    const edited = edit(file, before, addItemFact(['stages', stage], index, key, value));
    if (!edited.ok) throw new ProblemError(edited.problems);
    return edited.text;
  }, draft);
  const report = await batchReportOf(here, read(text), { book, design });
  const { mixture } = report;
  await askAboutCaffeine(call, io, caffeineGate(mixture, servingOf(design.card, mixture)));
  const isDry = call.flags.has('dry-run');
  if (!isDry)
    await landHere(here.root, call, io, async () => {
      const seen = await seeFolder(nodeDisk, here.root, folder);
      if (seen.names.includes(`${nameWords(name)}.yaml`))
        fail('name-twice', `${file} is there already`, 'give the batch another --name');
      if (optionValue(call, 'name') === undefined) refuseTwin(text, name, seen.names, { here, io });
      return [seen, { path: file, before: undefined, after: text }];
    });
  return outcome({ name, file, text, isDry, report, weighed });
}

/** The same typed twice, as after a power cut, is not filed as a second batch of the day. */
function refuseTwin(
  text: string,
  name: string,
  names: readonly string[],
  { here, io }: { readonly here: Here; readonly io: Io },
): void {
  const day = name.slice(0, 'yyyy-mm-dd'.length);
  const twin = names
    .filter((one) => one.startsWith(day))
    .find((one) => apart(textNow(here.root, `${folder}/${one}`, io)) === apart(text));
  if (twin === undefined) return;
  const hint = 'if this is another batch, give it a --name of its own';
  fail('same-batch', `${folder}/${twin} says the same already`, hint);
}

/** The text of a batch without the line for editors, its name and the time at which it was made. */
const apart = (text: string): string =>
  withoutSchemaLine(text).replace(/^(batch|made| {2}- at): .*$/gmu, '$1:');

interface Filed {
  readonly name: string;
  readonly file: string;
  readonly text: string;
  readonly isDry: boolean;
  readonly report: BatchReport;
  readonly weighed: Awaited<ReturnType<typeof weighedInto>>;
}

function outcome({ name, file, text, isDry, report, weighed }: Filed): Outcome {
  return {
    exitCode: report.isMissed ? 1 : 0,
    page: [
      ...(isDry
        ? [{ kind: 'lines', lines: text.trimEnd().split('\n') } as const]
        : [{ kind: 'text', text: `Batch ${name}`, tone: 'strong' } as const]),
      ...weighed.blocks,
      ...reportBlocks(report),
    ],
    json: envelope({
      schema: 'batch-record@1',
      given: { batch: name },
      found: { batch: name, file, ...reportJson(report) },
      cautions: report.cautions,
      problems: report.warnings,
    }),
    problems: report.warnings,
    notes: [`${isDry ? 'would write' : 'wrote'} ${file}`],
    explained: async () => {
      const { drinkCitations, drinkWorking } = await import('../calc/drink/working-lines.ts');
      const { drink } = report;
      return {
        working: drink ? drinkWorking(drink) : [],
        sources: drink ? drinkCitations(drink) : [],
        restsOn: drink ? ['batch', 'drink'] : ['batch'],
      };
    },
  };
}

/** The text as the file would be read; refused with its problems. */
function opened(here: Here, file: string, text: string): OpenedBatch {
  const read = readText(file, text, (document) => readBatchCard(document, here.settings));
  if (read.card?.isSound) return { ...read, card: read.card };
  throw new ProblemError(read.problems);
}

interface Telling {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly design: OpenedDesign;
  readonly plan: BatchPlanText;
  readonly name: string;
  readonly revision: string;
}

function textOf({ call, io, here, design, plan, name, revision }: Telling): BatchText {
  const problems: Problem[] = [];
  const made = readLookTime(optionValue(call, 'made'), here, io);
  if (!made.ok) problems.push(optionProblem('made', made.fault));
  const readings = readingsOf(call, problems);
  const bottles = countOption(call, 'bottles');
  const retained = countOption(call, 'retained');
  if (bottles !== undefined && retained !== undefined && retained > bottles)
    problems.push({
      code: 'more-than-there-are',
      severity: 'error',
      message: `${retained} bottles are kept back of ${bottles}`,
      hint: 'give --retained no larger than --bottles',
    });
  if (problems.length > 0) throw new ProblemError(problems);
  if (!made.ok) throw new Error('a fault was seen and not told');
  const bottle = someOption(call, 'bottle', ['volume'])?.written;
  const { card } = design;
  const optional = (key: string, text: string | undefined): readonly Fact[] =>
    text === undefined || text.trim() === '' ? [] : [[key, text]];
  return {
    name,
    facts: [
      ...(card.kind === 'trial'
        ? [['trial', String(card.number)] as const]
        : [['formula', card.name] as const]),
      ['revision', revision],
      ...optional('title', optionValue(call, 'title')),
      ['made', made.value.written],
      ...optional('by', optionValue(call, 'by')),
      ...optional('scaled to', optionValue(call, 'to')),
      ...optional('loss', quantityOption(call, 'loss', ['share'])?.written),
      ...optional('yield', someOption(call, 'yield', ['mass', 'volume'])?.written),
      ...optional('bottles', bottles === undefined ? undefined : String(bottles)),
      ...optional('bottle', bottle),
      ...optional('note', optionValue(call, 'note')),
    ],
    stages: plan.stages,
    samples: samplesOf({ plan, bottles, retained, bottle }),
    observation: observation(made.value, { readings, bottles, retained }),
  };
}

interface Seen {
  readonly readings: readonly Fact[];
  readonly bottles: number | undefined;
  readonly retained: number | undefined;
}

/** What was read of the tank; once bottles are filled nobody has to look at it again. */
function observation(made: TypedTime, { readings, bottles, retained }: Seen): readonly Fact[] {
  const facts: readonly Fact[] = [
    ...readings,
    ...(bottles === undefined ? [] : [['ended', 'filled into bottles'] as const]),
  ];
  if (facts.length === 0) return [];
  return [['at', made.written], ...(retained === undefined ? [] : [['sample', 'tank'] as const]), ...facts];
}

/** `by` and `note` are said of the batch. */
function readingsOf(call: Call, problems: Problem[]): readonly Fact[] {
  return observedFacts
    .filter(({ name }) => !['by', 'note', 'photo'].includes(name))
    .flatMap((fact) => {
      const texts = call.values[fact.name] ?? [];
      return texts.length > 0 ? factOf(fact, texts, problems) : [];
    });
}

function countOption(call: Call, name: string): number | undefined {
  const typed = optionValue(call, name);
  if (typed === undefined) return undefined;
  return /^[1-9]\d{0,6}$/.test(typed.trim())
    ? Number(typed)
    : fail('not-a-count', `--${name}: "${typed}" is no number of bottles`, 'give a whole number above 0');
}
