/** The answer of `coat`. */

import { fail } from '../../problem.ts';
import { polysorbateTails, ratioMap, surfaceLoad, swollenMicelle } from '../../reference/droplet.ts';
import { lookUp } from '../../reference/look-up.ts';
import { answered } from '../answered.ts';
import type { PlainFound, Taken, TrialPicture, Worked } from '../calculator.ts';
import type { CoatFields, CoatGiven } from '../calculators/coat.ts';
import type { NamedItem } from '../item-fields.ts';
import { dropletFault } from '../light/turbidity.ts';
import { meetingStage } from '../mixture/meeting-stage.ts';
import { numberText, trimmedNumber } from '../number-text.ts';
import { ratioInWords } from '../ratio-words.ts';
import { grams } from '../typed-quantity.ts';
import type { Working } from '../working.ts';
import { emulsifierToCover, smallestCovered } from './coverage.ts';
import { placeOnMap } from './ratio-map.ts';
import { micelleDiameter } from './swollen-micelle.ts';

const usualEmulsifier = 'polysorbate 80';
const wholeBatchGrams = 100;

export function coatOfTrial({
  mixture,
  droplet,
}: TrialPicture): readonly Taken<CoatFields>[] | { readonly why: string } {
  const meeting = meetingStage(mixture);
  if (!meeting) return { why: 'no stage holds both an oil and an emulsifier' };
  const { oils, emulsifiers, oilGrams, emulsifierGrams, stage, name } = meeting;
  return [
    {
      stage: name,
      given: {
        oil: oils,
        emulsifier: emulsifiers.flatMap(({ entry }) => (entry ? [entry] : [])),
        ratio: { left: 1, right: emulsifierGrams / oilGrams },
        batch: grams(stage.massGrams),
        ...(droplet ? { droplet } : {}),
      },
    },
  ];
}

interface Oil {
  readonly grams: number;
  readonly millilitres: number;
}

export function workCoat(given: CoatGiven, working: Working): Worked {
  if (given.oil.length === 0)
    return fail(
      'missing',
      'OIL is needed',
      'give the oil, such as "2 g sweet orange oil" or "4 % sweet orange oil"',
    );
  if (!given.droplet && !given.ratio)
    return fail(
      'missing',
      'neither a droplet size nor a ratio is given',
      'give --droplet 100 nm, or --ratio 1:3',
    );
  const load = loadOf(given.load, working);
  const oil = oilOf(given, working);
  const cover = given.droplet && coverOf(given.droplet.inner * 1e9, { oil, load, given, working });
  const ratio =
    given.ratio && ratioFigures(given.ratio.right / given.ratio.left, { oil, load, given, working });
  return {
    ...(given.ratio ? { lead: `${ratioInWords(given.ratio.left, given.ratio.right)}.` } : {}),
    found: { ...(cover ?? {}), ...(ratio ?? {}) },
  };
}

function loadOf(load: number | undefined, working: Working): number {
  if (load === undefined) return working.constant('surface load of polysorbate, mg/m2', surfaceLoad);
  if (load > 0 && load <= 50) return load;
  return fail('outside-range', `${load} mg/m2 covers nothing`, 'give a surface load above 0, such as 2');
}

/** How much of it there is; a share is of the batch, of 100 g where none is given. */
function oilOf(given: CoatGiven, working: Working): Oil {
  const batchGrams = given.batch?.inner ?? wholeBatchGrams;
  const parts = given.oil.map((item) => partOf(item, { given, working, batchGrams }));
  const oil = {
    grams: parts.reduce((sum, one) => sum + one.grams, 0),
    millilitres: parts.reduce((sum, one) => sum + one.millilitres, 0),
  };
  if (!(oil.grams > 0))
    return fail(
      'not-positive',
      'there is no oil',
      'give an amount above zero, such as "2 g sweet orange oil"',
    );
  if (given.batch && oil.grams > given.batch.inner * (1 + 1e-9))
    return fail('over-batch', 'the oil is more than the batch', 'check the amount of oil and --batch');
  return oil;
}

function partOf(
  item: NamedItem,
  {
    given,
    working,
    batchGrams,
  }: { readonly given: CoatGiven; readonly working: Working; readonly batchGrams: number },
): Oil {
  const density = given.oilDensity?.inner ?? (item.entry && working.figure(item.entry, 'density'));
  if (density === undefined || !(density > 0))
    return fail(
      'no-figure',
      `no density is known of ${item.name}`,
      'add "density: 0.85 g/mL" under it in ingredients.yaml, or give --oil-density',
    );
  const { dimension, inner } = item.quantity;
  if (dimension === 'volume') return { grams: inner * density, millilitres: inner };
  const mass = dimension === 'share' ? inner * batchGrams : inner;
  return { grams: mass, millilitres: mass / density };
}

