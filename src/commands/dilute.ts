import type { Caution } from '../calc/answer.ts';
import { answered } from '../calc/answered.ts';
import { type Chain, type ChainBench, planChain } from '../calc/dilution/chain.ts';
import { checkChain, parseChain } from '../calc/dilution/check-chain.ts';
import { dropsOf } from '../calc/dilution/drop-count.ts';
import { isBareNumber } from '../calc/number.ts';
import { massWords, partsWords } from '../calc/parts-words.ts';
import type { Io } from '../io.ts';
import { fail } from '../problem.ts';
import { handling, nearlyNeat } from '../reference/cautions.ts';
import { sources as bibliography } from '../reference/sources.ts';
import { neededOption, someOption } from './batch-options.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { benchFor, dropperFor } from './dilute-bench.ts';
import { type Diluted, diluteEnvelope, diluteExplanation, dilutePage } from './dilute-page.ts';
import { type Compound, compoundNamed, type DiluteShelf, openShelf, sourcesFor } from './dilute-shelf.ts';
import { sourceWords } from './worded-sources.ts';

export async function runDilute(call: Call, io: Io): Promise<Outcome> {
  const shelf = await openShelf(io);
  const diluted = await withArithmetic(() =>
    optionValue(call, 'check') === undefined ? planned(call, shelf) : checked(call, shelf),
  );
  const isOff = diluted.objections.length > 0;
  return {
    exitCode: isOff ? 1 : 0,
    page: dilutePage(diluted),
    json: diluteEnvelope(diluted),
    explained: () => diluteExplanation(diluted),
  };
}

function planned(call: Call, shelf: DiluteShelf): Diluted {
  const compound = compoundNamed(neededOption(optionValue(call, 'of'), 'of', '"cassis thiol"'), shelf, call);
  const target = neededOption(targetOf(call), 'to', '0.5 ppb');
  const finalMassGrams = neededOption(batchGrams(call), 'in', '20 kg');
  const bench = benchFor(call, shelf.bench);
  const found = sourcesFor(call, compound, shelf);
  const solvent = solventOf(call, shelf);
  const chain = answered(
    planChain({
      of: compound.name,
      sources: found.sources,
      target,
      finalMassGrams,
      bench,
      ...(solvent.density === undefined ? {} : { solventDensity: solvent.density }),
    }),
  );
  return {
    ...about(call, { compound, shelf, chain }),
    ...{ bench, target, finalMassGrams, objections: [], leftAside: found.leftAside },
    remarks: remarksOf(call, bench),
    solvent: solvent.name,
    isChecked: false,
  };
}

/** A chain that the person typed. */
function checked(call: Call, shelf: DiluteShelf): Diluted {
  const typed = optionValue(call, 'of');
  const compound: Compound =
    typed === undefined ? { name: 'compound', entry: undefined } : compoundNamed(typed, shelf, call);
  const steps = answered(parseChain(optionValue(call, 'check') ?? ''));
  const bench = benchFor(call, shelf.bench);
  const { sources } = sourcesFor(call, compound, shelf);
  const named = call.values['from'] ?? [];
  const source = (named.length > 0 ? sources[0] : undefined) ?? { name: compound.name, strength: 1 };
  const chain = checkChain({ of: compound.name, source, steps, bench });
  const target = targetOf(call);
  const objections = [...chain.objections];
  if (target !== undefined && Math.abs(chain.finalStrength / target - 1) > bench.weighing)
    objections.push(
      `it comes to ${partsWords(chain.finalStrength)}, ${times(chain.finalStrength / target)} the ${partsWords(target)} that is wanted`,
    );
  return {
    ...about(call, { compound, shelf, chain }),
    ...{ bench, target, objections, leftAside: [], remarks: [], isChecked: true },
    finalMassGrams: steps.at(-1)?.totalGrams ?? 0,
    solvent: optionValue(call, 'solvent') ?? 'solvent',
  };
}

const times = (ratio: number): string =>
  ratio >= 10 || ratio <= 0.1
    ? `${Number(ratio.toPrecision(2))} times`
    : `${Number(ratio.toPrecision(3))} times`;

interface About {
  readonly compound: Compound;
  readonly shelf: DiluteShelf;
  readonly chain: Chain;
}

function about(call: Call, { compound, shelf, chain }: About) {
  const stock = shelf.stocks.find(({ entry }) => entry.name === chain.source.name);
  const dropper = dropperFor(call, shelf.bench, chain.steps.length === 1 ? stock?.card.drop : undefined);
  const addition = chain.steps.at(-1)?.takeMassGrams ?? 0;
  const isPotent =
    compound.entry?.record.potent === true || (compound.entry?.composition ?? []).some(isStrong);
  const cautions: Caution[] = [];
  if (isPotent && chain.source.strength >= nearlyNeat.potent)
    cautions.push({ code: 'neat-potent-aroma', ...worded(chain.source.name, 'neat-potent-aroma') });
  if (stock?.isExpired) cautions.push(shelf.expired(stock));
  return { of: compound.name, chain, drops: dropper && dropsOf(addition, dropper), cautions };
}

const isStrong = (one: {
  readonly substance: { readonly record: { readonly potent?: boolean | undefined } };
  readonly massFraction: number;
}): boolean => one.substance.record.potent === true && one.massFraction >= nearlyNeat.potent;

const worded = (name: string, code: 'neat-potent-aroma'): Pick<Caution, 'text' | 'source'> => ({
  text: `${name}: ${handling[code].text}; work with the air drawn away`,
  source: sourceWords(handling[code].source, bibliography),
});

/** A share by mass; a concentration goes through the density of the batch. */
function targetOf(call: Call): number | undefined {
  const bare = optionValue(call, 'to')?.trim() ?? '';
  if (isBareNumber(bare))
    return fail('no-unit', `--to: "${bare}" has no unit`, `write ${bare} ppb, ${bare} ppm or ${bare} %`);
  const typed = someOption(call, 'to', ['share', 'mass per volume']);
  if (!typed) return undefined;
  return typed.dimension === 'share' ? typed.inner : typed.inner / densityOf(call);
}

function batchGrams(call: Call): number | undefined {
  const typed = someOption(call, 'in', ['mass', 'volume']);
  return typed && (typed.dimension === 'mass' ? typed.inner : typed.inner * densityOf(call));
}

/** What nobody said and was taken for granted. */
function remarksOf(call: Call, { vessels }: ChainBench): readonly string[] {
  const batch = someOption(call, 'in', ['mass', 'volume']);
  const isDensityTyped = optionValue(call, 'density') !== undefined;
  return [
    ...(vessels.length > 0
      ? []
      : ['no vessel is listed: bottles of 100 mL are taken to be there; --vessel "250 mL" says otherwise']),
    ...(batch?.dimension !== 'volume' || isDensityTyped
      ? []
      : [`${batch.written} are taken for ${massWords(batch.inner)}, at 1 g/mL; --density says otherwise`]),
  ];
}

const densityOf = (call: Call): number => someOption(call, 'density', ['mass per volume'])?.inner ?? 1;

function solventOf(
  call: Call,
  shelf: DiluteShelf,
): { readonly name: string; readonly density: number | undefined } {
  const typed = optionValue(call, 'solvent');
  const entry = typed === undefined ? undefined : shelf.book.find(typed);
  return { name: entry?.name ?? typed ?? 'solvent', density: entry?.record.figures.density?.value };
}
