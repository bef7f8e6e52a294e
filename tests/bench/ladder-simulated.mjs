// Simulated benches: a true break, a scatter between beakers, a shift shared by the beakers of one day, odd beakers.
const LOWEST_BREAK = 0.12;
const HIGHEST_BREAK = 2.6;
const DAY_SHIFT = 0.05;
const ODD = 0.02;

/** Uniform numbers that are the same in every run (Tommy Ettinger's mulberry32). */
export function uniforms(start) {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A standard normal number (Box and Muller 1958). */
const normal = (uniform) => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());

/** One bench: its true break, and a function that makes a day's beakers and looks at them for a week. */
export function simulatedBench(start, scatter) {
  const uniform = uniforms(start);
  const truth = LOWEST_BREAK * (HIGHEST_BREAK / LOWEST_BREAK) ** uniform();
  let days = 0;
  const make = (ratios) => {
    days += 1;
    const day = String(days);
    const shift = DAY_SHIFT * normal(uniform);
    return ratios.map((ratio) => {
      const breaks = Math.log(truth) + shift + scatter * normal(uniform);
      const odd = uniform() < ODD;
      const failed = Math.log(ratio) > breaks !== odd;
      return { ratio, outcome: failed ? 'failed' : 'held', day };
    });
  };
  return { truth, make };
}
