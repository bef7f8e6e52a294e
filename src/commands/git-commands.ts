/** The words of the commands that look back through git. */

import { type CommandSpec, explainOption, jsonOption } from './command.ts';

export const gitCommands: readonly CommandSpec[] = [
  {
    name: 'compare',
    summary: 'what changed between two records, and in the glass',
    about:
      'Lays two trials, formulas or batches beside each other, or one beside itself at a git revision (orange@v2, 14@HEAD~3): what was added, taken out, changed and moved, and what it comes to in the finished drink. Another name of the same ingredient and another unit for the same weight are no change. One alone is compared with the file as it stands, or as it was last committed. Exits 1 where they differ.',
    group: 'Keeping and sharing',
    words: [
      { name: 'BEFORE', help: 'a trial, formula or batch; @REVISION for an earlier time', required: true },
      { name: 'AFTER', help: 'the same; left out, the first one as it stands now' },
    ],
    options: [
      {
        name: 'only',
        placeholder: 'PART',
        help: 'formula, observations or results',
        choices: ['formula', 'observations', 'results'],
      },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'compare 13 14', says: 'two trials' },
      { line: 'compare "orange cardamom@v1" "orange cardamom"', says: 'a formula since a tag' },
      { line: 'compare 17', says: 'since it was last committed' },
    ],
    load: async () => (await import('./compare.ts')).runCompare,
  },
  {
    name: 'history',
    summary: 'a record through its commits: when, who, what changed',
    about:
      'A line for each commit that changed a trial, a formula or a batch, under whatever name its file had, from the oldest to the newest. With --show, figures of each version, reckoned with the ledger as it was then, and a small plot.',
    group: 'Keeping and sharing',
    words: [
      {
        name: 'RECORD',
        help: 'a trial, formula or batch; @REVISION to look back from there',
        required: true,
      },
    ],
    options: [
      {
        name: 'show',
        placeholder: 'FIGURES',
        help: 'ph, acid, brix, oil, hlb, density and the like, with commas between',
        many: true,
      },
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'history "orange cardamom"', says: 'what changed when' },
      { line: 'history "orange cardamom" --show ph,brix,oil', says: 'with three figures through time' },
    ],
    load: async () => (await import('./history.ts')).runHistory,
  },
];
