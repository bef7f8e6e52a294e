/** A chain of dilutions as a page and as JSON. */

import type { Caution, Citation, WorkingLine } from '../calc/answer.ts';
import type { Chain, ChainBench, ChainStep } from '../calc/dilution/chain.ts';
import type { DropCount } from '../calc/dilution/drop-count.ts';
import { minimumWeight } from '../calc/dilution/minimum-weight.ts';
import { leastMass } from '../calc/dilution/weighing.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { massWords, partsWords } from '../calc/parts-words.ts';
import { asShown } from '../calc/weighing/balance.ts';
import { type Envelope, envelope } from '../output/answer-json.ts';
import { cautionBlocks } from '../output/answer-page.ts';
import type { Block, Page } from '../output/view.ts';
import { dropperError } from '../reference/drops.ts';
import { sources as bibliography } from '../reference/sources.ts';
import { minimumWeightRule } from '../reference/weighing.ts';
import type { Explanation } from './command.ts';
import { sourceWords } from './worded-sources.ts';

export interface Diluted {
  readonly of: string;
  readonly chain: Chain;
  readonly bench: ChainBench;
  /** Absent where a chain is only checked. */
  readonly target: number | undefined;
  readonly finalMassGrams: number;
  readonly solvent: string;
  readonly drops: DropCount | undefined;
  readonly objections: readonly string[];
  /** Stocks on the shelf that were not used. */
  readonly leftAside: readonly string[];
  /** What was taken for granted. */
  readonly remarks: readonly string[];
  readonly cautions: readonly Caution[];
  readonly isChecked: boolean;
}

/** More drops than this nobody counts. Common practice, no source. */
const mostDropsCounted = 60;

export function dilutePage(diluted: Diluted): Page {
  const { chain, objections, leftAside, remarks, cautions } = diluted;
  return [
    { kind: 'heading', text: headingOf(diluted) },
    stepsTable(diluted),
    {
      kind: 'table',
      columns: [
        { head: '', align: 'left' },
        { head: '', align: 'left' },
      ],
      rows: figurePairs(diluted),
    },
    ...notesBlock('!', objections, 'warn'),
    ...notesBlock('-', [...remarks, ...leftAside], 'plain'),
    ...(diluted.isChecked || chain.steps.length < 2 ? [] : [nextBlock(diluted)]),
    ...cautionBlocks(cautions),
  ];
}

function notesBlock(mark: string, notes: readonly string[], tone: 'warn' | 'plain'): readonly Block[] {
  return notes.length === 0 ? [] : [{ kind: 'notes', mark, notes, tone }];
}

const stockWords = [
  'straight in',
  'one stock, then the batch',
  'two stocks, then the batch',
  'three stocks, then the batch',
];

function headingOf({ of, chain, finalMassGrams, isChecked }: Diluted): string {
  const stocks = chain.steps.length - 1;
  const way = stockWords[stocks] ?? `${stocks} stocks, then the batch`;
  const head = `${partsWords(chain.finalStrength)} of ${of} in ${massWords(finalMassGrams)}`;
  return isChecked ? `${head}, as typed` : `${head}: ${way}`;
}

const shownDrops = (drops: DropCount | undefined): DropCount | undefined =>
  drops && drops.drops <= mostDropsCounted ? drops : undefined;

function stepsTable({ chain, solvent }: Diluted): Block {
  const last = chain.steps.length - 1;
  const hasVessels = chain.steps.some(({ vessel }) => vessel);
  return {
    kind: 'grid',
    columns: [
      { head: '', align: 'right' },
      { head: 'take', align: 'right' },
      { head: 'of', align: 'left' },
      { head: 'into', align: 'right' },
      { head: 'of', align: 'left' },
      { head: 'gives', align: 'left' },
      ...(hasVessels ? [{ head: 'in', align: 'left' } as const] : []),
    ],
    rows: chain.steps.map((step, at) => [
      String(at + 1),
      massOn(step.takeMassGrams, step.takeDivisionGrams),
      step.take,
      at === last
        ? massWords(step.solventMassGrams)
        : massOn(step.solventMassGrams, step.solventDivisionGrams),
      at === last ? 'the batch' : solvent,
      partsWords(step.strength),
      ...(hasVessels ? [vesselWords(step)] : []),
    ]),
  };
}

/** To the digits of its balance; a typed mass that is finer as it was typed. */
function massOn(grams: number, division: number): string {
  if (!(division > 0)) return massWords(grams);
  const shown = asShown(grams, division);
  const isShown = Math.abs(Number(shown) - grams) <= 1e-9 * grams;
  return `${isShown ? shown : trimmedNumber(grams, 9)} g`;
}

const vesselWords = ({ vessel }: ChainStep): string =>
  vessel ? (vessel.name ?? `${trimmedNumber(vessel.millilitres)} mL`) : '';

function figurePairs({ chain, target, drops, bench }: Diluted): readonly (readonly [string, string])[] {
  const off = target === undefined ? 0 : chain.finalStrength / target - 1;
  const isOff = Math.abs(off) > 5e-5;
  const pairs: (readonly [string, string])[] = [
    ['comes to, as dosed', `${partsWords(chain.finalStrength)}${isOff ? `, ${percent(off)} off` : ''}`],
    [
      'sure to, by the weighings',
      `${percent(chain.relativeUncertainty)} standard, ${percent(2 * chain.relativeUncertainty)} at 95 %`,
    ],
  ];
  if (chain.wasteGrams > 0) pairs.push(['stock left over', massWords(chain.wasteGrams)]);
  const shown = shownDrops(drops);
  if (shown) pairs.push(['the last take as drops', dropWords(shown)]);
  const balances = bench.scales.map((scale) => `${trimmedNumber(scale.divisionGrams)} g`).join(', ');
  if (bench.scales.length > 0) pairs.push(['balances', `${balances}; ${percent(bench.weighing)} a weighing`]);
  return pairs;
}

