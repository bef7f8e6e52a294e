import { type Parsed, parsed, refused } from '../../problem.ts';

/**
 * How much of a heavier oil brings the oil phase to the density of the drink.
 *
 * Formula   w = (1/rho_oil - 1/rho_target) / (1/rho_oil - 1/rho_agent)
 * Input     densities, g/mL
 * Output    mass fraction of the agent in the oil phase
 * Refuses   an agent that is no heavier than the drink, or an oil that is
 * Source    mass balance, volumes added; 5 % of the oil phase either way
 * Example   densityMatch({ oil: 0.845, target: 0.998, agent: 1.08 }) -> 0.705
 */
export function densityMatch(of: {
  readonly oil: number;
  readonly target: number;
  readonly agent: number;
}): Parsed<number> {
  const { oil, target, agent } = of;
  if (oil >= target)
    return refused(
      'nothing-to-match',
      'the oil is no lighter than the drink, so nothing needs weighing down',
      'leave --weigh-with out',
    );
  if (agent <= target)
    return refused(
      'too-light',
      `at ${agent} g/mL it is no heavier than the drink and can't weigh the oil down`,
      'name a heavier one, such as ester gum',
    );
  return parsed((1 / oil - 1 / target) / (1 / oil - 1 / agent));
}
