/** Every way of writing, with the file that a refusal must name. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export type Writer = readonly [file: RegExp, ...words: readonly string[]];

/** Into the example ledger. */
export const ledgerWriters: readonly Writer[] = [
  [/trials\/0014/, 'observe', '14', '--look', 'hazy'],
  [/photos\/0014/, 'observe', '14', '--note', 'x', '--photo', '../seen.jpg'],
  [/trials\/0014/, 'look', '14', 'hazy'],
  [/trials\/0013/, 'same', '13'],
  [/trials\/0016/, 'end', '16', '--why', 'spilled'],
  [/trials\/0018/, 'new', '--title', 'next', '--item', '2 g sweet orange oil'],
  [/trials\/0013/, 'reckon', '13'],
  [/trials\/0017/, 'weigh', '17', 'citric', '4.51'],
  [/trials\/0014/, 'overpoured', '14', 'polysorbate 80', '6.62', '--write'],
  [/trials\/0018/, 'ladder', '13', '--rungs', '1:4, 1:3', '--series', 'cold', '--write'],
  [/trials\/0018/, 'next', 'orange ladder', '--within', '1%', '--write'],
  [/series\/orange-ladder/, 'decide', 'orange ladder', 'a third', '--ratio', '1:3', '--again'],
  [/batches/, 'batch', 'record', '17', 'citric', '4.48'],
  [/ingredients/, 'stocks', 'new', 'weak', '--contains', '1 ppm cassis thiol', '--in', 'propylene glycol'],
  [/ingredients/, 'dropper', '--weighings', '0.42 g / 20; 0.417 g / 20', '--record', 'cassis stock'],
  [/trials\/0040/, 'renumber', '16', '--to', '40'],
];

/** To a path that is typed. */
export const outWriters: readonly Writer[] = [
  [/sheet\.html/, 'scale', 'orange cardamom', '--to', '20 L syrup', '--sheet', 'sheet.html'],
  [/looks\.ics/, 'due', '--all', '--ics', 'looks.ics'],
  [/out\.csv/, 'export', 'compositions', '17', '--to', 'out.csv', '--replace'],
  [/card\.md/, 'give', 'orange cardamom', '--to', 'card.md'],
  [/gift\.yaml/, 'give', 'orange cardamom', '--as', 'yaml', '--to', 'gift.yaml'],
  [/report\.html/, 'report', 'orange ladder', '--html', 'report.html'],
  [/labels\.html/, 'labels', 'orange ladder', '--html', 'labels.html'],
  [
    /plan\.txt|key\.txt/,
    ...['triangle', '--plan', '12', '--key', 'key.txt', '--sheet', 'plan.txt', '--replace'],
  ],
];

/** Every file below a folder, its bytes as letters; what the tool keeps for itself apart. */
export const textsIn = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .filter((path) => !path.startsWith(join(folder, '.neckring')))
      .sort()
      .map((path) => [path.slice(folder.length + 1), readFileSync(path, 'latin1')]),
  );
