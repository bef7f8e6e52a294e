import { relative, resolve } from 'node:path';
import type { Io } from '../io.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { naming } from '../ledger/disk-problem.ts';
import { benchFile, findRoot } from '../ledger/find-root.ts';
import { ingredientsFile } from '../ledger/folder.ts';
import { newBenchText, newIngredientsText } from '../ledger/new-files.ts';
import { schemaFileOf, schemaFolder, schemaLine } from '../ledger/schema-files.ts';
import { openTimeZone } from '../ledger/times.ts';
import { envelope } from '../output/answer-json.ts';
import { fail } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { landHere } from './land-text.ts';
import { readPort } from './open-ledger.ts';

export async function runInit(call: Call, io: Io): Promise<Outcome> {
  const folder = resolve(io.workingFolder, call.words[0] ?? '.');
  const around = await findRoot(folder);
  if (around === folder)
    fail('already-a-ledger', `${folder} is a ledger already`, 'neckring list shows what is in it');
  if (around !== undefined)
    fail('inside-a-ledger', `${folder} lies inside the ledger ${around}`, 'choose a folder outside it');
  const zone = optionValue(call, 'time-zone') ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (!openTimeZone(zone))
    fail('bad-time-zone', `--time-zone: there is no zone "${zone}"`, 'give a name such as Europe/Lisbon');
  await naming(folder, () => nodeDisk.makeFolder(folder));
  // The bench comes last: it is what makes the folder a ledger, so that an init that was cut off can be typed again.
  const { ledgerSchemas } = await import('./schema-texts.ts');
  const texts: readonly (readonly [string, string])[] = [
    ...ledgerSchemas().map(({ kind, text }) => [schemaFileOf(kind), text] as const),
    [ingredientsFile, schemaLine('ingredients') + newIngredientsText],
    [benchFile, schemaLine('bench') + newBenchText(zone)],
  ];
  const files = texts
    .map(([path, after]) => ({ path, before: undefined, after }))
    .filter(({ path }) => readPort(io).sizeOf(resolve(folder, path)) === undefined);
  const written = [...(await landHere(folder, call, io, async () => files))].sort();
  return {
    exitCode: 0,
    page: [
      { kind: 'text', text: `A ledger begins in ${folder}.` },
      {
        kind: 'pairs',
        pairs: [
          ...(folder === io.workingFolder ? [] : [['go', `cd ${wordFor(folder, io)}`] as const]),
          ['next', 'open bench.yaml and put in your balances and how long you watch'],
          ['then', 'neckring new --title "…"'],
        ],
      },
    ],
    json: envelope({ schema: 'init@1', given: { folder }, found: { written } }),
    notes: [
      ...written.filter((path) => !isSchema(path)).map((path) => `wrote ${path}`),
      ...(written.some(isSchema) ? [`wrote ${schemaFolder}/: what editors need to complete and check`] : []),
    ],
  };
}

const isSchema = (path: string): boolean => path.startsWith(`${schemaFolder}/`);

/** The folder as it is typed from here. */
function wordFor(folder: string, io: Io): string {
  const path = relative(io.workingFolder, folder);
  return /^[\w./-]+$/.test(path) ? path : `"${path}"`;
}
