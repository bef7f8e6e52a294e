// Ways to look for the break, four beakers at a time. Each yields, after each day, how many beakers were made,
// its estimate (null while it has none), its 90 % interval if it gives one, and whether it would stop.
import { breakPoint, nextBeakers, priorsFor } from './ladder-source.mjs';

const AT_ONCE = 4;
const WITHIN = 0.1;
const SPAN = { low: 1 / 8, high: 2 };
const priors = priorsFor('stirred');

/** Answers that were worked out before: many benches start alike. */
const known = new Map();
function answerFor(beakers) {
  const key = beakers.map(({ ratio, outcome }) => `${ratio}${outcome}`).join();
  const before = known.get(key);
  if (before) return before;
  const { breakPoint: estimate, breakLow, breakHigh } = breakPoint({ beakers, priors, marginFraction: 0.1 });
  const next = nextBeakers({ beakers, priors, count: AT_ONCE, withinFraction: WITHIN });
  const answer = { estimate, breakLow, breakHigh, ...next };
  if (beakers.length <= 8) known.set(key, answer);
  return answer;
}

export function planner(bench, most) {
  const days = [];
  let beakers = [];
  let answer = answerFor(beakers);
  while (beakers.length < most) {
    beakers = [...beakers, ...bench.make(answer.ratios)];
    answer = answerFor(beakers);
    const { estimate, breakLow, breakHigh, enough, expectedBeakersLeft } = answer;
    days.push({
      made: beakers.length,
      estimate,
      low: breakLow,
      high: breakHigh,
      stop: enough,
      expectedBeakersLeft,
    });
  }
  return days;
}

/** Divides the bracket evenly, goes on between the last that held and the first that failed. */
export function halving(bench, most) {
  const days = [];
  let { low, high } = SPAN;
  for (let made = AT_ONCE; made <= most; made += AT_ONCE) {
    const step = (high / low) ** (1 / (AT_ONCE + 1));
    const looked = bench.make(Array.from({ length: AT_ONCE }, (_, k) => low * step ** (k + 1)));
    const failed = looked.find(({ outcome }) => outcome === 'failed');
    const held = looked.filter(({ ratio, outcome }) => outcome === 'held' && ratio < (failed?.ratio ?? high));
    high = failed?.ratio ?? high;
    low = held.at(-1)?.ratio ?? low;
    days.push({ made, estimate: Math.sqrt(low * high), stop: Math.sqrt(high / low) <= 1 + WITHIN });
  }
  return days;
}

/** Goes up from 1:8 by one factor, and stops when the highest of the day's beakers failed. */
export const stepLadder = (factor) => (bench, most) => {
  const days = [];
  let ratio = SPAN.low;
  let lastHeld = SPAN.low / factor;
  let stopped = false;
  for (let made = AT_ONCE; made <= most; made += AT_ONCE) {
    if (!stopped) {
      const looked = bench.make(Array.from({ length: AT_ONCE }, (_, k) => ratio * factor ** k));
      lastHeld = looked.findLast(({ outcome }) => outcome === 'held')?.ratio ?? lastHeld;
      stopped = looked.at(-1).outcome === 'failed';
    }
    ratio *= factor ** AT_ONCE;
    days.push({ made, estimate: stopped ? lastHeld * Math.sqrt(factor) : null, stop: stopped });
  }
  return days;
};
