/** The words of the sheets that hang on the shelf. */

import { type CommandSpec, jsonOption } from './command.ts';

export const labelCommands: readonly CommandSpec[] = [
  {
    name: 'labels',
    summary: 'sheets to print: beaker labels, a look sheet for the shelf, or what to weigh',
    about:
      'Labels bear the number and the day, and when to look; what is in the beaker stays off them unless --ratio asks for it, so that the eye is not led. On plain paper there are lines to cut along; --size is for label paper, as many as fit on A4, and --skip leaves out those that are used up. --sheet looks has a row for each beaker and a box for each look, --sheet weigh what to weigh into each of them. Without a word: everything that is still looked at.',
    group: 'Keeping and sharing',
    words: [
      {
        name: 'WHAT',
        help: 'a series by its name, or trials, as in 14-17 20',
        many: true,
        takes: ['series', 'trials'],
      },
    ],
    options: [
      { name: 'html', placeholder: 'FILE', help: 'the file to write' },
      {
        name: 'sheet',
        placeholder: 'KIND',
        help: 'labels, looks or weigh; labels if left out',
        choices: ['labels', 'looks', 'weigh'],
      },
      { name: 'ratio', help: 'with what is in it: oil to emulsifier, and the title' },
      { name: 'size', placeholder: 'SIZE', help: 'of a label, such as "70 x 37 mm"' },
      { name: 'skip', placeholder: 'COUNT', help: 'labels of the first sheet that are used up' },
      { name: 'replace', help: 'write over a file that is there and not one of ours' },
      jsonOption,
    ],
    examples: [
      { line: 'labels "orange ladder" --html labels.html', says: 'a label for each beaker of a ladder' },
      { line: 'labels 11-16 --sheet looks --html looks.html', says: 'a sheet for the shelf' },
    ],
    load: async () => (await import('./labels.ts')).runLabels,
  },
];
