/** Whether a batch is so much larger than what was made before that a pilot comes first. */

/** A jump beyond this many times asks for one. Common practice, no source. */
export const largestJump = 10;

export interface Pilot {
  /** The batch over what was made before. */
  readonly times: number;
  /** In the unit of what was given: g or mL. */
  readonly amount: number;
}

/**
 * The pilot between a beaker and a batch.
 *
 * Formula   amount = made x min(10, sqrt(batch / made)), to two digits
 * Input     what was made before and what the batch comes to, both in g or both in mL
 * Output    how large the jump is, and the pilot; undefined up to ten times
 * Source    common practice, no source
 * Example   pilotFor({ made: 1000, batch: 165000 }) -> 165 times, 10000
 */
export function pilotFor({
  made,
  batch,
}: {
  readonly made: number;
  readonly batch: number;
}): Pilot | undefined {
  const times = batch / made;
  if (!(made > 0) || times <= largestJump * (1 + 1e-9)) return undefined;
  const step = Math.min(largestJump, Math.sqrt(times));
  return { times, amount: Number((made * step).toPrecision(2)) };
}
