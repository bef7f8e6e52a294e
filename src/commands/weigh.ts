import type { Book } from '../calc/book.ts';
import { slipsOfWeighing } from '../calc/slip-guard/factor-slips.ts';
import { asShown } from '../calc/weighing/balance.ts';
import type { Io } from '../io.ts';
import type { StageCard } from '../ledger/cards.ts';
import { type Change, edit } from '../ledger/edit.ts';
import { addItemFact, type ItemFact } from '../ledger/edit-item.ts';
import { envelope } from '../output/answer-json.ts';
import type { Block } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { fail, isProblemError, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import { type Here, type OpenedTrial, openHere, openTrialNamed } from './open-ledger.ts';
import { pictureOf } from './trial-picture.ts';
import { offText, weighedBlocks, weighingJson } from './weigh-off.ts';
import { walkWeighing } from './weigh-walk.ts';
import { readWeighings, type Weighing } from './weigh-words.ts';
import { type Addition, additionsOf, loadCautions, readings } from './weighing-plan.ts';

/** A trial at the balance. */
export interface AtBalance {
  readonly here: Here;
  readonly trial: OpenedTrial;
  readonly book: Book;
  readonly additions: readonly Addition[];
  readonly cautions: readonly string[];
}

export async function runWeigh(call: Call, io: Io): Promise<Outcome> {
  const [typed = '', ...words] = call.words;
  const at = await atBalance(typed, call, io);
  if (words.length === 0) return io.canAsk ? walkWeighing(typed, call, io) : planOutcome(at);
  const weighings = readWeighings(words, at.additions, call.flags.has('readings'));
  const { diff, note } = await writeFacts(at, call, io, weighings.map(weighedFact));
  return {
    exitCode: 0,
    page: [
      ...cautionBlocks([...at.cautions, ...slips(weighings)]),
      ...weighedBlocks(at, weighings),
      ...(call.flags.has('dry-run') ? [{ kind: 'lines', lines: diff } as const] : []),
    ],
    json: envelope({
      schema: 'weigh@1',
      given: { trial: at.trial.card.number },
      found: { file: at.trial.file, weighed: weighings.map((one) => weighingJson(at, one)) },
      cautions: weighedCautions(at, weighings),
    }),
    notes: [note],
    explained: async () => (await import('./explain-bench.ts')).weighedExplanation(weighings),
  };
}

export async function atBalance(typed: string, call: Call, io: Io): Promise<AtBalance> {
  const here = await openHere(io);
  const trial = await openTrialNamed(here, io, typed);
  const book = await bookOf(here);
  const { mixture, cautions } = await mixtureAtBalance(here, trial, book);
  return {
    here,
    trial,
    book,
    additions: additionsOf(trial.card, mixture, here.bench, optionValue(call, 'stage')),
    cautions: [...cautions, ...loadCautions(trial.card, mixture, here.bench)],
  };
}

/** A weighing that can't be right must not keep the person from putting it right: then the plan alone counts. */
async function mixtureAtBalance(here: Here, trial: OpenedTrial, book: Book) {
  try {
    return { mixture: (await pictureOf(here, trial, book)).picture.mixture, cautions: [] };
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    const planned = { ...trial, card: { ...trial.card, stages: trial.card.stages.map(unweighed) } };
    const { mixture } = (await pictureOf(here, planned, book)).picture;
    return {
      mixture,
      cautions: thrown.problems.map(
        (one) => `${one.message}; a figure that is wrong is replaced with --again`,
      ),
    };
  }
}

const unweighed = (stage: StageCard): StageCard => ({
  ...stage,
  items: stage.items.map((item) => ({ ...item, weighed: undefined })),
});

/** A fact under an item of the trial. */
export interface ItemFactToWrite {
  readonly addition: Addition;
  readonly key: ItemFact;
  readonly text: string;
}

const weighedFact = ({ addition, written }: Weighing): ItemFactToWrite => ({
  addition,
  key: 'weighed',
  text: written,
});

/** Writes the facts, all or none; what stands there already is left, and what contradicts it is refused. */
export async function writeFacts(at: AtBalance, call: Call, io: Io, facts: readonly ItemFactToWrite[]) {
  const { here, trial } = at;
  const isAgain = call.flags.has('again');
  let diff: readonly string[] = [];
  const make = async () => {
    const before = textNow(here.root, trial.file, io);
    const after = withFacts(trial.file, before, facts, isAgain);
    diff = changedLines(before, after);
    return after === before ? [] : [{ path: trial.file, before, after }];
  };
  if (call.flags.has('dry-run')) await make();
  else await landHere(here.root, call, io, make);
  const verb = call.flags.has('dry-run') ? 'would write' : 'wrote';
  return {
    diff,
    note: diff.length === 0 ? `${trial.file} says so already; nothing written` : `${verb} ${trial.file}`,
  };
}

function withFacts(
  file: string,
  before: string,
  facts: readonly ItemFactToWrite[],
  isAgain: boolean,
): string {
  let text = before;
  for (const { addition, key, text: value } of facts) {
    const { stage, index, item } = addition;
    const there = key === 'weighed' ? item.weighed?.written : key === 'lot' ? item.lot : undefined;
    if (there === value) continue;
    if (there !== undefined && !isAgain) {
      fail(
        'weighed-already',
        `${item.name} in ${stage.name} says ${key} ${there} already`,
        `--again replaces it with ${value}`,
      );
    }
    const change: Change = addItemFact(['stages', stage.name], index, key, value);
    const edited = edit(file, text, change);
    if (!edited.ok) throw new ProblemError(edited.problems);
    text = edited.text;
  }
  return text;
}

const cautionBlocks = (texts: readonly string[]): readonly Block[] =>
  texts.length === 0 ? [] : [{ kind: 'notes', mark: '!', notes: texts.map(visible), tone: 'warn' }];

/** A weighing that is a power of ten off the plan. */
export const slips = (weighings: readonly Weighing[]): readonly string[] =>
  weighings.flatMap(({ addition, grams }) =>
    slipsOfWeighing(addition.plannedGrams, grams).map(({ text }) => `${addition.item.name}: ${text}`),
  );

/** For the JSON of an answer: what is asked about, and what is off by more than the bench accepts. */
export function weighedCautions(at: AtBalance, weighings: readonly Weighing[]) {
  const off = offText(at, weighings);
  return [
    ...slips(weighings).map((text) => ({ code: 'slip-weighed', text, source: 'common practice, no source' })),
    ...(off === undefined ? [] : [{ code: 'off-plan', text: off, source: 'weighing in bench.yaml' }]),
  ];
}

/** Without figures and without a terminal: what to weigh, in the order of addition. */
function planOutcome(at: AtBalance): Outcome {
  const totals = readings(at.additions);
  return {
    exitCode: 0,
    explained: async () => (await import('./explain-bench.ts')).plannedExplanation(at.additions),
    page: [
      ...cautionBlocks(at.cautions),
      {
        kind: 'table',
        columns: [
          { head: 'stage', align: 'left' },
          { head: 'item', align: 'left' },
          { head: 'this addition', align: 'point' },
          { head: 'balance reads', align: 'point' },
          { head: 'weighed', align: 'point' },
        ],
        rows: at.additions.map(({ stage, item, plannedGrams, divisionGrams }, index) => [
          visible(stage.name),
          visible(item.name),
          `${asShown(plannedGrams, divisionGrams)} g`,
          `${totals[index] ?? ''} g`,
          item.weighed?.written ?? '',
        ]),
      },
      {
        kind: 'text',
        text: `Type the figures in this order: neckring weigh ${at.trial.card.number} 2.03 6.01 …`,
      },
    ],
    json: envelope({
      schema: 'weigh@1',
      given: { trial: at.trial.card.number },
      found: {
        file: at.trial.file,
        additions: at.additions.map(({ stage, item, plannedGrams }, index) => ({
          stage: stage.name,
          item: item.name,
          planned: { value: plannedGrams, unit: 'g' },
          reading: { value: Number(totals[index]), unit: 'g' },
        })),
      },
    }),
  };
}
