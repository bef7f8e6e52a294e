/** What an item of a stage brings that matters for the order of the work, through the stages that it is made of. */

import type { Trait } from '../calc/process/steps.ts';
import type { Role } from '../reference/ingredient.ts';
import { normaliseName } from '../reference/name.ts';
import type { ItemCard, StageCard } from './cards.ts';
import type { Sources, StagesOf } from './resolve.ts';
import { otherStageOf } from './stage-name.ts';

const preservativeSalt = /(?:sorbate|benzoate)\b/iu;

export interface TraitsOf {
  readonly of: StagesOf;
  /** The stage that the item stands in, by its place. */
  readonly stage: number;
  readonly sources: Sources;
  /** Numbers of the trials on the way here, so that no circle is followed. */
  readonly above?: readonly number[];
}

/** Names that are not known bring nothing. */
export function itemTraits(item: ItemCard, at: TraitsOf): ReadonlySet<Trait> {
  const { of, stage, sources, above = [] } = at;
  const place = of.stages.findIndex(({ name }) => normaliseName(name) === normaliseName(item.name));
  if (place >= 0) return place < stage ? stageTraits({ ...at, stage: place }) : new Set();
  const entry = sources.book.find(item.name);
  if (entry) {
    return new Set(
      entry.composition.flatMap(({ substance }) =>
        substanceTraits(substance.name, substance.record.potent === true, item.role ?? substance.record.role),
      ),
    );
  }
  const other = otherStageOf(item.name);
  const trial = other && !above.includes(other.trial) ? sources.trialOf(other.trial) : undefined;
  const used =
    trial?.stages.findIndex(({ name }) => normaliseName(name) === normaliseName(other?.stage ?? '')) ?? -1;
  if (!trial || used < 0) return new Set();
  return stageTraits({ of: trial, stage: used, sources, above: [...above, trial.number] });
}

const traitOfRole: Readonly<Partial<Record<Role, Trait>>> = {
  acid: 'acid',
  antifoam: 'antifoam',
  oil: 'oil',
  emulsifier: 'emulsifier',
};

function substanceTraits(name: string, isPotent: boolean, role: Role): readonly Trait[] {
  const trait = traitOfRole[role];
  return [
    ...(trait ? [trait] : []),
    ...(isPotent ? (['potent'] as const) : []),
    ...(role === 'preservative' && preservativeSalt.test(name) ? (['preservative salt'] as const) : []),
  ];
}

function stageTraits(at: TraitsOf): ReadonlySet<Trait> {
  const stage: StageCard | undefined = at.of.stages[at.stage];
  return new Set((stage?.items ?? []).flatMap((item) => [...itemTraits(item, at)]));
}
