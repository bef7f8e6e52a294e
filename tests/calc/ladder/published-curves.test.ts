import { describe, expect, it } from 'vitest';
import published from '../../fixtures/published/dose-response.json' with { type: 'json' };
import { agreesWithPrint } from '../../support/printed.ts';
import { devianceOf, type Group, mostLikely } from './most-likely.ts';

const at = (values: readonly number[], index: number): number => values[index] ?? Number.NaN;

const groupsOf = (logLevels: readonly number[], tried: readonly number[], answered: readonly number[]) =>
  logLevels.map((logLevel, index) => ({
    logLevel,
    tried: at(tried, index),
    answered: at(answered, index),
  }));

function compare(found: Readonly<Record<string, number>>, printed: Readonly<Record<string, string>>): void {
  for (const [key, text] of Object.entries(printed)) {
    const figure = found[key] ?? Number.NaN;
    expect(agreesWithPrint(figure, text), `${key}: ${figure} for ${text}`).toBe(true);
  }
}

describe('Up-and-down drop tests: Hamada, Mang and Hoff 2019, Table 1', () => {
  const { heightsCentimetres, answered, tally, fit } = published.drops;
  const groups: readonly Group[] = tally.levels.map((level) => {
    const own = answered.filter((_, index) => heightsCentimetres[index] === level);
    return {
      logLevel: Math.log10(level),
      tried: own.length,
      answered: own.reduce((sum, one) => sum + one, 0),
    };
  });

  it('published: the 25 drops make the printed tally', () => {
    expect(groups.map((group) => group.answered)).toEqual(tally.answered);
    expect(groups.map((group) => group.tried - group.answered)).toEqual(tally.silent);
  });

  it('published: the posterior of nothing but the drops peaks at the printed probit fit', () => {
    const { intercept, slope, location } = mostLikely(groups, 'normal');
    compare({ location }, { location: fit.location });
    // The printed line is that of rounds stopped a little before the top: its slope ends in 63, the top's in 67.
    expect(Math.abs(intercept / Number(fit.intercept) - 1)).toBeLessThan(4e-6);
    expect(Math.abs(slope / Number(fit.slope) - 1)).toBeLessThan(4e-6);
  });
});

describe('Beetles: Bliss 1935, logit fit of Dobson, Table 7.3', () => {
  const { logLevels, tried, answered, fit } = published.beetles;
  const groups = groupsOf(logLevels, tried, answered);
  const found = mostLikely(groups, 'logistic');

  it('published: the posterior of nothing but the beetles peaks at the printed line, as sharp as printed', () => {
    const { deviance, nullDeviance, ...printed } = fit;
    compare({ ...found }, printed);
  });

  it('published: the deviances of that line and of one chance for all', () => {
    const whole = answered.reduce((sum, one) => sum + one, 0);
    const others = tried.reduce((sum, one) => sum + one, 0) - whole;
    const alike = { intercept: Math.log(whole / others), slope: 0 };
    const { deviance, nullDeviance } = fit;
    compare(
      {
        deviance: devianceOf(groups, 'logistic', found),
        nullDeviance: devianceOf(groups, 'logistic', alike),
      },
      { deviance, nullDeviance },
    );
  });
});

describe('Rotenone: Finney, logit fit', () => {
  const { levels, tried, answered, fit } = published.rotenone;
  const groups = groupsOf(levels.map(Math.log10), tried, answered);

  it('published: the posterior of nothing but the counts peaks at the line given', () => {
    const found = mostLikely(groups, 'logistic');
    const { intercept, slope, location } = found;
    const deviance = devianceOf(groups, 'logistic', found);
    compare({ intercept, slope, location, halfLevel: 10 ** location, deviance }, fit);
  });
});
