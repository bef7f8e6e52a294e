import { failChance, type ToleranceCurve, toleranceDensity, tolerancePoint } from './tolerance.ts';

/** Units tried at one level, and how many of them answered (failed, died, went off). */
export interface DoseGroup {
  readonly logLevel: number;
  readonly tried: number;
  readonly answered: number;
}

export interface DoseFit {
  /** Of the straight line intercept + slope * logLevel on the scale of the curve. */
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Where half answer: -intercept / slope. */
  readonly location: number;
  /** 1 / slope. */
  readonly scatter: number;
  readonly logLikelihood: number;
  readonly deviance: number;
}

interface Data {
  readonly groups: readonly DoseGroup[];
  readonly curve: ToleranceCurve;
  /** Relative change of the deviance at which the rounds stop; many published programs stop at 1e-8. */
  readonly stop?: number;
}

const timesLog = (count: number, chance: number): number => (count === 0 ? 0 : count * Math.log(chance));

/** Logarithm of the chance to see the answers, without the binomial counts of orders. */
const logChance = (groups: readonly DoseGroup[], chanceOf: (group: DoseGroup) => number): number =>
  groups.reduce((sum, group) => {
    const chance = chanceOf(group);
    return sum + timesLog(group.answered, chance) + timesLog(group.tried - group.answered, 1 - chance);
  }, 0);

interface Line {
  readonly intercept: number;
  readonly slope: number;
}

/** A weighted straight line through working points, with the information that it carries. */
interface Weighted {
  readonly line: Line;
  readonly interceptVariance: number;
  readonly slopeVariance: number;
}

interface WorkingPoint {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

function straightLine(points: readonly WorkingPoint[]): Weighted {
  const sum = (of: (point: WorkingPoint) => number): number =>
    points.reduce((total, point) => total + point.weight * of(point), 0);
  const weight = sum(() => 1);
  const meanX = sum(({ x }) => x) / weight;
  const meanY = sum(({ y }) => y) / weight;
  const square = sum(({ x }) => (x - meanX) ** 2);
  const slope = sum(({ x, y }) => (x - meanX) * (y - meanY)) / square;
  return {
    line: { intercept: meanY - slope * meanX, slope },
    interceptVariance: 1 / weight + meanX ** 2 / square,
    slopeVariance: 1 / square,
  };
}

function workingPoint(data: Data, group: DoseGroup, height: number): WorkingPoint {
  const chance = failAt(data.curve, height);
  const steepness = toleranceDensity[data.curve](height);
  return {
    x: group.logLevel,
    y: height + (group.answered / group.tried - chance) / steepness,
    weight: (group.tried * steepness ** 2) / (chance * (1 - chance)),
  };
}

const MOST_ROUNDS = 100;

/**
 * Most likely straight line of a dose-response set: probit with the normal curve, logit with the logistic.
 *
 * Formula   maximise sum r ln F + (n - r) ln(1 - F), F = curve(intercept + slope * logLevel), by Fisher scoring
 *           from F = (r + 1/2) / (n + 1)
 * Input     groups at two or more levels, answers neither wholly apart nor all alike; the curve
 * Output    intercept, slope and their standard errors (expected information), location, scatter,
 *           log-likelihood, deviance
 * Source    Finney 1971, Probit Analysis, chapter 4; Dobson, Generalized Linear Models, chapters 4 and 7
 */
export function fitDoseResponse(data: Data): DoseFit {
  const { groups, curve, stop = 1e-14 } = data;
  const full = logChance(groups, ({ tried, answered }) => answered / tried);
  const devianceOf = ({ intercept, slope }: Line): number =>
    2 * (full - logChance(groups, ({ logLevel }) => failAt(curve, intercept + slope * logLevel)));
  let fit = straightLine(
    groups.map((group) =>
      workingPoint(data, group, tolerancePoint[curve]((group.answered + 0.5) / (group.tried + 1))),
    ),
  );
  let deviance = devianceOf(fit.line);
  for (let round = 1; round < MOST_ROUNDS; round += 1) {
    const { intercept, slope } = fit.line;
    fit = straightLine(groups.map((group) => workingPoint(data, group, intercept + slope * group.logLevel)));
    const before = deviance;
    deviance = devianceOf(fit.line);
    if (Math.abs(deviance - before) < stop * (Math.abs(deviance) + 0.1)) break;
  }
  return report(fit, deviance, full - deviance / 2);
}

const failAt = (curve: ToleranceCurve, height: number): number =>
  failChance({ logLevel: height, scatter: 1, curve, oddChance: 0 }, 0);

function report(fit: Weighted, deviance: number, logLikelihood: number): DoseFit {
  const { intercept, slope } = fit.line;
  return {
    intercept,
    slope,
    interceptError: Math.sqrt(fit.interceptVariance),
    slopeError: Math.sqrt(fit.slopeVariance),
    location: -intercept / slope,
    scatter: 1 / slope,
    logLikelihood,
    deviance,
  };
}
