/** What must be said beside the figures of `clarity`. */

import {
  crowded,
  hazeBands,
  nephelometer,
  singleScattering,
  sizesLookedFor,
  usualWavelength,
} from '../../reference/light.ts';
import type { ClarityGiven } from '../calculators/clarity.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import type { Working } from '../working.ts';
import type { Calibration } from './calibration.ts';
import { type Haze, type Inverse, isWhite } from './clarity.ts';
import type { Background } from './look.ts';
import { scattered } from './turbidity.ts';
import type { Emulsion } from './work-clarity.ts';

interface Said {
  readonly given: ClarityGiven;
  readonly emulsion: Emulsion;
  readonly haze: Haze | undefined;
  readonly calibration: Calibration;
  readonly inverse: Inverse;
  readonly background: Background;
}

export function sayClarityCautions(working: Working, said: Said): void {
  saySize(working, said);
  saySight(working, said);
  saySugar(working, said);
  sayLight(working, said);
}

function saySize(working: Working, { haze, given, inverse }: Said): void {
  const oneSize =
    given.spread === undefined
      ? ' One size is taken: of a z-average that overstates haze, 1.8 times at a polydispersity index of 0.2 (--spread).'
      : '';
  if (haze)
    working.caution(
      'size-uncertainty',
      `Good to a few per cent where the size is truly known; haze goes with its cube: allow three times either way for one that is guessed, or a sizer's.${oneSize}`,
      'bohren-huffman-1983',
    );
  if (inverse.isOpen)
    working.caution(
      'larger-still',
      `Droplets above ${sizesLookedFor.high / 1000} um would read so too, and are not looked for: they dim a lamp and rise within hours.`,
      'bohren-huffman-1983',
    );
  if (inverse.implied.length > 1)
    working.caution(
      'two-branches',
      'Small droplets and large ones give the same reading at 90 degrees: look at how much light goes straight through, or dilute and time the rise.',
      'bohren-huffman-1983',
    );
}

function saySight(working: Working, { haze, calibration, background, inverse }: Said): void {
  const own =
    calibration.readings > 0
      ? `NTU is set by ${calibration.readings} readings of your own meter, 95 % band.`
      : `NTU is a white-light estimate, good to a factor of ${nephelometer.factor}; three readings of your own meter or more (--reading) replace it.`;
  const clear = inverse.largestClear;
  if (haze?.ntu || clear || inverse.implied.length > 0)
    working.caution(
      'ntu-band',
      own,
      calibration.readings > 0 ? 'Student 1908' : 'derived from the NTU of pure water',
    );
  const meant = clear ? ` The largest droplet is meant on ${background}, good to 20 %.` : '';
  if (haze || clear)
    working.caution(
      'eye-band',
      `What is seen spreads four times between people and lighting, up to twenty between black and white.${meant}`,
      hazeBands.source,
    );
}

function saySugar(working: Working, { emulsion, haze, given }: Said): void {
  const { medium, dispersion } = emulsion;
  if (medium.sugarShare >= 0.2) {
    const drink = { ...dispersion, mediumIndex: 1.34783 };
    const sizes = [{ diameterNanometres: (given.droplet?.inner ?? 50e-9) * 1e9, volumeShare: 1 }];
    const times = scattered(drink, sizes).turbidity / Math.max(1e-30, scattered(dispersion, sizes).turbidity);
    const more = times < 1000 ? `${numberText(times, 2)} times` : 'more than a thousand times';
    working.caution(
      'sugar-hides-haze',
      `Sugar bends light nearly as the oil does: oil for oil, the same droplets scatter ${more} as much in a drink of 10 Brix. A syrup that looks clear can make a hazy drink: judge at drinking strength.`,
      'icumsa-1974',
    );
  }
  if (dispersion.volumeFraction > crowded.value)
    working.caution(
      'concentrate',
      `With ${trimmedNumber(dispersion.volumeFraction * 100, 2)} % of oil by volume this is a concentrate: it can look like milk and its drink clear. 30 nm droplets do so at 4 %, and nobody sees them at 48 mg/L.`,
      'bohren-huffman-1983',
    );
  if (haze && haze.opticalPath > singleScattering.value && haze.ntu)
    working.caution(
      'scattered-twice',
      `No share of light through the glass is given: turbidity x width is ${trimmedNumber(haze.opticalPath, 2)}, and light is scattered once only up to about ${singleScattering.value}.`,
      'bohren-huffman-1983',
    );
}

function sayLight(working: Working, { given, emulsion }: Said): void {
  const nanometres = (given.wavelength?.inner ?? usualWavelength.value * 1e-9) * 1e9;
  if (!isWhite(nanometres))
    working.caution(
      'not-white-light',
      `NTU is of white light: at ${trimmedNumber(nanometres, 4)} nm a meter counts otherwise (an infra-red one about five to six times less for droplets under 100 nm), and nothing is converted. The look is still that by eye.`,
      'derived from Mie scattering at 550 and 860 nm',
    );
  if (Math.abs(emulsion.dispersion.oilIndex / emulsion.dispersion.mediumIndex - 1) < 0.005)
    working.caution(
      'index-matched',
      'Oil and drink bend light alike here: it looks clear whatever the droplets are, and says nothing of them.',
      'bohren-huffman-1983',
    );
}
