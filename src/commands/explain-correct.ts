/** How a correction of a tank was worked out. Loaded only by `--explain`. */

import type { TankReadings } from '../calc/correction/tank.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { massWords } from '../calc/parts-words.ts';
import { citeAcids } from '../calc/solution/cite-acids.ts';
import { startWorking } from '../calc/working.ts';
import { measuredTolerances } from '../reference/aim-tolerances.ts';
import type { Explanation } from './command.ts';
import type { Corrected } from './correct-page.ts';

export function correctExplanation({ read, aim, now, full, massGrams, acids }: Corrected): Explanation {
  const { working, record } = startWorking();
  citeAcids(
    acids.map((acid) => ({ acid })),
    working,
  );
  const shown = ({ brix, acid, ph }: TankReadings): string =>
    `Brix ${numberText(brix, 4)}, acid ${numberText(acid, 4)} g/L${ph === undefined ? '' : `, pH ${ph.toFixed(2)}`}`;
  const measured = [
    ...(read.brix === undefined ? [] : [`Brix ${numberText(read.brix, 4)}`]),
    ...(read.acid === undefined ? [] : [`acid ${numberText(read.acid, 4)} g/L`]),
    ...(read.ph === undefined ? [] : [`pH ${numberText(read.ph, 3)}`]),
  ];
  const practice = (purpose: string, source: string) => ({ for: purpose, source, fromMemory: false });
  return {
    working: [
      {
        equation:
          'sugar, acid and water moved until the tank shows what was read; the salt where a pH is left over; the rest as weighed',
        numbers: `read ${measured.join(', ')}: reckoned ${shown(now)}`,
      },
      { equation: 'the aim, reckoned in the same way from the plan', numbers: shown(aim) },
      {
        equation: 'k = largest of present / planned; add = k x planned - present',
        numbers: `${massWords(massGrams)} x ${trimmedNumber(full.growth, 6)} = ${massWords(massGrams * full.growth)}; ${full.additions.length === 0 ? 'nothing to add (0 g)' : full.additions.map(({ name, addGrams }) => `${trimmedNumber(addGrams, 4)} g of ${name}`).join(', ')}`,
      },
      {
        equation: 'allowed for a reading before it says anything',
        numbers: `${measuredTolerances.brix.words}; ${measuredTolerances.acid.words}`,
      },
    ],
    sources: [
      practice('density of sugar solutions', 'icumsa-sucrose-density'),
      practice('index of sugar solutions', 'icumsa-1974'),
      { for: 'acid on a refractometer', source: 'stevens-baier-1939', fromMemory: true },
      practice('acid hydrogens that a titration counts', 'citrus-titration'),
      practice('how near a reading of brix must lie', measuredTolerances.brix.source),
      practice('how near a reading of acid must lie', measuredTolerances.acid.source),
      ...(now.ph === undefined ? [] : record.citations),
    ],
    restsOn: ['correct', ...(now.ph === undefined ? [] : ['ph'])],
  };
}
