import { describe, expect, it } from 'vitest';
import { addResult } from '../../../src/ledger/results-edit.ts';

const result = {
  at: '2026-03-02T10:20:11+00:00',
  calculator: 'hlb',
  stage: 'emulsion',
  of: '5c1e09aa',
  figures: [
    ['required HLB', '12.0000'],
    ['blended HLB', '15.0000'],
  ],
} as const;

const written = `results:
  - at: 2026-03-02T10:20:11+00:00
    calculator: hlb
    stage: emulsion
    of: 5c1e09aa
    required HLB: 12.0000
    blended HLB: 15.0000
`;

describe('addResult', () => {
  it('is written one fact a line at the end', () => {
    expect(addResult('t.yaml', 'trial: 14\n', result)).toEqual({
      ok: true,
      text: `trial: 14\n${written}`,
      line: 2,
      state: 'added',
    });
  });

  it('says what was given', () => {
    const { stage: _stage, ...bare } = result;
    expect(addResult('t.yaml', 'trial: 14\n', { ...bare, given: [['oil', '2 g']] })).toMatchObject({
      text: `trial: 14\n${written.replace('    stage: emulsion\n', '').replace('aa\n', 'aa\n    given:\n      oil: 2 g\n')}`,
    });
  });

  it('is not written twice, whenever it was reckoned and however it is typed', () => {
    const from = `trial: 14\n${written.replace('15.0000', '"15.0000"  # good')}`;
    expect(addResult('t.yaml', from, { ...result, at: '2026-04-01T00:00+00:00' })).toEqual({
      ok: true,
      text: from,
      line: 3,
      state: 'unchanged',
    });
  });

  it.each([
    ['of', { ...result, of: '5c1e09ab' }],
    ['figures', { ...result, figures: [['required HLB', '12.1000']] as const }],
    ['calculator', { ...result, calculator: 'acid' }],
  ])('is written below the others when its %s differs', (_what, other) => {
    const from = `trial: 14\n${written}title: x\n`;
    const added = addResult('t.yaml', from, other);
    expect(added).toMatchObject({ state: 'added', line: 9 });
    expect(added.ok && added.text.startsWith(`trial: 14\n${written}  - at: `)).toBe(true);
    expect(added.ok && added.text.endsWith('\ntitle: x\n')).toBe(true);
  });
});
