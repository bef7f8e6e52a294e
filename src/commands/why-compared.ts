/** Measured turbidity and droplet sizes beside the model; a disagreement is shown, not explained away. */

import type { Book } from '../calc/book.ts';
import { type Calibration, uncalibrated } from '../calc/light/calibration.ts';
import { hazeIn } from '../calc/light/clarity.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { numberText } from '../calc/number-text.ts';
import type { BenchCard, ObservationCard, SampleCard, TrialCard } from '../ledger/cards.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { isSameName } from '../ledger/stage-name.ts';
import type { Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { swollenMicelle } from '../reference/droplet.ts';
import { meterPath, usualWidth } from '../reference/light.ts';
import type { Here, OpenedTrial } from './open-ledger.ts';
import { ownMeter } from './why-meter.ts';
import { backgroundOf, ntuOfLook, ratioOf, type StageModel, stageModel } from './why-model.ts';

/** One measured figure beside what the model has for it. */
export interface HazeRow {
  readonly sample: string;
  readonly what: 'turbidity' | 'droplet' | 'look';
  readonly measured: number | undefined;
  readonly words: string;
  readonly unit: 'NTU' | 'nm';
  readonly low: number;
  readonly high: number;
  /** What the model went by. */
  readonly by: string;
  readonly agrees: boolean;
}

interface HazeFrom {
  readonly card: TrialCard;
  readonly mixture: Mixture;
  readonly bench: BenchCard;
  readonly meter: Calibration;
}

export const hasHazeReading = ({ observations }: TrialCard): boolean =>
  observations.some(({ turbidity, droplet }) => turbidity || droplet);

/** Undefined where nothing of it was measured. */
export async function hazeRowsOf(
  here: Here,
  trial: OpenedTrial,
  { mixture, book }: { readonly mixture: Mixture; readonly book: Book },
): Promise<readonly HazeRow[]> {
  if (!hasHazeReading(trial.card)) return [];
  const hasTurbidity = trial.card.observations.some(({ turbidity }) => turbidity);
  const meter = hasTurbidity ? await ownMeter(here, book) : uncalibrated;
  return hazeRows({ card: trial.card, mixture, bench: here.bench, meter });
}

export function hazeRows(from: HazeFrom): readonly HazeRow[] {
  return from.card.samples.flatMap((sample) => {
    const stage = from.mixture.stages.find(({ name }) => isSameName(name, sample.of));
    const model = stage && stageModel(stage);
    return model ? rowsOf(sample, model, from) : [];
  });
}

function rowsOf(sample: SampleCard, model: StageModel, from: HazeFrom): readonly HazeRow[] {
  const seen = observationsOf(from.card, sample);
  const turbidity = seen.findLast((one) => one.turbidity && one.turbidity.inner > 0);
  const droplet = seen.findLast((one) => one.droplet && one.droplet.inner > 0);
  return [
    ...(turbidity && droplet ? turbidityRow(sample, { turbidity, droplet }, model, from.meter) : []),
    ...(turbidity && !droplet ? expectedRow(sample, turbidity, model, from) : []),
    ...(droplet ? dropletRow(sample, droplet, from.mixture) : []),
    ...lookRow(sample, { turbidity, droplet }, model, from),
  ];
}

interface Readings {
  readonly turbidity: ObservationCard | undefined;
  readonly droplet: ObservationCard | undefined;
}

/** What a meter would show of droplets of the measured size; undefined where light is scattered more than once. */
function modelledNtu(model: StageModel, nanometres: number, meter: Calibration) {
  const glass = { widthMetres: Math.min(usualWidth.value, meterPath.value), calibration: meter };
  const haze = hazeIn(model.dispersion, { diameterNanometres: nanometres, spread: 0 }, glass);
  return haze.ok ? haze.value.ntu : undefined;
}

function turbidityRow(
  sample: SampleCard,
  { turbidity, droplet }: Readings,
  model: StageModel,
  meter: Calibration,
): readonly HazeRow[] {
  const measured = turbidity?.turbidity?.inner ?? 0;
  const nanometres = (droplet?.droplet?.inner ?? 0) * 1e9;
  const modelled = modelledNtu(model, nanometres, meter);
  if (!modelled) return [];
  const { low, high } = modelled;
  const by = `droplets of ${numberText(nanometres, 3)} nm${meter.readings > 0 ? `, your meter (${meter.readings} readings)` : ''}`;
  const agrees = measured >= low && measured <= high;
  return [
    { sample: sample.name, what: 'turbidity', measured, words: '', unit: 'NTU', low, high, by, agrees },
  ];
}

/** Where no droplet size was measured: beside what the ratio would make, over its whole band. */
function expectedRow(
  sample: SampleCard,
  { turbidity }: ObservationCard,
  model: StageModel,
  { mixture, meter }: HazeFrom,
): readonly HazeRow[] {
  const micelle = ratioOf(mixture)?.micelle;
  if (micelle === undefined || !turbidity) return [];
  const least = modelledNtu(model, micelle / swollenMicelle.factor, meter);
  const most = modelledNtu(model, micelle * swollenMicelle.factor, meter);
  if (!least || !most) return [];
  const measured = turbidity.inner;
  const [low, high] = [least.low, most.high];
  const by = `droplets of about ${numberText(micelle, 2)} nm, as the ratio would make`;
  const agrees = measured >= low && measured <= high;
  return [
    { sample: sample.name, what: 'turbidity', measured, words: '', unit: 'NTU', low, high, by, agrees },
  ];
}

function dropletRow(sample: SampleCard, { droplet }: ObservationCard, mixture: Mixture): readonly HazeRow[] {
  const micelle = ratioOf(mixture)?.micelle;
  if (micelle === undefined || !droplet) return [];
  const measured = droplet.inner * 1e9;
  const [low, high] = [micelle / swollenMicelle.factor, micelle * swollenMicelle.factor];
  const by = 'oil per emulsifier, all oil in micelles';
  const agrees = measured >= low && measured <= high;
  return [{ sample: sample.name, what: 'droplet', measured, words: '', unit: 'nm', low, high, by, agrees }];
}

/** The look of the newest observation that has a reading too, beside what that reading would look like. */
function lookRow(
  sample: SampleCard,
  { turbidity, droplet }: Readings,
  model: StageModel,
  { bench, meter }: HazeFrom,
): readonly HazeRow[] {
  const one = [turbidity, droplet].find((each) => each && each.looks.length > 0);
  if (!one) return [];
  const measured = one.turbidity?.inner ?? modelledNtu(model, (one.droplet?.inner ?? 0) * 1e9, meter)?.value;
  const background = backgroundOf(one.viewed?.text ?? sample.viewed ?? bench.viewed[0] ?? 'black');
  const band = ntuOfLook(one.looks, background);
  if (measured === undefined || !band) return [];
  const agrees = measured >= band.low && measured <= band.high;
  const by = `"${one.looks.join(', ')}" against ${background}, ${one.turbidity ? 'measured' : 'reckoned from the droplets'}`;
  return [
    {
      sample: sample.name,
      what: 'look',
      measured,
      words: one.looks.join(', '),
      unit: 'NTU',
      ...band,
      by,
      agrees,
    },
  ];
}

/** `0.021 to 0.95 NTU` */
function spanText({ low, high, unit }: HazeRow): string {
  if (!Number.isFinite(high)) return `from ${numberText(low, 2)} ${unit}`;
  if (low <= 0) return `up to ${numberText(high, 2)} ${unit}`;
  return `${numberText(low, 2)} to ${numberText(high, 2)} ${unit}`;
}

export function hazeBlocks(rows: readonly HazeRow[]): Page {
  if (rows.length === 0) return [];
  const text = (value: number, unit: string): string =>
    Number.isFinite(value) ? `${numberText(value, 2)} ${unit}` : '-';
  return [
    { kind: 'heading', text: 'Haze beside the model' },
    {
      kind: 'grid',
      columns: [
        { head: 'sample', align: 'left' },
        { head: '', align: 'left' },
        { head: 'measured', align: 'left' },
        { head: 'model', align: 'left' },
        { head: 'by', align: 'left' },
        { head: '', align: 'left' },
      ],
      rows: rows.map((row) => [
        visible(row.sample),
        row.what,
        row.measured === undefined ? '-' : text(row.measured, row.unit),
        spanText(row),
        visible(row.by),
        row.agrees ? 'agrees' : 'DIFFERS',
      ]),
    },
  ];
}

export const hazeJson = (rows: readonly HazeRow[]): readonly object[] =>
  rows.map((row) => ({
    sample: row.sample,
    what: row.what,
    measured: { value: row.measured ?? null, unit: row.unit },
    low: { value: row.low, unit: row.unit },
    high: { value: Number.isFinite(row.high) ? row.high : null, unit: row.unit },
    by: row.by,
    agrees: row.agrees,
  }));
