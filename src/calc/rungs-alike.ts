/** Whether beakers were made alike, and which of them was not, in what. */

/** One thing that was the same or not: its figure where it has one, and how it reads. */
export interface AlikeFact {
  readonly what: string;
  readonly kind: 'temperature' | 'time' | 'stirring' | 'share' | 'word';
  /** In C, s, rpm or a mass fraction; left out for a word, or where nobody wrote it. */
  readonly value?: number | undefined;
  /** As it is shown; empty where nobody wrote it. */
  readonly text: string;
}

export interface Made {
  readonly trial: number;
  readonly facts: readonly AlikeFact[];
}

export interface Difference {
  readonly trial: number;
  readonly what: string;
  readonly text: string;
  /** What most of the others have. */
  readonly others: string;
}

/** Temperatures in C may differ by so much. */
export const mostDegrees = 5;
/** Times and stirring by so great a part of the larger. */
export const mostPart = 0.25;
/** Shares that are to be kept, the same way: five times a usual weighing. */
export const mostShare = 0.05;

/**
 * Formula   temperatures within 5 C; times and stirring within a quarter of the larger; shares within 5 % of the
 *           larger; words the same
 */
export function isAlike(one: AlikeFact, other: AlikeFact): boolean {
  const [a, b] = [one.value, other.value];
  if (a === undefined || b === undefined) return one.text === other.text;
  const apart = Math.abs(a - b);
  const slack = 1e-9 * Math.max(Math.abs(a), Math.abs(b));
  if (one.kind === 'temperature') return apart <= mostDegrees + slack;
  const part = one.kind === 'share' ? mostShare : mostPart;
  return apart <= part * Math.max(Math.abs(a), Math.abs(b)) + slack;
}

/**
 * How the beakers were meant to be made.
 *
 * Formula   for each fact, the one that most agree with; of several the commonest, then the first
 * Input     the facts of each beaker
 * Output    one fact each
 */
export function meantFacts(made: readonly Made[]): readonly AlikeFact[] {
  const whats = [...new Set(made.flatMap(({ facts }) => facts.map(({ what }) => what)))];
  return whats.map((what) => {
    const kinds = new Map<string, { readonly fact: AlikeFact; count: number }>();
    for (const one of made) {
      const fact = factOf(one, what);
      const kind = kinds.get(fact.text);
      if (kind) kind.count += 1;
      else kinds.set(fact.text, { fact, count: 1 });
    }
    const all = [...kinds.values()];
    const scored = all.map(({ fact, count }) => ({
      fact,
      count,
      agreeing: all.reduce((sum, other) => sum + (isAlike(fact, other.fact) ? other.count : 0), 0),
    }));
    const [best] = scored.sort((one, other) => other.agreeing - one.agreeing || other.count - one.count);
    return best?.fact ?? unwritten(what);
  });
}

const unwritten = (what: string): AlikeFact => ({ what, kind: 'word', text: '' });

const factOf = ({ facts }: Made, what: string): AlikeFact =>
  facts.find((one) => one.what === what) ?? unwritten(what);

/**
 * What sets single beakers apart from the rest.
 *
 * Formula   those that do not agree with how it was meant (`meantFacts`)
 * Input     the facts of each beaker
 * Output    one entry a beaker and fact, by trial; none where all were made alike
 */
export function differences(made: readonly Made[]): readonly Difference[] {
  const meant = meantFacts(made);
  return made
    .flatMap((one) =>
      meant.flatMap((fact) => {
        const own = factOf(one, fact.what);
        if (isAlike(own, fact)) return [];
        const text = own.text || 'not written';
        return [{ trial: one.trial, what: fact.what, text, others: fact.text || 'not written' }];
      }),
    )
    .sort((one, other) => one.trial - other.trial);
}
