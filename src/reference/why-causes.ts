/** What a look can mean, what to try next, and how that is known. The order of likelihood is common practice. */

const practice = 'common practice, no source';

export interface CauseWords {
  readonly title: string;
  readonly next: string;
  readonly source: string;
}

export const causeWords = {
  'not-settled': {
    title: 'bubbles, or still warm: it has not settled',
    next: 'look again when it has stood for a day at bench temperature',
    source: practice,
  },
  'blank-too': {
    title: 'not the oil: the blank looks so too',
    next: 'look at the emulsifier, the carrier and the water; make the blank with deionised water',
    source: practice,
  },
  'control-too': {
    title: 'the bench, not this beaker: the control went too',
    next: 'ask what changed for all: a lot, the water, the temperature, the glass; make the control again',
    source: practice,
  },
  'made-otherwise': {
    title: 'made otherwise than the others',
    next: 'make it again as the others were made before the ratio is blamed; water at 20 or at 70 C made 10.3 um or 51 nm of one recipe',
    source: 'Yu, Li, Xu, Hao and Sun 2013, Langmuir, abstract',
  },
  'seen-otherwise': {
    title: 'seen otherwise: the background is not the usual one',
    next: 'look again as you always do; black or white moves what is seen up to twenty times',
    source: 'Fleet and Siebert 2006, J. Sens. Stud. 21',
  },
  'too-little-emulsifier': {
    title: 'too little emulsifier for the oil',
    next: 'go up the ladder: a beaker with more emulsifier per oil, made the same way',
    source:
      'Rao and McClements 2011, J. Agric. Food Chem. 59:5026; for lemon oil and polysorbate 80 with heat',
  },
  'droplets-grew': {
    title: 'droplets that grew: it was clear before',
    next: 'measure a droplet size, or dilute it tenfold and send a lamp through: large droplets dim it, small ones only turn it blue. Then try 10 % of an insoluble oil (MCT, ester gum) in the oil, or a folded oil',
    source: 'Park and others 2020, Appl. Sci. 10:5588; Rao and McClements 2012, Food Hydrocoll. 29:326',
  },
  'droplets-large': {
    title: 'droplets too large from the start',
    next: 'make it again hotter, slower or with more stirring; measure a droplet size if you can',
    source: 'Yu, Li, Xu, Hao and Sun 2013, Langmuir, abstract; common practice',
  },
  'dose-shows': {
    title: 'the dose: at this strength even good droplets show',
    next: 'halve the dose of oil in the same glass; haze halves with it',
    source: 'Mie scattering, as neckring clarity',
  },
  'cold-haze': {
    title: 'cold: wax of the oil, or an emulsifier that holds less when cold',
    next: 'warm it to bench temperature: what clears was the cold; then chill the oil alone overnight and filter it',
    source: 'US patent 5,362,714, dewaxing citrus oils (background section)',
  },
  'too-warm': {
    title: 'warm: above the clouding temperature of the emulsifier',
    next: 'cool it to bench temperature and look next day; a fail in the heat is no forecast of one in the cold',
    source: 'Chang and McClements 2014, J. Agric. Food Chem. 62:2306',
  },
  antifoam: {
    title: 'the antifoam: its own droplets show',
    next: 'make it without; 10 ppm of silicone can add about 1 NTU',
    source: 'index and droplet size of silicone emulsions, an order of magnitude',
  },
  crystals: {
    title: 'crystals: more than dissolves',
    next: 'warm a spoonful: crystals dissolve; a loupe shows edges',
    source: 'solubilities as neckring drink gives them',
  },
  calcium: {
    title: 'calcium of the water with citrate or phosphate',
    next: 'make it with deionised water; a drop of acid clears it',
    source: 'trade article on water for carbonated soft drinks, 2016 (hardness 100 mg/L); common practice',
  },
  wax: {
    title: 'wax of a cold-pressed citrus oil: not the fault of the emulsion',
    next: 'warm it: wax melts and goes; chill the oil alone overnight and filter it before the next make',
    source: 'US patent 5,362,714, dewaxing citrus oils (background section)',
  },
  'oil-sinks': {
    title: 'the oil is denser than the drink and sinks',
    next: 'weigh it less down, or look at the density of the oil and the drink again',
    source: 'Stokes, as neckring ring',
  },
  'rising-droplets': {
    title: 'large or clumped droplets that rose',
    next: 'more emulsifier or a hotter, slower make; a density match (neckring ring --weigh-with "ester gum") holds them, clear drinks seldom bear it',
    source: 'Stokes, as neckring ring',
  },
  'free-oil': {
    title: 'oil that was never taken up',
    next: 'mix oil, emulsifier and carrier clear before any water; warm them; add the water slowly',
    source: 'Jahanzad and others 2010, Ind. Eng. Chem. Res. 49:7631, abstract; common practice',
  },
  plastic: {
    title: 'plastic that takes up oil: polyethylene film and cups do so readily, PET little',
    next: 'cover it with glass or foil and fill it into glass; taste it beside one that stood in glass',
    source: 'absorption of flavour compounds by LDPE, PC and PET, 29 d at 20 C, abstract',
  },
  'dried-foam': {
    title: 'dried foam at the glass, no oil',
    next: 'wipe it with a wet finger: foam goes, oil smears and smells',
    source: practice,
  },
  spoiled: {
    title: 'something grows',
    next: 'do not taste it; end it with the word mould or fermenting, and look at pH, preservative and cleanliness',
    source: practice,
  },
  dust: {
    title: 'dust, fibre or lumps of emulsifier that did not dissolve',
    next: 'filter a little and look at it with a loupe',
    source: practice,
  },
  'gel-stage': {
    title: 'a gel stage: much emulsifier in little water',
    next: 'a gel while the first water goes in is usual: go on, slowly and warm; if it stays, more water or more carrier',
    source: practice,
  },
  stressed: {
    title: 'the stress itself: heat or ice broke what would hold on the shelf',
    next: 'go by the sample that stands on the bench; a fail under stress is not decisive',
    source: 'Chang and McClements 2014, J. Agric. Food Chem. 62:2306; emulsion texts, from memory',
  },
} as const satisfies Readonly<Record<string, CauseWords>>;

export type CauseCode = keyof typeof causeWords;
