import { basename, resolve } from 'node:path';
import { loadArithmetic } from '../calc/arithmetic.ts';
import type { Io } from '../io.ts';
import {
  type CsvTable,
  decodeCsv,
  largestCsvBytes,
  readCsv,
  refuseWhole,
  tooLarge,
} from '../ledger/csv/csv-read.ts';
import { type ReadRows, readRows, refuseUnknownItems } from '../ledger/csv/import-plan.ts';
import { type ColumnMap, readColumnMap } from '../ledger/csv/read-map.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { naming } from '../ledger/disk-problem.ts';
import { decodeFile } from '../ledger/guard.ts';
import { type Change, seeFolder } from '../ledger/land.ts';
import { numberInName } from '../ledger/single-trial.ts';
import { fail, type Problem, ProblemError } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { type CheckedRows, checkedRows } from './import-check.ts';
import { importOutcome } from './import-page.ts';
import { landHere } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import { type Here, openHere, readPort } from './open-ledger.ts';
import { separatorOption } from './separator-option.ts';

/** More would keep a bench waiting, and nobody reads the list of what went wrong. */
const mostRows = 2000;

export async function runImport(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const { table, map } = await openTables(call, io);
  refuseUnknownItems(map, await bookOf(here));
  const rows = await rowsOf(table, map, here);
  const isSkipping = call.flags.has('skip');
  let checked: CheckedRows | undefined;
  const make = async (): Promise<readonly Change[]> => {
    const seen = await seeFolder(nodeDisk, here.root, 'trials');
    const last = Math.max(0, ...seen.names.flatMap((name) => numberInName(name) ?? []));
    checked = await checkedRows({ rows, table, here, io, firstNumber: last + 1 });
    const { rejected, written } = checked;
    if (rejected.length > 0 && !isSkipping) refuseRows(rejected, table.rows.length);
    const changes = written.map(({ file, text }) => ({ path: file, before: undefined, after: text }));
    return changes.length === 0 ? [] : [seen, ...changes];
  };
  if (call.flags.has('dry-run')) await make();
  else await landHere(here.root, call, io, make);
  if (!checked) throw new Error('nothing was planned');
  return importOutcome(call, { checked, map, table });
}

async function openTables(
  call: Call,
  io: Io,
): Promise<{ readonly table: CsvTable; readonly map: ColumnMap }> {
  const [typed = ''] = call.words;
  const mapFile = optionValue(call, 'map');
  if (mapFile === undefined)
    return fail(
      'missing',
      '--map is needed: which column is what',
      'write a file with lines such as "Oil (g): stages.emulsion.sweet orange oil in g"; neckring import --help has the paths',
    );
  const separator = separatorOption(call);
  const table = readCsv(typed, decodeCsv(typed, await bytesOf(typed, io, largestCsvBytes)), separator);
  if (table.rows.length > mostRows)
    refuseWhole(typed, [
      'too-many-rows',
      `there are ${table.rows.length} rows`,
      `keep to ${mostRows} at a time`,
    ]);
  const decoded = decodeFile(mapFile, await bytesOf(mapFile, io, largestCsvBytes));
  if ('problem' in decoded) throw new ProblemError([decoded.problem]);
  return { table, map: readColumnMap(mapFile, decoded.text, table) };
}

/** A file as it was typed, from the working folder. */
async function bytesOf(typed: string, io: Io, most: number): Promise<Uint8Array> {
  const port = readPort(io);
  const path = resolve(io.workingFolder, typed);
  const size = port.sizeOf(path);
  if (size === undefined) return fail('no-file', `there is no file ${typed}`, 'name a file that is there');
  if (size > most) refuseWhole(basename(typed), tooLarge(size));
  return naming(typed, async () => port.read(path));
}

async function rowsOf(table: CsvTable, map: ColumnMap, { settings }: Here): Promise<ReadRows> {
  const rows = readRows(table, map, settings.zone);
  const waits = rows.rejected.some(({ problems }) =>
    problems.some(({ code }) => code === 'arithmetic-not-loaded'),
  );
  if (!waits) return rows;
  await loadArithmetic();
  return readRows(table, map, settings.zone);
}

function refuseRows(rejected: ReadRows['rejected'], count: number): never {
  const problems = rejected.flatMap((row): readonly Problem[] => row.problems);
  const summary: Problem = {
    code: 'rows-rejected',
    severity: 'error',
    message: `${rejected.length} of ${count} rows can't be read, so nothing was written`,
    hint: 'mend them in the table, or add --skip to leave them out',
  };
  throw new ProblemError([...problems, summary]);
}
