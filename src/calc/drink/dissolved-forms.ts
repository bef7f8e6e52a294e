/** How much of each thing that may crystallise is in a stage, and how much its water holds. */

import { acidSolubility, plainSolubility, sorbicInSucrose } from '../../reference/solubility.ts';
import { isNamed } from '../density/blend.ts';
import { gramsPerMole } from '../solution/substance.ts';
import { sucroseSolubilityAt } from '../solution/sugar-limits.ts';
import { type Holds, solubilityAt } from './solubility-at.ts';
import type { StageFigures } from './stage-figures.ts';

const ICE_POINT_KELVIN = 273.15;

export interface Crystal {
  readonly substance: string;
  /** Of the form that crystallises. */
  readonly gramsPerLitre: number;
  readonly holds: Holds;
  readonly source: string;
  /** What the comparison leaves out, in words. */
  readonly but?: string;
}

/** Everything in a stage for which a solubility is published, with what is in it and what it holds. */
export function crystalsIn(figures: StageFigures, temperatureKelvin: number): readonly Crystal[] {
  const celsius = Number((temperatureKelvin - ICE_POINT_KELVIN).toFixed(9));
  return [
    ...sucroseIn(figures, temperatureKelvin),
    ...sorbicIn(figures, celsius),
    ...freeAcid(figures, 'benzoic', celsius),
    ...freeAcid(figures, 'fumaric', celsius),
    ...plainIn(figures, celsius),
  ];
}

/** Sucrose per litre of what would be its saturated solution in the same water. */
function sucroseIn({ stage, solution }: StageFigures, temperatureKelvin: number): readonly Crystal[] {
  const grams = stage.substances
    .filter(({ entry }) => isNamed(entry, 'sucrose'))
    .reduce((sum, { massGrams }) => sum + massGrams, 0);
  const most = sucroseSolubilityAt({ temperatureKelvin });
  if (grams <= 0 || !most.ok || !solution.ok) return [];
  const litres = stage.volumeMillilitres / 1000;
  const held = (solution.value.waterGrams * most.value) / (1 - most.value);
  return [
    {
      substance: 'sucrose',
      gramsPerLitre: grams / litres,
      holds: {
        gramsPerLitre: held / litres,
        known: 'at',
        celsius: temperatureKelvin - ICE_POINT_KELVIN,
        fromMemory: false,
      },
      source: 'crc-sucrose-solubility',
      but: 'in the water that is there',
    },
  ];
}

/** g/L of an acid with all its protons. */
function freeGramsPerLitre({ acidity, solution }: StageFigures, acid: string): number {
  if (!acidity.ok || !solution.ok) return 0;
  const state = acidity.value.acids.find((one) => one.acid === acid);
  const moles = (state?.molality ?? 0) * (state?.undissociated ?? 0) * (solution.value.waterGrams / 1000);
  return (moles * (gramsPerMole(`${acid} acid`) ?? 0)) / solution.value.litres;
}

function sorbicIn(figures: StageFigures, celsius: number): readonly Crystal[] {
  const gramsPerLitre = freeGramsPerLitre(figures, 'sorbic');
  const { points, source } = sorbicInSucrose;
  const first = points[0];
  const above = points.findIndex(({ sucrosePercent }) => sucrosePercent >= figures.brix);
  const high = points[above] ?? points.at(-1) ?? first;
  const low = points[above === -1 ? points.length - 1 : Math.max(0, above - 1)] ?? first;
  const span = high.sucrosePercent - low.sucrosePercent;
  const share = span > 0 ? (figures.brix - low.sucrosePercent) / span : 0;
  const held = low.gramsPerLitre + share * (high.gramsPerLitre - low.gramsPerLitre);
  const known = celsius < sorbicInSucrose.celsius - 1 ? 'at most' : celsius > 21 ? 'at least' : 'at';
  const holds: Holds = { gramsPerLitre: held, known, celsius: sorbicInSucrose.celsius, fromMemory: false };
  return gramsPerLitre > 0 ? [{ substance: 'sorbic acid', gramsPerLitre, holds, source }] : [];
}

function freeAcid(
  figures: StageFigures,
  acid: keyof typeof acidSolubility,
  celsius: number,
): readonly Crystal[] {
  const gramsPerLitre = freeGramsPerLitre(figures, acid);
  if (gramsPerLitre <= 0) return [];
  return [
    {
      substance: `${acid} acid`,
      gramsPerLitre,
      holds: solubilityAt(acidSolubility[acid], celsius),
      source: acidSolubility[acid].source,
      ...(figures.brix > 20 ? { but: 'in water; a syrup holds less' } : {}),
    },
  ];
}

function plainIn({ stage }: StageFigures, celsius: number): readonly Crystal[] {
  return stage.substances.flatMap(({ entry, gramsPerLitre }) => {
    const name = Object.keys(plainSolubility).find((one) => isNamed(entry, one)) ?? '';
    const table = plainSolubility[name];
    if (!table || gramsPerLitre <= 0) return [];
    const but = name.startsWith('quinine') ? 'in water; an acid drink holds more' : undefined;
    return [
      {
        substance: entry.name,
        gramsPerLitre,
        holds: solubilityAt(table, celsius),
        source: table.source,
        ...(but ? { but } : {}),
      },
    ];
  });
}
