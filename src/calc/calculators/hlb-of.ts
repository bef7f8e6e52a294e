import { fail } from '../../problem.ts';
import { defineCalculator } from '../define-calculator.ts';
import { numberField } from '../fields.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Working } from '../working.ts';

/**
 * HLB of one emulsifier from what its data sheet gives.
 *
 * Formula   20 (1 - S / A)   saponification number S of the ester, acid number A of its fatty acid
 *           E / 5            oxyethylene content E in wt %, for pure oxyethylene hydrophiles
 *           20 M_h / M       molar mass of the hydrophilic part over that of the whole
 * Input     one of the three pairs; S and A in mg KOH/g, molar masses in g/mol
 * Output    hlb
 * Refuses   none or several of the three; S above A; E outside 0 to 100; M_h above M
 * Source    Griffin 1954, J. Soc. Cosmet. Chem. 5, 249
 * Example   hlb-of --saponification 45.5 --acid 276 -> 16.70
 */
export const hlbOf = defineCalculator({
  name: 'hlb-of',
  version: 1,
  summary: 'HLB of one emulsifier from its data sheet',
  about:
    'Three published ways, one at a time. For an ester of a polyol only the first is good: the other two leave out or overstate the polyol.',
  fields: {
    saponification: numberField({ help: 'saponification number of the ester, mg KOH/g; needs --acid' }),
    acid: numberField({ help: 'acid number of its fatty acid, mg KOH/g' }),
    ethyleneOxide: numberField({ help: 'oxyethylene content in per cent by mass' }),
    hydrophilic: numberField({ help: 'molar mass of the hydrophilic part, g/mol; needs --molar-mass' }),
    molarMass: numberField({ help: 'molar mass of the whole molecule, g/mol' }),
  },
  readings: { hlb: { label: 'HLB', unit: '' } },
  examples: [
    { line: 'hlb-of --saponification 45.5 --acid 276', says: 'an ester, from its two numbers' },
    { line: 'hlb-of --ethylene-oxide 78.4', says: 'an ethoxylated alcohol' },
  ],
  takes: () => ({ why: 'it works on the numbers of a data sheet' }),
  work: (given, working) => {
    const { saponification, acid, ethyleneOxide, hydrophilic, molarMass } = given;
    const ways = [saponification ?? acid, ethyleneOxide, hydrophilic ?? molarMass].filter(
      (one) => one !== undefined,
    );
    if (ways.length !== 1) {
      return fail(
        ways.length === 0 ? 'missing' : 'given-twice',
        ways.length === 0 ? 'no numbers are given' : 'more than one way is given',
        'give --saponification with --acid, or --ethylene-oxide, or --hydrophilic with --molar-mass',
      );
    }
    working.cite('HLB of one molecule', 'griffin-1954', true);
    if (ethyleneOxide !== undefined) return { found: { hlb: fromOxyethylene(ethyleneOxide, working) } };
    if (saponification !== undefined || acid !== undefined) {
      return { found: { hlb: fromNumbers(saponification, acid, working) } };
    }
    return { found: { hlb: fromMolarMasses(hydrophilic, molarMass, working) } };
  },
});

function fromNumbers(saponification: number | undefined, acid: number | undefined, working: Working): number {
  if (saponification === undefined || acid === undefined) {
    return fail(
      'missing',
      `--${acid === undefined ? 'acid' : 'saponification'} is needed too`,
      'give both numbers, in mg KOH/g',
    );
  }
  if (acid <= 0 || saponification > acid) {
    return fail(
      'out-of-range',
      `a saponification number of ${saponification} against an acid number of ${acid} gives no HLB`,
      'give the smaller one with --saponification, and with --acid that of the free fatty acid, the larger one',
    );
  }
  const hlb = 20 * (1 - saponification / acid);
  working.line(
    'HLB = 20 (1 - S / A)',
    `20 (1 - ${trimmedNumber(saponification)} / ${trimmedNumber(acid)}) = ${numberText(hlb, 5)}`,
  );
  return hlb;
}

function fromOxyethylene(percent: number, working: Working): number {
  if (percent > 100)
    return fail(
      'out-of-range',
      `${percent} % of oxyethylene is more than the whole`,
      'give a share by mass from 0 to 100',
    );
  working.line('HLB = E / 5', `${trimmedNumber(percent)} / 5 = ${numberText(percent / 5, 5)}`);
  working.caution(
    'oxyethylene-only',
    'E / 5 counts oxyethylene alone. It holds for ethoxylated alcohols; for esters of sorbitan and other polyols it comes out one to three units too low.',
    'griffin-1954',
  );
  return percent / 5;
}

function fromMolarMasses(
  hydrophilic: number | undefined,
  whole: number | undefined,
  working: Working,
): number {
  if (hydrophilic === undefined || whole === undefined) {
    return fail(
      'missing',
      `--${whole === undefined ? 'molar-mass' : 'hydrophilic'} is needed too`,
      'give both molar masses, in g/mol',
    );
  }
  if (whole <= 0 || hydrophilic > whole) {
    return fail(
      'out-of-range',
      `a part of ${hydrophilic} g/mol is more than its whole molecule of ${whole} g/mol`,
      'give the molar mass of the part with --hydrophilic, that of the whole with --molar-mass',
    );
  }
  const hlb = (20 * hydrophilic) / whole;
  working.line(
    'HLB = 20 x M_h / M',
    `20 x ${trimmedNumber(hydrophilic)} / ${trimmedNumber(whole)} = ${numberText(hlb, 5)}`,
  );
  return hlb;
}
