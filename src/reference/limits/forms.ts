/**
 * What a published figure counts and as what. For each ingredient: g of the form in a gram of it, by molar masses
 * (IUPAC atomic weights) unless said otherwise.
 */

export interface Form {
  /** `benzoates` */
  readonly substance: string;
  /** `benzoic acid`; left out where it is counted as it is. */
  readonly as?: string;
  readonly members: Readonly<Record<string, number>>;
  /** What the reckoning rests on, where it is more than molar masses. */
  readonly but?: string;
}

const each = (...names: readonly string[]): Readonly<Record<string, number>> =>
  Object.fromEntries(names.map((name) => [name, 1]));

const polyglycerolEsters = [
  'triglycerol monostearate',
  'hexaglycerol monooleate',
  'decaglycerol monolaurate',
  'decaglycerol monooleate',
  'decaglycerol monostearate',
];
const sorbitanEsters = {
  'sorbitan monolaurate': 0.47381,
  'sorbitan monopalmitate': 0.40777,
  'sorbitan monostearate': 0.3812,
  'sorbitan tristearate': 0.17037,
  'sorbitan oleate': 0.383,
  'sorbitan trioleate': 0.17144,
};

const emulsifiers = {
  'polysorbate 20': { substance: 'polysorbate 20', members: each('polysorbate 20') },
  'polysorbate 60': { substance: 'polysorbate 60', members: each('polysorbate 60') },
  'polysorbate 65': { substance: 'polysorbate 65', members: each('polysorbate 65') },
  'polysorbate 80': { substance: 'polysorbate 80', members: each('polysorbate 80') },
  polysorbates: {
    substance: 'polysorbates',
    members: each('polysorbate 20', 'polysorbate 40', 'polysorbate 60', 'polysorbate 65', 'polysorbate 80'),
  },
  'sorbitan monostearate': { substance: 'sorbitan monostearate', members: each('sorbitan monostearate') },
  'sorbitan esters': { substance: 'sorbitan esters', members: each(...Object.keys(sorbitanEsters)) },
  sorbitan: { substance: 'sorbitan esters', as: 'sorbitan', members: sorbitanEsters },
  'sucrose esters': {
    substance: 'sucrose esters',
    members: each(
      ...[1, 10, 30, 40, 50, 55, 70, 75].map((percent) => `sucrose stearate (${percent} % monoester)`),
      'sucrose laurate (80 % monoester)',
      'sucrose myristate (80 % monoester)',
      'sucrose palmitate (70 % monoester)',
      'sucrose palmitate (80 % monoester)',
      'sucrose oleate (70 % monoester)',
    ),
  },
  'gum arabic': { substance: 'gum arabic', members: each('gum arabic') },
  'octenyl succinate starch': {
    substance: 'starch sodium octenyl succinate',
    members: each('starch sodium octenyl succinate'),
  },
  'quillaia saponins': {
    substance: 'quillaia extract',
    as: 'saponins',
    members: { 'quillaia extract': 0.2 },
    but: 'for a type 1 extract, about 20 % saponins; a purer one holds more',
  },
  'quillaia extract': { substance: 'quillaia extract', members: each('quillaia extract') },
  'propylene glycol esters': {
    substance: 'propylene glycol esters',
    members: each('propylene glycol monostearate', 'propylene glycol monolaurate'),
  },
  'polyglycerol esters': { substance: 'polyglycerol esters', members: each(...polyglycerolEsters) },
  'diacetyl tartaric esters': {
    substance: 'diacetyl tartaric acid esters',
    members: each('diacetyl tartaric acid esters of mono- and diglycerides'),
  },
  'beta-cyclodextrin': { substance: 'beta-cyclodextrin', members: each('beta-cyclodextrin') },
  'sucrose acetate isobutyrate': {
    substance: 'sucrose acetate isobutyrate',
    members: each('sucrose acetate isobutyrate'),
  },
  'rosin esters': { substance: 'glycerol ester of rosin', members: each('ester gum') },
} as const satisfies Readonly<Record<string, Form>>;

const carriers = {
  'propylene glycol': { substance: 'propylene glycol', members: each('propylene glycol') },
  glycerol: { substance: 'glycerol', members: each('glycerol') },
  triacetin: { substance: 'triacetin', members: each('triacetin') },
  'triethyl citrate': { substance: 'triethyl citrate', members: each('triethyl citrate') },
  'polyethylene glycol': { substance: 'polyethylene glycol', members: each('polyethylene glycol 400') },
  ethanol: { substance: 'ethanol', members: each('ethanol') },
  silicone: {
    substance: 'antifoam',
    as: 'active silicone',
    members: { simethicone: 1, 'antifoam emulsion': 0.1 },
    but: 'an emulsion whose strength nobody wrote is taken as 10 % active (common practice, no source)',
  },
} as const satisfies Readonly<Record<string, Form>>;

