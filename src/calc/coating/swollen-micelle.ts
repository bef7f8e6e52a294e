import { limoneneMolecule, swollenMicelle } from '../../reference/droplet.ts';

/**
 * Diameter of a micelle that has taken up all of the oil: the smallest droplet that a ratio allows.
 *
 * Formula   R = 3 (v_tail + n v_oil)/a, n = (M_emulsifier/M_oil)/S, v_tail = 0.0274 + 0.0269 n_C nm3; d = 2 (R + shell)
 * Input     parts of emulsifier per oil by mass; carbons of the tail; g/mol of emulsifier
 * Output    nm
 * Source    Tanford 1980; Israelachvili; area from polysorbate 40 by Bester-Rogac 2007
 * Accuracy  1.5 times; an order of magnitude
 * Example   micelleDiameter({ emulsifierPerOil: 2, carbons: 17, molarMass: 1310 }) -> 23.6
 */
export function micelleDiameter(of: {
  readonly emulsifierPerOil: number;
  readonly carbons: number;
  readonly molarMass: number;
}): number {
  const { area, shell, tailBase, tailPerCarbon } = swollenMicelle;
  const molecules = of.molarMass / limoneneMolecule.molarMass / of.emulsifierPerOil;
  const tail = tailBase + tailPerCarbon * of.carbons;
  const core = (3 * (tail + molecules * limoneneMolecule.volume)) / area;
  return 2 * (core + shell);
}
