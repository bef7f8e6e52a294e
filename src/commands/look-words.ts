/** Looks as they are typed: `clear`, `"clear, ring"`. */

import { type Look, looks } from '../ledger/cards.ts';
import type { Fault } from '../problem.ts';
import { nearestNames } from '../reference/name.ts';

export interface TypedLooks {
  readonly looks: readonly Look[];
  readonly faults: readonly Fault[];
}

/** Reads words with commas between; each that is no look is a fault of its own. */
export function readLooks(texts: readonly string[]): TypedLooks {
  const words = texts
    .flatMap((text) => text.split(','))
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== '');
  const known = words.flatMap((word) => looks.find((look) => look === word) ?? []);
  const unknown = words.filter((word) => !looks.some((look) => look === word));
  const isEmpty = words.length === 0;
  return { looks: [...new Set(known)], faults: [...unknown.map(notALook), ...(isEmpty ? [noLook] : [])] };
}

const noLook: Fault = { code: 'empty', message: 'nothing stands there', hint: `say ${looks.join(', ')}` };

function notALook(word: string): Fault {
  const [near] = nearestNames(word, looks, 1);
  return {
    code: 'unknown-look',
    message: `"${word}" is not a look`,
    hint: near === undefined ? `say ${looks.join(', ')}` : `did you mean ${near}?`,
  };
}
