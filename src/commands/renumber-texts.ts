/** The texts of the ledger once a trial has another number. */

import type { TrialCard } from '../ledger/cards.ts';
import type { Change } from '../ledger/land.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { type Reference, withNumber } from '../ledger/references.ts';
import type { Settled } from './renumber-places.ts';

/** The file under its new number, as many digits wide; a name without a number gets one. */
export function renamed(file: string, to: number): string {
  const [folder, name] = [file.slice(0, file.lastIndexOf('/') + 1), file.slice(file.lastIndexOf('/') + 1)];
  const digits = /^\d+/u.exec(name)?.[0] ?? '';
  const number = String(to).padStart(digits === '' ? 4 : digits.length, '0');
  return folder + (digits === '' ? `${number}-${name}` : number + name.slice(digits.length));
}

const ownNumber = (trial: TrialCard): Reference => ({
  to: 'trial',
  key: 'trial',
  name: `${trial.number}`,
  number: trial.number,
  span: trial.numberSpan,
});

/** The number under which a renumbering that was cut off has left the trial a second time. */
export function halfMovedTo({ trials, documents }: Ledger, trial: TrialCard): number | undefined {
  const textOf = (file: string): string => documents.get(file)?.source.text ?? '';
  return trials.find(
    ({ file, number }) =>
      file !== trial.file &&
      file === renamed(trial.file, number) &&
      textOf(file) === withNumber(textOf(trial.file), [ownNumber(trial)], number),
  )?.number;
}

/** The moved file, everything that refers to it, and last the old file taken away. */
export function changesFor(
  ledger: Ledger,
  trial: TrialCard,
  to: number,
  { moving }: Settled,
): readonly Change[] {
  const own = ownNumber(trial);
  const byFile = new Map<string, Reference[]>();
  for (const { file, reference } of moving) byFile.set(file, [...(byFile.get(file) ?? []), reference]);
  const textOf = (file: string): string => ledger.documents.get(file)?.source.text ?? '';
  const others = [...byFile]
    .filter(([file]) => file !== trial.file)
    .map(([file, references]) => ({
      path: file,
      before: textOf(file),
      after: withNumber(textOf(file), references, to),
    }));
  const before = textOf(trial.file);
  const after = withNumber(before, [own, ...(byFile.get(trial.file) ?? [])], to);
  const file = renamed(trial.file, to);
  if (file === trial.file) return [{ path: file, before, after }, ...others];
  return [
    // A renumbering that was cut off has left it there.
    { path: file, before: textOf(file) === after ? after : undefined, after },
    ...others,
    { path: trial.file, before, after: undefined },
  ];
}
