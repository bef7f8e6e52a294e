/** What the lines of `contains` come to, as mass fractions of the solution. */

import type { BookEntry, BookFault, OwnContent } from '../book.ts';
import { trimmedNumber } from '../number-text.ts';
import type { Amount, Dimension } from '../quantity.ts';
import { sum } from '../sum.ts';

type ContentFault = Pick<BookFault, 'code' | 'message' | 'hint' | 'content'>;

export interface ContentsInput {
  /** Of the solution. */
  readonly name: string;
  /** g/mL of the solution, where it is known. */
  readonly density: number | undefined;
  readonly contents: readonly (OwnContent & { readonly entry: BookEntry | undefined })[];
}

/** A share of the whole; a weight beside other weights; a part beside other parts; or the rest. */
interface Line {
  readonly kind: 'share' | 'weight' | 'part' | 'rest';
  readonly value: number;
}

/** Shares alone may miss the whole by this. */
const WHOLE = 1e-3;

/**
 * The share of each content.
 *
 * Formula   share w; concentration c / rho; v/v phi rho_i / rho; mol/L c M / rho; masses and parts over their sum, masses
 *           beside shares over what the shares leave; rest = 1 - sum of the others
 * Input     amounts; the density of the solution in g/mL where concentrations are given
 * Output    mass fractions that add up to 1, in order; faults where they can't
 * Refuses   a concentration without the density, two rests, rest beside masses, parts beside others, over or under 100 %
 */
export function contentShares(input: ContentsInput): {
  readonly shares: readonly number[];
  readonly faults: readonly ContentFault[];
} {
  const faults: ContentFault[] = [];
  const lines = input.contents.map(({ amount, ...content }, index): Line => {
    if (amount === 'rest') return { kind: 'rest', value: 0 };
    const line = lineOf(amount, { ...content, density: input.density, solution: input.name });
    if ('kind' in line) return line;
    faults.push({ ...line, content: index });
    return { kind: 'share', value: 0 };
  });
  if (faults.length > 0) return { shares: [], faults };
  const fault = togetherFault(lines, input);
  if (fault) return { shares: [], faults: [fault] };
  const shares = settled(lines);
  const total = sum(shares);
  return { shares: shares.map((share) => share / total), faults: [] };
}

const of = (lines: readonly Line[], kind: Line['kind']): number =>
  sum(lines.map((line) => (line.kind === kind ? line.value : 0)));

const has = (lines: readonly Line[], kind: Line['kind']): boolean => lines.some((line) => line.kind === kind);

function settled(lines: readonly Line[]): readonly number[] {
  const left = Math.max(0, 1 - of(lines, 'share'));
  const weights = of(lines, 'weight') + of(lines, 'part');
  return lines.map(({ kind, value }) => {
    if (kind === 'share') return value;
    return kind === 'rest' ? left : (value / weights) * left;
  });
}

function togetherFault(lines: readonly Line[], { name }: ContentsInput): ContentFault | undefined {
  const shares = of(lines, 'share');
  const percent = `${trimmedNumber(shares * 100, 5)} %`;
  const firstPart = lines.findIndex(({ kind }) => kind === 'part');
  if (firstPart >= 0 && lines.some(({ kind }) => kind !== 'part')) {
    const message = `${name} contains parts beside other amounts`;
    return { code: 'parts-mixed', message, hint: 'give all of them in parts, or none', content: firstPart };
  }
  const rests = lines.flatMap(({ kind }, index) => (kind === 'rest' ? [index] : []));
  if (rests[1] !== undefined) {
    const message = `${name} has two lines that are the rest`;
    return { code: 'two-rests', message, hint: 'give one of them an amount', content: rests[1] };
  }
  if (rests[0] !== undefined && has(lines, 'weight')) {
    const message = `${name} has a rest beside masses, and nothing says how much it is in all`;
    return { code: 'rest-beside-masses', message, hint: 'give the rest as a mass too', content: rests[0] };
  }
  const isOpen = rests[0] !== undefined || has(lines, 'weight') || has(lines, 'part');
  if (has(lines, 'weight') || has(lines, 'part')) {
    if (of(lines, 'weight') + of(lines, 'part') === 0) {
      return { code: 'empty-contains', message: `${name} comes to 0 g`, hint: 'give an amount above 0' };
    }
  }
  if (shares > 1 + (isOpen ? 1e-9 : WHOLE)) {
    const hint = 'take them down, so that they come to 100 %';
    return {
      code: 'shares-over',
      message: `the contents of ${name} come to ${percent}`,
      hint,
      content: lines.length - 1,
    };
  }
  if (isOpen || shares >= 1 - WHOLE) return undefined;
  const message = `the contents of ${name} come to ${percent}, not 100 %`;
  return {
    code: 'not-whole',
    message,
    hint: 'add the balance, such as water: rest',
    content: lines.length - 1,
  };
}

