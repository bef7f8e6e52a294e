/** `report`: a series, a formula, a trial or the whole ledger as one HTML file. */

import { extname } from 'node:path';
import type { Io } from '../io.ts';
import type { FilesThen } from '../ledger/at-revision.ts';
import { envelope } from '../output/answer-json.ts';
import { reportHtml } from '../output/report/document.ts';
import { visible } from '../output/visible.ts';
import { fail, isProblemError, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { openHereAt, problemsThen, revisionLine } from './open-at.ts';
import { findBatch } from './open-batch.ts';
import { type OpenedDesign, openDesign } from './open-formula.ts';
import type { Here } from './open-ledger.ts';
import { batchPage } from './report-batch.ts';
import { designReport } from './report-design.ts';
import { ledgerReport } from './report-ledger.ts';
import { type Reported, readForReport, seriesReport } from './report-series.ts';
import { openRungs, openSeriesNamed } from './series-open.ts';
import { writeOut } from './write-out.ts';

export async function runReport(call: Call, io: Io): Promise<Outcome> {
  const typed = fileTyped(call);
  const asked = call.words.join(' ').trim();
  const { report, cautions, sources, problems, revision } = await reportedAt(call, io, asked);
  const text = reportHtml(report);
  const wrote = await writeOut({ io, typed, text, replace: call.flags.has('replace') });
  const isWrong = problems.some(({ severity }) => severity === 'error');
  return {
    exitCode: isWrong ? 1 : 0,
    page: [],
    json: envelope({
      schema: 'report@1',
      given: { what: asked, ...(revision ? { revision: revision.typed, commit: revision.id } : {}) },
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

/** As it stands, or as it was at the revision behind an `@`. */
async function reportedAt(call: Call, io: Io, asked: string) {
  const { here, name, problems } = await openHereAt(io, asked, { wanted: everyFile });
  const { revision } = here;
  if (!revision) return { ...(await reported(call, io, here, name)), revision };
  try {
    const made = await reported(call, io, here, name);
    const facts = [['as it was at', visible(revisionLine(revision))] as const, ...made.report.facts];
    return {
      ...made,
      report: { ...made.report, facts },
      problems: [...problems, ...problemsThen(made.problems, revision)],
      revision,
    };
  } catch (thrown) {
    if (!isProblemError(thrown)) throw thrown;
    throw new ProblemError([...problems, ...problemsThen(thrown.problems, revision)], thrown.exitCode);
  }
}

const everyFile = ({ list }: FilesThen): readonly string[] =>
  ['formulas', 'trials', 'series', 'batches'].flatMap((folder) =>
    list(folder)
      .filter((file) => file.endsWith('.yaml'))
      .map((file) => `${folder}/${file}`),
  );

async function reported(call: Call, io: Io, here: Here, name: string): Promise<Reported> {
  if (name === '') return ledgerReport(call, io, here);
  const design = await designNamed(io, here, name);
  if (design) return designReport(call, io, here, design);
  const batch = /(^|\/)series\/[^/]+\.yaml$/u.test(name) ? undefined : await findBatch(here, io, name);
  if (batch) return batchPage(io, here, batch);
  const { card } = await seriesNamed(io, here, name);
  return seriesReport(here, readForReport(await openRungs(here, card), here));
}

/** Undefined where no formula and no trial is called so: it may be a series. */
async function designNamed(io: Io, here: Here, name: string): Promise<OpenedDesign | undefined> {
  if (/(^|\/)(series|batches)\/[^/]+\.yaml$/u.test(name)) return undefined;
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
      `there is no series, formula, batch or trial "${name}"`,
      problem?.hint.startsWith('did you mean')
        ? problem.hint
        : 'neckring series and neckring list show what there is',
    );
  }
}