const percent = (fraction: number): string => `${trimmedNumber(fraction * 100, 2)} %`;

function dropWords({ drops, wholeDrops, deviation, relativeUncertainty, isMeasured }: DropCount): string {
  const off = Math.abs(deviation) > 5e-4 ? `; ${wholeDrops} are ${percent(deviation)} off` : '';
  const spread = isMeasured ? '' : ', not weighed';
  return `${numberText(drops, 3)}${off}; give or take ${percent(relativeUncertainty)}${spread}`;
}

/** What to type to write a stock of this chain on the shelf. */
function nextBlock({ of, chain, solvent }: Diluted): Block {
  const stock = chain.steps.at(-2);
  const strength = partsWords(stock?.strength ?? 0);
  const left = stock ? massWords(stock.takeMassGrams + stock.solventMassGrams) : '';
  const made = solvent === 'solvent' ? 'propylene glycol' : solvent;
  return {
    kind: 'lines',
    lines: [
      'When the last stock is made, write it on the shelf:',
      `  neckring stocks new "${of} ${strength}" --contains "${strength} ${of}" \\`,
      `    --in "${made}" --left "${left}" --keep "90 d"`,
    ],
    tone: 'faint',
  };
}

export function diluteExplanation({ chain, bench, drops }: Diluted): Explanation {
  const steps = chain.steps.map((step, at): WorkingLine => {
    const before = at === 0 ? chain.source.strength : (chain.steps[at - 1]?.strength ?? 1);
    const total = step.takeMassGrams + step.solventMassGrams;
    return {
      equation: `step ${at + 1}: strength = strength of what is taken x taken / all of it`,
      numbers: `${partsWords(before)} x ${trimmedNumber(step.takeMassGrams)} g / ${trimmedNumber(total)} g = ${partsWords(step.strength)}`,
    };
  });
  return {
    working: [
      ...steps,
      {
        equation:
          'u(w)/w = root of the sum over the steps of (added/all)^2 x ((u(taken)/taken)^2 + (u(added)/added)^2)',
        numbers: `u of a weighing = 0.41 of a division: ${percent(chain.relativeUncertainty)} in all; the purity of what it starts from is not in it`,
      },
    ],
    more: [
      { kind: 'heading', text: 'What the balances weigh' },
      { kind: 'lines', lines: bench.scales.map((scale) => scaleWords(scale.divisionGrams, bench)) },
    ],
    sources: citations(drops),
    restsOn: ['dilute'],
  };
}

function scaleWords(divisionGrams: number, bench: ChainBench): string {
  const own = leastMass({ divisionGrams, limitGrams: undefined }, bench.weighing);
  const pharmacopoeia = minimumWeight({ divisionGrams });
  return `  ${trimmedNumber(divisionGrams)} g: ${trimmedNumber(own, 3)} g and up within ${percent(bench.weighing)}; ${trimmedNumber(pharmacopoeia, 3)} g by the 0.10 % rule`;
}

const citations = (drops: DropCount | undefined): readonly Citation[] => [
  { for: 'combined uncertainty', source: cited('jcgm-100#equation 10, F.2.2.1'), fromMemory: false },
  {
    for: 'the 0.10 % rule of the pharmacopoeia',
    source: cited(`${minimumWeightRule.source}#${minimumWeightRule.locator}`),
    fromMemory: false,
  },
  { for: 'largest dilution a step', source: 'common practice, no source', fromMemory: false },
  ...(drops && !drops.isMeasured
    ? [
        {
          for: 'what a dropper is good for',
          source: cited(`${dropperError.source}#${dropperError.locator}`),
          fromMemory: false,
        },
      ]
    : []),
];

const cited = (key: string): string => sourceWords(key, bibliography);

const leaf = (value: number | null, unit: string) => ({ value, unit });

export function diluteEnvelope(diluted: Diluted): Envelope {
  const { of, chain, target, finalMassGrams, drops, objections, leftAside, remarks, cautions } = diluted;
  return envelope({
    schema: 'dilute@1',
    given: { of, ...(target === undefined ? {} : { to: leaf(target, '') }), in: leaf(finalMassGrams, 'g') },
    found: {
      from: chain.source.name,
      steps: chain.steps.map((step) => ({
        take: step.take,
        takeMass: leaf(step.takeMassGrams, 'g'),
        solventMass: leaf(step.solventMassGrams, 'g'),
        strength: leaf(step.strength, ''),
        balance: leaf(step.takeDivisionGrams || null, 'g'),
        solventBalance: leaf(step.solventDivisionGrams || null, 'g'),
        portions: leaf(step.solventPortions, ''),
        ...(step.vessel ? { vessel: vesselWords(step) } : {}),
      })),
      finalStrength: leaf(chain.finalStrength, ''),
      relativeUncertainty: leaf(chain.relativeUncertainty, ''),
      waste: leaf(chain.wasteGrams, 'g'),
      drops: leaf(drops?.drops ?? null, ''),
      wholeDrops: leaf(drops?.wholeDrops ?? null, ''),
      dropsUncertainty: leaf(drops?.relativeUncertainty ?? null, ''),
      objections,
      leftAside,
      remarks,
    },
    cautions,
    sources: citations(drops),
  });
}
