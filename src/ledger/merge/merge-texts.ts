/**
 * Three versions of a file of the ledger to one, on what they say and not on their lines. Every byte of the merged
 * text comes from one of the sides; what both touched is left for a person, and nothing is left out.
 */

import { type Page, pageOf } from '../edit-page.ts';
import { parseDocument } from '../parse.ts';
import { entryOf, type TreeNode, valueUnder } from '../tree.ts';
import { changesBetween, type SideChange } from './changes.ts';
import type { Manner, Versions } from './identity.ts';
import { laid, mergedLayout, relaid } from './layout.ts';
import { mergedBlock, pathText, type Together } from './merge-units.ts';
import { type Conflict, conflictPieces, conflictsIn, type Labels, type Piece, piecesText } from './pieces.ts';
import type { Unit } from './unit.ts';
import { unitsOf } from './units-of.ts';

export interface MergeRequest {
  /** For problems only. */
  readonly file: string;
  readonly texts: Versions<string>;
  readonly labels: Labels;
  readonly timeOf: (text: string) => number | undefined;
  /** What is wrong with a text of this kind, apart from its syntax; left out, nothing is looked at. */
  readonly faultsOf?: (text: string) => readonly MergeFault[];
}

/** Something that is wrong, at a path from the root of the file. */
export interface MergeFault {
  readonly code: string;
  readonly message: string;
  readonly path: readonly string[];
}

export interface MergedText {
  readonly state: 'clean' | 'conflict';
  readonly text: string;
  readonly conflicts: readonly Conflict[];
  readonly changes: { readonly ours: readonly SideChange[]; readonly theirs: readonly SideChange[] };
  readonly together: readonly Together[];
  /** What the merged text would have been wrong in, although neither side was. */
  readonly broken: readonly MergeFault[];
}

/** A version that can't be taken apart: not YAML, or laid out as nobody lays it out. */
export interface NotMerged {
  readonly state: 'not merged';
  readonly version: keyof Versions<unknown>;
}

interface Version {
  readonly page: Page;
  readonly units: readonly Unit[];
  readonly manner: Manner;
}

/**
 * Merges.
 * Input     the common version, ours and theirs; how times are read; what to look at in the merged text
 * Output    the text, with conflicts in git's markers; or which version can't be taken apart
 */
export function mergeTexts(request: MergeRequest): MergedText | NotMerged {
  const { file, texts, timeOf } = request;
  const bodies = { base: laid(texts.base), ours: laid(texts.ours), theirs: laid(texts.theirs) };
  const version = (side: keyof typeof bodies): Version | undefined =>
    versionOf(file, bodies[side].body, timeOf);
  const base = texts.base === '' ? emptyVersion(file, timeOf) : version('base');
  if (!base) return { state: 'not merged', version: 'base' };
  const ours = version('ours');
  if (!ours) return { state: 'not merged', version: 'ours' };
  const theirs = version('theirs');
  if (!theirs) return { state: 'not merged', version: 'theirs' };
  const versions = { base, ours, theirs };
  const layout = mergedLayout(bodies.base.layout, bodies.ours.layout, bodies.theirs.layout);
  const settled = settledPieces(versions, request);
  const conflicts = conflictsIn(settled.pieces);
  return {
    state: conflicts.length === 0 ? 'clean' : 'conflict',
    text: relaid(piecesText(settled.pieces, request.labels), layout),
    conflicts,
    changes: { ours: changesOf(base, ours), theirs: changesOf(base, theirs) },
    together: settled.together,
    broken: settled.broken,
  };
}

function versionOf(file: string, text: string, timeOf: Manner['timeOf']): Version | undefined {
  const read = pageOf(parseDocument(file, text));
  const units = read.ok ? unitsOf(read.page) : undefined;
  if (!read.ok || !units) return undefined;
  return { page: read.page, units, manner: { timeOf, firstSample: firstSampleOf(read.page.root) } };
}

/** A file that both sides made. */
const emptyVersion = (file: string, timeOf: Manner['timeOf']): Version => ({
  page: { file, text: '', root: { kind: 'map', entries: [], flow: false, start: 0, end: 0 }, warnings: 0 },
  units: [],
  manner: { timeOf, firstSample: '' },
});

/** The first sample listed; where none is, the last stage. */
function firstSampleOf(root: TreeNode): string {
  const names = (key: string): readonly string[] => {
    const map = valueUnder(root, key);
    return map?.kind === 'map' ? map.entries.map((entry) => entry.key.text) : [];
  };
  return entryOf(root, 'samples') ? (names('samples')[0] ?? '') : (names('stages').at(-1) ?? '');
}

const changesOf = (base: Version, side: Version): readonly SideChange[] =>
  changesBetween(
    { units: base.units, form: 'map', manner: base.manner },
    { units: side.units, form: 'map', manner: side.manner },
  );

interface Settled {
  readonly pieces: readonly Piece[];
  readonly together: readonly Together[];
  readonly broken: readonly MergeFault[];
}

const mostRounds = 4;

/** Merges; where what comes out is wrong and neither side was, what does not fit together is left apart. */
function settledPieces(versions: Versions<Version>, request: MergeRequest): Settled {
  const apart = new Set<string>();
  const broken: MergeFault[] = [];
  for (let round = 0; round < mostRounds; round += 1) {
    const { pieces, together } = piecesOf(versions, apart);
    if (!pieces) break;
    if (conflictsIn(pieces).length > 0) return { pieces, together, broken };
    const wrong = newFaults(versions, piecesText(pieces, request.labels), request);
    if (wrong.length === 0) return { pieces, together, broken };
    broken.push(...wrong);
    const paths = wrong.flatMap(({ path }) => (path.length === 0 ? [] : [pathText(path)]));
    if (paths.length === 0 || paths.every((path) => apart.has(path))) break;
    for (const path of paths) apart.add(path);
  }
  return { pieces: wholeConflict(versions), together: [], broken };
}

function piecesOf(
  { base, ours, theirs }: Versions<Version>,
  apart: ReadonlySet<string>,
): { readonly pieces: readonly Piece[] | undefined; readonly together: readonly Together[] } {
  const together: Together[] = [];
  const manner = { base: base.manner, ours: ours.manner, theirs: theirs.manner };
  const units = { base: base.units, ours: ours.units, theirs: theirs.units };
  const spot = { path: [], column: 0, isInline: false };
  return { pieces: mergedBlock(units, 'map', spot, { manner, apart, together }), together };
}

const wholeConflict = ({ ours, theirs }: Versions<Version>): readonly Piece[] =>
  conflictPieces({
    ours: ours.page.text,
    theirs: theirs.page.text,
    path: [],
    why: 'does not fit together',
  });

/** What is wrong with the merged text in a way in which neither side is. */
function newFaults(
  { ours, theirs }: Versions<Version>,
  text: string,
  { file, faultsOf }: MergeRequest,
): readonly MergeFault[] {
  const read = pageOf(parseDocument(file, text));
  if (!read.ok) return read.problems.map(({ code, message }) => ({ code, message, path: [] }));
  if (read.page.warnings > ours.page.warnings + theirs.page.warnings)
    return [{ code: 'not-as-before', message: 'it would read as something else', path: [] }];
  if (!faultsOf) return [];
  const name = ({ code, path }: MergeFault): string => `${code} ${pathText(path)}`;
  const known = new Set([...faultsOf(ours.page.text), ...faultsOf(theirs.page.text)].map(name));
  return faultsOf(text).filter((fault) => !known.has(name(fault)));
}
