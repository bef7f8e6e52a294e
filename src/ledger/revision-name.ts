/** `orange cardamom@v2`, `14@HEAD~3`: what is named, and the git revision at which it is meant. */

import { fail } from '../problem.ts';

export interface RevisionName {
  readonly name: string;
  /** As typed after the `@`; absent where the files as they stand are meant. */
  readonly revision: string | undefined;
}

/**
 * Parts a name from its revision: at the first `@` without a space beside it.
 *
 * Input     what was typed; whether a file is at a path, so that paths may hold an `@` themselves
 * Output    the name, and the revision if one was typed
 * Refuses   an empty revision, one that begins with `-`, or that names a file inside a revision
 * Example   splitRevision('14@HEAD~3', () => false) -> 14, HEAD~3
 */
export function splitRevision(typed: string, isFile: (path: string) => boolean): RevisionName {
  const whole = { name: typed, revision: undefined };
  const places = placesOf(typed);
  if (places.length === 0 || isFile(typed)) return whole;
  const at = places.find((place) => isFile(typed.slice(0, place))) ?? places[0];
  if (at === undefined) return whole;
  return { name: typed.slice(0, at), revision: checkedRevision(typed.slice(at + 1), typed) };
}

const placesOf = (typed: string): readonly number[] =>
  [...typed.matchAll(/(?<=\S)@(?!\s)/gu)].map(({ index }) => index);

/** A revision that git can be asked for and that can be no option of git's. */
export function checkedRevision(revision: string, typed = revision): string {
  const examples = 'name a tag, a branch or a commit, such as @v2, @HEAD~3 or @3f2a1bc';
  if (revision === '') return fail('no-revision', `"${typed}" names no revision after the @`, examples);
  const inBraces = revision.replace(/\{[^}]*\}/gu, '');
  const isOdd = [...revision].some((character) => character < ' ' || character === '\u007f');
  if (revision.startsWith('-') || inBraces.includes(':') || isOdd)
    return fail('bad-revision', `"${revision}" can be no revision`, examples);
  return revision;
}
