import { fail } from '../../problem.ts';
import type { BookEntry } from '../book.ts';
import { defineCalculator } from '../define-calculator.ts';
import { splitToHlb } from '../emulsifier-split.ts';
import { numberField, quantityField, ratioField, required } from '../fields.ts';
import { namesField } from '../item-fields.ts';
import { meetingStage } from '../mixture/meeting-stage.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Quantity } from '../quantity.ts';
import { type Ratio, ratioInWords } from '../ratio-words.ts';
import { grams, share } from '../typed-quantity.ts';
import type { Working } from '../working.ts';

/**
 * What to weigh for an emulsion of a given size: oil, emulsifier, carrier and water.
 *
 * Formula   m_oil = w_oil m;  m_emulsifier = m_oil x emulsifier parts / oil parts, or w_emulsifier m;
 *           m_water = m - m_oil - m_emulsifier - m_carrier
 * Input     batch (g), oil share, ratio oil : emulsifier or emulsifier share, carrier share, a blend with its HLB
 * Output    oilMass, emulsifierMass, carrierMass, waterMass (g), oilPerEmulsifier, emulsifierFraction (of the batch), blend
 * Refuses   shares that leave no room; both ratio and emulsifier share; a blend that can't reach the HLB
 * Source    arithmetic; alligation for the blend, Griffin 1949
 * Example   emulsifier --batch 50 g --oil 4% --ratio 1:2 -> oilMass 2, emulsifierMass 4, waterMass 44
 */
export const emulsifier = defineCalculator({
  name: 'emulsifier',
  version: 1,
  summary: 'what to weigh for an emulsion: oil, emulsifier, carrier, water',
  about: 'The ratio is oil to emulsifier by mass: 1:2 is one part of oil to two of emulsifier.',
  fields: {
    batch: required(
      quantityField({
        help: 'mass of the whole emulsion, such as 50 g',
        accepts: ['mass'],
        placeholder: 'MASS',
      }),
    ),
    oil: required(
      quantityField({ help: 'share of oil in it, such as 4%', accepts: ['share'], placeholder: 'SHARE' }),
    ),
    ratio: ratioField({ help: 'oil to emulsifier, such as 1:2', placeholder: 'OIL:EMULSIFIER' }),
    emulsifierShare: quantityField({
      help: 'share of emulsifier instead of the ratio, such as 8%',
      accepts: ['share'],
      placeholder: 'SHARE',
    }),
    carrier: quantityField({
      help: 'share of carrier, such as 12% propylene glycol',
      accepts: ['share'],
      placeholder: 'SHARE',
    }),
    blend: namesField({ help: 'an emulsifier of the blend; give it once for each' }),
    required: numberField({ help: 'the HLB that the blend must have' }),
  },
  readings: {
    oilMass: { label: 'oil', unit: 'g' },
    emulsifierMass: { label: 'emulsifier', unit: 'g' },
    carrierMass: { label: 'carrier', unit: 'g' },
    waterMass: { label: 'water and the rest', unit: 'g' },
    oilPerEmulsifier: { label: 'oil per emulsifier', unit: '' },
    emulsifierFraction: { label: 'emulsifier in the batch', unit: '', as: 'percent' },
    blend: {
      label: 'blend',
      columns: {
        emulsifier: { label: 'emulsifier' },
        fraction: { label: 'share', unit: '', as: 'percent' },
        mass: { label: 'mass', unit: 'g' },
      },
    },
  },
  examples: [
    { line: 'emulsifier --batch 50 g --oil 4% --ratio 1:2', says: 'two parts of emulsifier per part of oil' },
    {
      line: 'emulsifier --batch 50 g --oil 4% --emulsifier-share 8% --carrier 12% --blend "polysorbate 80" --blend "sorbitan oleate" --required 12',
      says: 'the same with a carrier and a blend',
    },
  ],
  instead: { ratio: ['emulsifierShare'] },
  takes: ({ mixture }) => {
    const meeting = meetingStage(mixture);
    if (!meeting) return { why: 'no stage holds both an oil and an emulsifier' };
    const { name, stage, oilGrams, emulsifierGrams, carrierGrams } = meeting;
    return [
      {
        stage: name,
        given: {
          batch: grams(stage.massGrams),
          oil: share(oilGrams / stage.massGrams),
          emulsifierShare: share(emulsifierGrams / stage.massGrams),
          carrier: share(carrierGrams / stage.massGrams),
        },
      },
    ];
  },
  work: (given, working) => {
    const batchGrams = given.batch.inner;
    const oilGrams = given.oil.inner * batchGrams;
    if (oilGrams <= 0)
      return fail(
        'not-positive',
        'there is no oil in it',
        'give --batch and --oil above zero: --batch 50 g --oil 4%',
      );
    working.line(
      'oil = share x batch',
      `${given.oil.written} x ${given.batch.written} = ${trimmedNumber(oilGrams)} g`,
    );
    const emulsifierGrams = emulsifierMass(given.ratio, given.emulsifierShare, oilGrams, batchGrams, working);
    const carrierGrams = (given.carrier?.inner ?? 0) * batchGrams;
    const waterGrams = batchGrams - oilGrams - emulsifierGrams - carrierGrams;
    if (waterGrams < -1e-9 * batchGrams) {
      const over = numberText(oilGrams + emulsifierGrams + carrierGrams, 4);
      return fail(
        'over-batch',
        `oil, emulsifier and carrier come to ${over} g, more than the batch of ${given.batch.written}`,
        'use less oil, less emulsifier to it, or less carrier',
      );
    }
    working.line(
      'water = batch - oil - emulsifier - carrier',
      `${trimmedNumber(batchGrams)} - ${trimmedNumber(oilGrams)} - ${trimmedNumber(emulsifierGrams)} - ${trimmedNumber(carrierGrams)} = ${trimmedNumber(Math.max(0, waterGrams))} g`,
    );
    return {
      lead: ratioInWords(oilGrams, emulsifierGrams),
      found: {
        oilMass: oilGrams,
        emulsifierMass: emulsifierGrams,
        carrierMass: carrierGrams,
        waterMass: Math.max(0, waterGrams),
        oilPerEmulsifier: oilGrams / emulsifierGrams,
        emulsifierFraction: emulsifierGrams / batchGrams,
        blend: blendOf(given.blend, given.required, emulsifierGrams, working),
      },
    };
  },
});

