/** The texts of new files: the only ones that the tool lays out itself. */

import { type Fact, factLines } from './fact-text.ts';

export interface NewTrial {
  readonly number: number;
  readonly facts: readonly Fact[];
  /** The `stages` and `samples` of another trial as they are typed there. */
  readonly copied?: string | undefined;
}

const emptyStages = `stages:
  emulsion:
    # in the order of addition, amounts as number and unit, for example
    #   - sweet orange oil: 2 g
    #   - polysorbate 80: 6 g
    #   - water: to 50 g
`;

export function newTrialText({ number, facts, copied }: NewTrial): string {
  return `${factLines([['trial', String(number)], ...facts], 0).join('\n')}\n${copied ?? emptyStages}`;
}

/** The plain letters and digits of a text, as the name of a file: `cold-glass`. */
export const nameWords = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 48)
    .replace(/^-|-$/g, '');

/** `0014-orange-1-to-3.yaml`: the number, then the plain letters and digits of the title. */
export function trialFileName(number: number, title: string | undefined): string {
  const words = nameWords(title ?? '');
  return `${String(number).padStart(4, '0')}${words === '' ? '' : `-${words}`}.yaml`;
}

export const newBenchText = (timeZone: string): string => `ledger: 1
bench:
  time zone: ${timeZone}
  balances:                # finest first; limit is the most that it takes, vessel included
    - division: 0.01 g
      limit: 600 g
  weighing: 1 %            # the relative error that you accept for a weighing
  # drop: 0.030 g          # weigh 20 drops of water from your dropper, divide by 20
  temperature: 20 C
  settle: 1 d              # before this only ring and broken count
  watch: 7 d               # how long a beaker is watched before it has held
  looks:                   # when to look
    - 1 d
    - 2 d
    - 4 d
    - 7 d
  tastes:                  # your own words for scores from 0 to 5
    - soapy
    - bright
    - dull
  margin: 10 %             # how far to back off from the break
`;

export const newIngredientsText = `# Your own ingredients: they add to the built-in ones and override them. For example
#   orange oil lot 2231:
#     like: sweet orange oil
#     density: 0.846 g/mL
#     lot: 2231
#     source: supplier sheet
ingredients: {}
`;
