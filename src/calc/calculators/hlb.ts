import { fail } from '../../problem.ts';
import { hlbRanges, hlbRangesCite } from '../../reference/hlb-ranges.ts';
import { defineCalculator } from '../define-calculator.ts';
import { type SplitPart, splitToHlb } from '../emulsifier-split.ts';
import { numberField } from '../fields.ts';
import { itemsField, type NamedItem } from '../item-fields.ts';
import { meetingStage } from '../mixture/meeting-stage.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Working } from '../working.ts';
import { withLocator } from '../working.ts';

const mostEmulsifiers = 10;

/**
 * Required HLB of an oil phase, HLB of an emulsifier blend, and the split that makes them equal.
 *
 * Formula   required = sum(m_oil required_oil) / sum(m_oil);  blended = sum(m_e HLB_e) / sum(m_e)
 * Input     oils and emulsifiers as masses or parts; or a target HLB instead of oils
 * Output    requiredHlb, blendedHlb, mismatch (blended minus required), oilMass, emulsifierMass (g), split, reachable
 * Refuses   an item without the HLB that is needed; a polymer as emulsifier; HLB outside 0 to 40
 * Source    Griffin 1949, J. Soc. Cosmet. Chem. 1, 311
 * Example   hlb --target 12 --emulsifier "1 g polysorbate 80" --emulsifier "1 g sorbitan oleate" -> split 0.72, 0.28
 */
export const hlb = defineCalculator({
  name: 'hlb',
  version: 1,
  summary: 'required HLB of the oils against the HLB of the emulsifier blend',
  about:
    'Says what HLB the oil phase asks for, what the blend has, and the split of the same emulsifiers that would meet it. HLB alone never proves a clear drink: it is a place to begin the beakers.',
  fields: {
    oil: itemsField({
      help: 'an oil, such as "2 g sweet orange oil"; "@ 14" at the end gives its required HLB',
      accepts: ['mass', 'parts'],
    }),
    emulsifier: itemsField({
      help: 'an emulsifier, such as "6 g polysorbate 80"; "@ 15" at the end gives its HLB',
      accepts: ['mass', 'parts'],
    }),
    target: numberField({ help: 'the HLB to reach, instead of oils' }),
  },
  readings: {
    requiredHlb: { label: 'required HLB', unit: '' },
    blendedHlb: { label: 'blended HLB', unit: '' },
    mismatch: { label: 'blended minus required', unit: '' },
    oilMass: { label: 'oil', unit: 'g' },
    emulsifierMass: { label: 'emulsifier', unit: 'g' },
    split: {
      label: 'blend that reaches the required HLB',
      columns: {
        emulsifier: { label: 'emulsifier' },
        fraction: { label: 'share', unit: '', as: 'percent' },
        mass: { label: 'mass', unit: 'g' },
      },
    },
    reachable: { label: 'can be met with these', as: 'nowhere' },
  },
  examples: [
    {
      line: 'hlb --oil "2 g sweet orange oil" --emulsifier "4 g polysorbate 80" --emulsifier "2 g sorbitan oleate"',
      says: 'an oil against a blend of two',
    },
    {
      line: 'hlb --target 12 --emulsifier "3 g polysorbate 80" --emulsifier "3 g sorbitan oleate"',
      says: 'the split for a wanted HLB',
    },
  ],
  instead: { target: ['oil'] },
  takes: ({ mixture }) => {
    const meeting = meetingStage(mixture);
    if (!meeting) return { why: 'no stage holds both an oil and an emulsifier' };
    const lacking = [
      ...meeting.oils
        .filter((one) => !one.entry?.record.figures['required hlb'])
        .map((one) => `${one.name} has no required HLB`),
      ...meeting.emulsifiers
        .filter((one) => one.entry?.record.polymer)
        .map((one) => `${one.name} is a polymer, for which HLB means nothing`),
      ...meeting.emulsifiers
        .filter((one) => !one.entry?.record.polymer && !one.entry?.record.figures.hlb)
        .map((one) => `${one.name} has no HLB`),
    ];
    const taken = { stage: meeting.name, given: { oil: meeting.oils, emulsifier: meeting.emulsifiers } };
    return lacking.length > 0 ? { why: lacking.join(', '), beside: taken } : [taken];
  },
  work: (given, working) => {
    if (given.emulsifier.length === 0)
      return fail('missing', '--emulsifier is needed', 'give --emulsifier "6 g polysorbate 80"');
    if (given.emulsifier.length > mostEmulsifiers) {
      return fail(
        'too-many',
        `${given.emulsifier.length} emulsifiers are given`,
        `give at most ${mostEmulsifiers}`,
      );
    }
    const required = requiredHlb(given.oil, given.target, working);
    const emulsifiers = given.emulsifier.map((item) => ({ item, hlb: hlbValue(item, 'hlb', working) }));
    const emulsifierMass = total(given.emulsifier, 'emulsifier');
    const blended =
      emulsifiers.reduce((sum, one) => sum + one.item.quantity.inner * one.hlb, 0) / emulsifierMass;
    working.line(
      'blended HLB = sum of mass x HLB / mass of emulsifier',
      `${weightedSum(emulsifiers)} / ${trimmedNumber(emulsifierMass)} = ${numberText(blended, 5)}`,
    );
    const parts = emulsifiers.map((one) => ({
      hlb: one.hlb,
      share: one.item.quantity.inner / emulsifierMass,
    }));
    const shares = splitToHlb(parts, required);
    sayFitness(blended, given.oil.length > 0 ? required : undefined, working);
    return {
      found: {
        requiredHlb: required,
        blendedHlb: blended,
        mismatch: blended - required,
        oilMass: given.oil.length > 0 && isMass(given.oil) ? total(given.oil, 'oil') : null,
        emulsifierMass: isMass(given.emulsifier) ? emulsifierMass : null,
        split: (shares ?? []).map((fraction, index) => ({
          emulsifier: emulsifiers[index]?.item.name ?? '',
          fraction,
          mass: isMass(given.emulsifier) ? fraction * emulsifierMass : null,
        })),
        reachable: shares !== undefined,
      },
      ...sayReach(parts, { required, blended, isReached: shares !== undefined }),
    };
  },
});

