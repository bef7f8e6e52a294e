/** Cautions about what is handled at the bench: what stands neat in a stage, and what is warmed. */

import {
  corrosiveAcid,
  flammableBelowCelsius,
  type HandlingCode,
  handling,
  nearlyNeat,
  quinineSalts,
  slowToBurn,
  strongBases,
} from '../../reference/cautions.ts';
import type { BookEntry } from '../book.ts';
import type { Mixture, ResolvedItem } from '../mixture/picture.ts';
import { trimmedNumber } from '../number-text.ts';
import { isLike } from './item-substances.ts';
import type { PlacedCaution } from './placed-caution.ts';

/**
 * Handling cautions for a mixture: pure caffeine and quinine, potent aroma nearly neat, concentrated acid, caustic,
 * and liquids that burn in a stage that is warmed.
 *
 * Input     a resolved mixture; whether a stage is warmed, by its name
 * Output    cautions with their sources, one for each item
 * Example   an item of neat cassis thiol -> neat-potent-aroma
 */
export function handlingCautions(
  mixture: Mixture,
  isWarmed: (stage: string) => boolean,
): readonly PlacedCaution[] {
  return mixture.stages.flatMap((stage) =>
    stage.items.flatMap((item, place) =>
      itemCautions(item, isWarmed(stage.name)).map(({ code, before }) => {
        const { text, source } = handling[code];
        return {
          code,
          text: `${item.name}: ${before}${text}`,
          source,
          hint: 'its safety sheet comes first',
          at: { stage: stage.name, item: place },
        };
      }),
    ),
  );
}

interface Found {
  readonly code: HandlingCode;
  readonly before: string;
}

function itemCautions({ source, role }: ResolvedItem, isWarmed: boolean): readonly Found[] {
  if (source.kind !== 'ingredient') return [];
  const { entry } = source;
  const of = (code: HandlingCode, applies: boolean, before = ''): readonly Found[] =>
    applies ? [{ code, before }] : [];
  const flash = isWarmed ? lowestFlashPoint(entry) : undefined;
  const isOil = isWarmed && role === 'oil' && !flash && !isSlowToBurn(entry);
  return [
    ...of('pure-caffeine', isNeat(entry, ['caffeine'], nearlyNeat.neat)),
    ...of('pure-quinine', isNeat(entry, quinineSalts, nearlyNeat.neat)),
    ...of('neat-potent-aroma', potentShare(entry) >= nearlyNeat.potent),
    ...of('concentrated-acid', isNeat(entry, corrosiveAcid.names, corrosiveAcid.value)),
    ...of('strong-base', isNeat(entry, strongBases, nearlyNeat.neat)),
    ...of('flammable-near-heat', flash !== undefined, flash),
    ...of('flammable-near-heat', isOil, 'no flash point is known of it; '),
  ];
}

const isNeat = (entry: BookEntry, names: readonly string[], from: number): boolean =>
  shareOf(entry, (substance) => names.some((name) => isLike(substance, name))) >= from;

const potentShare = (entry: BookEntry): number => shareOf(entry, ({ record }) => record.potent === true);

const shareOf = ({ composition }: BookEntry, isIt: (substance: BookEntry) => boolean): number =>
  composition.reduce((sum, { substance, massFraction }) => sum + (isIt(substance) ? massFraction : 0), 0);

/** Fats and paraffins burn only far above what a water bath reaches. */
const isSlowToBurn = (entry: BookEntry): boolean => slowToBurn.some((name) => isLike(entry, name));

/** Words on the lowest flash point of what is most of the item. */
function lowestFlashPoint(entry: BookEntry): string | undefined {
  const own = entry.record.figures['flash point'];
  const figures = entry.composition
    .filter(({ massFraction }) => massFraction >= nearlyNeat.neat)
    .flatMap(({ substance }) => substance.record.figures['flash point'] ?? []);
  const lowest = [...(own ? [own] : []), ...figures].sort((one, other) => one.value - other.value)[0];
  if (!lowest || lowest.value >= flammableBelowCelsius.value) return undefined;
  const where = lowest.fromMemory ? ', from memory' : '';
  return `its flash point is near ${trimmedNumber(lowest.value, 3)} C${where}; `;
}
