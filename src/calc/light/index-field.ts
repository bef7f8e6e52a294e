/** A relative refractive index as it is typed: `1.5`, `1.33+1e-5i`, `conductor`. */

import { type Parsed, parsed, refused } from '../../problem.ts';
import { type Field, fieldOfOne } from '../fields.ts';
import { numberPattern, parseNumber } from '../number.ts';
import type { RelativeIndex } from './mie-coefficients.ts';

const complex = new RegExp(`^(${numberPattern})\\s*([+-])\\s*(${numberPattern})\\s*[ij]$`, 'u');
const conductorWord = 'conductor';

/**
 * Input     `n`, or `n+ki` where a positive k absorbs; numbers may carry an exponent; `conductor` for a perfect one
 * Refuses   anything else; `n-ki`, with the mend
 * Example   parseRelativeIndex('1.33+1e-5i') -> { n: 1.33, k: 0.00001 }
 */
export function parseRelativeIndex(text: string): Parsed<RelativeIndex> {
  const typed = text.trim();
  if (typed.toLowerCase() === conductorWord) return parsed('perfect conductor');
  const [, real = '', sign, imaginary = ''] = complex.exec(typed) ?? [];
  if (sign === '-')
    return refused(
      'signed-number',
      `"${typed}" has a negative imaginary part`,
      `write ${real}+${imaginary}i: a positive one absorbs here`,
    );
  if (sign === '+') {
    const [n, k] = [parseNumber(real), parseNumber(imaginary)];
    if (!n.ok) return n;
    return k.ok ? parsed({ n: n.value, k: k.value }) : k;
  }
  if (/[ij]$/u.test(typed))
    return refused(
      'not-a-number',
      `"${typed}" is not a refractive index`,
      'write n or n+ki, such as 1.33+1e-5i',
    );
  const plain = parseNumber(typed);
  return plain.ok ? parsed({ n: plain.value, k: 0 }) : plain;
}

export const relativeIndexField = ({ help }: { readonly help: string }): Field<RelativeIndex | undefined> =>
  fieldOfOne<RelativeIndex>(
    { help, placeholder: 'INDEX', isAmount: false },
    parseRelativeIndex,
    relativeIndexText,
    relativeIndexText,
  );

function relativeIndexText(index: RelativeIndex): string {
  if (index === 'perfect conductor') return conductorWord;
  return index.k === 0 ? String(index.n) : `${index.n}+${index.k}i`;
}