const preservatives = {
  benzoic: {
    substance: 'benzoates',
    as: 'benzoic acid',
    members: { 'benzoic acid': 1, 'sodium benzoate': 0.84746 },
  },
  'sodium benzoate': {
    substance: 'benzoates',
    as: 'sodium benzoate',
    members: { 'benzoic acid': 1.18, 'sodium benzoate': 1 },
  },
  sorbic: {
    substance: 'sorbates',
    as: 'sorbic acid',
    members: { 'sorbic acid': 1, 'potassium sorbate': 0.74643 },
  },
  'dimethyl dicarbonate': { substance: 'dimethyl dicarbonate', members: each('dimethyl dicarbonate') },
  'sulfur dioxide': {
    substance: 'sulphites',
    as: 'sulphur dioxide',
    members: { 'sodium metabisulfite': 0.674 },
  },
  edta: { substance: 'calcium disodium EDTA', members: each('calcium disodium EDTA') },
  tartaric: { substance: 'tartaric acid', members: each('tartaric acid') },
  malic: { substance: 'malic acid', members: each('malic acid') },
  citric: {
    substance: 'citric acid',
    members: { 'citric acid': 1, 'citric acid monohydrate': 0.91427 },
  },
  ascorbic: { substance: 'ascorbic acid', members: each('ascorbic acid') },
  'phosphorus pentoxide': {
    substance: 'phosphoric acid, phosphates',
    as: 'P2O5',
    members: { 'phosphoric acid': 0.72422, 'monopotassium phosphate': 0.52151 },
  },
  phosphorus: {
    substance: 'phosphoric acid, phosphates',
    as: 'phosphorus',
    members: { 'phosphoric acid': 0.31608, 'monopotassium phosphate': 0.22761 },
  },
  'phosphoric acid': { substance: 'phosphoric acid', members: each('phosphoric acid') },
  quinine: {
    substance: 'quinine',
    as: 'the base',
    members: { quinine: 1, 'quinine hydrochloride dihydrate': 0.81736, 'quinine sulfate dihydrate': 0.82871 },
  },
  caffeine: { substance: 'caffeine', members: each('caffeine') },
} as const satisfies Readonly<Record<string, Form>>;

const sweeteners = {
  acesulfame: { substance: 'acesulfame potassium', members: each('acesulfame potassium') },
  aspartame: { substance: 'aspartame', members: each('aspartame') },
  cyclamic: { substance: 'cyclamate', as: 'the free acid', members: { 'sodium cyclamate': 0.89076 } },
  saccharin: {
    substance: 'saccharin',
    as: 'the imide',
    members: { saccharin: 1, 'sodium saccharin': 0.75952 },
  },
  sucralose: { substance: 'sucralose', members: each('sucralose') },
  steviol: {
    substance: 'steviol glycosides',
    as: 'steviol',
    members: { 'steviol glycosides': 0.32932 },
    but: 'taken as rebaudioside A',
  },
  neotame: { substance: 'neotame', members: each('neotame') },
} as const satisfies Readonly<Record<string, Form>>;

const aromas = {
  vanillin: { substance: 'vanillin', members: each('vanillin') },
  'ethyl vanillin': { substance: 'ethyl vanillin', members: each('ethyl vanillin') },
  maltol: { substance: 'maltol', members: each('maltol') },
  'ethyl maltol': { substance: 'ethyl maltol', members: each('ethyl maltol') },
  menthol: { substance: 'menthol', members: each('menthol') },
  eugenol: { substance: 'eugenol', members: each('eugenol') },
  ionones: { substance: 'ionones', members: each('beta-ionone') },
  citral: {
    substance: 'citral, linalool and esters',
    members: each('citral', 'linalool', 'linalyl acetate'),
  },
  'methyl anthranilate': { substance: 'methyl anthranilate', members: each('methyl anthranilate') },
  estragole: { substance: 'estragole', members: each('estragole') },
  methyleugenol: { substance: 'methyleugenol', members: each('methyleugenol') },
  safrole: { substance: 'safrole', members: each('safrole') },
  quassin: { substance: 'quassin', members: each('quassin') },
  pulegone: { substance: 'pulegone', members: each('pulegone') },
  thujone: { substance: 'thujone', members: each('thujone') },
} as const satisfies Readonly<Record<string, Form>>;

export const forms = { ...emulsifiers, ...carriers, ...preservatives, ...sweeteners, ...aromas } as const;

export type FormName = keyof typeof forms;
