/** How what is said of a key is written down beside the shapes: in plain words, what it holds, examples. */

import type { Holds } from './json-schema-leaf.ts';

export interface Said {
  readonly says: string;
  readonly holds: Holds;
  readonly examples: readonly string[];
  /** What stands under each name of one's own, where such names stand under the key. */
  readonly each?: Said;
  /** Such names that mean something to the tool. */
  readonly known?: KeysSaid;
}

/** By key; under `*` what stands under a name of one's own. */
export interface KeysSaid {
  readonly [key: string]: Said;
}

export const said = (says: string, holds: Holds = 'words', ...examples: readonly string[]): Said => ({
  says,
  holds,
  examples,
});

/** A key with names of one's own under it. */
export const namesSaid = (says: string, each: Said, known: KeysSaid = {}): Said => ({
  says,
  holds: 'words',
  examples: [],
  each,
  known,
});
