/** The bibliography. Every figure names one of these keys. */

export interface Source {
  /** Author or body, year, title, table or section: enough to find it. */
  readonly text: string;
}

/** Pharmacopoeias, codes and regulations. */
const standards = {
  'usp32-orange-oil': 'United States Pharmacopeia 32, National Formulary 27, Orange Oil',
  'usp35-lemon-oil': 'United States Pharmacopeia 35, National Formulary 30, Lemon Oil',
  'usp35-peppermint-oil': 'United States Pharmacopeia 35, National Formulary 30, Peppermint Oil',
  'usp32-cardamom-oil': 'United States Pharmacopeia 32, National Formulary 27, Cardamom Oil',
  'usp32-clove-oil': 'United States Pharmacopeia 32, Clove Oil',
  'usp35-coriander-oil': 'United States Pharmacopeia 35, National Formulary 30, Coriander Oil',
  'usp9-nutmeg-oil': 'United States Pharmacopeia IX, 1916, oil of nutmeg',
  'usp32-polysorbate-20': 'United States Pharmacopeia 32, National Formulary 27, Polysorbate 20',
  'usp32-polysorbate-80': 'United States Pharmacopeia 32, National Formulary 27, Polysorbate 80',
  'usp32-sorbitan-trioleate': 'United States Pharmacopeia 32, National Formulary 27, Sorbitan Trioleate',
  'usp32-peg-40-castor-oil':
    'United States Pharmacopeia 32, National Formulary 27, Polyoxyl 40 Hydrogenated Castor Oil',
  'usp32-1101': 'United States Pharmacopeia 32, general chapter 1101, Medicine Dropper',
  'usp-41': 'United States Pharmacopeia 2019, general chapter 41, Balances, as quoted by a maker of balances',
  'jcgm-100':
    'JCGM 100:2008, Evaluation of measurement data, Guide to the expression of uncertainty in measurement',
  'ph-eur-orange-oil': 'European Pharmacopoeia 6.2, Sweet Orange Oil, as given in Martindale',
  'ph-eur-triglycerides': 'European Pharmacopoeia, Triglycerides, Medium-chain',
  'ph-eur-propylene-glycol': 'United States and European Pharmacopoeias, Propylene Glycol',
  'chp-2020-glyceryl-stearate': 'Chinese Pharmacopoeia 2020, glyceryl mono- and distearate',
  fcc: 'Food Chemicals Codex, the monograph of this oil',
  'fcc-bergamot-quoted': 'Food Chemicals Codex, Bergamot Oil, as quoted on a supplier sheet',
  'fcc-lemon-quoted': 'Food Chemicals Codex, Lemon Oil Distilled, as quoted on a supplier sheet',
  'fcc-grapefruit-quoted': 'Material data entry marked as listed in the Food Chemicals Codex, grapefruit oil',
  'iso-3140': 'ISO 3140, Oil of sweet orange',
  'cfr-21-172-836': 'US FDA, 21 CFR 172.836, Polysorbate 60',
  'cfr-21-172-840': 'US FDA, 21 CFR 172.840, Polysorbate 80',
  'cfr-27-21-129': 'US TTB, 27 CFR 21.129, Spearmint oil, terpeneless',
  'eu-purity': 'European Union purity criteria for food additives, the entry of this additive',
} as const;

