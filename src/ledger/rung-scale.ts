/** The figures of all rungs in one unit. */

import type { Quantity } from '../calc/quantity.ts';
import { isOilPerEmulsifier, type Varied, type VariedFigure } from './varied.ts';

export interface Scale {
  readonly text: string;
  /** Empty for a ratio and an HLB. */
  readonly unit: string;
  /** True for oil per emulsifier, which is told both ways up. */
  readonly isOilRatio: boolean;
}

export interface Scaled {
  readonly scale: Scale;
  /** In the order of the figures. */
  readonly values: readonly number[];
  /** Why it is not counted in the unit that was typed. */
  readonly doubt: { readonly code: string; readonly message: string; readonly hint: string } | undefined;
}

export interface RungFigure {
  readonly trial: number;
  readonly figure: VariedFigure;
}

/** Stages whose masses differ by more than this can't be compared by mass. */
const mostMassApart = 0.05;

/**
 * Formula   a mass in g where all were typed as masses and the stages weigh the same within 5 %; a share or a
 *           concentration in the unit typed; what was typed in different kinds of unit as % by mass of the stage
 */
export function scaled(varied: Varied, rungs: readonly RungFigure[]): Scaled {
  const scale = { text: varied.text, isOilRatio: isOilPerEmulsifier(varied) };
  if (varied.kind !== 'amount') {
    const unit = varied.kind === 'temperature' ? 'C' : varied.kind === 'stirring' ? 'rpm' : '';
    return {
      scale: { ...scale, unit },
      values: rungs.map(({ figure }) => figure.value),
      doubt: undefined,
    };
  }
  const { unit, inUnit, doubt } = amountScale(varied.text, rungs);
  return { scale: { ...scale, unit }, values: rungs.map(({ figure }) => inUnit(figure)), doubt };
}

interface AmountScale {
  readonly unit: string;
  readonly inUnit: (figure: VariedFigure) => number;
  readonly doubt: Scaled['doubt'];
}

type Basis = 'mass' | 'share' | 'mass per volume';

function amountScale(name: string, rungs: readonly RungFigure[]): AmountScale {
  const bases = new Map<Basis, number[]>();
  for (const { trial, figure } of rungs) {
    for (const basis of figure.typed.length > 0 ? figure.typed.map(basisOf) : (['mass'] as const))
      bases.set(basis, [...(bases.get(basis) ?? []), trial]);
  }
  const [first, second] = bases;
  if (first && second) {
    const message = `${name} is given in ${unitWords(rungs, first[0])} in trial ${list(first[1])} and in ${unitWords(rungs, second[0])} in trial ${list(second[1])}`;
    return asShare({
      code: 'two-units',
      message: `${message}: counted in % by mass of its stage`,
      hint: 'type it in one kind of unit in all rungs',
    });
  }
  const basis = first?.[0] ?? 'mass';
  const unit = commonUnit(rungs, basis);
  if (basis !== 'mass') return { unit: unit.name, inUnit: inBasis(basis, unit.factor), doubt: undefined };
  const masses = rungs.flatMap(({ figure }) => (figure.stage ? [figure.stage.massGrams] : []));
  const most = Math.max(...masses);
  if (masses.length > 0 && most - Math.min(...masses) > mostMassApart * most) {
    return asShare({
      code: 'stages-differ',
      message: `the stages with ${name} do not weigh the same: counted in % by mass of the stage`,
      hint: 'make all rungs up to one mass',
    });
  }
  return {
    unit: unit.name,
    inUnit: inBasis('mass', unit.factor),
    doubt: notAllMasses(name, rungs, unit.name),
  };
}

/** A volume or drops in some rungs, a mass in others: all are masses by now, which is said. */
function notAllMasses(name: string, rungs: readonly RungFigure[], unit: string): Scaled['doubt'] {
  const typed = rungs.flatMap(({ trial, figure }) =>
    figure.typed.map(({ quantity }) => ({
      trial,
      unit: quantity.unit,
      isMass: quantity.dimension === 'mass',
    })),
  );
  const other = typed.find(({ isMass }) => !isMass);
  if (!other || !typed.some(({ isMass }) => isMass)) return undefined;
  const trials = list(typed.filter((one) => one.unit === other.unit).map(({ trial }) => trial));
  return {
    code: 'two-units',
    message: `${name} is given in ${other.unit} in trial ${trials} and as a mass in others: counted in ${unit}, as weighed or as its density says`,
    hint: 'type it in one kind of unit in all rungs',
  };
}

const asShare = (doubt: NonNullable<Scaled['doubt']>): AmountScale => ({
  unit: '%',
  inUnit: inBasis('share', 0.01),
  doubt,
});

const basisOf = ({ quantity }: { readonly quantity: Quantity }): Basis =>
  quantity.dimension === 'share' || quantity.dimension === 'mass per volume' ? quantity.dimension : 'mass';

const list = (numbers: readonly number[]): string => [...new Set(numbers)].sort((a, b) => a - b).join(', ');

const unitWords = (rungs: readonly RungFigure[], basis: Basis): string => {
  const units = rungs.flatMap(({ figure }) =>
    figure.typed.filter((typed) => basisOf(typed) === basis).map(({ quantity }) => quantity.unit),
  );
  return [...new Set(units)].join(' and ') || 'g';
};

/** The unit that all were typed in, else the first one; what is no mass in itself (drops, mL) in g. */
function commonUnit(
  rungs: readonly RungFigure[],
  basis: Basis,
): { readonly name: string; readonly factor: number } {
  const typed = rungs
    .flatMap(({ figure }) => figure.typed.map(({ quantity }) => quantity))
    .find((one) => one.value !== 0 && one.dimension === basis);
  return typed ? { name: typed.unit, factor: typed.inner / typed.value } : { name: 'g', factor: 1 };
}

/** A mass, or what it is a part of: the stage, or the finished drink where it was typed so. */
const inBasis =
  (basis: Basis, factor: number) =>
  ({ value, stage, drink, typed }: VariedFigure): number => {
    if (basis === 'mass' || !stage) return value / factor;
    const within = typed[0]?.inDrink && drink ? drink : stage;
    const part = within === stage ? 1 : stage.shareInDrink;
    return (value * part) / (basis === 'share' ? within.massGrams : within.volumeMillilitres) / factor;
  };
