/**
 * Dissociation of weak acids in water at infinite dilution, 25 C, molality scale, step by step from the acid with
 * all its protons. A change that was not found in any source is null and counts as none; the pH that rests on it
 * is then the less sure the further it is from 25 C (0.03 at most from 0 to 40 C).
 */

export interface DissociationStep {
  /** -log10 of the constant at 25 C. */
  readonly pk: number;
  /** Enthalpy of dissociation at 25 C, kJ/mol. */
  readonly enthalpy: number | null;
  /** Change of heat capacity, J/(mol K). */
  readonly heatCapacity: number | null;
  /** Key into the bibliography. */
  readonly source: string;
  /** True where the enthalpy or the heat capacity could not be read anywhere. */
  readonly fromMemory?: true;
}

const goldberg = 'goldberg-2002';
const step = (
  pk: number,
  enthalpy: number | null,
  heatCapacity: number | null,
  source: string,
  fromMemory?: true,
): DissociationStep => ({ pk, enthalpy, heatCapacity, source, ...(fromMemory ? { fromMemory } : {}) });

/** The temperatures for which the constants are given: 274 K in the source; 0 C is checked by the pH standards. */
export const acidConstantsValid = { lowKelvin: 273.15, highKelvin: 350 } as const;

export const acidSystems = {
  citric: [
    step(3.128, 4.07, -131, goldberg),
    step(4.761, 2.23, -178, goldberg),
    step(6.396, -3.38, -254, goldberg),
  ],
  phosphoric: [
    step(2.148, -8, -141, goldberg),
    step(7.198, 3.6, -230, goldberg),
    step(12.35, 16, -242, goldberg),
  ],
  tartaric: [step(3.036, 3.19, -147, goldberg, true), step(4.366, 0.93, -218, goldberg, true)],
  malic: [step(3.459, 2.93, -155, 'eden-bates-1959'), step(5.097, -1.17, -221, 'eden-bates-1959')],
  lactic: [step(3.857, -0.43, -170, 'martin-tartar-1937')],
  acetic: [step(4.756, -0.41, -142, goldberg)],
  ascorbic: [
    step(4.17, null, null, 'food-additives-data-book'),
    step(11.57, null, null, 'food-additives-data-book'),
  ],
  fumaric: [step(3.053, 0.46, -155, 'martell-smith-2004'), step(4.494, -2.85, -221, 'martell-smith-2004')],
  adipic: [
    step(4.44, -1.3, null, 'martell-smith-2004', true),
    step(5.45, -2.7, -250, 'martell-smith-2004', true),
  ],
  succinic: [step(4.207, 3, -121, goldberg, true), step(5.636, -0.5, -217, goldberg)],
  gluconic: [step(3.9, null, null, 'echa-gluconic')],
  carbonic: [step(6.351, 9.15, -371, goldberg), step(10.329, 14.7, -249, goldberg)],
  benzoic: [step(4.202, 0.46, -157, 'nist-46')],
  sorbic: [step(4.76, null, null, 'food-additives-data-book')],
  oxalic: [step(1.27, -3.9, -231, goldberg, true), step(4.266, -7, -231, goldberg, true)],
  phthalic: [step(2.95, -2.7, -91, goldberg, true), step(5.408, -2.17, -295, goldberg, true)],
  boric: [step(9.237, 13.8, -240, goldberg, true)],
} as const satisfies Record<string, readonly DissociationStep[]>;

export type AcidName = keyof typeof acidSystems;

/** Acids whose change of heat capacity is a group estimate. */
export const groupEstimates = {
  acids: ['malic', 'fumaric'],
  source: 'canovas-shock-2016',
} as const satisfies {
  readonly acids: readonly AcidName[];
  readonly source: string;
};
