import { extname } from 'node:path';
import { caffeineGate } from '../calc/slip-guard/caffeine.ts';
import { servingOf } from '../ledger/check-slips.ts';
import { batchSheetHtml } from '../output/batch-sheet-html.ts';
import { batchSheetMarkdown } from '../output/batch-sheet-markdown.ts';
import { fail } from '../problem.ts';
import { askAboutCaffeine } from './caffeine-gate.ts';
import { optionValue } from './command.ts';
import { atRevision } from './open-at.ts';
import { nextBatchName } from './open-batch.ts';
import { openHere } from './open-ledger.ts';
import { scaleEnvelope } from './scale-json.ts';
import { scalePage } from './scale-page.ts';
import { batchReport } from './scale-report.ts';
import { type ScaleRequest, scaleRequest } from './scale-request.ts';
import { batchSheetOf } from './scale-sheet.ts';
import { madeFor, percent, titleOf } from './scale-words.ts';
import { writeAllOut } from './write-out.ts';

export const runScale = atRevision(async (call, io, here) => {
  const request = withTarget(scaleRequest(call));
  const sheets = (call.values['sheet'] ?? []).map(sheetFile);
  const report = await batchReport(call.words[0] ?? '', request, { io, here });
  const { made } = report;
  await askAboutCaffeine(call, io, caffeineGate(made.mixture, servingOf(made.design.card, made.mixture)));
  const batch =
    optionValue(call, 'batch') ??
    (await nextBatchName(report.here.revision ? await openHere(io) : report.here, io));
  const replace = call.flags.has('replace');
  const wrote = await writeAllOut(
    sheets.map(({ typed, write }) => ({ io, typed, text: write(batchSheetOf(report, batch)), replace })),
  );
  const notes = [
    ...wrote,
    sheets.length === 0
      ? '--sheet FILE.html writes this as a sheet to print'
      : `when it is made: neckring batch record "${titleOf(report).replace(/^trial /u, '')}" --to "${madeFor(report)}"${request.loss > 0 ? ` --loss ${percent(request.loss, 4)}` : ''}${request.strength === undefined ? '' : ` --strength ${request.strength}`} --name ${batch}`,
  ];
  return {
    exitCode: 0,
    page: scalePage(report, batch),
    json: scaleEnvelope(report, batch),
    explained: async () => (await import('./explain-scale.ts')).scaleExplanation(report),
    problems: report.warnings,
    notes,
  };
});

const withTarget = (request: ScaleRequest): ScaleRequest =>
  request.target
    ? request
    : fail(
        'missing',
        '--to is needed',
        'say how much there is to be: --to "20 L syrup", --to "500 x 330 mL", or --keg "19 L"',
      );

function sheetFile(typed: string) {
  const ending = extname(typed).toLowerCase();
  if (ending === '.html' || ending === '.htm') return { typed, write: batchSheetHtml };
  if (ending === '.md' || ending === '.markdown') return { typed, write: batchSheetMarkdown };
  return fail(
    'not-a-sheet',
    `--sheet: "${typed}" is neither HTML nor Markdown`,
    'name it batch.html or batch.md',
  );
}
