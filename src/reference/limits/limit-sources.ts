/** The texts that the published figures stand in. */

import type { Source } from '../sources.ts';

const texts = {
  'cfr-21': 'US Code of Federal Regulations, title 21, edition of 2015',
  'cfr-21-later': 'US Code of Federal Regulations, title 21, a later copy',
  'cfr-27': 'US Code of Federal Regulations, title 27',
  'eu-1333-2008': 'Regulation (EC) 1333/2008',
  'eu-1334-2008': 'Regulation (EC) 1334/2008',
  'eu-1169-2011': 'Regulation (EU) 1169/2011',
  'eu-1131-2011': 'Regulation (EU) 1131/2011',
  'eu-818-2013': 'Regulation (EU) 818/2013',
  'eu-872-2012': 'Regulation (EU) 872/2012',
  'eu-2018-1482': 'Regulation (EU) 2018/1482',
  'eu-2025-2084': 'Regulation (EU) 2025/2084',
  'codex-gsfa': 'Codex Alimentarius, General Standard for Food Additives (CXS 192)',
  'efsa-journal': 'EFSA Journal',
  efsa: 'European Food Safety Authority',
  jecfa: 'Joint FAO/WHO Expert Committee on Food Additives',
  'fda-sweetener-table': 'US FDA 2015, table of sweeteners, as quoted in Cochrane review CD012885',
  'jecfa-in-cochrane': 'JECFA, as quoted in Cochrane review CD012885',
  'eu-sweetener-page': 'European Commission, knowledge page on sugars and sweeteners',
} as const;

export const limitSources: Readonly<Record<string, Source>> = Object.fromEntries(
  Object.entries(texts).map(([key, text]) => [key, { text }]),
);

/** The text and the place in it, in words. */
export function limitSourceWords({ source, at }: { readonly source: string; readonly at: string }): string {
  const text = limitSources[source]?.text ?? source;
  return at === '' ? text : `${text}, ${at}`;
}
