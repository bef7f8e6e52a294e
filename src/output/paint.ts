/** Colour, decided by the caller. Nothing is ever said by colour alone. */

import { Chalk } from 'chalk';
import type { Tone } from './view.ts';

export type Paint = (tone: Tone, text: string) => string;

export function colourPaint(): Paint {
  const chalk = new Chalk({ level: 1 });
  const tones: Readonly<Record<Tone, (text: string) => string>> = {
    plain: (text) => text,
    strong: chalk.bold,
    faint: chalk.dim,
    good: chalk.green,
    bad: chalk.red,
    warn: chalk.yellow,
  };
  return (tone, text) => (text === '' ? text : tones[tone](text));
}
