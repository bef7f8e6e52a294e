import { splitToHlb } from '../../src/calc/emulsifier-split.ts';
import { mie } from '../../src/calc/light/mie.ts';
import { rightNeeded } from '../../src/calc/tasting/forced-choice.ts';
import { toInner, unitNamed } from '../../src/calc/unit.ts';
import { answered } from '../calc/solution/support.ts';
import grid from '../fixtures/published/hlb-alligation-grid.json' with { type: 'json' };
import spheres from '../fixtures/published/mie-high-precision.json' with { type: 'json' };
import tastings from '../fixtures/published/tasting-tables.json' with { type: 'json' };
import units from '../fixtures/published/units-gnu.json' with { type: 'json' };
import { belowPowerOfTen, type Measured, type Pair, worstOff } from './measured.ts';

/** Shares in per cent; two cells, in which the print does not add up to 100 or to its HLB, are left out. */
function alligation(): readonly Pair[] {
  return grid.cells.flatMap((cell): readonly Pair[] => {
    const pair = grid.pairs[cell.pair];
    if (!pair || cell.high === null || 'printSlip' in cell) return [];
    const parts = [pair.high, pair.low].map(([, hlb]) => ({ hlb: Number(hlb), share: 0.5 }));
    const high = splitToHlb(parts, cell.target)?.[0] ?? Number.NaN;
    return [{ printed: Number(cell.high), value: 100 * high }];
  });
}

const inLight = (): readonly Pair[] =>
  spheres.rows.map((row) => {
    const index = { n: Number(row.n), k: Number(row.k) };
    const { qExt } = answered(mie({ sizeParameter: Number(row.sizeParameter), index }));
    return { printed: Number(row.qExt), value: qExt };
  });

function triangles(): readonly Pair[] {
  const risks = [0.1, 0.05, 0.01, 0.001];
  return tastings.triangle.rows.flatMap(([count, ...printed]) =>
    risks.flatMap((risk, at): readonly Pair[] => {
      const needed = printed[at];
      if (needed === null || needed === undefined) return [];
      const value = rightNeeded({ guess: 1 / 3, sides: 1, tastings: Number(count), risk });
      return [{ printed: needed, value: value ?? Number.NaN }];
    }),
  );
}

const factors = (): readonly Pair[] =>
  units.factors.map(({ symbol, factor }) => {
    const unit = unitNamed(symbol);
    return { printed: factor, value: unit ? toInner(1, unit) : Number.NaN };
  });

/** Blends, droplets in light, tastings, units. */
export function otherTables(): readonly Measured[] {
  const [shares, light, needed, unit] = [alligation(), inLight(), triangles(), factors()];
  return [
    {
      what: 'two emulsifiers to an HLB',
      beside: 'PMC3969497, Table I',
      rows: shares.length,
      worst: worstOff(shares, 2, '%, the print has 0.1'),
    },
    {
      what: 'light lost to droplets (Mie)',
      beside: 'computed with 60 digits',
      rows: light.length,
      worst: `${belowPowerOfTen(light)} of it`,
    },
    {
      what: 'right answers that a triangle needs',
      beside: 'FAO Fisheries Technical Paper 348',
      rows: needed.length,
      worst: worstOff(needed, 0),
    },
    { what: 'units', beside: 'GNU Units 2.22', rows: unit.length, worst: `${belowPowerOfTen(unit)} of it` },
  ];
}
