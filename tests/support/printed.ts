/** Comparing with a printed figure: equal to its last printed digit. */

/** Half a unit in the last printed digit, with room for the binary form of the figure. */
export function printedTolerance(printed: string): number {
  const [digits = '', exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = digits.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9);
}

export const agreesWithPrint = (value: number, printed: string): boolean =>
  Math.abs(value - Number(printed)) <= printedTolerance(printed);
