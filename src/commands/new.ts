import type { Io } from '../io.ts';
import { copiedPlan } from '../ledger/copy-stages.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { editAll } from '../ledger/edit.ts';
import { setItemAmount } from '../ledger/edit-item.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { seeFolder } from '../ledger/land.ts';
import { newTrialText, trialFileName } from '../ledger/new-files.ts';
import { hasFileIn, withSchemaLine } from '../ledger/schema-files.ts';
import { numberInName } from '../ledger/single-trial.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { envelope } from '../output/answer-json.ts';
import { fail, ProblemError } from '../problem.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { landHere } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import { madeTyped } from './look-time.ts';
import { type Here, type OpenedTrial, openHere, openTrialNamed } from './open-ledger.ts';
import { mayAsk } from './questions.ts';
import { type PlannedStage, type TypedItem, typedStages } from './typed-plan.ts';
import { plannedStages } from './typed-stages.ts';

const folder = 'trials';

export async function runNew(call: Call, io: Io): Promise<Outcome> {
  const isAlone = Object.keys(call.values).length === 0;
  if (isAlone && mayAsk(call, io)) return (await import('./new-walk.ts')).walkNew(call, io, writeNew);
  return writeNew(call, io);
}

async function writeNew(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const from = optionValue(call, 'from');
  const source = from === undefined ? undefined : await openTrialNamed(here, io, from);
  const isDry = call.flags.has('dry-run');
  const typed = call.values['item'] ?? [];
  const stages = typed.length > 0 ? await stagesTyped(call, here) : [];
  const items = stages.flatMap((stage) => stage.items);
  let file = '';
  let number = 0;
  let text = '';
  const make = async () => {
    const seen = await seeFolder(nodeDisk, here.root, folder);
    number = 1 + Math.max(0, ...seen.names.flatMap((name) => numberInName(name) ?? []));
    const facts = factsOf(call, io, here, source);
    file = `${folder}/${trialFileName(number, optionValue(call, 'title') ?? source?.card.title)}`;
    const made = newTrialText({ number, facts, copied: planOf(call, source, stages) });
    const plain = withSchemaLine(hasFileIn(here), 'trial', made);
    text = source ? withAmounts(file, plain, source, items) : plain;
    return [seen, { path: file, before: undefined, after: text }];
  };
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  return {
    exitCode: 0,
    page: [{ kind: 'lines', lines: isDry ? text.trimEnd().split('\n') : [`trial ${number}`] }],
    json: envelope({
      schema: 'new@1',
      given: { ...(from === undefined ? {} : { from }) },
      found: { trial: number, file },
    }),
    notes: [`${isDry ? 'would write' : 'wrote'} ${file}`],
  };
}

async function stagesTyped(call: Call, here: Here): Promise<readonly PlannedStage[]> {
  const book = await bookOf(here);
  return withArithmetic(() => plannedStages(call, book));
}

/** The plan of the source, or the one that is typed; undefined for an empty one. */
function planOf(
  call: Call,
  source: OpenedTrial | undefined,
  stages: readonly PlannedStage[],
): string | undefined {
  if (source) return copiedPlan(source.card, source.document.source.text);
  if (stages.length > 0) return typedStages(stages);
  return (call.values['step'] ?? []).length > 0
    ? fail('missing', 'steps are given without items', 'give --item "2 g sweet orange oil" too')
    : undefined;
}

/** Items that the source has get the typed amounts; one that it has not is refused. */
function withAmounts(file: string, text: string, source: OpenedTrial, items: readonly TypedItem[]): string {
  const changes = items.map(({ name, amount }) => {
    for (const stage of source.card.stages) {
      const index = stage.items.findIndex((item) => isSameName(item.name, name));
      if (index !== -1) return setItemAmount(['stages', stage.name], index, amount);
    }
    return fail(
      'unknown-item',
      `trial ${source.card.number} has no item "${name}"`,
      'type the name as it stands there, or add the item in the file',
    );
  });
  const edited = editAll(file, text, changes);
  if (!edited.ok) throw new ProblemError(edited.problems);
  return edited.text;
}

function factsOf(call: Call, io: Io, here: Here, source: OpenedTrial | undefined): readonly Fact[] {
  const title = optionValue(call, 'title') ?? source?.card.title;
  const series = optionValue(call, 'series') ?? source?.card.series?.text;
  const why = optionValue(call, 'why');
  const facts: readonly Fact[] = [
    ...(title === undefined ? [] : [['title', title] as const]),
    ['made', madeTyped(call, here, io)],
    ...(source ? [['from', String(source.card.number)] as const] : []),
    ...(why === undefined ? [] : [['why', why] as const]),
    ...(series === undefined ? [] : [['series', series] as const]),
  ];
  // An option typed with nothing in it says nothing.
  return facts.filter(([, text]) => typeof text !== 'string' || text.trim() !== '');
}
