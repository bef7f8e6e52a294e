import { fail } from '../../problem.ts';
import { defineCalculator } from '../define-calculator.ts';
import { quantityField, ratioField, required, throwField } from '../fields.ts';
import { meetingStage } from '../mixture/meeting-stage.ts';
import type { Mixture } from '../mixture/picture.ts';
import { trimmedNumber } from '../number-text.ts';
import type { Ratio } from '../ratio.ts';
import { throwInWords } from '../ratio-words.ts';
import { slipsOfDose } from '../slip-guard/quick-slips.ts';
import { litres, milligramsPerLitre, share } from '../typed-quantity.ts';

/**
 * From milligrams of oil per litre in the glass back to grams of emulsion to weigh.
 *
 * Formula   m_emulsion = c_oil V / w_oil;  emulsifier in drink = c_oil x emulsifier parts / oil parts
 * Input     oil wanted in the drink (mg/L), share of oil in the emulsion, ratio oil : emulsifier, carrier share,
 *           volume of drink, throw
 * Output    emulsionMass (g), emulsionPerLitreDrink, emulsionPerLitreSyrup (g/L), emulsifierInDrink, carrierInDrink (mg/L)
 * Refuses   an emulsion without oil; a share above the whole
 * Source    arithmetic
 * Example   dose --oil "60 mg/L" --emulsion 4% --ratio 1:3 --in 6 L -> emulsionMass 9
 */
export const dose = defineCalculator({
  name: 'dose',
  version: 1,
  summary: 'grams of emulsion for milligrams of oil per litre in the glass',
  about:
    'The strength of the emulsion comes from --emulsion and --ratio, or from the emulsion of a trial with --emulsion-of.',
  fields: {
    oil: required(
      quantityField({
        help: 'oil wanted in the finished drink, such as "60 mg/L"',
        accepts: ['mass per volume'],
        placeholder: 'CONCENTRATION',
      }),
    ),
    emulsion: required(
      quantityField({
        help: 'share of oil in the emulsion, such as 4%',
        accepts: ['share'],
        placeholder: 'SHARE',
      }),
    ),
    ratio: ratioField({
      help: 'oil to emulsifier in the emulsion, such as 1:3',
      placeholder: 'OIL:EMULSIFIER',
    }),
    carrier: quantityField({
      help: 'share of carrier in the emulsion, such as 12%',
      accepts: ['share'],
      placeholder: 'SHARE',
    }),
    in: required(
      quantityField({
        help: 'volume of finished drink, such as 6 L',
        accepts: ['volume'],
        placeholder: 'VOLUME',
      }),
    ),
    throw: throwField({ help: 'throw of the syrup: 1+4 makes five parts of drink' }),
  },
  readings: {
    emulsionMass: { label: 'emulsion to weigh', unit: 'g' },
    emulsionPerLitreDrink: { label: 'per litre of drink', unit: 'g/L' },
    emulsionPerLitreSyrup: { label: 'per litre of syrup', unit: 'g/L' },
    emulsifierInDrink: { label: 'emulsifier in the drink', unit: 'mg/L' },
    carrierInDrink: { label: 'carrier in the drink', unit: 'mg/L' },
  },
  examples: [
    {
      line: 'dose --oil "60 mg/L" --emulsion 4% --ratio 1:3 --in 6 L',
      says: 'emulsion for six litres of drink',
    },
    {
      line: 'dose --oil "60 mg/L" --emulsion 4% --ratio 1:3 --in 6 L --throw 1+4',
      says: 'the same by way of a syrup',
    },
  ],
  takes: ({ mixture }) => {
    const { drink } = mixture;
    const strength = emulsionStrength(mixture);
    if ('why' in strength) return strength;
    if (!drink) return { why: 'it has no stage named drink', beside: strength };
    const oil = drink.substances
      .filter((one) => one.role === 'oil')
      .reduce((sum, one) => sum + one.gramsPerLitre, 0);
    if (drink.name === strength.stage || oil <= 0)
      return { why: 'no emulsion goes into the drink', beside: strength };
    return [
      {
        stage: drink.name,
        given: {
          ...strength.given,
          oil: milligramsPerLitre(oil * 1000),
          in: litres(drink.volumeMillilitres / 1000),
        },
      },
    ];
  },
  work: (given, working) => {
    const oilGramsPerLitre = given.oil.inner * 1000;
    const volumeLitres = given.in.inner / 1000;
    if (given.emulsion.inner <= 0)
      return fail('not-positive', 'the emulsion holds no oil', 'give --emulsion above zero, such as 4%');
    if (volumeLitres <= 0)
      return fail('not-positive', `"${given.in.written}" is no drink`, 'give --in above zero, such as 6 L');
    const perLitre = oilGramsPerLitre / given.emulsion.inner;
    const emulsifierPerOil = given.ratio ? given.ratio.right / given.ratio.left : undefined;
    const together = given.emulsion.inner * (1 + (emulsifierPerOil ?? 0)) + (given.carrier?.inner ?? 0);
    if (together > 1 + 1e-9) {
      return fail(
        'over-batch',
        `oil, emulsifier and carrier come to ${trimmedNumber(together * 100, 4)} % of the emulsion`,
        'check --emulsion, --ratio and --carrier: together at most 100 %',
      );
    }
    working.line(
      'emulsion = oil in the drink x volume / share of oil in the emulsion',
      `${given.oil.written} x ${trimmedNumber(volumeLitres)} L / ${given.emulsion.written} = ${trimmedNumber(perLitre * volumeLitres)} g`,
    );
    const times = given.throw
      ? (given.throw.syrupParts + given.throw.waterParts) / given.throw.syrupParts
      : undefined;
    const carrierGramsPerLitre = given.carrier ? perLitre * given.carrier.inner : undefined;
    const questions = slipsOfDose({
      oilMilligramsPerLitre: oilGramsPerLitre * 1000,
      emulsifierPerOil,
      carrierGramsPerLitre,
    });
    for (const { code, text, source } of questions) working.caution(code, text, source);
    return {
      ...(given.throw ? { lead: throwInWords(given.throw) } : {}),
      found: {
        emulsionMass: perLitre * volumeLitres,
        emulsionPerLitreDrink: perLitre,
        emulsionPerLitreSyrup: times === undefined ? null : perLitre * times,
        emulsifierInDrink: emulsifierPerOil === undefined ? null : oilGramsPerLitre * emulsifierPerOil * 1000,
        carrierInDrink: carrierGramsPerLitre === undefined ? null : carrierGramsPerLitre * 1000,
      },
    };
  },
});

interface Strength {
  readonly stage: string;
  readonly given: {
    readonly emulsion: ReturnType<typeof share>;
    readonly ratio: Ratio;
    readonly carrier: ReturnType<typeof share>;
  };
}

/** The strength of the emulsion of a trial, as the inputs `emulsion`, `ratio` and `carrier`. */
export function emulsionStrength(mixture: Mixture): Strength | { readonly why: string } {
  const meeting = meetingStage(mixture);
  if (!meeting) return { why: 'no stage holds both an oil and an emulsifier' };
  const { name, stage, oilGrams, emulsifierGrams, carrierGrams } = meeting;
  return {
    stage: name,
    given: {
      emulsion: share(oilGrams / stage.massGrams),
      ratio: { left: 1, right: emulsifierGrams / oilGrams },
      carrier: share(carrierGrams / stage.massGrams),
    },
  };
}
