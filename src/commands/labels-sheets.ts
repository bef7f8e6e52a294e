/** The sheets of a shelf, every figure a text. */

import { meetingStage } from '../calc/mixture/meeting-stage.ts';
import { asShown } from '../calc/weighing/balance.ts';
import { looks, type TrialCard } from '../ledger/cards.ts';
import type { OpenLook } from '../ledger/schedule.ts';
import { openTrial } from '../ledger/single-trial.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import type { BeakerLabel } from '../output/sheets/labels-html.ts';
import type { LookSheet } from '../output/sheets/look-sheet-html.ts';
import type { WeighSheet, WeighTable } from '../output/sheets/weigh-sheet-html.ts';
import { visible } from '../output/visible.ts';
import { isProblemError } from '../problem.ts';
import type { Shelf, ShelfSample } from './labels-samples.ts';
import { bookOf } from './ledger-book.ts';
import { resolveDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { ratioCell } from './series-words.ts';
import { stepText } from './show-stages.ts';
import { type Addition, additionsOf } from './weighing-plan.ts';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `3 Mar`: no two countries read it in two ways. */
const dayText = (written: string): string =>
  `${Number(written.slice(8, 10))} ${months[Number(written.slice(5, 7)) - 1] ?? ''}`;

const dateText = (written: string): string => `${dayText(written)} ${written.slice(0, 4)}`;

const lookDate = (here: Here, { atEpoch }: OpenLook): string =>
  dayText(writtenTime(atEpoch, here.settings.zone));

const day = 86_400;
/** `day 1`, `6 h` */
const ageText = (seconds: number): string =>
  seconds % day === 0 ? `day ${seconds / day}` : `${Math.round(seconds / 360) / 10} h`;

export async function labelsOf(
  here: Here,
  shelf: Shelf,
  withRatio: boolean,
): Promise<readonly BeakerLabel[]> {
  const inside = withRatio ? await insides(here, shelf) : new Map<TrialCard, string>();
  return shelf.samples.map(({ card, sample, open }) => ({
    number: String(card.number),
    sample: card.samples.length > 1 ? visible(sample.name) : '',
    made: card.made ? dateText(card.made.written) : '',
    looks: open.map((look) => lookDate(here, look)),
    inside: inside.get(card) ?? '',
  }));
}

/** `1 : 3, sweet orange, one part to three` */
async function insides(here: Here, { samples }: Shelf): Promise<ReadonlyMap<TrialCard, string>> {
  const found = new Map<TrialCard, string>();
  for (const card of new Set(samples.map((one) => one.card))) {
    const mixture = await mixtureOf(here, card);
    const meeting = mixture && meetingStage(mixture);
    const ratio = meeting ? [ratioCell(meeting.oilGrams / meeting.emulsifierGrams)] : [];
    found.set(card, visible([...ratio, ...(card.title === undefined ? [] : [card.title])].join(', ')));
  }
  return found;
}

/** Undefined where it can't be worked out: check says why. */
async function mixtureOf(here: Here, card: TrialCard) {
  const opened = await openTrial(here, card.number);
  if (!opened?.card) return undefined;
  try {
    return (await resolveDesign(here, { ...opened, card: opened.card }, await bookOf(here))).mixture;
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    return undefined;
  }
}

export function lookSheetOf(here: Here, { name, samples }: Shelf): LookSheet {
  const shown = samples.filter(({ open }) => open.length > 0);
  const ages = [...new Set(shown.flatMap(({ open }) => open.map(({ afterSeconds }) => afterSeconds)))];
  const viewed = here.bench.viewed[0];
  return {
    title: `Look sheet: ${name}`,
    columns: ages.sort((one, other) => one - other).map(ageText),
    rows: shown.map(({ card, sample, open }) => ({
      number: String(card.number),
      about: aboutOf({ card, sample, open }),
      dates: new Map(open.map((look) => [ageText(look.afterSeconds), lookDate(here, look)])),
    })),
    words: looks,
    how: visible(
      `${viewed === undefined ? '' : `Viewed: ${viewed}. `}Then type it: neckring look 14 clear 15 "hazy, ring"`,
    ),
  };
}

function aboutOf({ card, sample }: ShelfSample): string {
  const place = sample.at ? [`at ${sample.at.written}`] : [];
  return visible([...(card.samples.length > 1 ? [sample.name] : []), ...place].join(', '));
}

/** A balance must show so many of its divisions before a mass is worth weighing. */
const leastDivisions = 5;

/** `2.00 g`; as it was typed where that is too little for the balance: `12 drops`. */
function amountText({ item, plannedAtFirstGrams, divisionGrams }: Addition): string {
  const isMass = plannedAtFirstGrams >= leastDivisions * divisionGrams;
  return isMass ? `${asShown(plannedAtFirstGrams, divisionGrams)} g` : visible(item.amount.written);
}

/** Trials with the same items in the same stage share a table. */
export async function weighSheetOf(here: Here, { name, samples }: Shelf): Promise<WeighSheet> {
  const tables = new Map<string, WeighTable>();
  for (const card of new Set(samples.map((one) => one.card))) {
    const mixture = await mixtureOf(here, card);
    if (!mixture) continue;
    for (const stage of card.stages) {
      const additions = additionsOf(card, mixture, here.bench, stage.name);
      const items = additions.map(({ item }) => visible(item.name));
      const steps = stage.process.map(stepText);
      const key = JSON.stringify([stage.name, items, steps]);
      const table = tables.get(key) ?? { title: visible(stage.name), items, rows: [], steps };
      const amounts = additions.map(amountText);
      const row = {
        number: String(card.number),
        about: card.made ? dateText(card.made.written) : '',
        amounts,
      };
      tables.set(key, { ...table, rows: [...table.rows, row] });
    }
  }
  return {
    title: `Weigh sheet: ${name}`,
    tables: [...tables.values()],
    how: 'In the order of addition. Write what the balance says under each figure, then type it: neckring weigh 14 2.03 6.01 6.00',
  };
}
