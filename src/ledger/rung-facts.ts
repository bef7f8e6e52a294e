/** How a rung was made and looked at, as facts that can be laid beside those of another. */

import type { Book } from '../calc/book.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { Quantity } from '../calc/quantity.ts';
import type { AlikeFact } from '../calc/rungs-alike.ts';
import { normaliseName } from '../reference/name.ts';
import type { BenchCard, SampleCard, SeriesCard, StageCard, StepCard, TrialCard } from './cards.ts';
import { madeOf, observationsOf } from './sample-record.ts';
import { isSameName } from './stage-name.ts';
import { readVaried, type Varied, variedIn } from './varied.ts';

export interface FactsOf {
  readonly trial: TrialCard;
  readonly sample: SampleCard | undefined;
  readonly mixture: Mixture | undefined;
  readonly varied: readonly Varied[];
  readonly series: SeriesCard;
  readonly bench: BenchCard;
  readonly book: Book;
}

/** Everything that should be the same in all rungs; what the series varies is left out. */
export const rungFacts = (of: FactsOf): readonly AlikeFact[] => [
  ...stepFacts(of),
  ...lotFacts(of),
  ...keptFacts(of),
  ...lookFacts(of),
];

/** The stages that lead to the sample: it can't have been changed by a later one. */
function stagesUpTo({ trial, sample }: FactsOf): readonly StageCard[] {
  const last = sample ? trial.stages.findIndex(({ name }) => isSameName(name, sample.of)) : -1;
  return last === -1 ? trial.stages : trial.stages.slice(0, last + 1);
}

function stepFacts(of: FactsOf): readonly AlikeFact[] {
  const varies = new Set(of.varied.map(({ kind }) => kind));
  const steps = stagesUpTo(of).flatMap(({ process }) => process);
  return [
    word('steps', steps.map(stepWord).join(', ')),
    ...steps.flatMap((step, index) => {
      const name = `step ${index + 1}${step.does ? ` (${step.does})` : ''}`;
      return [
        ...(varies.has('temperature')
          ? []
          : [figure(`temperature of ${name}`, 'temperature', step.to ?? step.at)]),
        figure(`time of ${name}`, 'time', step.holds ?? step.over),
        ...(varies.has('stirring') ? [] : [stirring(`stirring in ${name}`, step)]),
        word(`tool of ${name}`, step.with ?? ''),
      ];
    }),
  ];
}

const stepWord = ({ does, sentence }: StepCard): string => does ?? normaliseName(sentence ?? '');

const word = (what: string, text: string): AlikeFact => ({ what, kind: 'word', text });

const zeroCelsius = 273.15;

const figure = (what: string, kind: 'temperature' | 'time', one: Quantity | undefined): AlikeFact => ({
  what,
  kind,
  value: one && (kind === 'temperature' ? one.inner - zeroCelsius : one.inner),
  text: one?.written ?? '',
});

const stirring = (what: string, { stir, stirWords }: StepCard): AlikeFact => ({
  what,
  kind: 'stirring',
  value: stir?.inner,
  text: stir?.written ?? stirWords ?? '',
});

/** The oils, emulsifiers and carriers by name and lot, as far as they are not what is varied. */
function lotFacts(of: FactsOf): readonly AlikeFact[] {
  const isBlend = of.varied.some(({ kind }) => kind === 'blend hlb');
  return (['oil', 'emulsifier', 'carrier'] as const)
    .filter((role) => !(isBlend && role === 'emulsifier'))
    .map((role) => word(`${role}`, lotsOf(of, role).join(', ')));
}

/** `orange oil lot 2231`, `polysorbate 80 lot 7`. */
export function lotsOf(
  of: Pick<FactsOf, 'trial' | 'sample' | 'mixture' | 'book'>,
  role: 'oil' | 'emulsifier' | 'carrier',
): readonly string[] {
  const items = of.trial.stages.flatMap(({ name, items: all }) => {
    const resolved = of.mixture?.stages.find((stage) => stage.name === name);
    return all.filter((item) => resolved?.items.find((one) => one.name === item.name)?.role === role);
  });
  const names = items.map((item) => {
    const lot = item.lot ?? of.book.find(item.name)?.lot;
    const isNamed = lot === undefined || normaliseName(item.name).includes(normaliseName(lot));
    return isNamed ? item.name : `${item.name} lot ${lot}`;
  });
  return [...new Set(names)].sort();
}

/** What the series says is kept, where it is something that is weighed in. */
function keptFacts({ series, trial, mixture, varied }: FactsOf): readonly AlikeFact[] {
  if (!mixture) return [];
  const names = new Set(varied.map(({ text }) => normaliseName(text)));
  return series.same.flatMap((text) => {
    const [kept] = readVaried(text);
    if (kept?.kind !== 'amount' || names.has(normaliseName(text))) return [];
    const found = variedIn(kept, { trial, mixture });
    if ('lacks' in found || !found.stage || found.stage.massGrams <= 0) return [];
    const share = found.value / found.stage.massGrams;
    const shown = `${trimmedNumber(share * 100, 3)} %`;
    return [{ what: `share of ${text}`, kind: 'share' as const, value: share, text: shown }];
  });
}

function lookFacts({ trial, sample, bench }: FactsOf): readonly AlikeFact[] {
  if (!sample) return [];
  const usual = sample.viewed ?? bench.viewed[0] ?? '';
  const looks = observationsOf(trial, sample).filter((one) => one.looks.length > 0);
  const ways = [...new Set(looks.map((one) => one.viewed?.text ?? usual))].sort();
  const at = sample.at ?? bench.temperature;
  return [
    word('day made', madeOf(trial, sample)?.written.slice(0, 10) ?? ''),
    ...(looks.length > 0 ? [word('viewed', ways.join('; '))] : []),
    figure('kept at', 'temperature', at),
    word('vessel', sample.in ?? ''),
    word('cover', sample.cover ?? ''),
  ];
}
