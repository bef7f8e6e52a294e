/** A module that is loaded only where somebody asks for what it does. */

import { fail } from '../problem.ts';

export interface Late<T> {
  readonly load: () => Promise<void>;
  /** What was loaded; refused where nobody did. */
  readonly get: () => T;
}

export function late<T>(load: () => Promise<T>): Late<T> {
  let loaded: T | undefined;
  return {
    load: async () => {
      loaded ??= await load();
    },
    get: () => loaded ?? fail('work-not-loaded', 'what this asks for is not loaded', 'run the command again'),
  };
}
