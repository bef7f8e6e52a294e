/** What each source is used for. Loaded only by `sources` and by `--explain`. */

/** Constants of one kind with what they are, where they hold, and the commands that rest on them. */
export interface Shelf {
  /** `density of water`; a star stands for the row of a table: `constants of * acid`. */
  readonly what: string;
  /** A constant, or a table of them; each has its source beside it. */
  readonly of: object;
  /** Where the source says that it holds; a range of a row stands in `ranges`. */
  readonly range?: string;
  readonly ranges?: Readonly<Record<string, string>>;
  readonly by: readonly string[];
  /** Those of them of which every answer rests on it. */
  readonly always?: readonly string[];
}

/** One figure, or one law, with its source. */
export interface Use {
  readonly what: string;
  /** Of a figure of an ingredient: which, and of what. */
  readonly figure?: { readonly name: string; readonly of: string };
  /** A key of the bibliography, or words. */
  readonly source: string;
  readonly locator?: string;
  readonly fromMemory: boolean;
  /** Absent where no source states one. */
  readonly range?: string;
  readonly by: readonly string[];
  readonly always?: readonly string[];
}

/** The figures of a shelf, each once. */
export function usesOn(shelf: Shelf): readonly Use[] {
  const { what, range, ranges, by, always } = shelf;
  const uses = sourced(shelf.of, '').map(({ row, source, locator, fromMemory }): Use => {
    const rowRange = ranges?.[row] ?? range;
    return {
      ...{ what: what.replace('*', row), source, fromMemory, by },
      ...(locator === undefined ? {} : { locator }),
      ...(rowRange === undefined ? {} : { range: rowRange }),
      ...(always === undefined ? {} : { always }),
    };
  });
  return uses.filter(
    (one, at) =>
      uses.findIndex(({ what: other, source }) => other === one.what && source === one.source) === at,
  );
}

interface Sourced {
  readonly row: string;
  readonly source: string;
  readonly locator: string | undefined;
  readonly fromMemory: boolean;
}

/** Everything that names a source, by the row of the table in which it stands. */
function sourced(of: object, row: string): readonly Sourced[] {
  const facts = new Map<string, unknown>(Object.entries(of));
  const [source, locator] = [facts.get('source'), facts.get('locator')];
  if (typeof source === 'string') {
    const place = typeof locator === 'string' ? locator : undefined;
    return [{ row, source, locator: place, fromMemory: isRemembered(of) }];
  }
  return [...facts].flatMap(([key, value]) =>
    typeof value === 'object' && value !== null ? sourced(value, row === '' ? key : row) : [],
  );
}

/** A figure from memory, or one of several points that is. */
function isRemembered(of: object): boolean {
  const facts = new Map<string, unknown>(Object.entries(of));
  if (facts.get('fromMemory') === true || facts.get('read') === 'from memory') return true;
  const points = facts.get('points');
  return Array.isArray(points) && points.some((one) => typeof one === 'object' && isRemembered(one));
}
