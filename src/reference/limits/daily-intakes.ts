/** Acceptable daily intakes and their like, as published. Figures for a day, all food together. */

import type { FormName } from './forms.ts';
import type { HowRead } from './published-figure.ts';

export interface DailyIntake {
  readonly form: FormName;
  readonly by: 'EFSA' | 'JECFA' | 'US FDA' | 'EU SCF';
  /** `adi`; `temporary`; `most`, JECFA's tolerable most of what food holds anyway; `advice` for a group of people. */
  readonly kind: 'adi' | 'temporary' | 'most' | 'advice';
  readonly value: number;
  readonly unit: 'mg/kg a day' | 'mg a day' | 'mg at once';
  /** For whom, where not for everybody. */
  readonly people?: string;
  readonly source: string;
  readonly at: string;
  readonly read: HowRead;
  readonly note?: string;
}

/** A body that gave no number, and its words. */
export interface NoIntakeNumber {
  readonly form: FormName;
  readonly by: DailyIntake['by'];
  readonly words: 'none needed' | 'not specified' | 'not limited';
  readonly source: string;
  readonly at: string;
  readonly read: HowRead;
}

type Rest = Partial<Pick<DailyIntake, 'kind' | 'read' | 'note' | 'people' | 'source'>>;

const efsa = (form: FormName, value: number, at: string, rest: Rest = {}): DailyIntake => ({
  form,
  by: 'EFSA',
  kind: 'adi',
  value,
  unit: 'mg/kg a day',
  source: 'efsa-journal',
  at,
  read: 'abstract',
  ...rest,
});

const jecfa = (form: FormName, value: number, at: string, read: HowRead, rest: Rest = {}): DailyIntake => ({
  form,
  by: 'JECFA',
  kind: 'adi',
  value,
  unit: 'mg/kg a day',
  source: 'jecfa',
  at,
  read,
  ...rest,
});

const page = { source: 'eu-sweetener-page', read: 'elsewhere quoted' } as const;
const inTable = (form: FormName, fda: number, jecfaValue: number): readonly DailyIntake[] => [
  {
    form,
    by: 'US FDA',
    kind: 'adi',
    value: fda,
    unit: 'mg/kg a day',
    source: 'fda-sweetener-table',
    at: '',
    read: 'elsewhere quoted',
  },
  jecfa(form, jecfaValue, '', 'elsewhere quoted', { source: 'jecfa-in-cochrane' }),
];
const caffeine = (value: number, unit: DailyIntake['unit'], people: string): DailyIntake => ({
  ...efsa('caffeine', value, '2015;13(5):4102', { kind: 'advice', read: 'elsewhere quoted', people }),
  unit,
});

