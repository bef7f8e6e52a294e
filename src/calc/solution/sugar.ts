import { type Parsed, parsed, refused } from '../../problem.ts';
import { besideSucrose, sucroseIndex } from '../../reference/solution/sugars.ts';
import { sucroseDensity } from '../density/sucrose-density.ts';
import { findRoot } from './root.ts';
import { sucroseRefractiveIndex } from './sugar-index.ts';

export type Sugar = 'sucrose' | 'glucose' | 'fructose' | 'invert sugar';

export interface SugarSolution {
  /** g of sugar in 100 g of solution. */
  readonly brix: number;
  /** g/mL. */
  readonly density: number;
  readonly sugarGramsPerLitre: number;
  /** Missing where the temperature lies outside what is known of the index. */
  readonly refractiveIndex?: number;
}

export interface SugarState {
  readonly sugar: Sugar;
  readonly massFraction: number;
  readonly temperatureKelvin: number;
}

/** One of the four ways a sugar solution is measured. */
export type SugarMeasure =
  | { readonly kind: 'brix'; readonly value: number }
  | { readonly kind: 'density'; readonly value: number }
  | { readonly kind: 'grams per litre'; readonly value: number }
  | { readonly kind: 'refractive index'; readonly value: number };

/** A figure for water typed with five digits may lie a hair below it. */
const ROUNDING = 1e-5;

const HIGHEST = {
  sucrose: sucroseIndex.highMassFraction,
  glucose: besideSucrose.glucose.highMassFraction,
  fructose: besideSucrose.fructose.highMassFraction,
  'invert sugar': besideSucrose.fructose.highMassFraction,
} as const satisfies Record<Sugar, number>;

/**
 * A sugar solution from any one measure of it.
 *
 * Formula   g/L = 10 Brix rho; the mass fraction is searched where another figure is given
 * Input     sugar; the measure (Brix in % by mass, density in g/mL, g/L, index against air at the temperature);
 *           temperatureKelvin 278.15 to 333.15 (index to 313.15)
 * Output    brix, density g/mL, sugarGramsPerLitre, refractiveIndex
 * Refuses   a measure that no solution up to 85 % sucrose, 60 % glucose or 50 % fructose or invert sugar has
 * Source    sucrose Bettin and others 1998, ICUMSA 1974; glucose and fructose CRC Handbook, invert sugar their mean
 * Accuracy  sucrose 0.0001 g/mL of the polynomial's tables, index 0.0002; glucose and fructose 0.0002 g/mL and
 *           0.0001 at 20 C, 0.001 g/mL elsewhere, where their change with temperature is that of sucrose
 * Example   sugarSolution({ sugar: 'sucrose', measure: { kind: 'brix', value: 65 }, temperatureKelvin: 293.15 }) -> { brix: 65, density: 1.316555, sugarGramsPerLitre: 855.760825, refractiveIndex: 1.453476 }
 */
export function sugarSolution(given: {
  readonly sugar: Sugar;
  readonly measure: SugarMeasure;
  readonly temperatureKelvin: number;
}): Parsed<SugarSolution> {
  const { sugar, measure, temperatureKelvin } = given;
  if (measure.kind === 'brix') {
    return describe({ sugar, massFraction: measure.value / 100, temperatureKelvin });
  }
  const valueAt = (massFraction: number): number => {
    const found = read({ sugar, massFraction, temperatureKelvin }, measure.kind);
    return found.ok ? found.value - measure.value : Number.NaN;
  };
  const water = read({ sugar, massFraction: 0, temperatureKelvin }, measure.kind);
  if (!water.ok) return water;
  const highest = HIGHEST[sugar];
  const [least, most] = [valueAt(0), valueAt(highest)];
  if (!(least <= ROUNDING && most >= 0)) {
    const unit = measure.kind === 'density' ? ' g/mL' : '';
    return refused(
      'outside-range',
      `no solution of ${sugar} in water up to ${highest * 100} % has a ${measure.kind} of ${measure.value}${unit}`,
      `give a figure from ${(least + measure.value).toPrecision(5)} to ${(most + measure.value).toPrecision(5)}${unit}`,
    );
  }
  const massFraction = least >= 0 ? 0 : findRoot({ low: 0, high: highest, valueAt });
  return describe({ sugar, massFraction, temperatureKelvin });
}

function read(state: SugarState, kind: SugarMeasure['kind']): Parsed<number> {
  if (kind === 'refractive index') return sugarRefractiveIndex(state);
  const density = sugarDensity(state);
  if (!density.ok || kind === 'density') return density;
  return parsed(1000 * density.value * state.massFraction);
}

function describe(state: SugarState): Parsed<SugarSolution> {
  const density = sugarDensity(state);
  if (!density.ok) return density;
  const index = sugarRefractiveIndex(state);
  return parsed({
    brix: state.massFraction * 100,
    density: density.value,
    sugarGramsPerLitre: 1000 * density.value * state.massFraction,
    ...(index.ok ? { refractiveIndex: index.value } : {}),
  });
}

/**
 * Density of a sugar in water.
 *
 * Formula   that of sucrose at the same mass fraction, plus for others d1 w + d2 w^2 + d3 w^3
 * Input     sugar, massFraction, temperatureKelvin
 * Output    g/mL
 * Refuses   as `sugarSolution`
 * Source    as `sugarSolution`
 * Example   sugarDensity({ sugar: 'glucose', massFraction: 0.4, temperatureKelvin: 293.15 }) -> 1.172441
 */
export function sugarDensity(state: SugarState): Parsed<number> {
  return beside(state, sucroseDensity(state), 'density');
}

/**
 * Refractive index of a sugar in water, 589 nm, against air.
 *
 * Formula   as `sugarDensity`
 * Example   sugarRefractiveIndex({ sugar: 'fructose', massFraction: 0.3, temperatureKelvin: 293.15 }) -> 1.380302
 */
export function sugarRefractiveIndex(state: SugarState): Parsed<number> {
  return beside(state, sucroseRefractiveIndex(state), 'index');
}

function beside(state: SugarState, sucrose: Parsed<number>, of: 'density' | 'index'): Parsed<number> {
  const { sugar, massFraction } = state;
  if (!sucrose.ok || sugar === 'sucrose') return sucrose;
  if (massFraction > HIGHEST[sugar]) {
    return refused(
      'outside-range',
      `${sugar} in water is known up to ${HIGHEST[sugar] * 100} %, not at ${Number((massFraction * 100).toFixed(3))} %`,
      'measure it, or give a weaker solution',
    );
  }
  const difference = (coefficients: readonly number[]): number =>
    coefficients.reduceRight((value, c) => (value + c) * massFraction, 0);
  const glucose = difference(besideSucrose.glucose[of]);
  const fructose = difference(besideSucrose.fructose[of]);
  if (sugar === 'glucose') return parsed(sucrose.value + glucose);
  return parsed(sucrose.value + (sugar === 'fructose' ? fructose : (glucose + fructose) / 2));
}
