import { describe, expect, it } from 'vitest';
import { edit } from '../../../src/ledger/edit.ts';
import { addListEntry } from '../../../src/ledger/edit-list.ts';
import type { Fact } from '../../../src/ledger/fact-text.ts';

const facts: readonly Fact[] = [
  ['at', '9'],
  ['look', 'hazy'],
];

interface Row {
  readonly what: string;
  readonly from: string;
  readonly to: string;
  readonly position?: number;
}

const rows: readonly Row[] = [
  {
    what: 'no key: at the end',
    from: 'trial: 1\nstages: x\n',
    to: 'trial: 1\nstages: x\nobservations:\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'no key: before the results, and the comment that belongs to them',
    from: 'trial: 1\n# made by the tool\nresults:\n  - at: 1\n',
    to: 'trial: 1\nobservations:\n  - at: 9\n    look: hazy\n# made by the tool\nresults:\n  - at: 1\n',
  },
  {
    what: 'no key: set off by a blank line where the others are',
    from: 'trial: 1\n\nstages: x\n\nresults:\n  - at: 1\n',
    to: 'trial: 1\n\nstages: x\n\nobservations:\n  - at: 9\n    look: hazy\n\nresults:\n  - at: 1\n',
  },
  {
    what: 'no key: set off at the end too, after the last comment',
    from: 'trial: 1\n\nstages: x\n# end\n',
    to: 'trial: 1\n\nstages: x\n# end\n\nobservations:\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'no key: dashes at the indent of their key as elsewhere in the file',
    from: 'stages:\n  drink:\n  - water: 1 g\n',
    to: 'stages:\n  drink:\n  - water: 1 g\nobservations:\n- at: 9\n  look: hazy\n',
  },
  {
    what: 'no key, and the file ends in a folded text with blank lines kept',
    from: 'why: >+\n  does it\n\n\n',
    to: 'why: >+\n  does it\n\n\nobservations:\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'no key, and the file ends in blank lines',
    from: 'why: so\n\n\n',
    to: 'why: so\nobservations:\n  - at: 9\n    look: hazy\n\n\n',
  },
  {
    what: 'no key, and no newline at the end',
    from: 'why: so',
    to: 'why: so\nobservations:\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'no key, CRLF and a byte order mark',
    from: '\ufefftrial: 1\r\nresults:\r\n  - at: 1\r\n',
    to: '\ufefftrial: 1\r\nobservations:\r\n  - at: 9\r\n    look: hazy\r\nresults:\r\n  - at: 1\r\n',
  },
  {
    what: 'the key with nothing after it',
    from: 'observations:\nresults:\n  - at: 1\n',
    to: 'observations:\n  - at: 9\n    look: hazy\nresults:\n  - at: 1\n',
  },
  {
    what: 'the key with nothing after it, at the end without a newline',
    from: 'trial: 1\nobservations:',
    to: 'trial: 1\nobservations:\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'the key with only comments: one behind it, one indented, one at the margin',
    from: 'observations:   # daily\n  # none yet\n# results\nresults: []\n',
    to: 'observations:   # daily\n  # none yet\n  - at: 9\n    look: hazy\n# results\nresults: []\n',
  },
  {
    what: 'an empty list in brackets',
    from: 'observations: []\ntitle: x\n',
    to: 'observations:\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'an empty list in brackets with a comment behind it',
    from: 'observations: [ ]  # none yet\n  # soon\ntitle: x\n',
    to: 'observations:  # none yet\n  # soon\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'an empty list in brackets over two lines, with a comment inside',
    from: 'observations: [\n  # none\n  ]\ntitle: x\n',
    to: 'observations: [{ at: 9, look: hazy }\n  # none\n  ]\ntitle: x\n',
  },
  {
    what: 'a list in brackets on one line becomes lines, each entry with its own text',
    from: 'observations: [{ at: 1,  look: "clear" }, {at: 2.0}]  # two\ntitle: x\n',
    to: 'observations:  # two\n  - { at: 1,  look: "clear" }\n  - {at: 2.0}\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'a list in brackets over several lines with comments gets a line',
    from: 'observations: [\n  { at: 1 },  # first\n  { at: 2 }   # second\n]\ntitle: x\n',
    to: 'observations: [\n  { at: 1 },  # first\n  { at: 2 },   # second\n  { at: 9, look: hazy }\n]\ntitle: x\n',
  },
  {
    what: 'a list in brackets over several lines with a comma after the last',
    from: 'observations: [\n  { at: 1 },  # first\n]\n',
    to: 'observations: [\n  { at: 1 },  # first\n  { at: 9, look: hazy },\n]\n',
  },
  {
    what: 'a list in brackets over several lines, in the middle',
    from: 'observations: [\n  { at: 1 },\n  { at: 2 }\n]\n',
    to: 'observations: [\n  { at: 1 },\n  { at: 9, look: hazy }, { at: 2 }\n]\n',
    position: 1,
  },
  {
    what: 'a list at the indent of its key',
    from: 'observations:\n- at: 1\n  look: clear\nresults:\n- at: 1\n',
    to: 'observations:\n- at: 1\n  look: clear\n- at: 9\n  look: hazy\nresults:\n- at: 1\n',
  },
  {
    what: 'a list at the indent of its key, with the heading of the next key below a blank line',
    from: 'observations:\n- at: 1\n\n# answers\nresults:\n- at: 1\n',
    to: 'observations:\n- at: 1\n- at: 9\n  look: hazy\n\n# answers\nresults:\n- at: 1\n',
  },
  {
    what: 'a list set in by four, facts by four from the dash',
    from: 'observations:\n    -   at: 1\n        look: clear\n',
    to: 'observations:\n    -   at: 1\n        look: clear\n    -   at: 9\n        look: hazy\n',
  },
  {
    what: 'a dash on a line of its own',
    from: 'observations:\n  -\n    at: 1\n    look: clear\n',
    to: 'observations:\n  -\n    at: 1\n    look: clear\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'a last entry that ends in a literal text',
    from: 'observations:\n  - at: 1\n    note: |\n      two\n      lines\n\ntitle: x\n',
    to: 'observations:\n  - at: 1\n    note: |\n      two\n      lines\n  - at: 9\n    look: hazy\n\ntitle: x\n',
  },
  {
    what: 'a last entry that ends in a folded text at the end of the file, without a newline',
    from: 'observations:\n  - at: 1\n    note: >\n      two\n      lines',
    to: 'observations:\n  - at: 1\n    note: >\n      two\n      lines\n  - at: 9\n    look: hazy\n',
  },
  {
    what: 'a last entry that ends in a literal text whose blank lines count',
    from: 'observations:\n  - at: 1\n    note: |+\n      two\n\n\ntitle: x\n',
    to: 'observations:\n  - at: 1\n    note: |+\n      two\n\n\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'a last entry that ends in a plain text over two lines',
    from: 'observations:\n  - at: 1\n    note: two\n      lines  # so\ntitle: x\n',
    to: 'observations:\n  - at: 1\n    note: two\n      lines  # so\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'a last entry with a key that has nothing after it',
    from: 'observations:\n  - at: 1\n    note:\ntitle: x\n',
    to: 'observations:\n  - at: 1\n    note:\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'a comment after the last entry, indented like the entries: after it',
    from: 'observations:\n  - at: 1\n  # went home\ntitle: x\n',
    to: 'observations:\n  - at: 1\n  # went home\n  - at: 9\n    look: hazy\ntitle: x\n',
  },
  {
    what: 'a comment after the last entry, indented more: after it',
    from: 'observations:\n  - at: 1\n    # went home\n\ntitle: x\n',
    to: 'observations:\n  - at: 1\n    # went home\n  - at: 9\n    look: hazy\n\ntitle: x\n',
  },
  {
    what: 'a comment after the last entry, indented less: before it',
    from: 'observations:\n  - at: 1\n# the end\ntitle: x\n',
    to: 'observations:\n  - at: 1\n  - at: 9\n    look: hazy\n# the end\ntitle: x\n',
  },
  {
    what: 'one comment indented like the entries, then one indented less',
    from: 'observations:\n  - at: 1\n  # went home\n# the end\n  # not ours\n',
    to: 'observations:\n  - at: 1\n  # went home\n  - at: 9\n    look: hazy\n# the end\n  # not ours\n',
  },
  {
    what: 'entries set off by blank lines',
    from: 'observations:\n  - at: 1\n\n  # day two\n  - at: 2\n\ntitle: x\n',
    to: 'observations:\n  - at: 1\n\n  # day two\n  - at: 2\n\n  - at: 9\n    look: hazy\n\ntitle: x\n',
  },
  {
    what: 'in the middle, above the comment of the entry that follows',
    from: 'observations:\n  - at: 1\n  # day two\n  - at: 2\n',
    to: 'observations:\n  - at: 1\n  - at: 9\n    look: hazy\n  # day two\n  - at: 2\n',
    position: 1,
  },
  {
    what: 'in front, below the comment that heads the list',
    from: 'observations:\n  # seen\n  - at: 1\n',
    to: 'observations:\n  # seen\n  - at: 9\n    look: hazy\n  - at: 1\n',
    position: 0,
  },
  {
    what: 'in the middle, with dashes inside the entries',
    from: 'observations:\n  - at: 1\n    look:\n      - clear\n      - ring\n  - at: 2 - or so\n    look:\n    - clear\n  - at: 3\n',
    to: 'observations:\n  - at: 1\n    look:\n      - clear\n      - ring\n  - at: 2 - or so\n    look:\n    - clear\n  - at: 9\n    look: hazy\n  - at: 3\n',
    position: 2,
  },
  {
    what: 'in CRLF, without a newline at the end',
    from: 'observations:\r\n  - at: 1\r\n    look: clear',
    to: 'observations:\r\n  - at: 1\r\n    look: clear\r\n  - at: 9\r\n    look: hazy\r\n',
  },
  {
    what: 'a quoted key with a space before its colon',
    from: '"observations" :  []\n',
    to: '"observations" :\n  - at: 9\n    look: hazy\n',
  },
];

