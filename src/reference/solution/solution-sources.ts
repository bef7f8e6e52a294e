/** Where the figures of acids, sugars, water activity and carbon dioxide come from. Same shape as the main bibliography. */
import type { Source } from '../sources.ts';

export const solutionSources: Readonly<Record<string, Source>> = {
  'goldberg-2002': {
    text: 'Goldberg, Kishore and Lennen 2002, Thermodynamic quantities for the ionization reactions of buffers, J. Phys. Chem. Ref. Data 31:231',
  },
  'eden-bates-1959': { text: 'Eden and Bates 1959, Acidic dissociation of malic acid, J. Res. NBS 62:161' },
  'canovas-shock-2016': {
    text: 'Canovas and Shock 2016, Geobiochemistry of metabolism, Geochim. Cosmochim. Acta 195:293',
  },
  'martin-tartar-1937': {
    text: 'Martin and Tartar 1937, The ionization constant of lactic acid, 0 to 50 C, J. Am. Chem. Soc. 59:2672',
  },
  'nist-46': {
    text: 'NIST Standard Reference Database 46 (Martell, Smith and Motekaitis), critically selected stability constants',
  },
  'martell-smith-2004': {
    text: 'Martell and Smith 2004, Critically selected stability constants; Belitz, Grosch and Schieberle, Food Chemistry',
  },
  'echa-gluconic': { text: 'ECHA registration data for gluconic acid' },
  'marshall-franck-1981': {
    text: 'Marshall and Franck 1981, Ion product of water substance, J. Phys. Chem. Ref. Data 10:295',
  },
  'malmberg-maryott-1956': {
    text: 'Malmberg and Maryott 1956, Dielectric constant of water from 0 to 100 C, J. Res. NBS 56:1',
  },
  'davies-1962': { text: 'Davies 1962, Ion Association, Butterworths; Davies 1938, J. Chem. Soc. 2093' },
  'wagner-pruss-1993': {
    text: 'Wagner and Pruss 1993, saturation properties of ordinary water, J. Phys. Chem. Ref. Data 22:783 (IAPWS SR1-86)',
  },
  'iapws-r9-97': { text: 'IAPWS R9-97, Release on the refractive index of ordinary water substance, 1997' },
  'icumsa-1974': { text: 'ICUMSA 1974, refractive index of sucrose solutions at 20 C (SPS-3)' },
  'oiv-as2-02': { text: 'OIV-MA-AS2-02, Refractometry of grape musts, Table I' },
  'genotelle-1978': {
    text: 'Genotelle 1978, Ind. Alim. Agric. 95:747; Mathlouthi and Genotelle 1995, in Sucrose: Properties and Applications, equation 6.29',
  },
  'nbs-440': {
    text: 'Bingham and Jackson 1919 and Swindells and others 1958, viscosities of sucrose solutions, NBS Circular 440 and supplement',
  },
  'crc-sucrose-solubility': {
    text: 'CRC Handbook of Chemistry and Physics, older editions, solubility of sucrose',
  },
  'norrish-1966': { text: 'Norrish 1966, J. Food Technol. 1:25' },
  'chirife-constants': {
    text: 'Ferro Fontan, Chirife and Boquet 1981, J. Food Technol. 16:553; Baeza and others 2010, Food Bioprocess Technol. 3:87; Chirife and others 1980',
  },
  'polyol-constants': { text: 'Open-access study of the water activity of polyols (PMC2836749), Table 3' },
  'ross-1975': { text: 'Ross 1975, Food Technol. 29(3):26' },
  'robinson-stokes-1959': {
    text: 'Robinson and Stokes 1959, Electrolyte Solutions, 2nd edition, Appendix 8',
  },
  'forney-brandl-1992': {
    text: 'Forney and Brandl 1992, Control of humidity with glycerol-water solutions, HortTechnology 2:52',
  },
  'weiss-1974': { text: 'Weiss 1974, Carbon dioxide in water and seawater, Mar. Chem. 2:203' },
  'carroll-1991': {
    text: 'Carroll, Slupsky and Mather 1991, The solubility of carbon dioxide in water at low pressure, J. Phys. Chem. Ref. Data 20:1201',
  },
  'abbott-virial': {
    text: 'Smith, Van Ness and Abbott, Introduction to Chemical Engineering Thermodynamics, generalised second virial coefficient',
  },
  'findlay-1910': {
    text: 'Findlay and Creighton 1910, Findlay and Shen 1912, J. Chem. Soc.; IUPAC-NIST Solubility Data Series 62',
  },
  'neta-2007': {
    text: 'Da Conceicao Neta and others 2007, The chemistry and physiology of sour taste, J. Food Sci. 72:R33',
  },
  'dubois-1991': {
    text: 'DuBois, Walters, Schiffman and others 1991, concentration-response of sweeteners, in Sweeteners: Discovery, Molecular Design and Chemoreception, ACS, 261; highest responses as quoted elsewhere',
  },
  'berg-keefer-1958': {
    text: 'Berg and Keefer 1958, Analytical determination of tartrate stability in wine, Am. J. Enol. Vitic. 9:180, as remembered',
  },
  'stevens-baier-1939': { text: 'Stevens and Baier 1939, Ind. Eng. Chem. Anal. Ed. 11:447' },
};
