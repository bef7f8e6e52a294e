import type { Given } from '../calculator.ts';
import { defineCalculator } from '../define-calculator.ts';
import { choiceField, numberField, quantityField } from '../fields.ts';
import { flagField } from '../flag-field.ts';
import { late } from '../late.ts';
import { relativeIndexField } from '../light/index-field.ts';
import { ownReadingsField } from '../light/meter-reading-field.ts';
import { portionsField } from '../portions-field.ts';

const light = late(async () => import('../light/work-clarity.ts'));

export const clarityFields = {
  items: portionsField({
    help: 'what is in it, such as "60 mg/L sweet orange oil" "100 g/L sucrose"; the rest is water',
    accepts: ['mass per volume', 'share'],
  }),
  droplet: quantityField({
    help: 'diameter of the droplets, such as 40 nm',
    accepts: ['length'],
    placeholder: 'SIZE',
  }),
  spread: numberField({
    help: 'polydispersity index that the sizer prints, such as 0.15; one size if left out',
    placeholder: 'PDI',
  }),
  glass: quantityField({
    help: 'width of the glass; 50 mm if left out',
    accepts: ['length'],
    placeholder: 'WIDTH',
  }),
  background: choiceField({
    help: 'what it is looked at against; black if left out',
    choices: ['black', 'white'],
  }),
  turbidity: quantityField({
    help: 'what a meter showed, such as "3 NTU": the droplets that it could mean',
    accepts: ['turbidity'],
    placeholder: 'NTU',
  }),
  reading: ownReadingsField({
    help: 'your own meter on droplets of a known size, "30 nm, 60 mg/L, 1.1 NTU"; three set the meter',
  }),
  wavelength: quantityField({
    help: 'of the light; 550 nm if left out',
    accepts: ['length'],
    placeholder: 'LENGTH',
  }),
  oilIndex: numberField({
    help: 'refractive index of the oil, where none is known',
    placeholder: 'INDEX',
  }),
  oilDensity: quantityField({
    help: 'of the oil, where none is known',
    accepts: ['mass per volume'],
    placeholder: 'DENSITY',
  }),
  mediumIndex: numberField({
    help: 'refractive index of the drink, where it was measured',
    placeholder: 'INDEX',
  }),
  mie: flagField({ help: 'one sphere alone, from --size-parameter and --index' }),
  sizeParameter: numberField({
    help: 'with --mie: pi x diameter / wavelength in the medium',
    placeholder: 'X',
  }),
  index: relativeIndexField({ help: 'with --mie: relative index, n or n+ki (k absorbs)' }),
};

export type ClarityFields = typeof clarityFields;
export type ClarityGiven = Given<ClarityFields>;

/**
 * Whether an emulsion looks clear, and which droplets a haze means.
 *
 * Formula   tau = (3/2) phi Q_ext / d by Mie, over the sizes; T = exp(-tau L); NTU = tau p(90) / 0.011; look by NTU
 * Input     oil and what is dissolved; droplet size and spread; width of the glass; a reading; own readings of the meter
 * Output    turbidityPerMetre (1/m), transmission, ntu, ntuLow, ntuHigh (NTU), look, largestClearDiameter (nm); with
 *           --mie qExt, qSca, g
 * Refuses   no oil; an oil without index or density; a droplet of nothing or above 1 mm; no transmission or NTU where
 *           light is scattered more than once
 * Source    Bohren and Huffman 1983; haze bands after Carrasco and Siebert 1999 and Ph. Eur. 2.2.1
 * Example   clarity --mie --size-parameter 10 --index 1.5 -> qExt 2.881999, g 0.742913
 */
export const clarity = defineCalculator({
  name: 'clarity',
  version: 1,
  summary: 'will it look clear: turbidity, light through a glass, NTU, the largest droplet',
  about:
    'Judge at drinking strength: sugar bends light nearly as oil does, so a syrup can look clear and its drink hazy; and a 4 % concentrate can look like milk and its drink clear. NTU is a white-light estimate, good to a factor of two, until three readings or more of your own meter are given. Without --droplet it says how small they must be.',
  loads: light.load,
  fields: clarityFields,
  readings: {
    turbidityPerMetre: { label: 'turbidity', unit: '1/m' },
    transmission: { label: 'light straight through', unit: '', as: 'percent' },
    ntu: { label: 'meter with white light', unit: 'NTU', digits: 2 },
    ntuLow: { label: 'meter, low end', unit: 'NTU', digits: 2 },
    ntuHigh: { label: 'meter, high end', unit: 'NTU', digits: 2 },
    look: { label: 'look' },
    lookOnBlack: { label: 'against black' },
    lookOnWhite: { label: 'against white' },
    largestClearDiameter: { label: 'largest droplet that stays clear', unit: 'nm', digits: 2 },
    largestClearLow: { label: 'largest clear, low end', unit: 'nm', digits: 2 },
    largestClearHigh: { label: 'largest clear, high end', unit: 'nm', digits: 2 },
    mediumIndex: { label: 'refractive index, liquid', unit: '', digits: 5 },
    oilIndex: { label: 'refractive index, oil', unit: '', digits: 5 },
    meterFactor: { label: 'your meter, times the estimate', unit: '', digits: 3 },
    impliedDroplets: {
      label: 'droplets that the reading could mean',
      columns: {
        branch: { label: 'droplets' },
        diameter: { label: 'diameter', unit: 'nm', digits: 3 },
        low: { label: 'from', unit: 'nm', digits: 2 },
        high: { label: 'to', unit: 'nm', digits: 2 },
        transmission: { label: 'straight through', unit: '', as: 'percent' },
      },
    },
    qExt: { label: 'extinction efficiency', unit: '', digits: 7 },
    qSca: { label: 'scattering efficiency', unit: '', digits: 7 },
    qAbs: { label: 'absorption efficiency', unit: '', digits: 7 },
    g: { label: 'mean cosine of scattering', unit: '', digits: 7 },
  },
  examples: [
    {
      line: 'clarity "60 mg/L sweet orange oil" "100 g/L sucrose" --droplet 40 nm --glass 65 mm',
      says: 'a drink in its glass',
    },
    {
      line: 'clarity "60 mg/L sweet orange oil" --turbidity "8 NTU"',
      says: 'the droplets that a reading could mean',
    },
    { line: 'clarity --mie --size-parameter 10 --index 1.33+1e-5i', says: 'one sphere' },
  ],
  takes: (picture) => light.get().clarityOfTrial(picture),
  work: (given, working) => light.get().workClarity(given, working),
});