describe('addListEntry', () => {
  it.each(rows)('$what', ({ from, to, position }) => {
    const change = addListEntry({
      key: 'observations',
      facts,
      before: ['results'],
      ...(position === undefined ? {} : { position }),
    });
    expect(edit('trial.yaml', from, change)).toMatchObject({ ok: true, text: to });
  });

  it.each([
    ['a text', 'observations: none\n', 'not-a-list'],
    ['a map', 'observations:\n  at: 1\n', 'not-a-list'],
  ])('refuses a key that holds %s', (_what, from, code) => {
    const edited = edit('trial.yaml', from, addListEntry({ key: 'observations', facts }));
    expect(edited).toMatchObject({ ok: false, problems: [{ code, severity: 'error' }] });
  });

  it.each([
    ['a: 1\n\nb: 2\n', 5],
    ['a: 1\nb: 2', 3],
    ['observations:\n  - at: 1\nb: 2\n', 3],
  ])('says on which line it begins: %j', (from, line) => {
    expect(edit('trial.yaml', from, addListEntry({ key: 'observations', facts }))).toMatchObject({ line });
  });

  it('refuses a text that cannot be read, with its own problems', () => {
    expect(edit('trial.yaml', 'a: [\nb: "\n', addListEntry({ key: 'observations', facts })).ok).toBe(false);
  });

  it('writes facts under a fact, and a text of several lines', () => {
    const nested: readonly Fact[] = [
      ['at', '9'],
      [
        'taste',
        [
          ['bright', '3'],
          ['not: dull', '#1'],
        ],
      ],
      ['note', 'one\ntwo'],
    ];
    expect(
      edit('t.yaml', 'trial: 1\r\n', addListEntry({ key: 'observations', facts: nested })),
    ).toMatchObject({
      ok: true,
      text: 'trial: 1\r\nobservations:\r\n  - at: 9\r\n    taste:\r\n      bright: 3\r\n      "not: dull": "#1"\r\n    note: |-\r\n      one\r\n      two\r\n',
    });
  });
});
