/** A foam series in words. */

import { type HeadStep, placeOf } from '../calc/foam/head-band.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { BenchCard } from '../ledger/cards.ts';
import type { NotedHead } from '../ledger/head-pours.ts';
import type { SeriesRungs } from '../ledger/rungs.ts';
import { visible } from '../output/visible.ts';
import { moreFoamWithMore } from '../reference/antifoam-figures.ts';
import type { Foam } from './series-foam.ts';
import type { WantedHead } from './series-foam-wanted.ts';
import { counted, figureText, listed } from './series-words.ts';

export const headText = (metres: number): string => `${trimmedNumber(metres * 1000, 3)} mm`;

/** How the bench pours; heads of other pours don't compare. */
export function foamTestText({ foamTest }: BenchCard): string {
  const { glass, volume, temperature, pour } = foamTest ?? {};
  const parts = [
    volume?.written,
    temperature && `at ${temperature.written}`,
    pour && `poured from ${pour.written}`,
    glass && `into ${glass}`,
  ].filter((part) => part !== undefined);
  if (parts.length > 0) return visible(`As poured here: ${parts.join(', ')}.`);
  return 'bench.yaml does not say how foam is tested. Heads compare only between pours alike: write "foam test" with glass, volume, temperature and pour.';
}

/** `Wanted: a head of 5 to 15 mm, the aim of orange cardamom.` */
export const wantedText = ({ written, formula }: WantedHead): string =>
  visible(`Wanted: a head of ${written}${formula === undefined ? '' : `, the aim of ${formula}`}.`);

const doseText = ({ scales }: SeriesRungs, { dose }: Pick<HeadStep, 'dose'>): string =>
  dose === 0 ? 'none at all' : figureText(scales[0], dose);

const stepText = (step: HeadStep): string =>
  step.pours === 1
    ? `${headText(step.meanMetres)}, one pour`
    : `${headText(step.meanMetres)}, ${step.pours} pours from ${headText(step.lowMetres)} to ${headText(step.highMetres)}`;

/** The smallest dose in the band, or on which side of it everything lies. */
export function bandText(foam: Foam, series: SeriesRungs): string {
  const { band, steps, smallest, everyPour } = foam;
  if (!band)
    return `To see which dose does: neckring series "${visible(series.series.name)}" --head "5 to 15 mm", with the head that you want; or "formula: NAME" in the file of the series, and "head: 5 to 15 mm" under its aims.`;
  if (!smallest) return `${outside(foam)} Nothing is read between the doses: no curve is known.`;
  const found = `The smallest dose tried with a head in the band is ${doseText(series, smallest)} (${stepText(smallest)}).`;
  if (!everyPour) return `${found} Of no dose every pour is in it.`;
  if (everyPour !== smallest)
    return `${found} Every pour is in it from ${doseText(series, everyPour)} (${stepText(everyPour)}).`;
  return smallest === steps[0] && smallest.dose > 0
    ? `${found} It is the smallest that was tried: less may do.`
    : found;
}

function outside({ steps, band }: Foam): string {
  const places = new Set(steps.map(({ meanMetres }) => placeOf(meanMetres, band ?? {})));
  if (places.size > 1) return 'No dose tried has a head in the band: some are over it, some under.';
  return places.has('over')
    ? 'Every head is over the band, that of the greatest dose too.'
    : 'Every head is under the band, that of the smallest dose too.';
}

interface NotesOf {
  readonly foam: Foam;
  readonly series: SeriesRungs;
  readonly bench: BenchCard;
}

export function foamNotes({ foam, series, bench }: NotesOf): readonly string[] {
  if (foam.heads.length === 0)
    return ['no head is noted yet: pour, and write neckring observe TRIAL --head "18 mm" --head-life "40 s"'];
  return [
    ...riseNotes(foam, series),
    ...(foam.steps.every(({ pours }) => pours === 1)
      ? ['one pour a dose: how far two pours of one glass differ is not known; pour each three times']
      : []),
    ...temperatureNotes(foam.heads, bench),
    ...(foam.active.some(({ inDrink }) => inDrink?.isAssumed)
      ? ['the emulsion is taken as 10 % active: write what yours contains in ingredients.yaml']
      : []),
    ...(foam.active.every(({ inDrink }) => inDrink === undefined)
      ? ['no rung has a stage named drink, so what comes into the drink is not told']
      : []),
  ];
}

const riseNotes = ({ rises }: Foam, series: SeriesRungs): readonly string[] =>
  rises.map(({ from, to, isClear }) => {
    const what = `more antifoam gave more foam: ${headText(to.meanMetres)} at ${doseText(series, to)} after ${headText(from.meanMetres)} at ${doseText(series, from)}`;
    const weight = isClear ? '' : ', though the pours of the two overlap';
    return `${what}${weight}; pour both again, your own heads decide [${moreFoamWithMore.source}]`;
  });

const mostKelvinApart = 2;

/** Heads that were poured warmer or colder than the foam test says. */
function temperatureNotes(heads: readonly NotedHead[], { foamTest }: BenchCard): readonly string[] {
  const wanted = foamTest?.temperature;
  if (!wanted) return [];
  const off = heads.filter(({ observation: { temperature } }) =>
    temperature ? Math.abs(temperature.inner - wanted.inner) > mostKelvinApart : false,
  );
  if (off.length === 0) return [];
  const trials = listed([...new Set(off.map(({ trial }) => trial.number))]);
  return [
    `${counted(off.length, 'head')} of trial ${trials} ${off.length === 1 ? 'was' : 'were'} poured more than ${mostKelvinApart} C away from the ${wanted.written} of the foam test`,
  ];
}
