/** The hint after a name that is not there: what there is, and what can't be read. */

export interface There {
  /** `formulas` */
  readonly kind: string;
  readonly names: readonly string[];
  /** Files of that kind that hold no name that could be read. */
  readonly unread: readonly string[];
  /** Said where there is no such file at all. */
  readonly none: string;
}

const most = 8;

export function thereWords({ kind, names, unread, none }: There): string {
  if (names.length === 0 && unread.length === 0) return none;
  const shown = unread.slice(0, 2).join(' and ');
  const more = unread.length > 2 ? ` and ${unread.length - 2} more` : '';
  const lost = unread.length === 0 ? '' : `${shown}${more} can't be read: neckring check says why`;
  if (names.length === 0) return lost;
  const known = `the ${kind} here are ${names.slice(0, most).join(', ')}`;
  return lost === '' ? known : `${known}; ${lost}`;
}
