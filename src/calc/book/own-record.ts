import type { Figure, FigureName, Ingredient } from '../../reference/ingredient.ts';
import { normaliseName } from '../../reference/name.ts';
import type { BookEntry, OwnEntry, OwnFigure } from '../book.ts';

/** Everything of an own entry but what it holds: the record it is made from with the person's own laid over it. */
export function ownParts(typed: OwnEntry, base: BookEntry | undefined): Omit<BookEntry, 'composition'> {
  const dropGrams = typed.dropGrams ?? base?.dropGrams;
  const price = typed.price ?? base?.price;
  const like = base ? [base.name, ...(base.like ?? [])] : [];
  return {
    name: typed.name,
    record: ownRecord(typed, base?.record),
    own: true,
    ...(like.length > 0 ? { like } : {}),
    ...(dropGrams === undefined ? {} : { dropGrams }),
    ...(price === undefined ? {} : { price }),
    ...(typed.lot === undefined ? {} : { lot: typed.lot }),
    ...(typed.made === undefined ? {} : { made: typed.made }),
    ...(typed.keep === undefined ? {} : { keep: typed.keep }),
  };
}

/** Other names stay with the record they belong to, unless the own entry stands in its place. */
function ownRecord(typed: OwnEntry, base: Ingredient | undefined): Ingredient {
  const { aliases: baseAliases, searchWords, ...rest } = base ?? { role: 'other' as const, figures: {} };
  const isInPlace = base !== undefined && normaliseName(base.name) === normaliseName(typed.name);
  const aliases = [...(typed.aliases ?? []), ...(isInPlace ? (baseAliases ?? []) : [])];
  return {
    ...rest,
    name: typed.name,
    role: typed.role ?? rest.role,
    ...(typed.fold === undefined ? {} : { fold: typed.fold }),
    ...(aliases.length > 0 ? { aliases } : {}),
    ...(isInPlace && searchWords ? { searchWords } : {}),
    figures: { ...rest.figures, ...ownFigures(typed.figures) },
  };
}

function ownFigures(figures: OwnEntry['figures']): Partial<Record<FigureName, Figure>> {
  const laid: Partial<Record<FigureName, Figure>> = {};
  for (const name of Object.keys(figures ?? {}).filter(isFigureOf(figures))) {
    const own = figures?.[name];
    if (own) laid[name] = ownFigure(own);
  }
  return laid;
}

const isFigureOf =
  (figures: OwnEntry['figures']) =>
  (name: string): name is FigureName =>
    figures !== undefined && name in figures;

const ownFigure = ({ value, source, temperatureCelsius }: OwnFigure): Figure => ({
  value,
  source,
  ...(temperatureCelsius === undefined ? {} : { temperatureCelsius }),
});
