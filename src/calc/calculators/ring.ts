import type { Given } from '../calculator.ts';
import { defineCalculator } from '../define-calculator.ts';
import { numberField, quantityField } from '../fields.ts';
import { namesField } from '../item-fields.ts';
import { late } from '../late.ts';
import { portionsField } from '../portions-field.ts';

const settling = late(async () => import('../settling/work-ring.ts'));

export const ringFields = {
  items: portionsField({
    help: 'what is in it, such as "60 mg/L sweet orange oil" "100 g/L sucrose"; the rest is water',
    accepts: ['mass per volume', 'share'],
  }),
  droplet: quantityField({
    help: 'diameter of the droplets, such as 200 nm',
    accepts: ['length'],
    placeholder: 'SIZE',
  }),
  height: quantityField({
    help: 'of the liquid; 50 mm if left out',
    accepts: ['length'],
    placeholder: 'HEIGHT',
  }),
  temperature: quantityField({
    help: 'such as 4 C; 20 C if left out',
    accepts: ['temperature'],
    placeholder: 'TEMP',
  }),
  oilDensity: quantityField({
    help: 'of the oil, where none is known or you measured it',
    accepts: ['mass per volume'],
    placeholder: 'DENSITY',
  }),
  mediumDensity: quantityField({
    help: 'of the drink, where it was measured',
    accepts: ['mass per volume'],
    placeholder: 'DENSITY',
  }),
  viscosity: numberField({ help: 'of the drink in mPa s, where it was measured', placeholder: 'MPAS' }),
  weighWith: namesField({ help: 'heavier oil to bring the oil phase to the density of the drink' }),
  centrifuge: quantityField({
    help: 'speed of a spin, such as "3750 rpm"; with --radius and --spun',
    accepts: ['stirring'],
    placeholder: 'SPEED',
  }),
  radius: quantityField({
    help: 'from the axis to the liquid, such as 10 cm',
    accepts: ['length'],
    placeholder: 'RADIUS',
  }),
  spun: quantityField({
    help: 'how long it was spun, such as 30 min',
    accepts: ['time'],
    placeholder: 'TIME',
  }),
};

export type RingFields = typeof ringFields;
export type RingGiven = Given<RingFields>;

/**
 * When droplets rise to a ring, and whether they ever do.
 *
 * Formula   Stokes, hindered by (1 - phi)^4.65; days = height / v; scale height kT/(m' g); Pe = v r / D
 * Input     oil and what is dissolved; droplet size; height of the liquid; temperature; a spin in a centrifuge
 * Output    riseMillimetresPerDay, days, scaleHeight (mm), peclet; weight of a heavier oil; a spin as days in gravity
 * Refuses   no oil; an oil without density; a droplet of nothing or above 1 mm; a temperature outside the properties of water
 * Source    Stokes; Richardson and Zaki 1954; Perrin; Kestin and others 1978; Bettin and others 1998
 * Example   ring "60 mg/L limonene" --droplet 500 nm --height 100 mm --temperature 25 C -> about 50 days
 */
export const ring = defineCalculator({
  name: 'ring',
  version: 1,
  summary: 'when a ring would show: how fast droplets rise, and what ripening wants',
  about:
    "The soonest that it could be, for droplets that stay as they are: growth or clumping, not the size at the start, usually makes the ring. A spin in a centrifuge (--centrifuge, --radius, --spun) is the creaming of today's droplets only: passing it says that they are small, not that they stay so. How fast droplets ripen is not told: no two laboratories agree within a factor of ten thousand.",
  loads: settling.load,
  fields: ringFields,
  readings: {
    verdict: { label: 'ring' },
    riseMillimetresPerDay: { label: 'rise', unit: 'mm/day', digits: 3 },
    days: { label: 'to rise the whole height', unit: 'd', digits: 3 },
    daysLow: { label: 'days, low end', unit: 'd', digits: 2 },
    daysHigh: { label: 'days, high end', unit: 'd', digits: 2 },
    scaleHeight: { label: 'its own motion spreads it over', unit: 'mm', digits: 3 },
    peclet: { label: 'Peclet number', unit: '', digits: 3 },
    filmThickness: { label: 'all the oil as a film on top', unit: 'um', digits: 2 },
    oilDensity: { label: 'density of the oil', unit: 'g/mL' },
    mediumDensity: { label: 'density of the liquid', unit: 'g/mL' },
    viscosity: { label: 'viscosity of the liquid', unit: 'mPa s' },
    insolubleFraction: {
      label: 'insoluble oil in it, of the oil',
      unit: '',
      as: 'percent',
    },
    ripeningStopLow: { label: 'ripening was stopped by, from', unit: '', as: 'percent' },
    ripeningStopHigh: { label: 'ripening was stopped by, to', unit: '', as: 'percent' },
    weighting: {
      label: 'to match the densities',
      columns: {
        agent: { label: 'weighed down with' },
        fraction: { label: 'of the oil phase', unit: '', as: 'percent' },
        low: { label: 'from', unit: '', as: 'percent' },
        high: { label: 'to', unit: '', as: 'percent' },
      },
    },
    relativeForce: { label: 'centrifuge', unit: 'x gravity' },
    gravityDays: { label: 'the spin as time in gravity', unit: 'd' },
  },
  examples: [
    {
      line: 'ring "60 mg/L sweet orange oil" "100 g/L sucrose" --droplet 500 nm --height 80 mm',
      says: 'half-micron droplets in a drink',
    },
    {
      line: 'ring "60 mg/L sweet orange oil" --droplet 200 nm --weigh-with "ester gum"',
      says: 'and how much ester gum would hold them',
    },
    {
      line: 'ring --centrifuge "3750 rpm" --radius 10 cm --spun 5 h',
      says: "a spin as creaming of today's droplets",
    },
  ],
  takes: (picture) => settling.get().ringOfTrial(picture),
  work: (given, working) => settling.get().workRing(given, working),
});
