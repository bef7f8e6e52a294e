import { fail } from '../../problem.ts';
import { answered } from '../answered.ts';
import type { Worked } from '../calculator.ts';
import type { ClarityGiven } from '../calculators/clarity.ts';
import { numberText } from '../number-text.ts';
import type { Working } from '../working.ts';
import { mie } from './mie.ts';

/** One sphere alone. */
export function workMie(given: ClarityGiven, working: Working): Worked {
  const { sizeParameter, index } = given;
  if (sizeParameter === undefined)
    return fail('missing', '--size-parameter is needed', 'give pi x diameter / wavelength in the medium');
  if (index === undefined)
    return fail('missing', '--index is needed', 'give n or n+ki, such as 1.1 or 1.33+1e-5i');
  const { qExt, qSca, qAbs, g } = answered(mie({ sizeParameter, index }));
  working.cite('scattering of spheres', 'bohren-huffman-1983', true);
  working.line('Q_ext = (2/x^2) sum of (2n+1) Re(a_n + b_n)', numberText(qExt, 8));
  working.line('Q_sca = (2/x^2) sum of (2n+1)(|a_n|^2 + |b_n|^2)', numberText(qSca, 8));
  return { found: { qExt, qSca, qAbs, g: g ?? null } };
}
