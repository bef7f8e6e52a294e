/** `labels`: beaker labels, a look sheet, a weigh sheet, each as one HTML file to print. */

import { extname } from 'node:path';
import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import { labelsHtml } from '../output/sheets/labels-html.ts';
import { lookSheetHtml } from '../output/sheets/look-sheet-html.ts';
import { weighSheetHtml } from '../output/sheets/weigh-sheet-html.ts';
import { fail } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { paperOf } from './labels-paper.ts';
import { type Shelf, shelfOf } from './labels-samples.ts';
import { labelsOf, lookSheetOf, weighSheetOf } from './labels-sheets.ts';
import { type Here, openHere } from './open-ledger.ts';
import { writeOut } from './write-out.ts';

const kinds = ['labels', 'looks', 'weigh'] as const;
type Kind = (typeof kinds)[number];

export async function runLabels(call: Call, io: Io): Promise<Outcome> {
  const kind = kindOf(call);
  const typed = fileTyped(call, kind);
  const here = await openHere(io);
  const shelf = await shelfOf(here, io, call.words);
  const text = await sheetText(call, here, shelf, kind);
  const wrote = await writeOut({ io, typed, text, replace: call.flags.has('replace') });
  return {
    exitCode: 0,
    page: [],
    json: envelope({
      schema: 'labels@1',
      given: { what: call.words.join(' '), sheet: kind },
      found: {
        file: typed,
        beakers: shelf.samples.map(({ card, sample }) => ({ trial: card.number, sample: sample.name })),
      },
    }),
    notes: [wrote],
  };
}

function kindOf(call: Call): Kind {
  const typed = optionValue(call, 'sheet') ?? 'labels';
  const kind = kinds.find((one) => one === typed);
  if (kind) return kind;
  const [near] = nearestNames(typed, kinds, 1);
  return fail(
    'unknown-word',
    `--sheet: "${typed}" is not understood`,
    near === undefined ? `say ${kinds.join(', ')}` : `did you mean ${near}?`,
  );
}

function fileTyped(call: Call, kind: Kind): string {
  const typed = optionValue(call, 'html');
  if (typed === undefined)
    return fail('missing', 'the sheet needs a file to go to', `add --html ${kind}.html`);
  if (/^\.html?$/iu.test(extname(typed))) return typed;
  return fail(
    'not-html',
    `--html: ${typed} does not end in .html`,
    `name it ${kind}.html, so that a browser opens it`,
  );
}

async function sheetText(call: Call, here: Here, shelf: Shelf, kind: Kind): Promise<string> {
  if (kind !== 'labels' && (call.values['size'] || call.values['skip']))
    fail('usage', '--size and --skip are for labels', 'leave them out, or leave --sheet out');
  if (kind === 'weigh') return weighSheetHtml(await weighSheetOf(here, shelf));
  if (kind === 'labels') {
    const labels = await labelsOf(here, shelf, call.flags.has('ratio'));
    return labelsHtml({ title: `Labels: ${shelf.name}`, labels, paper: paperOf(call) });
  }
  const sheet = lookSheetOf(here, shelf);
  return sheet.rows.length > 0
    ? lookSheetHtml(sheet)
    : fail(
        'nothing-open',
        `no look is planned any more for ${shelf.name}`,
        'neckring due shows what is looked at',
      );
}
