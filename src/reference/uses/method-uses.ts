/** Arithmetic, statistics and tastings: what is used for what. */

import { groupEstimates } from '../solution/acid-constants.ts';
import type { Shelf } from './use.ts';

export const practice = { source: 'common practice, no source' } as const;

const weighed = [
  'emulsifier',
  'dose',
  'drops',
  'weigh',
  'overpoured',
  'uses',
  'scale',
  'cost',
  'swap',
] as const;

export const methodShelves: readonly Shelf[] = [
  {
    what: 'masses add up, shares are by mass',
    of: { source: 'conservation of mass' },
    range: 'anywhere',
    by: [...weighed, 'dilute', 'correct', 'ladder', 'next', 'compare', 'history', 'drink', 'batch', 'acid'],
    always: [
      ...weighed,
      'dilute',
      'correct',
      'ladder',
      'next',
      'compare',
      'history',
      'drink',
      'batch',
      'acid',
    ],
  },
  {
    what: 'scatter as a bell on the logarithm of the amount',
    of: { source: 'finney-1971', locator: 'chapter 4', fromMemory: true },
    range: 'one edge; amounts above zero (from memory)',
    by: ['series', 'next', 'decide'],
    always: ['series', 'next', 'decide'],
  },
  {
    what: 'where the break can lie; scatter, shift of a day, odd beakers',
    of: practice,
    range: 'from 2 % to 40 % of scatter are tried',
    by: ['series', 'next', 'decide'],
  },
  {
    what: 'interval on the share that can tell',
    of: { source: 'clopper-pearson-1934' },
    range: 'tastings that know nothing of each other (from memory)',
    by: ['triangle', 'pair'],
  },
  {
    what: 'the test',
    of: { triangle: { source: 'iso-4120' }, pair: { source: 'iso-5495' } },
    range: 'tastings that know nothing of each other (from memory)',
    by: ['triangle', 'pair'],
  },
  {
    what: 'mean, spread and interval of weighed drops',
    of: { source: 'student-1908' },
    range: 'weighings that scatter as a bell, two or more (from memory)',
    by: ['dropper', 'clarity'],
    always: ['dropper'],
  },
  {
    what: 'combined uncertainty',
    of: { source: 'jcgm-100' },
    range: 'errors small and independent of each other (from memory)',
    by: ['dilute', 'dropper'],
  },
  {
    what: 'change of heat capacity of malic and fumaric acid',
    of: groupEstimates,
    range: 'at 25 C, estimated from groups',
    by: ['ph', 'adjust', 'drink'],
  },
  {
    what: 'sourness',
    of: { source: 'neta-2007' },
    by: ['adjust'],
  },
  {
    what: 'refractometer readings off 20 C, compared with',
    of: { source: 'oiv-as2-02' },
    range: '5 to 15 C',
    by: ['brix', 'correct'],
  },
  {
    what: 'viscosity below 30 C, fitted to',
    of: { source: 'nbs-440' },
    by: ['brix', 'ring'],
  },
  {
    what: 'water activity of glycerol, fitted to',
    of: { source: 'forney-brandl-1992' },
    by: ['water-activity'],
  },
  {
    what: 'when a sample is looked at',
    of: practice,
    by: ['due', 'look', 'labels'],
    always: ['due'],
  },
];
