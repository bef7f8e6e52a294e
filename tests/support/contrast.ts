/** How far two colours stand apart, by the W3C's Web Content Accessibility Guidelines 2.2. */

/** Relative luminance of `#rrggbb`, from 0 to 1. */
export function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((from) => {
    const share = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** From 1 to 21. */
export function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((left, right) => right - left);
  return (light + 0.05) / (dark + 0.05);
}