/** Handbooks and data collections. */
const handbooks = {
  'iupac-atomic-weights': 'IUPAC CIAAW, standard atomic weights, summed over the formula',
  'crc-95':
    'Haynes (ed.) 2014, CRC Handbook of Chemistry and Physics, 95th edition, Physical Constants of Organic Compounds',
  'crc-102':
    'CRC Handbook of Chemistry and Physics, 102nd edition, Concentrative Properties of Aqueous Solutions',
  'kell-1975':
    'Kell 1975, J. Chem. Eng. Data 20:97, in the ITS-90 form of Jones and Harris 1992, J. Res. NIST 97:335',
  'vdi-ppds': 'VDI Heat Atlas, density and viscosity correlations, evaluated',
  'perry-viscosity': "Perry's Chemical Engineers' Handbook, Table 2-313, liquid viscosity, evaluated",
  'viswanath-natarajan': 'Viswanath and Natarajan, viscosity correlations, evaluated',
  'jasper-1972': "Jasper 1972 and Lange's Handbook, surface tension coefficients, evaluated",
  'flash-point-set': 'Serat and others, the flash point set derived from DIPPR',
  'kowwin-2006': 'Syracuse Research 2006, the experimental log P set of KOWWIN',
  'aqsoldb-2019': 'Sorkun, Khetan and Er 2019, AqSolDB, Sci. Data 6, measured solubilities',
  'icumsa-sucrose-density':
    'Bettin, Emmerich, Spieweck and Toth 1998, Density data for aqueous sucrose, Zuckerindustrie 123:341; ICUMSA SPS-4',
  'melinder-2010': 'Melinder 2010, Properties of Secondary Working Fluids for Indirect Systems, IIR',
  'food-additives-data-book':
    'Smith and Hong-Shum (eds) 2003, Food Additives Data Book, the entry of this substance',
  'excipients-handbook':
    'Rowe, Sheskey and Owen (eds) 2006, Handbook of Pharmaceutical Excipients, 5th edition, Tables VI, VIII and IX of the polysorbates',
  'merck-sorbitan': 'Merck Index, Sorbitan esters',
  'merck-lemon-oil': 'Merck Index, Oil of Lemon',
  'surburg-panten':
    'Surburg and Panten, Common Fragrance and Flavor Materials, as quoted in a chemical data entry',
  'parry-1922': 'Parry 1918 to 1922, The Chemistry of Essential Oils and Artificial Perfumes, page 238',
  'belitz-1987': 'Belitz and Grosch 1987, Food Chemistry, as adapted in a university course, Table 1',
  'belitz-2009':
    'Belitz, Grosch and Schieberle 2009, Food Chemistry, 4th edition, Tables 5.18 to 5.35 and pages 362 to 388',
  'aroma-handbooks': 'Handbooks of flavour chemicals (Leffingwell, Buttery, van Gemert)',
  'fema-use-survey': 'Early FEMA survey of use levels in non-alcoholic drinks, as carried by handbooks',
  'encyclopaedia-menthenethiol': 'Encyclopaedia entry on grapefruit mercaptan, quoting primary work',
  'geosmin-review': 'Review table on the odour threshold of geosmin in water',
  'geosmin-thesis': 'Thesis abstract on the odour threshold of geosmin in water',
  'tominaga-2006': 'Tominaga 2006, enantiomers of 3-mercaptohexanol and its acetate, model wine, abstract',
  'dubourdieu-tominaga': 'Dubourdieu and Tominaga, polyfunctional thiol compounds in wine, chapter',
  'general-knowledge': 'general knowledge of the trade and of handbooks; no copy could be read',
} as const;