interface Around {
  readonly oil: Oil;
  readonly load: number;
  readonly given: CoatGiven;
  readonly working: Working;
}

function coverOf(nanometres: number, { oil, load, given, working }: Around): PlainFound {
  const fault = dropletFault(nanometres);
  if (fault) answered(fault);
  const mass = emulsifierToCover({
    oilMillilitres: oil.millilitres,
    surfaceLoad: load,
    diameterNanometres: nanometres,
  });
  working.line(
    'least emulsifier = 6 x surface load x volume of oil / diameter',
    `6 x ${trimmedNumber(load)} mg/m2 x ${numberText(oil.millilitres, 4)} mL / ${trimmedNumber(nanometres, 4)} nm = ${numberText(mass, 4)} g`,
  );
  working.caution(
    'covered-is-not-stable',
    `Good to ${surfaceLoad.factor} times either way, and at least this: micelles take emulsifier too, and a covered droplet can still grow.`,
    'food-emulsions',
  );
  const isWholeKnown =
    given.batch !== undefined || given.oil.every(({ quantity }) => quantity.dimension === 'share');
  return {
    emulsifierMass: mass,
    emulsifierLow: mass / surfaceLoad.factor,
    emulsifierHigh: mass * surfaceLoad.factor,
    fraction: isWholeKnown ? mass / (given.batch?.inner ?? wholeBatchGrams) : null,
    emulsifierPerOil: mass / oil.grams,
  };
}

function ratioFigures(emulsifierPerOil: number, { oil, load, given, working }: Around): PlainFound {
  const place = placeOnMap(emulsifierPerOil);
  working.cite('map of emulsifier per oil', ratioMap.source);
  working.caution(
    'map-is-a-prior',
    `The map was found for ${ratioMap.systems}; its borders at 1 and 2 are good to ${ratioMap.accuracy * 100} %. For another oil, emulsifier or way of making it is a first guess: the ladder decides.`,
    ratioMap.source,
  );
  const emulsifierGrams = oil.grams * emulsifierPerOil;
  const smallest = smallestCovered({ oilMillilitres: oil.millilitres, surfaceLoad: load, emulsifierGrams });
  working.line(
    'smallest droplet covered = 6 x surface load x volume of oil / emulsifier',
    `6 x ${trimmedNumber(load)} mg/m2 x ${numberText(oil.millilitres, 4)} mL / ${numberText(emulsifierGrams, 4)} g = ${numberText(smallest, 3)} nm`,
  );
  return {
    map: place.words,
    smallestCovered: smallest,
    ...micelleFigures(emulsifierPerOil, given, working),
    ...(given.droplet ? {} : { emulsifierPerOil }),
  };
}

/** Only for polysorbates, of which the tail is known, and only where all of the oil can go into micelles. */
function micelleFigures(emulsifierPerOil: number, given: CoatGiven, working: Working): PlainFound {
  const names =
    given.emulsifier.length === 0
      ? [usualEmulsifier]
      : given.emulsifier.flatMap(({ name, like }) => [name, ...(like ?? [])]);
  const known = names.find((name) => lookUp(polysorbateTails, name));
  const tail = known === undefined ? undefined : polysorbateTails[known];
  if (!tail || placeOnMap(emulsifierPerOil).kind === 'emulsion') return {};
  const diameter = micelleDiameter({ emulsifierPerOil, ...tail });
  working.cite('size of a micelle with oil in it', swollenMicelle.source, true);
  working.line(
    'diameter = 2 x (3 (v_tail + n v_oil)/a + shell)',
    `a ${swollenMicelle.area} nm2, shell ${swollenMicelle.shell} nm, ${numberText(emulsifierPerOil, 3)} of ${known} per oil: ${numberText(diameter, 3)} nm`,
  );
  working.caution(
    'micelle-size',
    `The droplet size is a rough estimate, ${swollenMicelle.factor} times either way, and holds only where all of the oil goes into micelles; limonene stands for the oil.`,
    swollenMicelle.source,
  );
  return {
    dropletEstimate: diameter,
    dropletLow: diameter / swollenMicelle.factor,
    dropletHigh: diameter * swollenMicelle.factor,
  };
}
