/** What must be said of the additives in a drink: precursors of benzene, people whom advice names, what is withdrawn. */

import { benzene, glycerolAdvice, sensitiveGroups } from '../../reference/drink-keeping.ts';
import type { Caution } from '../answer.ts';
import type { Mixture, ResolvedItem, ResolvedStage } from '../mixture/picture.ts';
import { isLike } from '../slip-guard/item-substances.ts';

export function additiveCautions(mixture: Mixture): readonly Caution[] {
  const { drink } = mixture;
  return [
    ...withdrawnCautions(mixture),
    ...(drink ? [...benzeneCaution(mixture, drink), ...groups(drink)] : []),
  ];
}

const holds = ({ substances }: ResolvedStage, names: readonly string[]): string | undefined =>
  substances.find(
    ({ entry, massGrams }) =>
      massGrams > 0 && names.some((name) => isLike(entry, name) || name === entry.name),
  )?.name;

/** Both precursors, in whichever stage; juice counts as ascorbic acid. */
function benzeneCaution(mixture: Mixture, drink: ResolvedStage): readonly Caution[] {
  const benzoate = holds(drink, benzene.precursors);
  const ascorbic = holds(drink, benzene.partners) ?? juiceIn(mixture);
  if (benzoate === undefined || ascorbic === undefined) return [];
  return [benzeneOf(benzoate, ascorbic)];
}

/** With the names of the two that are both in it. */
export function benzeneOf(benzoate: string, ascorbic: string): Caution {
  const juice = isJuiceName(ascorbic) ? ', which holds ascorbic acid' : '';
  const text = `Both precursors of benzene are in it: ${benzoate}, and ${ascorbic}${juice}. Heat, light, copper and iron speed it. There is no figure for drinks; for drinking water US EPA has 5, the EU 1, WHO 10 ug/L (WHO from memory). Take one of the two out, or have it measured.`;
  return { code: 'benzene', text, source: benzene.source };
}

const juiceIn = ({ stages }: Mixture): string | undefined =>
  stages
    .filter(({ name, shareInDrink }) => name === 'drink' || shareInDrink > 0)
    .flatMap(({ items }) => items)
    .find(
      ({ name, source, massGrams }) => massGrams > 0 && source.kind === 'ingredient' && isJuice(name, source),
    )?.name;

const isJuice = (name: string, { entry }: Extract<ResolvedItem['source'], { kind: 'ingredient' }>): boolean =>
  [name, entry.name, ...(entry.like ?? [])].some(isJuiceName);

export const isJuiceName = (name: string): boolean => /\bjuice\b/iu.test(name);

function groups(drink: ResolvedStage): readonly Caution[] {
  const named = sensitiveGroups.filter(({ names }) => holds(drink, names) !== undefined);
  const glycerol = drink.substances
    .filter(({ entry }) => isLike(entry, 'glycerol'))
    .reduce((sum, { gramsPerLitre }) => sum + gramsPerLitre, 0);
  return [
    ...named.map(({ text, source }) => ({ code: 'sensitive-group', text, source })),
    ...(glycerol >= glycerolAdvice.gramsPerLitre
      ? [{ code: 'sensitive-group', text: glycerolAdvice.text, source: glycerolAdvice.source }]
      : []),
  ];
}

/** What is weighed in and was withdrawn or prohibited; what an oil holds by nature is another matter. */
export function withdrawnCautions({ stages }: Pick<Mixture, 'stages'>): readonly Caution[] {
  return stages.flatMap(({ name, items }) =>
    items.flatMap(({ source }) => {
      if (source.kind !== 'ingredient') return [];
      return (source.entry.record.withdrawn ?? []).map((one) => ({
        code: 'withdrawn',
        text: `${source.entry.name} in the ${name}: ${one.by} ${one.what}. No dose of it is given here.`,
        source: one.source,
      }));
    }),
  );
}