function emulsifierMass(
  ratio: Ratio | undefined,
  emulsifierShare: Quantity | undefined,
  oilGrams: number,
  batchGrams: number,
  working: Working,
): number {
  if (ratio && emulsifierShare)
    return fail('given-twice', 'both --ratio and --emulsifier-share are given', 'give one of them');
  if (ratio) {
    askWhetherMeant(ratio, working);
    const mass = (oilGrams * ratio.right) / ratio.left;
    working.line(
      'emulsifier = oil x parts of emulsifier / parts of oil',
      `${trimmedNumber(oilGrams)} g x ${ratio.right} / ${ratio.left} = ${trimmedNumber(mass)} g`,
    );
    return mass;
  }
  if (!emulsifierShare)
    return fail(
      'missing',
      '--ratio is needed',
      'give --ratio 1:2 (oil to emulsifier), or --emulsifier-share 8%',
    );
  const mass = emulsifierShare.inner * batchGrams;
  if (mass <= 0)
    return fail(
      'not-positive',
      'there is no emulsifier in it',
      'give --emulsifier-share above zero, such as 8%',
    );
  working.line(
    'emulsifier = share x batch',
    `${emulsifierShare.written} x ${trimmedNumber(batchGrams)} g = ${trimmedNumber(mass)} g`,
  );
  return mass;
}

/** A dissolving emulsifier is used above the oil; gums and starches may stand below it. */
function askWhetherMeant({ left, right }: Ratio, working: Working): void {
  if (left <= right) return;
  const [oil, held] = [trimmedNumber(left), trimmedNumber(right)];
  working.caution(
    'ratio-swapped',
    `A ratio is oil to emulsifier: ${oil}:${held} is more oil than emulsifier. Is that meant? A gum may carry it; one that dissolves the oil to a clear drink needs more emulsifier than oil, as --ratio ${held}:${oil}.`,
    'common practice, no source',
  );
}

function blendOf(
  entries: readonly BookEntry[],
  wanted: number | undefined,
  massGrams: number,
  working: Working,
) {
  if (entries.length === 0) {
    if (wanted !== undefined)
      fail(
        'missing',
        '--required is given without a blend',
        'name the emulsifiers: --blend "polysorbate 80" --blend "sorbitan oleate"',
      );
    return [];
  }
  if (wanted === undefined && entries.length > 1) {
    return fail(
      'missing',
      '--required is needed with a blend',
      'give the HLB that the blend must have: --required 12',
    );
  }
  const parts = entries.map((entry) => ({ hlb: hlbOf(entry, working), share: 1 / entries.length }));
  const shares = wanted === undefined ? [1] : splitToHlb(parts, wanted);
  if (!shares) {
    const [low, high] = [
      Math.min(...parts.map((part) => part.hlb)),
      Math.max(...parts.map((part) => part.hlb)),
    ];
    return fail(
      'unreachable',
      `these blend from HLB ${low} to ${high}; ${wanted} is outside that`,
      'add an emulsifier with an HLB beyond it: --blend "sorbitan oleate" for low, "polysorbate 20" for high',
      1,
    );
  }
  if (wanted !== undefined) {
    const sum = parts.map((part, index) => `${numberText(shares[index] ?? 0, 4)} x ${part.hlb}`).join(' + ');
    working.line('blend: sum of share x HLB = required', `${sum} = ${trimmedNumber(wanted)}`);
  }
  return entries.map((entry, index) => ({
    emulsifier: entry.name,
    fraction: shares[index] ?? 0,
    mass: (shares[index] ?? 0) * massGrams,
  }));
}

function hlbOf(entry: BookEntry, working: Working): number {
  if (entry.record.polymer)
    return fail(
      'polymer',
      `${entry.name} is a polymer: HLB means nothing for it`,
      'leave it out of the blend',
    );
  const value = working.figure(entry, 'hlb');
  return (
    value ?? fail('no-figure', `${entry.name} has no HLB`, `add hlb under ${entry.name} in ingredients.yaml`)
  );
}
