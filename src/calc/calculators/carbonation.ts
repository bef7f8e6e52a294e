import { fail, type Parsed } from '../../problem.ts';
import { answered } from '../answered.ts';
import { defineCalculator } from '../define-calculator.ts';
import { quantityField, throwField } from '../fields.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Quantity } from '../quantity.ts';
import { bottlePressure } from '../solution/bottle.ts';
import {
  type Carbonation,
  carbonationAtGauge,
  carbonationAtPartial,
  carbonationAtVolumes,
  volumesForThrow,
} from '../solution/carbonation.ts';

const tableKelvin = 293.15;
const pascalPerBar = 1e5;

/**
 * Volumes of CO2, grams per litre and gauge pressure from each other.
 *
 * Formula   Henry's law with the fugacity of CO2; volumes at 0 C and 1 atm
 * Input     gauge pressure, partial pressure of CO2, or volumes; temperature; headspace and a warmer temperature; throw
 * Output    volumes, gramsPerLitre (g/L), gaugePressure (bar), warmedPressure (bar), waterVolumes
 * Refuses   none or several of the three; a pressure below vacuum; what lies outside the equations
 * Source    Weiss 1974; Carroll, Slupsky and Mather 1991
 * Example   carbonation --temperature 4 C --pressure 2 bar -> volumes 4.27
 */
export const carbonation = defineCalculator({
  name: 'carbonation',
  version: 1,
  summary: 'volumes of CO2 from temperature and pressure, and back',
  about:
    'Pressure is what the gauge shows. A sugared drink holds up to 8 % less than water at the same pressure.',
  fields: {
    pressure: quantityField({
      help: 'gauge pressure, such as 2 bar',
      accepts: ['pressure'],
      placeholder: 'PRESSURE',
    }),
    partialPressure: quantityField({
      help: 'of CO2 alone, such as 1.01325 bar',
      accepts: ['pressure'],
      placeholder: 'PRESSURE',
    }),
    volumes: quantityField({
      help: 'such as 3.5',
      accepts: ['carbonation'],
      placeholder: 'VOLUMES',
      bareUnit: 'vol',
    }),
    temperature: quantityField({
      help: 'such as 4 C; 20 C if left out',
      accepts: ['temperature'],
      placeholder: 'TEMP',
    }),
    headspace: quantityField({
      help: 'share of the closed bottle that is gas, such as 5 %',
      accepts: ['share'],
      placeholder: 'SHARE',
    }),
    warmedTo: quantityField({
      help: 'temperature to which the closed bottle warms',
      accepts: ['temperature'],
      placeholder: 'TEMP',
    }),
    throw: throwField({ help: 'what the water must bring for this throw of a still syrup' }),
  },
  readings: {
    volumes: { label: 'volumes of CO2', unit: '' },
    gramsPerLitre: { label: 'CO2', unit: 'g/L' },
    gaugePressure: { label: 'gauge pressure', unit: 'bar' },
    warmedPressure: { label: 'in the warmed bottle', unit: 'bar' },
    waterVolumes: { label: 'the water must bring, volumes', unit: '' },
  },
  examples: [
    { line: 'carbonation --temperature 4 C --pressure 2 bar', says: 'what a keg holds' },
    {
      line: 'carbonation --volumes 3.5 --temperature 4 C --headspace 5 % --warmed-to 30 C',
      says: 'the pressure in a bottle left in the sun',
    },
  ],
  takes: ({ mixture }) => ({
    why: 'a trial does not say how it is carbonated',
    beside: { stage: mixture.drink?.name ?? mixture.stages.at(-1)?.name ?? '', given: {} },
  }),
  work: (given, working) => {
    const temperatureKelvin = given.temperature?.inner ?? tableKelvin;
    const state = answered(stateOf(given, temperatureKelvin));
    working.cite('solubility of CO2', 'weiss-1974');
    working.line(
      'volumes = dissolved CO2 at 0 C and 1 atm / litre of liquid',
      `${numberText(state.gramsPerLitre, 4)} g/L = ${numberText(state.volumes, 4)} volumes`,
    );
    working.line(
      'gauge pressure = that of the CO2 over such water + water vapour - 1 atm',
      `${numberText(state.volumes, 4)} volumes at ${trimmedNumber(temperatureKelvin - 273.15, 4)} C: ${numberText(state.gaugePressurePascal / pascalPerBar, 4)} bar`,
    );
    working.caution(
      'sugar-holds-less',
      'Computed for water. A sugared drink holds up to 8 % less at the same pressure.',
      'weiss-1974',
    );
    working.caution(
      'pressure',
      'Bottles burst: use bottles made for the pressure, never above their mark, and a regulator with a relief valve. CO2 collects in small rooms and cellars: air them.',
      'common practice, no source',
    );
    return {
      found: {
        volumes: state.volumes,
        gramsPerLitre: state.gramsPerLitre,
        gaugePressure: state.gaugePressurePascal / pascalPerBar,
        warmedPressure: warmed(given.headspace, given.warmedTo, state.volumes, temperatureKelvin),
        waterVolumes: given.throw
          ? answered(
              volumesForThrow({
                volumes: state.volumes,
                waterParts: given.throw.waterParts / given.throw.syrupParts,
              }),
            )
          : null,
      },
    };
  },
});

interface States {
  readonly pressure: Quantity | undefined;
  readonly partialPressure: Quantity | undefined;
  readonly volumes: Quantity | undefined;
}

function stateOf(
  { pressure, partialPressure, volumes }: States,
  temperatureKelvin: number,
): Parsed<Carbonation> {
  const given = [pressure, partialPressure, volumes].filter((one) => one !== undefined);
  if (given.length !== 1) {
    return fail(
      given.length === 0 ? 'missing' : 'given-twice',
      given.length === 0
        ? 'no pressure and no volumes are given'
        : 'more than one of pressure, partial pressure and volumes is given',
      'give --pressure 2 bar (gauge), --partial-pressure 1 atm, or --volumes 3.5',
    );
  }
  if (pressure) return carbonationAtGauge({ gaugePressurePascal: pressure.inner, temperatureKelvin });
  if (partialPressure)
    return carbonationAtPartial({ partialPressurePascal: partialPressure.inner, temperatureKelvin });
  return carbonationAtVolumes({ volumes: volumes?.inner ?? 0, temperatureKelvin });
}

function warmed(
  headspace: Quantity | undefined,
  to: Quantity | undefined,
  volumes: number,
  closedKelvin: number,
): number | null {
  if (!headspace && !to) return null;
  if (!headspace || !to)
    return fail(
      'missing',
      `--${headspace ? 'warmed-to' : 'headspace'} is needed too`,
      'give both: --headspace 5% --warmed-to 30 C',
    );
  const bottle = answered(
    bottlePressure({ volumes, closedKelvin, warmedKelvin: to.inner, headspaceFraction: headspace.inner }),
  );
  return bottle.gaugePressurePascal / pascalPerBar;
}
