/** The files in `schema/` that say to editors what may stand in the ledger's files, and the line that points to them. */

import { join } from 'node:path';
import type { ReadPort } from './port.ts';
import type { FileKind } from './schema.ts';

export const schemaFolder = 'schema';

export const fileKinds: readonly FileKind[] = ['bench', 'ingredients', 'trial', 'series', 'formula', 'batch'];

export const schemaFileOf = (kind: FileKind): string => `${schemaFolder}/${kind}.json`;

export const schemaIdOf = (kind: FileKind): string => `urn:neckring:schema:${kind}`;

/** What each kind's schema says, as eight hex digits; a test holds them to the shapes. */
export const schemaMarks: Readonly<Record<FileKind, string>> = {
  bench: '4d1b1f23',
  ingredients: '68265827',
  trial: '17d2eb52',
  series: '7ea5890b',
  formula: '2e40ebf8',
  batch: 'f2aee389',
};

/** What the head of such a file says of who wrote it. */
export const markText = (version: string, mark: string): string =>
  `Written by neckring ${version}, mark ${mark}; neckring schema --write renews it`;

const markWords = /"Written by neckring ([^\s",;]{1,40}), mark ([\da-f]{8});/u;

export interface SchemaHead {
  readonly version: string;
  readonly mark: string;
}

/** What the head of a file in `schema/` says of who wrote it; undefined where it is not one of ours. */
export function schemaHead(text: string): SchemaHead | undefined {
  const [, version, mark] = markWords.exec(text.slice(0, 400)) ?? [];
  return version === undefined || mark === undefined ? undefined : { version, mark };
}

const inFolder: Readonly<Record<FileKind, boolean>> = {
  bench: false,
  ingredients: false,
  trial: true,
  series: true,
  formula: true,
  batch: true,
};

/** The first line of a file, which editors' language servers for YAML understand. */
export const schemaLine = (kind: FileKind): string =>
  `# yaml-language-server: $schema=${inFolder[kind] ? '../' : ''}${schemaFileOf(kind)}\n`;

/** Whether a ledger has a file, by its path from the root. */
export type HasFile = (path: string) => boolean;

export const hasFileIn =
  ({ root, port }: { readonly root: string; readonly port: ReadPort }): HasFile =>
  (path) =>
    port.sizeOf(join(root, path)) !== undefined;

/** The text of a new file, with the line where the ledger has that schema. */
export const withSchemaLine = (hasFile: HasFile, kind: FileKind, text: string): string =>
  hasFile(schemaFileOf(kind)) ? schemaLine(kind) + text : text;

/** The text without that line: what a file says is the same with it and without. */
export const withoutSchemaLine = (text: string): string =>
  text.replace(/^# yaml-language-server: [^\n]*\n/u, '');
