/** The words of keeping a ledger in git with others: setting it up, merging, and putting numbers right after it. */

import { type CommandSpec, dryRunOption, jsonOption } from './command.ts';

export const mergeCommands: readonly CommandSpec[] = [
  {
    name: 'git',
    summary: 'lets git compare and merge ledger files by what they say',
    about:
      "git setup writes the drivers into the settings of this clone (git config --local) and adds lines to .gitattributes beside bench.yaml; it names every key and file, and may be typed again. git remove takes the same out again. Then git diff shows what compare says, git log -p reads as a notebook, and a merge keeps both people's looks and edits and stops only where both changed the same thing.",
    group: 'Keeping and sharing',
    words: [{ name: 'ACTION', help: 'setup or remove', required: true, choices: ['setup', 'remove'] }],
    options: [dryRunOption, jsonOption],
    examples: [
      { line: 'git setup --dry-run', says: 'the keys and lines that it would write' },
      { line: 'git remove --dry-run', says: 'what would go' },
    ],
    load: async () => (await import('./git-setup.ts')).runGitSetup,
  },
  {
    name: 'renumber',
    summary: 'gives a trial another number, with its file and all that refers to it',
    about:
      'For two trials that got one number on two branches. The file is renamed, and so is every reference that means this trial: from, "emulsion of 21", the control and blank of a series, batches, what a sample was tasted against. Where another file has the same number, git tells which of the two a reference was written for; what it does not tell is asked about on a terminal, and elsewhere settled by --with and --leave. Notes and other texts that mention the number are listed and left alone.',
    group: 'Keeping and sharing',
    words: [
      {
        name: 'FILE',
        help: 'the file of the trial; its number, where only one has it',
        required: true,
        takes: ['trial', 'file'],
      },
    ],
    options: [
      { name: 'to', placeholder: 'NUMBER', help: 'the next free one if left out' },
      {
        name: 'with',
        placeholder: 'FILE',
        help: 'its references mean the trial that moves; or all',
        many: true,
      },
      {
        name: 'leave',
        placeholder: 'FILE',
        help: 'its references mean the one that stays; or all',
        many: true,
      },
      dryRunOption,
      jsonOption,
    ],
    examples: [
      { line: 'renumber 16 --to 24 --dry-run', says: 'trial 16 becomes 24, wherever it is named' },
      {
        line: 'renumber trials/0016-orange-1-to-1.5.yaml --dry-run',
        says: 'the next free number, of one file of two',
      },
    ],
    load: async () => (await import('./renumber.ts')).runRenumber,
  },
  {
    name: 'merge-driver',
    summary: 'what git calls to merge a ledger file; --plan shows what it would do',
    about:
      "Git names three files and gets the merged text in OURS: exit 0 if it is clean, 1 if something is left to settle in the file, 129 if the driver itself failed. With --plan nothing is written: name a file of the ledger in an unfinished merge, or add --with BRANCH to look before merging. Looks and results of both sides are all kept in time order; edits to different things both land; what both changed, or what no longer fits together (a total, a to line), is left between git's markers.",
    group: 'Keeping and sharing',
    words: [
      { name: 'BASE', help: 'the common version; with --plan alone, a file of the ledger', required: true },
      { name: 'OURS', help: 'our version, written over' },
      { name: 'THEIRS', help: 'their version' },
    ],
    options: [
      { name: 'plan', help: 'say what it would do and write nothing' },
      { name: 'with', placeholder: 'BRANCH', help: 'with --plan: what merging this branch would do' },
      { name: 'path', placeholder: 'PATH', help: 'where the file lies in the work tree' },
      { name: 'marker-size', placeholder: 'COUNT', help: 'characters of a conflict marker' },
      { name: 'ours', placeholder: 'LABEL', help: 'name of our side in the markers' },
      { name: 'theirs', placeholder: 'LABEL', help: 'name of their side' },
      jsonOption,
    ],
    examples: [
      {
        line: 'merge-driver --plan trials/0014-orange-1-to-2.5.yaml --with cassis',
        says: 'what merging the branch cassis would do to a trial',
      },
      {
        line: 'merge-driver --plan formulas/orange-cardamom.yaml --with cassis',
        says: 'the same of a formula',
      },
    ],
    load: async () => (await import('./merge-driver.ts')).runMergeDriver,
  },
  {
    name: 'diff-driver',
    summary: 'what git calls to show a ledger file',
    about:
      'Git names a path and two versions and gets what compare says of them; with --text one version, a fact a line, for git log -p. git setup tells git how to call it.',
    group: 'Keeping and sharing',
    words: [
      { name: 'PATH', help: 'where the file lies', required: true },
      { name: 'VERSIONS', help: 'file, object and mode of each', many: true },
    ],
    options: [{ name: 'text', help: 'tell the one file that is named' }, jsonOption],
    examples: [
      { line: 'diff-driver --text formulas/orange-cardamom.yaml', says: 'a formula as git log -p has it' },
      { line: 'diff-driver --text trials/0014-orange-1-to-2.5.yaml', says: 'a trial' },
    ],
    load: async () => (await import('./diff-driver.ts')).runDiffDriver,
  },
];
