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
  'kestin-1978': {
    text: 'Kestin, Sokolov and Wakeham 1978, Viscosity of liquid water in the range -8 C to 150 C, J. Phys. Chem. Ref. Data 7:941',
  },
  'richardson-zaki-1954': { text: 'Richardson and Zaki 1954, Trans. Inst. Chem. Eng. 32:35' },
  'dickinson-1992': { text: 'Dickinson 1992, as quoted in McClements, Food Emulsions, chapter 7' },
  'chanamai-mcclements-2000': {
    text: 'Chanamai and McClements 2000, weighting agents, J. Agric. Food Chem. 48:5561, abstract',
  },
  'ripening-stop': {
    text: 'Park and others 2020, Appl. Sci. 10:5588 (20 % ester gum); Lim and others 2011, Food Chem. 128 (above 9 %); Kabalnov 1987; Rao and McClements 2012, Food Hydrocoll. 29:326 (fold); Hoang and others 2002, Langmuir 18:1485 (emulsifier added afterwards); Li and Chiang 2012, Ultrason. Sonochem. 19:192 (cold)',
  },
  'food-emulsions': { text: 'McClements, Food Emulsions, tables of surface load; Qian and McClements 2011' },
  'swollen-micelle': {
    text: 'Tanford 1980, The Hydrophobic Effect; Israelachvili, Intermolecular and Surface Forces; Bester-Rogac 2007, Acta Chim. Slov. 54:452',
  },
  'ratio-map': { text: 'Rao and McClements 2011, J. Agric. Food Chem. 59:5026, abstract' },
  'mabey-mill-1978': {
    text: 'Mabey and Mill 1978, J. Phys. Chem. Ref. Data 7:383; Schwarzenbach and others, Environmental Organic Chemistry',
  },
  'taft-series': {
    text: 'Taft steric constants, as tabulated in Lowry and Richardson, Mechanism and Theory in Organic Chemistry, Table 2.5, on ethyl acetate of Mabey and Mill 1978',
  },
  'church-1999': { text: 'Church, Pankow and Tratnyek 1999, Environ. Toxicol. Chem. 18:2789' },
  'vukov-1965': {
    text: 'Vukov 1965, Int. Sugar J. 67:172; energy as Tombari and others 2007, J. Phys. Chem. B 111:496',
  },
  'polysorbate-hydrolysis': {
    text: 'Bates, Nightingale and Dixon 1973, J. Pharm. Pharmacol. 25:470 (law of pH); Kishore and others 2011, J. Pharm. Sci. 100:721; Donbrow, Azaz and Pillersdorf 1978, J. Pharm. Sci. 67:1676; class estimate by Taft',
  },
  'mei-2010': {
    text: 'Mei and others 2010, J. Agric. Food Chem. 58:533 (citral shielded by oil); IVES abstract on metals and esters in white wine',
  },
};
