import { describe, expect, it } from 'vitest';
import { reportHtml } from '../../src/output/report/document.ts';
import type { Report } from '../../src/output/report/model.ts';
import { darkTones, lightTones, type Tones, toneVariables } from '../../src/output/report/tones.ts';
import { contrast, luminance } from '../support/contrast.ts';

const nasty = '"><img src=x onerror=alert(1)> & </style>';

const report: Report = {
  kind: nasty,
  title: nasty,
  lead: nasty,
  headline: [{ label: nasty, value: nasty, note: nasty }],
  facts: [[nasty, nasty]],
  closing: nasty,
  sections: [
    {
      id: 'one',
      title: nasty,
      note: nasty,
      parts: [
        { kind: 'heading', text: nasty },
        { kind: 'text', text: nasty },
        { kind: 'pairs', pairs: [[nasty, nasty]] },
        { kind: 'table', columns: [{ head: nasty, align: 'left' }], rows: [[nasty]] },
        { kind: 'notes', mark: '!', notes: [nasty] },
        { kind: 'lines', lines: [nasty] },
        {
          kind: 'board',
          board: {
            caption: nasty,
            head: nasty,
            rows: [
              {
                head: nasty,
                about: nasty,
                beside: nasty,
                outcome: nasty,
                cells: new Map([[1, { looks: [nasty], ended: nasty }]]),
              },
            ],
          },
        },
        {
          kind: 'tastings',
          words: [nasty],
          tastings: [{ head: nasty, about: nasty, look: [nasty], when: nasty, scores: [2.5], notes: nasty }],
        },
        { kind: 'photos', photos: [{ caption: nasty, data: 'data:image/png;base64,AA==' }] },
        {
          kind: 'chart',
          chart: {
            draws: 'amounts',
            of: { id: 'two', title: nasty, about: nasty, amounts: [{ name: nasty, gramsPerLitre: 1 }] },
          },
          table: { caption: nasty, columns: [{ head: nasty, align: 'right' }], rows: [[nasty]] },
        },
      ],
    },
    { id: 'three', title: 'plain', parts: [{ kind: 'text', text: 'plain' }] },
  ],
};

describe('a report as HTML', () => {
  const page = reportHtml(report);

  it('no text of a file becomes markup, wherever it stands', () => {
    expect(page.match(/<img/gu)).toHaveLength(1);
    expect(page).toContain('<img src="data:image/png;base64,AA=="');
    expect(page.replaceAll(/"[^"]*"/gu, '""')).not.toMatch(/<[^>]*onerror/u);
    expect(page.match(/<\/style>/gu)).toHaveLength(1);
    expect(page).not.toContain('<script');
  });

  it('says whose it is, loads nothing, and is the same each time', () => {
    expect(page.split('\n')[0]).toBe('<!doctype html><!-- neckring -->');
    expect(page).not.toMatch(/(?:src|href|url)\s*[=(]\s*["']?(?:https?:|\/\/)/u);
    expect(reportHtml(report)).toBe(page);
  });

  it('every chart has its table in the same figure', () => {
    for (const [figure] of page.matchAll(/<figure class="chart">.*?<\/figure>/gsu))
      expect(figure).toContain('<table>');
    expect(page.match(/<figure class="chart">/gu)).toHaveLength(1);
  });

  it('ids stand once, and what is referred to is there', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = [...page.matchAll(/(?:href="#|aria-labelledby=")([^"]+)"/gu)].flatMap(([, text = '']) =>
      text.split(' '),
    );
    for (const id of wanted) expect(ids).toContain(id);
  });

  it('in short the beakers stand beside each other, as they were last seen', () => {
    const cells = new Map([
      [1, { looks: ['clear'] }],
      [4, { looks: ['hazy', 'ring'] }],
    ]);
    const rows = [{ head: '1 : 3', about: 'trial 1', outcome: 'failed', cells }];
    const board = { caption: 'looks', head: 'ratio', rows, isShort: true };
    const sections = [{ id: 'one', title: 'one', parts: [{ kind: 'board', board } as const] }];
    const text = reportHtml({ ...report, sections });
    expect(text).toContain('<b>1 : 3</b><span>trial 1</span><em>hazy, ring, day 4</em>');
    expect(text).not.toContain('<table>');
  });

  it('a board with many days goes on in a second one', () => {
    const cells = new Map(Array.from({ length: 14 }, (_, day) => [day, { looks: ['clear'] }]));
    const row = { head: '1 : 3', about: 'trial 1', outcome: 'held', cells };
    const board = { caption: 'looks', head: 'ratio', rows: [row] };
    const text = reportHtml({
      ...report,
      sections: [{ id: 'one', title: 'one', parts: [{ kind: 'board', board }] }],
    });
    expect(text.match(/<caption>looks, day \d+ to \d+<\/caption>/gu)).toHaveLength(2);
    expect(text.match(/<th scope="col">day /gu)).toHaveLength(14);
  });
});

describe.each([
  ['light', lightTones],
  ['dark', darkTones],
])('the %s tones', (_, tones: Tones) => {
  // W3C, Web Content Accessibility Guidelines 2.2: 1.4.3 asks 4.5 to 1 for text, 1.4.11 3 to 1 for what is drawn.
  it('published: WCAG 2.2, 1.4.3: text stands out from the page 4.5 to 1', () => {
    for (const tone of [tones.ink, tones.soft, tones.accent, tones.deep])
      expect(contrast(tone, tones.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(tones.ink, tones.span)).toBeGreaterThanOrEqual(4.5);
  });

  it('published: WCAG 2.2, 1.4.11: what lies in a liquid stands out from it 3 to 1', () => {
    tones.liquid.forEach((liquid, at) => {
      expect(contrast(liquid, tones.matter[at] ?? '')).toBeGreaterThanOrEqual(3);
    });
    expect(contrast(tones.ink, tones.paper)).toBeGreaterThanOrEqual(3);
  });

  it('law: liquids go one way, each further from the page than the one before', () => {
    const away = tones.liquid.map((liquid) => contrast(liquid, tones.paper));
    expect([...away].sort((one, other) => one - other)).toEqual(away);
  });

  it('stand in the style sheet as custom properties', () => {
    expect(toneVariables(tones)).toContain(`--liquid-5: ${tones.liquid[5]};`);
    expect(luminance('#ffffff')).toBeCloseTo(1, 9);
  });
});
