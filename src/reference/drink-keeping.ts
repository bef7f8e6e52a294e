/** What a finished drink's pH, sugar and preservatives say and don't say of keeping, of teeth, and of people. */

export const acidFood = {
  ph: 4.6,
  waterActivity: 0.85,
  source: 'US FDA, 21 CFR 114.3, which leaves carbonated drinks out',
} as const;

/** Zones of drinks on teeth, by their pH as opened, 379 drinks. */
export const erosion = {
  extremeBelow: 3,
  minimalFrom: 4,
  source: 'Reddy and others 2016, J. Am. Dent. Assoc. 147:255',
} as const;

/** g/L; below it there is little for yeast to make gas of. */
export const fermentable = { gramsPerLitre: 2, source: 'common practice, no source' } as const;

/** What keeps yeast down while it is in the drink. */
export const againstYeast: readonly string[] = [
  'benzoic acid',
  'sodium benzoate',
  'sorbic acid',
  'potassium sorbate',
  'dimethyl dicarbonate',
];

export const benzene = {
  precursors: ['benzoic acid', 'sodium benzoate'],
  partners: ['ascorbic acid', 'sodium ascorbate', 'erythorbic acid', 'isoascorbic acid', 'vitamin C'],
  source:
    'Gardner and Lawrence 1993, J. Agric. Food Chem. 41:693; US FDA 2006 to 2007, data on benzene in soft drinks; yardsticks: 40 CFR 141.61 and Directive (EU) 2020/2184 as quoted, WHO from memory',
} as const;

/** Groups of people whom published advice names, by what is in the drink. */
export const sensitiveGroups: readonly {
  readonly names: readonly string[];
  readonly text: string;
  readonly source: string;
}[] = [
  {
    names: ['quinine', 'quinine hydrochloride dihydrate', 'quinine sulfate dihydrate'],
    text: 'Quinine: some people must keep away from it; texts ask for it by name on the label.',
    source: 'US FDA, 21 CFR 172.575; EFSA Journal 2015;13(9):4245',
  },
  {
    names: ['caffeine'],
    text: 'Caffeine: children, and women who are pregnant or breast-feeding, are given lower figures: see intake.',
    source: 'EFSA Journal 2015;13(5):4102, as quoted',
  },
  {
    names: ['aspartame'],
    text: 'Aspartame brings phenylalanine, which people with phenylketonuria must keep away from.',
    source: 'US FDA, 21 CFR 172.804(d)(2)',
  },
  {
    names: ['sodium metabisulfite'],
    text: 'Sulphite: some people, many with asthma among them, react to it.',
    source: 'common knowledge, from memory',
  },
  {
    names: ['phosphoric acid', 'monopotassium phosphate'],
    text: 'Phosphate: the published daily figure is not meant for people with kidney disease.',
    source: 'EFSA Journal 2019;17(6):5674, abstract',
  },
];

/** g/L of glycerol from which the advice on children is said. */
export const glycerolAdvice = {
  gramsPerLitre: 10,
  text: 'Glycerol: of slush drinks with it, British advice is none under 7 years, and one of 350 mL a day from 7 to 10.',
  source:
    'UK Food Standards Agency 2025, as reported; from what level it is said: common practice, no source',
} as const;