/** Papers, teaching sheets and supplier sheets. */
const papers = {
  'griffin-1949': 'Griffin 1949, Classification of surface-active agents by HLB, J. Soc. Cosmet. Chem. 1:311',
  'griffin-1954':
    'Griffin 1954, Calculation of HLB values of non-ionic surfactants, J. Soc. Cosmet. Chem. 5:249',
  'hlb-mixing-ratios': 'Open-access article PMC3969497, Table I, surfactant mixing ratios',
  'ocl-2022': 'OCL, Oilseeds and fats, Crops and Lipids 2022, article ocl210096, Table 4',
  'hlb-teaching-sheet': 'Teaching sheet with a worked HLB example of four oils',
  'ici-hlb-system': 'ICI Americas 1976, The HLB System',
  'martin-pharmacy': "Martin's Physical Pharmacy, the chapter on interfacial phenomena",
  'polysorbate-60-sheet': 'Supplier sheet on polysorbate 60, HLB and cloud point',
  'polysorbates-sheet': 'Supplier sheet on polysorbates 20, 40, 60 and 80, HLB',
  'sorbitan-trade-table':
    'Trade table of sorbitan esters (HLB, saponification, acid), a source of low authority',
  'sorbitan-oleate-sheet': 'Supplier specification of sorbitan monooleate',
  'sorbitan-laurate-sheet': 'Supplier sheet on sorbitan monolaurate',
  'emulsifier-hlb-list': 'Supplier list of the HLB values of common emulsifiers',
  'sucrose-ester-grades': 'Supplier grade table of sucrose esters, as quoted',
  'sucrose-palmitate-grades': 'Palmitate grades of two suppliers of sucrose esters, as quoted',
  'lecithin-sheet': 'Supplier page on the HLB of soy lecithins, 2022',
  'triglycerol-listing': 'Listing of HLB values of triglycerol stearate, as quoted',
  'polyglycerol-course-list':
    'HLB list of an academic course, glycerol, diglycerol and tetraglycerol stearates',
  'mitra-dungan-1997': 'Mitra and Dungan 1997, J. Agric. Food Chem. 45:1587, quillaja saponin, abstract',
  'tpgs-sheet': 'Supplier sheet on the properties of tocopheryl polyethylene glycol succinate',
  'peg-40-castor-sheet': 'Supplier sheet on PEG-40 hydrogenated castor oil, HLB',
  'pharmaceutics-2023-limonene': 'Pharmaceutics 2023, 15:2564, section 3.1.1, limonene microemulsions',
  'mahmood-2013': 'Mahmood and Al-Koofee 2013, Global J. Sci. Frontier Res. Chem. 13(4), CMC by fluorescence',
  'niczinger-2015': 'Niczinger and others 2015, Curr. Pharm. Anal. 11:11, required HLB of lemon oil',
  'santos-2023': 'Santos and others 2023, Appl. Sci. 13:5208, lemon oil emulsions, abstract',
  'lee-yoon-2020':
    'Lee and Yoon 2020, J. Cosmet. Sci. 71:411, required HLB of citrus and seed oils, abstract',
  'meher-2013':
    'Meher and others 2013, Drug Dev. Ind. Pharm. 39:1540, required HLB of citronella oil, abstract',
  'vaughan-rice-1990':
    'Vaughan and Rice 1990, J. Dispers. Sci. Technol. 11:83, required HLB from the solubility parameter',
  'orafidiya-2002': 'Orafidiya and Oladimeji 2002, Int. J. Pharm. 237:241, required HLB of essential oils',
  'rodriguez-rojo-2012': 'Rodríguez-Rojo and others 2012, Ind. Crops Prod. 37:137, rosemary oil, abstract',
  'fernandes-2013': 'Fernandes 2013, required HLB of rosemary oil',
  'macedo-quoted': 'Article fragment that quotes Macedo and others on medium-chain triglycerides',
  'mct-nanoemulsion-review': 'Review table on medium-chain triglycerides in nanoemulsions, as quoted',
  'essential-oil-constituents': 'Frontiers Bioeng. Biotechnol. 2020, 8:563, Table 1',
  'orange-oil-sheet': 'Supplier data on orange oil, density and flash point',
  'orange-oil-entry': 'Flavour material data entry, sweet orange oil, flash point',
  'bergamot-sheet': 'Supplier sheet on bergapten-free bergamot oil',
  'spearmint-sheet': 'Supplier sheet on spearmint oil',
  'propylene-glycol-sheet': 'Supplier data on propylene glycol, viscosity',
  'propylene-glycol-ntp': 'Chemical data entry on propylene glycol, surface tension',
  'citrus-titration': 'AOAC and citrus trade, titration to pH 8.1 to 8.2',
  'prepared-foods': 'Prepared Foods, trade article on the potency of sweeteners',
  'alternative-sweeteners':
    'Alternative Sweeteners, the chapter on mixed sweetener functionality, page 467, Table 1',
  'prakash-2014': 'Prakash, Markosyan and Bunders 2014, Foods 3:162, rebaudioside M, abstract',
  'sweetener-review': 'Open-access sweetener review, Table 2',
} as const;

export const sources: Readonly<Record<string, Source>> = Object.fromEntries(
  Object.entries({ ...standards, ...handbooks, ...papers }).map(([key, text]) => [key, { text }]),
);
