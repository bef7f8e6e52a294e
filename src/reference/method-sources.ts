/** Where the ways of counting come from: statistics, tastings. Same shape as the main bibliography. */
import type { Source } from './sources.ts';

export const methodSources: Readonly<Record<string, Source>> = {
  'finney-1971': { text: 'Finney 1971, Probit Analysis' },
  'clopper-pearson-1934': { text: 'Clopper and Pearson 1934, Biometrika 26:404' },
  'student-1908': { text: 'Student 1908, The probable error of a mean, Biometrika 6:1' },
  'iso-4120': { text: 'ISO 4120, triangle test' },
  'iso-5495': { text: 'ISO 5495, paired comparison' },
};
