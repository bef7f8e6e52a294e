/** The words of the commands that work on a ledger; what they do is loaded when it is done. */

import { type CommandSpec, dryRunOption, explainOption, jsonOption, yesOption } from './command.ts';
import { observationOptions } from './observation-options.ts';

export const ledgerCommands: readonly CommandSpec[] = [
  {
    name: 'init',
    summary: 'begin a ledger in this folder',
    about:
      'Writes bench.yaml and ingredients.yaml to fill in, and schema/, with which an editor completes and checks what you type. Nothing that is there is changed.',
    group: 'Ledger',
    words: [{ name: 'FOLDER', help: 'where; this folder if left out' }],
    options: [
      {
        name: 'time-zone',
        placeholder: 'ZONE',
        help: 'such as Europe/Lisbon; that of this computer if left out',
      },
      jsonOption,
    ],
    examples: [
      { line: 'init', says: 'in this folder' },
      { line: 'init drinks --time-zone Europe/Lisbon', says: 'in a new folder' },
    ],
    load: async () => (await import('./with-writing.ts')).runInit,
  },
  {
    name: 'new',
    summary: 'write the next trial, empty or from another',
    about:
      'Takes the next free number. With --from it copies stages and process, not what was weighed or seen. Alone on a terminal it asks what goes in.',
    group: 'Ledger',
    words: [],
    options: [
      { name: 'title', placeholder: 'TEXT', help: 'what it is' },
      { name: 'from', placeholder: 'TRIAL', help: 'the trial to copy stages and process from' },
      { name: 'series', placeholder: 'SERIES', help: 'the series it belongs to' },
      {
        name: 'made',
        placeholder: 'TIME',
        help: '2026-03-02, 09:10, "yesterday 18:00" or a full time; now if left out',
      },
      { name: 'why', placeholder: 'TEXT', help: 'the question it asks' },
      {
        name: 'item',
        placeholder: 'ITEM',
        help: 'what goes in, in the order of addition, such as "2 g sweet orange oil"; with --from its new amount',
        many: true,
        isAmount: true,
      },
      { name: 'step', placeholder: 'TEXT', help: 'how it is made, in the order of the work', many: true },
      {
        name: 'stage',
        placeholder: 'NAME',
        help: 'what the items make; emulsion if left out; of several each takes the items and steps after it',
        many: true,
        takes: [],
      },
      dryRunOption,
      jsonOption,
    ],
    examples: [
      { line: 'new --title "cardamom, one part to three"', says: 'an empty trial to fill in' },
      { line: 'new --from 13 --title "the third again, cold"', says: 'the same stages, ready to change' },
    ],
    load: async () => (await import('./with-writing.ts')).runNew,
  },
  {
    name: 'observe',
    summary: 'write down what is seen, measured or tasted',
    about:
      'What you type goes into the trial with its date, in order of time. The very same is not written twice. Alone on a terminal, or with a trial alone, it asks.',
    group: 'Ledger',
    words: [
      { name: 'TRIAL', help: 'its number or its file; or a batch by its name', takes: ['trial', 'batch'] },
    ],
    options: [
      { name: 'sample', placeholder: 'SAMPLE', help: 'which sample; not needed where there is one' },
      { name: 'at', placeholder: 'TIME', help: '09:10, "yesterday 18:00" or a full time; now if left out' },
      ...observationOptions,
      dryRunOption,
      jsonOption,
    ],
    examples: [
      { line: 'observe 14 --look hazy --note "only from the side"', says: 'a look, now' },
      {
        line: 'observe 17 --sample "cold glass" --at "yesterday 18:00" --ph 3.05',
        says: 'a reading of yesterday',
      },
    ],
    load: async () => (await import('./with-writing.ts')).runObserve,
  },
  {
    name: 'list',
    summary: 'the trials, newest last',
    about: 'The newest 40 on a terminal; all of them with --all or into a pipe.',
    group: 'Ledger',
    words: [],
    options: [{ name: 'all', help: 'every trial' }, jsonOption],
    examples: [
      { line: 'list', says: 'the newest 40' },
      { line: 'list --all', says: 'every trial' },
    ],
    load: async () => (await import('./list.ts')).runList,
  },
  {
    name: 'show',
    summary: 'one trial as a page of the notebook',
    about:
      'Stages with planned and weighed amounts and what they come to in the drink, the process, looks by day, results.',
    group: 'Ledger',
    words: [
      {
        name: 'TRIAL',
        help: 'its number or its file, or a batch by its name; @REVISION as it was in git',
        required: true,
        takes: ['trial', 'batch'],
      },
    ],
    options: [jsonOption],
    examples: [
      { line: 'show 13', says: 'trial 13' },
      { line: 'show 17 --json', says: 'everything as JSON, with the mass of every substance' },
    ],
    load: async () => (await import('./with-picture.ts')).runShow,
  },
  {
    name: 'check',
    summary: 'find every mistake in the files, with its place',
    about:
      'Checks the whole ledger, or the files and folders named. Exits 1 where there is an error in them.',
    group: 'Ledger',
    words: [{ name: 'PATHS', help: 'files or folders of the ledger', many: true }],
    options: [jsonOption],
    examples: [
      { line: 'check', says: 'the whole ledger' },
      { line: 'check trials/0014-orange-1-to-2.5.yaml', says: 'one file' },
    ],
    load: async () => (await import('./check.ts')).runCheck,
  },
  {
    name: 'reckon',
    summary: 'run every calculator on a trial and write the answers back',
    about:
      'Shows each answer in short and what changed since it was last written, and appends what is new under results. A formula keeps no results: its aims are judged, and a miss exits 1.',
    group: 'Ledger',
    words: [
      {
        name: 'TRIAL',
        help: 'its number or its file, or a formula',
        many: true,
        required: true,
        takes: ['trial', 'formula'],
      },
    ],
    options: [
      {
        name: 'all',
        help: 'every figure, the lines written, and which calculators have nothing to work on, and why',
      },
      dryRunOption,
      yesOption,
      explainOption,
      jsonOption,
    ],
    examples: [
      { line: 'reckon 13', says: 'all answers for trial 13' },
      { line: 'reckon 13 17 --dry-run', says: 'what would be written' },
    ],
    load: async () => (await import('./with-picture.ts')).runReckon,
  },
];
