/** A batch sheet as it is laid out: every figure is already a text. */

export interface SheetItem {
  readonly what: string;
  readonly lot: string;
  /** What to weigh at once: `617.28 g`. */
  readonly amount: string;
  /** How many such portions make the item of one sub-batch. */
  readonly portions: number;
  /** Of one sub-batch, where there are several portions: `1234.56 g`. */
  readonly whole: string;
  /** `0.01 g` */
  readonly balance: string;
  readonly notes: readonly string[];
}

export interface SheetStage {
  readonly name: string;
  /** How often the same is made. */
  readonly subBatches: number;
  /** `in the 25 L tank` */
  readonly where: string;
  /** Of one sub-batch: `1234.56 g`, about `1.20 L`. */
  readonly total: string;
  readonly volume: string;
  /** Of all sub-batches, where there are several. */
  readonly totalOfAll: string;
  readonly items: readonly SheetItem[];
  /** Each gets boxes for the temperature and the time that really happened. */
  readonly steps: readonly string[];
  readonly notes: readonly string[];
}

/** Bottles or kegs that get a dose and carbonated water. */
export interface SheetFilling {
  /** `Each of 500 bottles of 330 mL` */
  readonly heading: string;
  readonly parts: readonly {
    readonly what: string;
    readonly grams: string;
    readonly millilitres: string;
    readonly inAll: string;
  }[];
  readonly notes: readonly string[];
}

export interface SheetCheck {
  readonly of: string;
  readonly what: string;
  readonly aim: string;
  readonly reckoned: string;
}

/** A stock that is made first, since no balance takes so little. */
export interface SheetStock {
  readonly name: string;
  readonly lines: readonly { readonly text: string; readonly balance: string }[];
}

export interface BatchSheet {
  readonly batch: string;
  readonly design: string;
  readonly revision: string;
  readonly facts: readonly (readonly [label: string, value: string])[];
  readonly remarks: readonly string[];
  readonly stocks: readonly SheetStock[];
  readonly stages: readonly SheetStage[];
  readonly filling: SheetFilling | undefined;
  readonly checks: readonly SheetCheck[];
  readonly cautions: readonly string[];
  readonly closing: string;
}

/** `2 x 617.28 g` */
export const portionsText = ({ portions, amount }: SheetItem): string =>
  portions === 1 ? amount : `${portions} x ${amount}`;
