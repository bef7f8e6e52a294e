import { centrifugeFactor } from '../../reference/settling.ts';

/**
 * A spin as time in gravity: creaming of today's droplets only.
 *
 * Formula   RCF = 1.118e-5 r rpm^2, r in cm; time in gravity = RCF x time
 * Input     rpm, radius m, seconds
 * Output    multiples of gravity; seconds
 * Source    mechanics
 * Example   3750 rpm, 10 cm, 5 h -> 1572 times gravity, 328 days
 */
export function spun(of: { readonly rpm: number; readonly radiusMetres: number; readonly seconds: number }): {
  readonly relativeForce: number;
  readonly gravitySeconds: number;
} {
  const relativeForce = centrifugeFactor.value * of.radiusMetres * 100 * of.rpm ** 2;
  return { relativeForce, gravitySeconds: relativeForce * of.seconds };
}
