import { describe, expect, it } from 'vitest';
import { cellText } from '../../../src/ledger/csv/cell-text.ts';
import { type ColumnPath, parsePath } from '../../../src/ledger/csv/map-path.ts';

describe('paths of the mapping file', () => {
  it.each<[string, ColumnPath]>([
    ['title', { kind: 'fact', key: 'title' }],
    ['Made', { kind: 'fact', key: 'made' }],
    ['leave out', { kind: 'left out' }],
    ['stages.emulsion, process', { kind: 'step', stage: 'emulsion' }],
    [
      'stages.emulsion.sweet orange oil in g',
      { kind: 'item', stage: 'emulsion', item: 'sweet orange oil', part: 'amount', unit: 'g' },
    ],
    [
      'stages.emulsion.water in mL, made up',
      { kind: 'item', stage: 'emulsion', item: 'water', part: 'made up', unit: 'mL' },
    ],
    [
      'stages.syrup.citric acid in g/L in drink',
      { kind: 'item', stage: 'syrup', item: 'citric acid', part: 'amount', unit: 'g/L in drink' },
    ],
    [
      'stages.drink.vitamin b.5 in oil',
      { kind: 'item', stage: 'drink', item: 'vitamin b.5 in oil', part: 'amount', unit: undefined },
    ],
    [
      'stages.emulsion.sweet orange oil, lot',
      { kind: 'item', stage: 'emulsion', item: 'sweet orange oil', part: 'lot', unit: undefined },
    ],
    [
      'observations look at 7 d',
      { kind: 'observation', fact: 'look', isTaste: false, unit: undefined, ageSeconds: 604_800 },
    ],
    [
      'observations turbidity in NTU at 1 d',
      { kind: 'observation', fact: 'turbidity', isTaste: false, unit: 'NTU', ageSeconds: 86_400 },
    ],
    [
      'observations taste soapy at 2 h',
      { kind: 'observation', fact: 'soapy', isTaste: true, unit: undefined, ageSeconds: 7200 },
    ],
  ])('%s', (text, path) => {
    expect(parsePath(text)).toEqual({ ok: true, value: path });
  });

  it.each([
    ['titel', 'did you mean title?'],
    ['trial', 'trials get the next free numbers; map the old one to note'],
    ['stages.emulsion', 'write stages.STAGE.ITEM, or "stages.STAGE, process"'],
    ['observations look', 'write how long after the make: observations look at 7 d'],
    ['observations loook at 7 d', 'did you mean look?'],
    ['observations __proto__ at 7 d', expect.stringContaining('taste WORD')],
    ['observations constructor at 7 d', expect.stringContaining('taste WORD')],
    ['observations turbidity in g at 7 d', 'leave it out, or write the unit of the cells'],
    ['observations look at noon', expect.any(String)],
    ['stages.emulsion.water in g, lot', 'leave out "in g"'],
  ])('refuses %s', (text, hint) => {
    expect(parsePath(text)).toMatchObject({ ok: false, fault: { hint } });
  });
});

describe('cells', () => {
  const read = (path: string, cell: string) => {
    const parsed = parsePath(path);
    return parsed.ok ? cellText(cell, parsed.value, undefined) : parsed;
  };
  const oil = 'stages.emulsion.sweet orange oil in g';

  it.each([
    [oil, '2', '2 g'],
    [oil, '2.50', '2.50 g'],
    [oil, '2500 mg', '2500 mg'],
    ['stages.emulsion.water in g, made up', '50', 'to 50 g'],
    ['stages.emulsion.water in g, made up', 'to 50 g', 'to 50 g'],
    ['observations look at 7 d', 'Clear; Ring', 'clear, ring'],
    ['observations ph at 7 d', '3.1', '3.1'],
    ['made', '2026-03-02', '2026-03-02'],
  ])('%s of %j is %j', (path, cell, text) => {
    expect(read(path, cell)).toEqual({ ok: true, value: text });
  });

  it.each([
    [oil, '2,5', 'decimal-comma', 'write 2.5 g'],
    [oil, '1,000', 'thousands-comma', expect.stringContaining('write 1000 g')],
    [oil, '-2', 'negative-amount', expect.any(String)],
    [oil, 'a bit', expect.any(String), expect.any(String)],
    ['stages.emulsion.sweet orange oil', '2', 'no-unit', expect.any(String)],
    ['stages.emulsion.water in g, weighed', '2 mL', 'wrong-kind', expect.any(String)],
    ['observations ph at 7 d', '3,1', 'decimal-comma', 'write 3.1'],
    ['observations taste soapy at 7 d', '9', 'bad-score', 'write a number from 0 to 5'],
    ['observations look at 7 d', 'hazzy', 'unknown-look', 'write hazy'],
    ['made', '02.03.2026', 'bad-time', expect.stringContaining('2026-03-02')],
    ['title', '\u001b[31mred', 'hidden-sign', 'type the cell again'],
    ['title', 'x'.repeat(4001), 'cell-too-long', expect.any(String)],
  ])('%s refuses %j', (path, cell, code, hint) => {
    expect(read(path, cell)).toMatchObject({ ok: false, fault: { code, hint } });
  });
});
