/** `report`: a series, a formula, a trial or the whole ledger as one HTML file. */

import { extname } from 'node:path';
import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import { reportHtml } from '../output/report/document.ts';
import { fail, isProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { type OpenedDesign, openDesign } from './open-formula.ts';
import { type Here, openHere } from './open-ledger.ts';
import { designReport } from './report-design.ts';
import { ledgerReport } from './report-ledger.ts';
import { type Reported, readForReport, seriesReport } from './report-series.ts';
import { openRungs, openSeriesNamed } from './series-open.ts';
import { writeOut } from './write-out.ts';

export async function runReport(call: Call, io: Io): Promise<Outcome> {
  const typed = fileTyped(call);
  const here = await openHere(io);
  const name = call.words.join(' ').trim();
  const { report, cautions, sources, problems } = await reported(call, io, here, name);
  const text = reportHtml(report);
  const wrote = await writeOut({ io, typed, text, replace: call.flags.has('replace') });
  const isWrong = problems.some(({ severity }) => severity === 'error');
  return {
    exitCode: isWrong ? 1 : 0,
    page: [],
    json: envelope({
      schema: 'report@1',
      given: { what: name },
      found: {
        kind: report.kind,
        title: report.title,
        file: typed,
        size: { value: Buffer.byteLength(text), unit: 'B' },
        sections: report.sections.map(({ title }) => title),
      },
      cautions,
      sources,
      problems,
    }),
    problems,
    notes: [wrote],
  };
}

function fileTyped(call: Call): string {
  const typed = optionValue(call, 'html');
  if (typed === undefined)
    return fail('missing', 'the report needs a file to go to', 'add --html report.html');
  const ending = extname(typed).toLowerCase();
  if (ending === '.html' || ending === '.htm') return typed;
  return fail(
    'not-html',
    `--html: ${typed} does not end in .html`,
    'name it report.html, so that a browser opens it',
  );
}

async function reported(call: Call, io: Io, here: Here, name: string): Promise<Reported> {
  if (name === '') return ledgerReport(call, io, here);
  const design = await designNamed(io, here, name);
  if (design) return designReport(call, io, here, design);
  const { card } = await seriesNamed(io, here, name);
  return seriesReport(here, readForReport(await openRungs(here, card), here));
}

/** Undefined where no formula and no trial is called so: it may be a series. */
async function designNamed(io: Io, here: Here, name: string): Promise<OpenedDesign | undefined> {
  if (/(^|\/)series\/[^/]+\.yaml$/u.test(name)) return undefined;
  try {
    return await openDesign(here, io, name);
  } catch (thrown) {
    if (isProblemError(thrown) && thrown.problems.some(({ code }) => code === 'no-formula')) return undefined;
    throw thrown;
  }
}

async function seriesNamed(io: Io, here: Here, name: string) {
  try {
    return await openSeriesNamed(here, io, name);
  } catch (thrown) {
    if (!isProblemError(thrown) || !thrown.problems.some(({ code }) => code === 'no-series')) throw thrown;
    const [problem] = thrown.problems;
    return fail(
      'no-such-record',
      `there is no series, formula or trial "${name}"`,
      problem?.hint.startsWith('did you mean')
        ? problem.hint
        : 'neckring series and neckring list show what there is',
    );
  }
}
