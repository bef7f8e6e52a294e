/** The shape of a figure that a body has published. A pointer to a text; it never says that a drink meets anything. */

import type { FormName } from './forms.ts';

/** `from memory`: no copy could be read, and it is shown as such until a person has opened the text. */
export type HowRead = 'text' | 'in part' | 'abstract' | 'elsewhere quoted' | 'from memory';

/** The bodies that a bench may choose. */
export type LimitBody = 'us' | 'eu' | 'codex';

export const bodyNames: Readonly<Record<LimitBody, string>> = { us: 'US FDA', eu: 'EU', codex: 'Codex' };

export interface LimitFigure {
  /** What is counted, and as what. */
  readonly form: FormName;
  readonly body: LimitBody;
  /**
   * `most`: a number not to be passed; `label`: from there on the label says it; `no number`: named, without one;
   * `practice`: good manufacturing practice; `as needed`: quantum satis; `none found`: no listing in what was read.
   */
  readonly kind: 'most' | 'label' | 'no number' | 'practice' | 'as needed' | 'none found';
  readonly value?: number;
  readonly unit?: 'mg/kg' | 'mg/L' | '% v/v';
  /** The food that it is for. */
  readonly food: string;
  /** True where a flavoured soft drink, as it is drunk, is that food; only then it is laid beside a drink. */
  readonly isDrink: boolean;
  /** Where it goes by what else is in the drink. */
  readonly when?: 'with benzoates' | 'without benzoates';
  /** Key of `limitSources`, and the place in it. */
  readonly source: string;
  readonly at: string;
  readonly read: HowRead;
  readonly note?: string;
}

type Rest = Place & Partial<Pick<LimitFigure, 'food' | 'isDrink' | 'when' | 'note'>>;

const drink = 'flavoured soft drinks';

type Place = Pick<LimitFigure, 'source' | 'at' | 'read'>;

/** Title 21 of the US code, whose sections were read unless it says otherwise. */
export const us = (at: string, read: HowRead = 'text'): Place => ({ source: 'cfr-21', at, read });

/** Regulation (EC) 1333/2008, of which no copy was read, only what others quote. */
export const eu = (at: string, read: HowRead = 'elsewhere quoted'): Place => ({
  source: 'eu-1333-2008',
  at,
  read,
});
/** Its places for flavoured drinks, and for what may go into most food. */
export const drinks = 'Annex II Part E, 14.1.4';
export const group = 'Annex II group I';

/** A number for the drink as it is drunk. */
export const most = (
  form: FormName,
  body: LimitBody,
  value: number,
  unit: 'mg/kg' | 'mg/L',
  rest: Rest,
): LimitFigure => ({ form, body, kind: 'most', value, unit, food: drink, isDrink: true, ...rest });

/** A text that names the substance and gives no number for the drink, or does not name it. */
export const unnumbered = (
  form: FormName,
  body: LimitBody,
  kind: 'no number' | 'practice' | 'as needed' | 'none found',
  rest: Rest,
): LimitFigure => ({ form, body, kind, food: drink, isDrink: true, ...rest });

/** A number for another food. */
export const elsewhere = (
  form: FormName,
  body: LimitBody,
  value: number,
  rest: Rest & { readonly food: string },
): LimitFigure => ({ form, body, kind: 'most', value, unit: 'mg/kg', isDrink: false, ...rest });

/** Codex, category 14.1.4, whose page was read. */
export const codex = (form: FormName, value: number, rest: Partial<Rest> = {}): LimitFigure => ({
  form,
  body: 'codex',
  kind: 'most',
  value,
  unit: 'mg/kg',
  food: 'water-based flavoured drinks, category 14.1.4',
  isDrink: true,
  source: 'codex-gsfa',
  at: 'category 14.1.4',
  read: 'text',
  ...rest,
});
