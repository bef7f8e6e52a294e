/** Files in `schema/` that say to editors what another version of the program takes. */

import { basename, join } from 'node:path';
import type { Problem } from '../problem.ts';
import type { Check } from './check.ts';
import { errorCode } from './disk.ts';
import { problemAt, sourceText } from './places.ts';
import type { ReadPort } from './port.ts';
import type { FileKind } from './schema.ts';
import {
  fileKinds,
  type SchemaHead,
  schemaFileOf,
  schemaFolder,
  schemaHead,
  schemaMarks,
} from './schema-files.ts';

const headBytes = 400;

interface Found {
  readonly kind: FileKind;
  /** The beginning of the file; undefined where there is none. */
  readonly text: string | undefined;
  readonly head: SchemaHead | undefined;
}

/** Looks at the heads alone; a ledger without such files, or with somebody else's, is none the worse. */
export const checkSchemas =
  (port: ReadPort): Check =>
  ({ ledger }) => {
    try {
      return problemsIn(ledger.root, port);
    } catch (thrown) {
      // What the disk won't show is no fault of the ledger: only editors read it.
      if (errorCode(thrown) === undefined) throw thrown;
      return [];
    }
  };

function problemsIn(root: string, port: ReadPort): readonly Problem[] {
  const there = new Set(port.list(join(root, schemaFolder)));
  if (there.size === 0) return [];
  const found = fileKinds.map((kind) => headOf(kind, there, root, port));
  if (found.every(({ head }) => head === undefined)) return [];
  const old = found.filter(({ kind, head }) => head && head.mark !== schemaMarks[kind]);
  const gone = found.filter(({ text }) => text === undefined);
  return [...(old.length > 0 ? [oldProblem(old)] : []), ...(gone.length > 0 ? [goneProblem(gone)] : [])];
}

/** Such a head is ASCII; one folder is listed and no file is decoded, since every check pays for this. */
function headOf(kind: FileKind, there: ReadonlySet<string>, root: string, port: ReadPort): Found {
  const file = schemaFileOf(kind);
  if (!there.has(basename(file))) return { kind, text: undefined, head: undefined };
  const text = String.fromCharCode(...port.read(join(root, file)).subarray(0, headBytes));
  return { kind, text, head: schemaHead(text) };
}

const names = (found: readonly Found[]): string => {
  const files = found.map(({ kind }) => schemaFileOf(kind));
  const last = files.at(-1) ?? '';
  return files.length === 1 ? last : `${files.slice(0, -1).join(', ')} and ${last}`;
};

function oldProblem(old: readonly Found[]): Problem {
  const [{ kind, text = '', head } = { kind: 'trial' as const, head: undefined }] = old;
  const start = Math.max(0, text.indexOf(head?.mark ?? ''));
  const finding = {
    code: 'old-schema',
    severity: 'warning',
    message: `${names(old)} ${old.length === 1 ? 'says' : 'say'} to editors what neckring ${head?.version ?? ''} took, not what this one takes`,
    hint: 'neckring schema --write renews them',
  } as const;
  return problemAt(sourceText(schemaFileOf(kind), text), finding, { start, end: start + 8 });
}

const goneProblem = (gone: readonly Found[]): Problem => ({
  code: 'no-schema',
  severity: 'warning',
  message: `${names(gone)} ${gone.length === 1 ? 'is' : 'are'} missing, and editors don't check such files`,
  hint: 'neckring schema --write adds what is missing',
});
