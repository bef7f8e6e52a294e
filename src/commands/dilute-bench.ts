/** The bench that dilutions are made on: the ledger's own, with what is typed over it. */

import type { ChainBench, ChainVessel } from '../calc/dilution/chain.ts';
import type { Dropper } from '../calc/dilution/drop-count.ts';
import { parseRatio } from '../calc/ratio.ts';
import type { Scale } from '../calc/weighing/balance.ts';
import { benchDefaults } from '../ledger/bench-defaults.ts';
import type { BenchCard, DropCard, Vessel } from '../ledger/cards.ts';
import { fail } from '../problem.ts';
import { largestDilution } from '../reference/dilution.ts';
import { optionQuantity, someOption } from './batch-options.ts';
import { type Call, optionValue } from './command.ts';
import { scalesOf } from './weighing-plan.ts';

/** The bench of a ledger for a chain of dilutions. */
export const chainBenchOf = (bench: BenchCard): ChainBench => ({
  scales: scalesOf(bench),
  weighing: bench.weighing.inner,
  largestDilution: bench.largestDilution ?? largestDilution.value,
  vessels: bench.vessels.flatMap(chainVessel),
});

function chainVessel({ name, volume, mass }: Vessel): readonly ChainVessel[] {
  return volume ? [{ name, millilitres: volume.inner, massGrams: mass?.inner }] : [];
}

/** What is typed goes before what the ledger says. */
export function benchFor(call: Call, bench: BenchCard | undefined): ChainBench {
  const own = bench && chainBenchOf(bench);
  const scales = (call.values['balance'] ?? []).map(typedScale);
  const vessels = (call.values['vessel'] ?? []).map(typedVessel);
  const weighing = someOption(call, 'weighing', ['share']) ?? bench?.weighing ?? benchDefaults.weighing;
  return {
    scales: scales.length > 0 ? scales : (own?.scales ?? []),
    vessels: vessels.length > 0 ? vessels : (own?.vessels ?? []),
    weighing: weighing.inner,
    largestDilution: typedDilution(call) ?? own?.largestDilution ?? largestDilution.value,
  };
}

/** `0.01 g up to 600 g`, or the division alone. */
function typedScale(typed: string): Scale {
  const [, division = typed, limit] = /^(.+?)\s+(?:up\s+)?to\s+(.+)$/iu.exec(typed.trim()) ?? [];
  const read = optionQuantity('balance', division, ['mass']);
  if (read.inner <= 0)
    return fail(
      'not-positive',
      `--balance: "${typed}" shows nothing`,
      'give what it shows, such as "0.01 g up to 600 g"',
    );
  const limitGrams = limit === undefined ? undefined : optionQuantity('balance', limit, ['mass']).inner;
  if (limitGrams === 0)
    return fail(
      'not-positive',
      `--balance: "${typed}" takes nothing`,
      'give the most it takes, such as 600 g',
    );
  return { divisionGrams: read.inner, limitGrams };
}

/** `100 mL`, or `100 mL of 62 g` with its own mass. */
function typedVessel(typed: string): ChainVessel {
  const [, volume = typed, mass] = /^(.+?)\s+(?:of|weighing)\s+(.+)$/iu.exec(typed.trim()) ?? [];
  return {
    millilitres: optionQuantity('vessel', volume, ['volume']).inner,
    massGrams: mass === undefined ? undefined : optionQuantity('vessel', mass, ['mass']).inner,
  };
}

function typedDilution(call: Call): number | undefined {
  const typed = optionValue(call, 'largest');
  if (typed === undefined) return undefined;
  const ratio = parseRatio(/^[\d.]+$/u.test(typed.trim()) ? `1:${typed.trim()}` : typed);
  if (!ratio.ok) return fail(ratio.fault.code, `--largest: ${ratio.fault.message}`, ratio.fault.hint);
  const times = ratio.value.right / ratio.value.left;
  return times >= 2
    ? times
    : fail('out-of-range', `--largest: 1:${times} dilutes nothing`, 'give 1:100 or so');
}

/** Of what is dropped, its own drop before the bench's. */
export function dropperFor(
  call: Call,
  bench: BenchCard | undefined,
  own: DropCard | undefined,
): Dropper | undefined {
  const typed = someOption(call, 'drop', ['mass']);
  if (typed) return { dropGrams: typed.inner };
  const card = own ?? bench?.drop;
  return (
    card && {
      dropGrams: card.massGrams,
      spreadGrams: card.standardDeviationGrams,
      weighedDrops: card.drops,
    }
  );
}
