import { join } from 'node:path';
import type { Io } from '../io.ts';
import { bodyMark, type KindSchema } from '../ledger/json-schema.ts';
import type { Change } from '../ledger/land.ts';
import { offer } from '../ledger/nearest.ts';
import type { FileKind } from '../ledger/schema.ts';
import { fileKinds, schemaFileOf, schemaHead, schemaLine } from '../ledger/schema-files.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { fail } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { landHere, textNow } from './land-text.ts';
import { readPort, requireRoot } from './open-ledger.ts';
import { ledgerSchemas } from './schema-texts.ts';

export async function runSchema(call: Call, io: Io): Promise<Outcome> {
  const [typed] = call.words;
  const asked = typed === undefined ? undefined : kindNamed(typed);
  const schemas = ledgerSchemas().filter(({ kind }) => asked === undefined || kind === asked);
  if (call.flags.has('write')) return written(schemas, call, io);
  const lone = ['replace', 'dry-run'].find((flag) => call.flags.has(flag));
  if (lone !== undefined) fail('usage', `--${lone} goes with --write`, 'neckring schema --write');
  const [one] = schemas;
  return asked === undefined || !one ? listed(schemas) : printed(one);
}

function kindNamed(typed: string): FileKind {
  const word = typed.trim().toLowerCase();
  return (
    fileKinds.find((kind) => kind === word) ??
    fail('unknown-kind', `"${typed}" is not a kind of file`, offer(typed, fileKinds))
  );
}

const places: Readonly<Record<FileKind, string>> = {
  bench: 'bench.yaml',
  ingredients: 'ingredients.yaml',
  trial: 'trials/*.yaml',
  series: 'series/*.yaml',
  formula: 'formulas/*.yaml',
  batch: 'batches/*.yaml',
};

const listed = (schemas: readonly KindSchema[]): Outcome => ({
  exitCode: 0,
  page: [
    {
      kind: 'table',
      columns: [
        { head: 'kind', align: 'left' },
        { head: 'files', align: 'left' },
        { head: 'what it is', align: 'left' },
      ],
      rows: schemas.map(({ kind, schema }) => [kind, places[kind], String(schema['description'])]),
    },
    {
      kind: 'pairs',
      pairs: [
        ['one of them', 'neckring schema trial'],
        ['into the ledger', 'neckring schema --write'],
      ],
    },
  ],
  json: envelope({
    schema: 'schema@1',
    found: {
      kinds: schemas.map(({ kind, mark, schema }) => ({
        kind,
        files: places[kind],
        what: String(schema['description']),
        mark,
      })),
    },
  }),
});

const printed = ({ kind, mark, text }: KindSchema): Outcome => ({
  exitCode: 0,
  page: [{ kind: 'lines', lines: text.trimEnd().split('\n') }],
  json: envelope({ schema: 'schema@1', given: { kind }, found: { kind, mark, jsonSchema: text } }),
});

async function written(schemas: readonly KindSchema[], call: Call, io: Io): Promise<Outcome> {
  const root = await requireRoot(io);
  let changes: readonly Change[] = [];
  const make = async (): Promise<readonly Change[]> => {
    changes = schemas.flatMap((one) => changeOf(one, root, call, io));
    return changes;
  };
  const isDry = call.flags.has('dry-run');
  if (isDry) await make();
  else await landHere(root, call, io, make);
  const files = changes.flatMap((change) => ('path' in change ? [change.path] : []));
  return {
    exitCode: 0,
    page: files.length === 0 ? [] : linePage(schemas),
    json: envelope({ schema: 'schema@1', given: {}, found: { written: files } }),
    notes:
      files.length === 0
        ? ['nothing to write: the schemas are those of this neckring']
        : files.map((file) => `${isDry ? 'would write' : 'wrote'} ${file}`),
  };
}

/** Nothing where the file says the same already; refused where somebody else's words stand in it. */
function changeOf({ kind, mark, text }: KindSchema, root: string, call: Call, io: Io): readonly Change[] {
  const path = schemaFileOf(kind);
  if (readPort(io).sizeOf(join(root, path)) === undefined) return [{ path, before: undefined, after: text }];
  const before = textNow(root, path, io);
  const head = schemaHead(before);
  const isUntouched = head !== undefined && markIn(before) === head.mark;
  if (isUntouched && head.mark === mark) return [];
  if (!isUntouched && !call.flags.has('replace')) {
    const how = head ? 'was changed by hand' : 'was not written by neckring';
    fail('not-ours', `${path} ${how}`, 'move it away, or write over it with --replace');
  }
  return [{ path, before, after: text }];
}

/** The mark of what a text says; undefined where it is no JSON object. */
function markIn(text: string): string | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? bodyMark({ ...value }) : undefined;
  } catch {
    return undefined;
  }
}

const linePage = (schemas: readonly KindSchema[]): Page => [
  {
    kind: 'text',
    text: 'New files begin with a line that points editors to these. Files that are there are not changed; put the line at the top of those that you want to be checked while you type:',
  },
  {
    kind: 'table',
    columns: [
      { head: 'files', align: 'left' },
      { head: 'first line', align: 'left' },
    ],
    rows: schemas.map(({ kind }) => [places[kind], schemaLine(kind).trimEnd()]),
  },
];
