/** Which shares of given emulsifiers blend to a wanted HLB. */

export interface SplitPart {
  readonly hlb: number;
  /** The share that it has now; the shares add up to 1. */
  readonly share: number;
}

const slack = 1e-9;

/**
 * The shares, none below 0, that add up to 1 and blend to the wanted HLB, as near to the present shares as
 * can be (least sum of squared changes). With two emulsifiers this is the alligation rule.
 *
 * Formula   minimise sum (f_i - g_i)^2 with sum f_i = 1, sum f_i H_i = H, f_i >= 0;
 *           on the emulsifiers that stay, f_i = g_i + a + b H_i
 * Input     parts (HLB, present share), wanted HLB
 * Output    shares in the order given; undefined where no shares reach it
 * Example   split [15, 4.3] to 12 -> 0.7196, 0.2804
 */
export function splitToHlb(parts: readonly SplitPart[], wanted: number): readonly number[] | undefined {
  let best: { readonly shares: readonly number[]; readonly change: number } | undefined;
  for (let chosen = 1; chosen < 2 ** parts.length; chosen++) {
    const stays = (index: number): boolean => ((chosen >> index) & 1) === 1;
    const shares = sharesOn(parts, stays, wanted);
    if (!shares?.every((share) => share >= -slack)) continue;
    const change = shares.reduce((sum, share, index) => sum + (share - (parts[index]?.share ?? 0)) ** 2, 0);
    if (!best || change < best.change - 1e-15)
      best = { shares: shares.map((share) => Math.max(0, share)), change };
  }
  return best?.shares;
}

/** The nearest shares on the emulsifiers that stay, the others at 0; negative ones are the caller's to refuse. */
function sharesOn(
  parts: readonly SplitPart[],
  stays: (index: number) => boolean,
  wanted: number,
): readonly number[] | undefined {
  const kept = parts.filter((_, index) => stays(index));
  const count = kept.length;
  const hlbSum = kept.reduce((sum, part) => sum + part.hlb, 0);
  const squareSum = kept.reduce((sum, part) => sum + part.hlb ** 2, 0);
  const missingShare = 1 - kept.reduce((sum, part) => sum + part.share, 0);
  const missingHlb = wanted - kept.reduce((sum, part) => sum + part.share * part.hlb, 0);
  const determinant = count * squareSum - hlbSum ** 2;
  if (determinant < slack) {
    const reached = Math.abs((kept[0]?.hlb ?? Number.NaN) - wanted) < slack;
    return reached
      ? parts.map((part, index) => (stays(index) ? part.share + missingShare / count : 0))
      : undefined;
  }
  const offset = (missingShare * squareSum - missingHlb * hlbSum) / determinant;
  const slope = (missingHlb * count - missingShare * hlbSum) / determinant;
  return parts.map((part, index) => (stays(index) ? part.share + offset + slope * part.hlb : 0));
}
