/** What a mixture holds of the things that published figures count: polysorbates together, benzoates as benzoic acid. */

import { type Form, type FormName, forms } from '../../reference/limits/forms.ts';
import type { BookEntry } from '../book.ts';
import { isLike } from '../slip-guard/item-substances.ts';

export interface Counted {
  readonly form: FormName;
  /** `benzoates` */
  readonly substance: string;
  /** `benzoic acid`; undefined where it is counted as it is. */
  readonly as: string | undefined;
  /** The names of what is counted. */
  readonly members: readonly string[];
  readonly massFraction: number;
  readonly gramsPerLitre: number;
  readonly but: string | undefined;
}

export interface Amount {
  readonly entry: BookEntry;
  readonly massFraction: number;
  readonly gramsPerLitre: number;
}

/**
 * Formula   sum of the masses, each times g of the form in a gram of it
 * Input     a form by its name; the substances of a mixture
 * Output    mass fraction and g/L of the form; undefined where none of it is there
 * Source    molar masses; as said with the form
 * Example   177 mg/L of sodium benzoate -> 150 mg/L as benzoic acid
 */
export function counted(name: FormName, amounts: readonly Amount[]): Counted | undefined {
  const form: Form = forms[name];
  let [massFraction, gramsPerLitre] = [0, 0];
  const members: string[] = [];
  for (const { entry, ...amount } of amounts) {
    const share = shareIn(form, entry);
    if (share === undefined || amount.gramsPerLitre <= 0) continue;
    massFraction += amount.massFraction * share;
    gramsPerLitre += amount.gramsPerLitre * share;
    if (!members.includes(entry.name)) members.push(entry.name);
  }
  if (members.length === 0) return undefined;
  const { substance, as, but } = form;
  return { form: name, substance, as, members, massFraction, gramsPerLitre, but };
}

function shareIn({ members }: Form, entry: BookEntry): number | undefined {
  if (Object.hasOwn(members, entry.name)) return members[entry.name];
  const [, share] = Object.entries(members).find(([name]) => isLike(entry, name)) ?? [];
  return share;
}

/** `benzoates, as benzoic acid` */
export const countedWords = ({ substance, as }: Pick<Counted, 'substance' | 'as'>): string =>
  as === undefined ? substance : `${substance}, as ${as}`;
