/** What must be said beside the figures of `ring`. */

import { countsAsStable, ripeningStop, riseFactor } from '../../reference/settling.ts';
import type { RingGiven } from '../calculators/ring.ts';
import { numberText } from '../number-text.ts';
import type { Working } from '../working.ts';
import { inhibitorMoleFraction } from './ripening.ts';
import type { Rise } from './rise.ts';
import type { Setting } from './work-ring.ts';

interface Said {
  readonly given: RingGiven;
  readonly setting: Setting;
  readonly rise: Rise | undefined;
}

export function sayRingCautions(working: Working, said: Said): void {
  sayRise(working, said);
  sayThickness(working, said);
  sayRipening(working, said);
}

function sayRise(working: Working, { rise }: Said): void {
  if (!rise) return;
  const speed = Math.abs(rise.velocity) * 1000 * 86_400;
  const stable =
    speed < countsAsStable.millimetresPerDay
      ? ` Below ${countsAsStable.millimetresPerDay} mm a day creaming is counted as stable.`
      : '';
  working.caution(
    'unchanged-droplets',
    `At the soonest, for droplets that stay as they are; ${riseFactor.value} times either way for the spread of sizes. Growth or clumping, not the size at the start, usually decides.${stable}`,
    'dickinson-1992',
  );
}

function sayThickness(working: Working, { given, setting }: Said): void {
  if (given.viscosity !== undefined) return;
  const others = setting.medium.dissolved
    .filter(({ role }) => role === 'carrier' || role === 'emulsifier' || role === 'other')
    .reduce((sum, { massFraction }) => sum + massFraction, 0);
  if (others > 0.02)
    working.caution(
      'thicker',
      `Viscosity is that of sugar and water: ${numberText(others * 100, 2)} % of carrier and emulsifier make it thicker, so it takes longer than said. Give --viscosity where you measured it.`,
      'common practice, no source',
    );
}

/** Direction only: no rate is told. */
function sayRipening(working: Working, { given, setting }: Said): void {
  const { low, high, molesLow, molesHigh, source } = ripeningStop;
  if (given.droplet)
    working.line(
      'insoluble oil by the law of ripening = 2/3 x 4 tension x molar volume / (R T) / diameter; limonene, an order only',
      `${numberText(
        inhibitorMoleFraction({
          diameterMetres: given.droplet.inner,
          temperatureKelvin: setting.temperatureKelvin,
        }) * 100,
        1,
      )} mol %`,
    );
  working.caution(
    'ripening-direction',
    `How fast droplets ripen is not said. What helps: an oil that water does not dissolve (ester gum, MCT, a fat) slows or stops it, from about ${molesLow * 100} to ${molesHigh * 100} mol %, ${low * 100} to ${high * 100} % of the oil phase by mass; so does a higher fold. Emulsifier added afterwards speeds it; cold may speed it too.`,
    source,
  );
}