interface ContentContext {
  readonly name: string;
  readonly entry: BookEntry | undefined;
  readonly density: number | undefined;
  readonly solution: string;
}

type Words = Pick<ContentFault, 'code' | 'message' | 'hint'>;

const wholeNames: Readonly<Partial<Record<Dimension, Line['kind']>>> = {
  mass: 'weight',
  volume: 'weight',
  drops: 'weight',
  parts: 'part',
};

function lineOf(amount: Amount, context: ContentContext): Line | Words {
  const { dimension, inner } = amount.quantity;
  if (amount.makeUp || amount.inDrink) return misplaced(amount, context);
  const perUnit = gramsPerUnit(amount, context);
  if (typeof perUnit !== 'number') return perUnit;
  const kind = wholeNames[dimension];
  if (kind) return { kind, value: inner * perUnit };
  if (dimension === 'share') return { kind: 'share', value: inner };
  if (context.density === undefined) return noDensity(amount, context);
  return { kind: 'share', value: (inner * perUnit) / context.density };
}

/** What one inner unit of the amount weighs, in g. */
function gramsPerUnit(amount: Amount, { entry, name }: ContentContext): number | Words {
  const figures = entry?.record.figures;
  const written = `"${amount.written}" of ${name}`;
  switch (amount.quantity.dimension) {
    case 'mass':
    case 'parts':
    case 'share':
    case 'share w/v':
    case 'mass per volume':
      return 1;
    case 'volume':
    case 'share v/v':
    case 'volume per volume': {
      const message = `${written} is a volume, and no density of it is known`;
      const hint = `add a density to ${name}, such as density: 1.02 g/mL, or give a mass`;
      return figures?.density?.value ?? { code: 'no-density', message, hint };
    }
    case 'drops': {
      const message = `${written}, and nobody weighed a drop of it`;
      return (
        entry?.dropGrams ?? {
          code: 'no-drop-mass',
          message,
          hint: `add drop: 0.030 g to ${name}, or give a mass`,
        }
      );
    }
    case 'moles per volume': {
      const message = `${written} is in moles, and no molar mass of it is known`;
      const hint = `add a molar mass to ${name}, such as molar mass: 192.12 g/mol, or give g/L`;
      return figures?.['molar mass']?.value ?? { code: 'no-molar-mass', message, hint };
    }
    default:
      return {
        code: 'wrong-kind',
        message: `${written} is no share of a solution`,
        hint: 'give a share such as 4 %, a mass or parts',
      };
  }
}

function noDensity(amount: Amount, { solution, name }: ContentContext): Words {
  const message = `"${amount.written}" of ${name} goes by volume, and the density of ${solution} is not known`;
  return {
    code: 'no-density',
    message,
    hint: `add density: 1.02 g/mL to ${solution}, or give a share such as 4 %`,
  };
}

function misplaced(amount: Amount, { name }: ContentContext): Words {
  const message = `"${amount.written}" of ${name} does not say what share it is`;
  const hint = amount.makeUp ? `write ${name}: rest` : 'give a share, such as 4 %';
  return { code: 'wrong-kind', message, hint };
}