export const dailyIntakes: readonly DailyIntake[] = [
  efsa('polysorbates', 25, '2015;13(7):4152'),
  jecfa('polysorbates', 25, '17th meeting 1973, as quoted by EFSA 2015', 'abstract'),
  efsa('sorbitan', 10, '2017;15(5):4788'),
  jecfa('sorbitan esters', 25, '26th meeting 1982', 'from memory'),
  efsa('sucrose esters', 40, '2018;16(1):5087', { note: 'children came out above it in several reviews' }),
  jecfa('sucrose esters', 30, 'technical report on sucrose oligoesters', 'text'),
  efsa('propylene glycol', 25, '2018;16(4):5235'),
  jecfa('propylene glycol', 25, '17th meeting 1973, as quoted by EFSA 2018', 'abstract'),
  efsa('propylene glycol esters', 80, '2018, E 477, as the ester'),
  efsa('silicone', 17, '2020;18(5):6107', { note: 'in place of 1.5' }),
  jecfa('silicone', 1.5, '2011, again', 'from memory', { note: '0.8 for a time from 2008' }),
  efsa('benzoic', 5, '2016;14(3):4433'),
  jecfa('benzoic', 20, '92nd meeting 2021', 'from memory', { note: '5 before that' }),
  efsa('sorbic', 11, '2019;17(3):5625'),
  jecfa('sorbic', 25, '17th meeting 1973', 'from memory'),
  jecfa('sulfur dioxide', 0.7, '', 'text'),
  efsa('sucrose acetate isobutyrate', 20, '2016;14(5):4489'),
  efsa('rosin esters', 12.5, '2018;16(7):5370', { kind: 'temporary' }),
  jecfa('rosin esters', 25, 'as quoted by EFSA 2010;8(7):1654', 'abstract'),
  caffeine(200, 'mg at once', 'adults'),
  caffeine(400, 'mg a day', 'adults, not pregnant'),
  caffeine(200, 'mg a day', 'those pregnant or breast-feeding'),
  caffeine(3, 'mg/kg a day', 'children'),
  efsa('phosphorus', 40, '2019;17(6):5674', {
    note: 'not for kidney disease; children came out above it',
  }),
  jecfa('phosphorus', 70, '26th meeting 1982', 'text', { kind: 'most' }),
  efsa('tartaric', 240, '2020;18(3):6030', { note: 'in place of 30' }),
  jecfa('tartaric', 30, '21st meeting 1977', 'text'),
  jecfa('edta', 2.5, '17th meeting 1973', 'text'),
  efsa('quillaia saponins', 3, '2019;17(3):5622'),
  jecfa('quillaia saponins', 1, 'as quoted by EFSA 2019', 'abstract'),
  efsa('acesulfame', 15, '2025;23(4):9317', { note: 'was 9' }),
  ...inTable('acesulfame', 15, 15),
  efsa('aspartame', 40, 'EFSA 2013', page),
  ...inTable('aspartame', 50, 40),
  { ...efsa('cyclamic', 7, 'SCF 2000', page), by: 'EU SCF' },
  jecfa('cyclamic', 11, '', 'elsewhere quoted', { source: 'jecfa-in-cochrane' }),
  efsa('saccharin', 9, 'November 2024, as reported', {
    source: 'efsa',
    read: 'elsewhere quoted',
    note: 'was 5',
  }),
  ...inTable('saccharin', 15, 5),
  efsa('sucralose', 15, 'SCF 2000, kept by EFSA', page),
  ...inTable('sucralose', 5, 15),
  efsa('steviol', 4, 'EFSA 2010', page),
  ...inTable('steviol', 4, 4),
  efsa('neotame', 2, 'EFSA 2007', page),
  ...inTable('neotame', 0.3, 2),
  jecfa('vanillin', 10, '11th meeting 1967', 'text'),
  jecfa('ethyl vanillin', 3, '44th meeting', 'text'),
  jecfa('maltol', 1, '', 'from memory'),
  jecfa('ethyl maltol', 2, '', 'from memory'),
  jecfa('menthol', 4, '51st meeting', 'text'),
  jecfa('eugenol', 2.5, '', 'from memory'),
  jecfa('ionones', 0.1, '', 'from memory'),
  jecfa('citral', 0.5, '', 'from memory'),
  jecfa('methyl anthranilate', 1.5, '', 'from memory'),
];

const noNumber = (
  form: FormName,
  by: DailyIntake['by'],
  words: NoIntakeNumber['words'],
  at: string,
  read: HowRead,
): NoIntakeNumber => ({ form, by, words, source: by === 'JECFA' ? 'jecfa' : 'efsa-journal', at, read });

export const noIntakeNumbers: readonly NoIntakeNumber[] = [
  noNumber('glycerol', 'EFSA', 'none needed', '2017;15(3):4720', 'elsewhere quoted'),
  noNumber('gum arabic', 'EFSA', 'none needed', '2017;15(4):4741', 'elsewhere quoted'),
  noNumber('octenyl succinate starch', 'EFSA', 'none needed', '2017 and 2020', 'from memory'),
  noNumber('triacetin', 'JECFA', 'not specified', '19th meeting 1975', 'from memory'),
  noNumber('citric', 'JECFA', 'not limited', '17th meeting 1973', 'elsewhere quoted'),
  noNumber('malic', 'JECFA', 'not specified', '23rd meeting 1979', 'text'),
  noNumber('ascorbic', 'JECFA', 'not specified', '', 'from memory'),
];
