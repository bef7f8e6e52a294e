/** A problem as one line: `file:line:column: what is wrong; what to do`, as fixtures and tests compare it. */

import type { Problem } from '../../../src/problem.ts';

export function problemLine({ place, severity, message, hint }: Problem): string {
  const where = place ? `${place.file}:${place.line}:${place.column}: ` : '';
  return `${where}${severity === 'warning' ? 'warning: ' : ''}${message}; ${hint}`;
}
