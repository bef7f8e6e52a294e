/** What is known of drops in general. A weighed drop is better than any of these. */

/** The volume error of a calibrated dropper in normal use, relative. */
export const dropperError = {
  value: 0.15,
  source: 'usp32-1101',
  locator: 'droppers, up to 15 per cent in normal use',
} as const;

/** Fewer drops than this and one drop more or less decides the dose. */
export const fewestDrops = { value: 5, source: 'common practice, no source' } as const;
export const mostDrops = { value: 20, source: 'common practice, no source' } as const;

/** g; a drop outside is most often a miscount. */
export const usualDrop = { low: 0.004, high: 0.12, source: 'common practice, no source' } as const;
