/** The pressure in a closed bottle of the drink that is warmed. */

import { answered } from '../calc/answered.ts';
import type { FinishedDrink } from '../calc/drink/finished-drink.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import { parseQuantity } from '../calc/parse-quantity.ts';
import type { Dimension } from '../calc/quantity.ts';
import { bottlePressure } from '../calc/solution/bottle.ts';
import { fail } from '../problem.ts';
import { type Call, optionValue } from './command.ts';
import type { FigureLine } from './drink-words.ts';

/** What is taken where nobody says: a usual headspace, and a warm car. Common practice, no source. */
const usual = { headspaceFraction: 0.05, warmedKelvin: 313.15 } as const;

export interface WarmedBottle {
  readonly headspaceFraction: number;
  readonly warmedKelvin: number;
  readonly gaugePascal: number;
}

/** Undefined where there is no CO2 in it, or nobody asked and the equations don't cover it. */
export function warmedBottle(call: Call, { conditions }: FinishedDrink): WarmedBottle | undefined {
  const typed = {
    headspaceFraction: typedIn(call, 'headspace', 'share'),
    warmedKelvin: typedIn(call, 'warmed-to', 'temperature'),
  };
  const isAsked = typed.headspaceFraction !== undefined || typed.warmedKelvin !== undefined;
  const volumes = conditions.carbonDioxideVolumes ?? 0;
  if (volumes <= 0) {
    if (!isAsked) return undefined;
    return fail(
      'no-co2',
      'there is no CO2 in this drink to press on a bottle',
      'write what was measured (neckring observe TRIAL --co2 "3.5 vol"), or an aim for co2 in the formula',
    );
  }
  const headspaceFraction = typed.headspaceFraction ?? usual.headspaceFraction;
  const warmedKelvin = typed.warmedKelvin ?? usual.warmedKelvin;
  const closedKelvin = conditions.temperatureKelvin;
  const found = bottlePressure({ volumes, closedKelvin, warmedKelvin, headspaceFraction });
  if (!found.ok && !isAsked) return undefined;
  return { headspaceFraction, warmedKelvin, gaugePascal: answered(found).gaugePressurePascal };
}

function typedIn(call: Call, option: string, kind: Dimension): number | undefined {
  const text = optionValue(call, option);
  if (text === undefined) return undefined;
  const read = parseQuantity(text, [kind]);
  return read.ok
    ? read.value.inner
    : fail(read.fault.code, `--${option}: ${read.fault.message}`, read.fault.hint);
}

export function bottleLine({ headspaceFraction, warmedKelvin, gaugePascal }: WarmedBottle): FigureLine {
  const celsius = trimmedNumber(warmedKelvin - 273.15, 4);
  const headspace = trimmedNumber(headspaceFraction * 100, 3);
  return [
    'in the bottle',
    `${numberText(gaugePascal / 1e5, 2)} bar`,
    `gauge, warmed to ${celsius} C, ${headspace} % headspace`,
  ];
}

export const bottleJson = (bottle: WarmedBottle | undefined): Readonly<Record<string, unknown>> =>
  bottle
    ? {
        warmedBottle: {
          gaugePressure: { value: bottle.gaugePascal / 1e5, unit: 'bar' },
          headspace: { value: bottle.headspaceFraction, unit: '' },
          temperature: { value: bottle.warmedKelvin - 273.15, unit: 'C' },
        },
      }
    : {};
