/** The bibliography. Every figure names one of these keys. */

export interface Source {
  /** Author or body, year, title, table or section: enough to find it. */
  readonly text: string;
}

export const sources: Readonly<Record<string, Source>> = {};
