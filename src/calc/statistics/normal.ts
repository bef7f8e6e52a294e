/** The standard normal curve. */

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / ROOT_TWO_PI;

const UPPER = [
  220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383, 6.37396220353165, 0.700383064443688,
  0.0352624965998911,
] as const;
const LOWER = [
  440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674, 86.7807322029461, 16.064177579207,
  1.75566716318264, 0.0883883476483184,
] as const;

/** Beyond this the rational form gives way to a continued fraction. */
const FAR = 7.07106781186547;

/** Chance of a standard normal beyond `z`, for z of at least 0. */
function upperTail(z: number): number {
  const bell = Math.exp(-0.5 * z * z);
  if (z >= FAR) return bell / ROOT_TWO_PI / (z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65)))));
  let over: number = UPPER[6];
  over = over * z + UPPER[5];
  over = over * z + UPPER[4];
  over = over * z + UPPER[3];
  over = over * z + UPPER[2];
  over = over * z + UPPER[1];
  over = over * z + UPPER[0];
  let under: number = LOWER[7];
  under = under * z + LOWER[6];
  under = under * z + LOWER[5];
  under = under * z + LOWER[4];
  under = under * z + LOWER[3];
  under = under * z + LOWER[2];
  under = under * z + LOWER[1];
  under = under * z + LOWER[0];
  return (bell * over) / under;
}

/**
 * Chance that a standard normal lies below `z`.
 *
 * Formula   Phi(z); double-precision rational form to 7.07, a continued fraction beyond
 * Input     z, any number
 * Output    0 to 1
 * Source    Hart et al. 1968, Computer Approximations, as given by West 2005, Wilmott Magazine (from memory)
 * Example   normalBelow(1.96) -> 0.975002
 */
export const normalBelow = (z: number): number => (z > 0 ? 1 - upperTail(z) : upperTail(-z));

/**
 * The point below which a standard normal lies with the given chance.
 *
 * Formula   Newton's method on Phi(z) = chance, kept inside a bracket
 * Input     chance between 0 and 1
 * Output    z
 * Example   normalPoint(0.975) -> 1.959964
 */
export function normalPoint(chance: number): number {
  let [low, high] = [-38, 38];
  let z = 0;
  for (let round = 0; round < 200; round += 1) {
    const off = normalBelow(z) - chance;
    if (off > 0) high = z;
    else low = z;
    const next = z - off / normalDensity(z);
    const kept = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(kept - z) < 1e-14 * (1 + Math.abs(z))) return kept;
    z = kept;
  }
  return z;
}
