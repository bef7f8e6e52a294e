/** The tones of a report: one hue for the liquid from light to dark, one warm mark, ink and paper. */

type SixTones = readonly [string, string, string, string, string, string];

export interface Tones {
  readonly paper: string;
  readonly ink: string;
  readonly soft: string;
  readonly line: string;
  readonly accent: string;
  readonly span: string;
  readonly deep: string;
  /** From clear to broken. */
  readonly liquid: SixTones;
  /** What floats, lies or hangs in such a liquid. */
  readonly matter: SixTones;
}

export const lightTones: Tones = {
  paper: '#f7f8f4',
  ink: '#18231f',
  soft: '#4c5b55',
  line: '#cfd6d0',
  accent: '#98400c',
  span: '#f3e3d2',
  deep: '#1d6473',
  liquid: ['#e3f0ef', '#bfdde0', '#92c1c9', '#5f9fac', '#357b8a', '#174f5e'],
  matter: ['#0d3742', '#0d3742', '#0d3742', '#072a33', '#f2fafa', '#f2fafa'],
};

export const darkTones: Tones = {
  paper: '#121a19',
  ink: '#e6ece8',
  soft: '#a6b4ae',
  line: '#394643',
  accent: '#f2a565',
  span: '#3a2c1d',
  deep: '#7cc0cc',
  liquid: ['#20343a', '#2a4b53', '#376872', '#4f8c98', '#7fb6c0', '#c4e6ea'],
  matter: ['#e6f4f5', '#e6f4f5', '#e6f4f5', '#071e24', '#071e24', '#071e24'],
};

const variable = (name: string, tone: string): string => `--${name}: ${tone};`;

/** As custom properties of a style sheet. */
export const toneVariables = ({ liquid, matter, ...tones }: Tones): string =>
  [
    ...Object.entries(tones).map(([name, tone]) => variable(name, tone)),
    ...liquid.map((tone, at) => variable(`liquid-${at}`, tone)),
    ...matter.map((tone, at) => variable(`matter-${at}`, tone)),
  ].join(' ');
