/** Cycles of warm and cold that a sample is put through, each looked at when it ends. */

export interface StressCycle {
  /** One cycle, in words. */
  readonly words: string;
  readonly days: number;
  readonly cycles: number;
  /** What it can say. */
  readonly meaning: string;
  readonly source: string;
}

export const stressCycles = {
  'freeze-thaw': {
    words: '-10 C 24 h, room 24 h, 45 C 24 h, room 24 h',
    days: 4,
    cycles: 3,
    meaning:
      'ice concentrates oil and acid and crushes droplets together: a pass is informative, a fail is not decisive for a drink that is never frozen',
    source: 'testing-laboratory protocol for freeze and thaw stability, three cycles',
  },
  'heat-cool': {
    words: '45 C 24 h, 4 C 24 h',
    days: 2,
    cycles: 6,
    meaning:
      'ethoxylated emulsifiers let go of water when hot: a fail in the heat is no forecast of a fail in the cold',
    source:
      'common practice, no source; why it is harsh: Chang and McClements 2014, J. Agric. Food Chem. 62:2306',
  },
} as const satisfies Readonly<Record<string, StressCycle>>;

export type StressWord = keyof typeof stressCycles;

export const stressWords = ['freeze-thaw', 'heat-cool'] as const satisfies readonly StressWord[];
