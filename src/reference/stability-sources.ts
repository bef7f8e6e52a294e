/** Where the figures on light, rising, covering and keeping come from. Same shape as the main bibliography. */
import type { Source } from './sources.ts';

export const stabilitySources: Readonly<Record<string, Source>> = {
  'bohren-huffman-1983': {
    text: 'Bohren and Huffman 1983, Absorption and Scattering of Light by Small Particles, chapters 4 and 5; Wiscombe 1980, Appl. Opt. 19:1505',
  },
  'ntu-of-water': {
    text: 'Derived here from the NTU of water free of particles and its scattering to 90 degrees at 550 nm; turbidimetry handbooks',
  },
  'haze-bands': {
    text: 'Carrasco and Siebert 1999, Food Qual. Pref. 10:421; Fleet and Siebert 2006, J. Sens. Stud. 21; Ph. Eur. 2.2.1; WHO 2017, Review of Turbidity',
  },
};
