/** Published figures for the active silicone of an antifoam in a drink, by body. For comparison only. */

export interface AntifoamFigure {
  /** The word under `limits` of the bench. */
  readonly key: 'us' | 'eu' | 'codex';
  readonly body: string;
  readonly value: number;
  readonly unit: 'mg/kg' | 'mg/L';
  readonly scope: string;
  readonly source: string;
}

export const antifoamFigures: readonly AntifoamFigure[] = [
  {
    key: 'us',
    body: 'US FDA',
    value: 10,
    unit: 'mg/kg',
    scope: 'dimethylpolysiloxane in food as ready for consumption, none in milk',
    source: '21 CFR 173.340(a)(2)',
  },
  {
    key: 'eu',
    body: 'European Union',
    value: 10,
    unit: 'mg/L',
    scope: 'E 900 in flavoured drinks, category 14.1.4',
    source: 'Regulation 1333/2008, Annex II, Part E, as given by a copy of the Commission database',
  },
  {
    key: 'codex',
    body: 'Codex',
    value: 20,
    unit: 'mg/kg',
    scope: 'polydimethylsiloxane in water-based flavoured drinks, category 14.1.4',
    source: 'Codex Standard 192, category 14.1.4',
  },
];

/** Seen by practitioners; a curve of foam over the dose of antifoam was looked for and not found. */
export const moreFoamWithMore = {
  source: 'reported in practice (from memory); no published curve was found',
} as const;