interface Reach {
  readonly required: number;
  readonly blended: number;
  readonly isReached: boolean;
}

/** One emulsifier alone has nothing to split: its mismatch is an answer, not a failure. */
function sayReach(
  parts: readonly SplitPart[],
  { required, blended, isReached }: Reach,
): { readonly lead?: string; readonly attention?: boolean } {
  if (parts.length === 1) return {};
  if (isReached) {
    const isThere = Math.abs(blended - required) < 0.05;
    const typed = `The blend given has HLB ${numberText(blended, 3)}.`;
    return isThere
      ? {}
      : {
          lead: `${typed} The table is not that blend, but the one of the same emulsifiers that would reach ${numberText(required, 3)}.`,
        };
  }
  const values = parts.map((part) => part.hlb);
  const [lowest, highest] = [Math.min(...values), Math.max(...values)].map((value) => trimmedNumber(value));
  return {
    attention: true,
    lead: `No split of these reaches ${numberText(required, 4)}: they blend from ${lowest} to ${highest}.`,
  };
}

function requiredHlb(oils: readonly NamedItem[], target: number | undefined, working: Working): number {
  if (target !== undefined) {
    if (oils.length > 0)
      return fail('given-twice', 'both --oil and --target are given', 'give the oils, or the HLB to reach');
    return inScale(target, '--target');
  }
  if (oils.length === 0)
    return fail(
      'missing',
      'neither --oil nor --target is given',
      'give --oil "2 g sweet orange oil" or --target 12',
    );
  const mass = total(oils, 'oil');
  const valued = oils.map((item) => ({ item, hlb: hlbValue(item, 'required hlb', working) }));
  const required = valued.reduce((sum, one) => sum + one.item.quantity.inner * one.hlb, 0) / mass;
  working.line(
    'required HLB = sum of mass x required HLB / mass of oil',
    `${weightedSum(valued)} / ${trimmedNumber(mass)} = ${numberText(required, 5)}`,
  );
  return required;
}

function hlbValue(item: NamedItem, figure: 'hlb' | 'required hlb', working: Working): number {
  const words = figure === 'hlb' ? 'HLB' : 'required HLB';
  if (item.value !== undefined) {
    working.cite(`${words} of ${item.name}`, 'given with the item');
    return inScale(item.value, item.name);
  }
  if (item.entry?.record.polymer) {
    return fail(
      'polymer',
      `${item.name} is a polymer: HLB means nothing for it`,
      'leave it out, or give a value of your own with @',
    );
  }
  const value = item.entry ? working.figure(item.entry, figure) : undefined;
  if (value === undefined) {
    return fail(
      'no-figure',
      `${item.name} has no ${words}`,
      `give it with @: "${item.quantity.written} ${item.name} @ 12"`,
    );
  }
  return value;
}

function inScale(value: number, name: string): number {
  if (value >= 0 && value <= 40) return value;
  return fail(
    'out-of-range',
    `an HLB of ${value} for ${name} is outside the scale of 0 to 40`,
    'give a value from 0 to 40',
  );
}

function total(items: readonly NamedItem[], what: string): number {
  const kinds = new Set(items.map((item) => item.quantity.dimension));
  if (kinds.size > 1)
    return fail(
      'mixed-kinds',
      `some ${what}s are masses and some are parts`,
      'give all as masses or all as parts',
    );
  const sum = items.reduce((mass, item) => mass + item.quantity.inner, 0);
  return sum > 0 ? sum : fail('not-positive', `the ${what} comes to nothing`, 'give an amount above zero');
}

const isMass = (items: readonly NamedItem[]): boolean => items[0]?.quantity.dimension === 'mass';

function weightedSum(valued: readonly { readonly item: NamedItem; readonly hlb: number }[]): string {
  return `(${valued.map((one) => `${trimmedNumber(one.item.quantity.inner)} x ${trimmedNumber(one.hlb)}`).join(' + ')})`;
}

function sayFitness(blended: number, askedByOil: number | undefined, working: Working): void {
  const uses = hlbRanges
    .filter((range) => blended >= range.low && blended <= range.high)
    .map((range) => range.use);
  const source = `${withLocator(hlbRangesCite.source, hlbRangesCite.locator)}`;
  working.cite('what an HLB is fit for', source, hlbRangesCite.fromMemory);
  const fit =
    uses.length > 0
      ? `is published as fit for ${uses.join(', ')}`
      : 'lies outside the published ranges of use';
  const asked =
    askedByOil === undefined ? 'its oil asks for' : `the ${numberText(askedByOil, 3)} that the oil asks for`;
  working.caution(
    'hlb-is-not-proof',
    `A blend of HLB ${numberText(blended, 3)} ${fit}. A clear solubilised drink usually wants more than ${asked} in an ordinary emulsion, and HLB alone never proves a clear drink: only the beaker does.`,
    source,
  );
}
