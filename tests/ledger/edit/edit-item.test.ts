import { describe, expect, it } from 'vitest';
import { edit, editAll } from '../../../src/ledger/edit.ts';
import { addItemFact, type ItemFact, setItemAmount } from '../../../src/ledger/edit-item.ts';

const long = 'stages:\n  emulsion:\n    items:\n';
const short = 'stages:\n  emulsion:\n';

interface Row {
  readonly what: string;
  readonly from: string;
  readonly to: string;
  readonly key?: ItemFact;
  readonly index?: number;
}

const rows: readonly Row[] = [
  {
    what: 'a line under the item, its comment kept',
    from: `${long}      - orange oil: 2 g   # planned\n      - water: to 50 g\n`,
    to: `${long}      - orange oil: 2 g   # planned\n        weighed: 2.03 g\n      - water: to 50 g\n`,
  },
  {
    what: 'in a stage that is a plain list, at the end of the file without a newline',
    from: `${short}    - orange oil: 2 g`,
    to: `${short}    - orange oil: 2 g\n      weighed: 2.03 g\n`,
  },
  {
    what: 'dashes at the indent of their key, CRLF',
    from: `${short}  - orange oil: 2 g\n  - water: 1 g\n`.replaceAll('\n', '\r\n'),
    to: `${short}  - orange oil: 2 g\n    weighed: 2.03 g\n  - water: 1 g\n`.replaceAll('\n', '\r\n'),
  },
  {
    what: 'before the facts that come later in the order',
    from: `${short}    - orange oil: 2 g\n      lot: 2231\n      note: last of it\n`,
    to: `${short}    - orange oil: 2 g\n      weighed: 2.03 g\n      lot: 2231\n      note: last of it\n`,
  },
  {
    what: 'after the facts that come earlier in the order',
    from: `${short}    - orange oil: 2 g\n      weighed: 2 g\n      note: last of it\n`,
    to: `${short}    - orange oil: 2 g\n      weighed: 2 g\n      lot: 2.03 g\n      note: last of it\n`,
    key: 'lot',
  },
  {
    what: 'after a note over several lines and the comment under it',
    from: `${short}    - orange oil: 2 g\n      lot: |\n        two\n        lines\n      # so\n    - water: 1 g\n`,
    to: `${short}    - orange oil: 2 g\n      lot: |\n        two\n        lines\n      # so\n      note: 2.03 g\n    - water: 1 g\n`,
    key: 'note',
  },
  {
    what: 'in place of the one that is there, what stands behind it kept',
    from: `${short}    - orange oil: 2 g\n      weighed:   "2 g"  # first try\n      lot: 7\n`,
    to: `${short}    - orange oil: 2 g\n      weighed:   2.03 g  # first try\n      lot: 7\n`,
  },
  {
    what: 'in place of nothing',
    from: `${short}    - orange oil: 2 g\n      weighed:  # not yet\n`,
    to: `${short}    - orange oil: 2 g\n      weighed: 2.03 g  # not yet\n`,
  },
  {
    what: 'in place of a folded text',
    from: `${short}    - orange oil: 2 g\n      weighed: >\n        2\n        g\n\n    - water: 1 g\n`,
    to: `${short}    - orange oil: 2 g\n      weighed: 2.03 g\n\n    - water: 1 g\n`,
  },
  {
    what: 'an item in braces',
    from: `${short}    - { orange oil: 2 g, note: x }  # planned\n`,
    to: `${short}    - { orange oil: 2 g, weighed: 2.03 g, note: x }  # planned\n`,
  },
  {
    what: 'items in brackets without braces',
    from: 'stages:\n  drink: [orange oil: 2 g, water: 1 L]\n',
    to: 'stages:\n  drink: [{ orange oil: 2 g, weighed: 2.03 g }, water: 1 L]\n',
  },
  {
    what: 'an item that holds its facts before its name',
    from: `${short}    - note: x\n      orange oil: 2 g\n    - water: 1 g\n`,
    to: `${short}    - note: x\n      orange oil: 2 g\n      weighed: 2.03 g\n    - water: 1 g\n`,
  },
  {
    what: 'the second item, wide dashes',
    from: `${short}    -   orange oil: 2 g\n    -   water: 1 g\n`,
    to: `${short}    -   orange oil: 2 g\n    -   water: 1 g\n        weighed: 2.03 g\n`,
    index: 1,
  },
];

describe('addItemFact', () => {
  it.each(rows)('$what', ({ from, to, key = 'weighed', index = 0 }) => {
    const stage = ['stages', from.includes('drink') ? 'drink' : 'emulsion'];
    expect(edit('t.yaml', from, addItemFact(stage, index, key, '2.03 g'))).toMatchObject({
      ok: true,
      text: to,
    });
  });

  it.each([
    ['no such item', `${short}    - water: 1 g\n`, 1],
    ['an item without an amount', `${short}    - water\n`, 0],
    ['no such stage', 'stages:\n  drink: []\n', 0],
  ])('refuses %s', (_what, from, index) => {
    expect(edit('t.yaml', from, addItemFact(['stages', 'emulsion'], index, 'lot', '7'))).toMatchObject({
      ok: false,
      problems: [{ code: 'no-such-item' }],
    });
  });

  it('only adds lines when a whole trial is weighed', () => {
    const from = `${long}      - orange oil: 2 g   # planned\n      - polysorbate 80: 6 g\n\n      - water: to 50 g\n`;
    const figures = ['2.03 g', '6.01 g', '42 g'];
    const changes = figures.map((text, index) => addItemFact(['stages', 'emulsion'], index, 'weighed', text));
    const weighed = editAll('t.yaml', from, changes);
    expect(weighed).toMatchObject({
      ok: true,
      text: `${long}      - orange oil: 2 g   # planned\n        weighed: 2.03 g\n      - polysorbate 80: 6 g\n        weighed: 6.01 g\n\n      - water: to 50 g\n        weighed: 42 g\n`,
    });
  });
});

describe('setItemAmount', () => {
  it('replaces the amount and nothing else', () => {
    const from = `${long}      - orange oil: 2 g   # planned\n        weighed: 2.03 g\n`;
    expect(edit('t.yaml', from, setItemAmount(['stages', 'emulsion'], 0, '2.20 g'))).toMatchObject({
      ok: true,
      text: `${long}      - orange oil: 2.20 g   # planned\n        weighed: 2.03 g\n`,
    });
  });
});
