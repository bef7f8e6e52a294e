/** Reports and sheets as a real browser shows them. Without Chromium on the machine nothing is looked at, and that is said. */

import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleLedger, neckring, record, rows, scratchFolder } from '../commands/neckring.ts';
import { contrast } from '../support/contrast.ts';
import { type Browser, findChromium, startChromium, type View } from './chromium.ts';

const name = findChromium();

const views: readonly (readonly [string, View])[] = [
  ['a telephone', { width: 360, height: 844, scheme: 'light' }],
  ['a telephone in the dark', { width: 360, height: 844, scheme: 'dark' }],
  ['a laptop', { width: 1280, height: 800, scheme: 'light' }],
  ['a laptop in the dark', { width: 1280, height: 800, scheme: 'dark' }],
  ['A4', { width: 688, height: 1000, scheme: 'light', media: 'print' }],
];

/** What sticks out, and of every text its colour and the size of its letters on the screen. */
const measured = `(() => {
  const hex = (colour) => '#' + colour.match(/[\\d.]+/g).slice(0, 3).map((one) => Number(one).toString(16).padStart(2, '0')).join('');
  const words = 'h1,h2,h3,p,li,td,th,dt,dd,caption,figcaption,a,.shelf em,b,small,.made,svg text';
  const shown = [...document.querySelectorAll(words)].filter((one) => one.textContent.trim() !== '' && !one.matches('.skip'));
  const texts = shown.map((one) => {
    const style = getComputedStyle(one);
    const isDrawn = one instanceof SVGElement;
    const box = one.getBoundingClientRect();
    return {
      text: one.textContent.trim().slice(0, 30),
      colour: hex(isDrawn ? style.fill : style.color),
      size: parseFloat(style.fontSize) * (isDrawn ? Math.hypot(one.getScreenCTM().a, one.getScreenCTM().b) : 1),
      isOut: !one.closest('.scroll') && box.width > 0 && (box.right > innerWidth + 1 || box.left < -1),
    };
  });
  return {
    wide: document.documentElement.scrollWidth,
    page: hex(getComputedStyle(document.documentElement).backgroundColor),
    texts,
  };
})()`;

describe.skipIf(name === undefined)('the report in a browser', () => {
  let browser: Browser;
  const pages: string[] = [];

  beforeAll(async () => {
    browser = await startChromium(name ?? '');
  }, 120_000);
  afterAll(() => browser?.close());

  it('opens from the disk at every size without a complaint; nothing sticks out, every text can be read', async () => {
    const folder = await exampleLedger();
    for (const [at, words] of [['orange ladder'], ['orange cardamom'], ['17'], []].entries()) {
      const file = `page-${at}.html`;
      const { code } = await neckring(['report', ...words, '--html', file], { folder });
      expect(code).toBe(0);
      pages.push(join(folder, file));
    }
    for (const kind of ['labels', 'looks', 'weigh']) {
      const words = ['labels', '11-17', '--sheet', kind, '--html', `${kind}.html`];
      expect((await neckring(words, { folder })).code).toBe(0);
      pages.push(join(folder, `${kind}.html`));
    }
    for (const page of pages) {
      await browser.open(page, { width: 360, height: 844, scheme: 'light' });
      for (const [what, usual] of views) {
        // Labels go to the edges of the paper: 210 mm of ISO 216 are 794 CSS pixels.
        const isEdged = usual.media === 'print' && page.endsWith('labels.html');
        const view = isEdged ? { ...usual, width: 794 } : usual;
        await browser.show(view);
        const { wide, page: paper, texts: seen } = record(await browser.ask(measured));
        expect([page, what, wide]).toEqual([page, what, view.width]);
        const texts = rows(seen);
        expect(texts.length).toBeGreaterThan(5);
        expect([what, texts.filter((one) => one['isOut'])]).toEqual([what, []]);
        // W3C, Web Content Accessibility Guidelines 2.2, 1.4.3: 4.5 to 1.
        const faint = texts.filter((one) => contrast(String(one['colour']), String(paper)) < 4.5);
        expect([what, faint]).toEqual([what, []]);
        // Common practice, no source: under 10 CSS pixels a text is not read from a telephone.
        const small = texts.filter((one) => Number(one['size']) < (view.media === 'print' ? 8 : 10));
        expect([what, small]).toEqual([what, []]);
      }
    }
    expect(browser.complaints).toEqual([]);
  }, 300_000);

  it('says what it is to those who do not see it', async () => {
    const folder = await exampleLedger();
    await neckring(['report', 'orange ladder', '--html', 'page.html'], { folder });
    await browser.open(join(folder, 'page.html'), { width: 1280, height: 800, scheme: 'light' });
    const told = record(
      await browser.ask(`({
        lang: document.documentElement.lang,
        main: document.querySelectorAll('main').length,
        heads: [...document.querySelectorAll('h1,h2,h3')].map((one) => one.tagName).join(''),
        unnamed: [...document.querySelectorAll('svg')].filter((one) => one.getAttribute('aria-hidden') !== 'true' && (one.getAttribute('role') !== 'img' || !one.querySelector('title')?.textContent)).length,
        tables: [...document.querySelectorAll('table')].filter((one) => !one.querySelector('th[scope]')).length,
        regions: [...document.querySelectorAll('[tabindex]')].filter((one) => !one.getAttribute('aria-label')).length,
      })`),
    );
    expect(told).toMatchObject({ lang: 'en', main: 1, unnamed: 0, tables: 0, regions: 0 });
    expect(told['heads']).toMatch(/^H1(?:H2(?:H3)*)+$/u);
  });

  it('the keyboard goes from the skip link through the contents to the boards, from top to bottom', async () => {
    const folder = await exampleLedger();
    await neckring(['report', 'orange ladder', '--html', 'page.html'], { folder });
    await browser.open(join(folder, 'page.html'), { width: 1280, height: 800, scheme: 'light' });
    const stops: string[] = [];
    for (let press = 0; press < 9; press += 1) {
      await browser.press('Tab');
      stops.push(
        String(await browser.ask('document.activeElement.className || document.activeElement.hash')),
      );
    }
    expect(stops[0]).toBe('skip');
    expect(stops[1]).toBe('#board');
    expect(stops.findIndex((one) => one.includes('board') && !one.startsWith('#'))).toBeGreaterThan(1);
    expect(new Set(stops).size).toBeGreaterThan(5);
  });

  it('prints on A4', async () => {
    const folder = await exampleLedger();
    await neckring(['report', 'orange ladder', '--html', 'page.html'], { folder });
    await browser.open(join(folder, 'page.html'), { width: 800, height: 800, scheme: 'dark' });
    const pdf = Buffer.from(await browser.pdf(), 'base64').toString('latin1');
    // ISO 216: A4 is 210 mm by 297 mm, 595.28 by 841.89 points.
    const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/gu)];
    expect(boxes.length).toBeGreaterThan(0);
    for (const [, width, height] of boxes) {
      expect(Number(width)).toBeCloseTo(595.28, -0.5);
      expect(Number(height)).toBeCloseTo(841.89, -0.5);
    }
  });

  it('prints a sheet of labels on a page each', async () => {
    const folder = await exampleLedger();
    const size = ['--size', '105 x 148 mm'];
    await neckring(['labels', '11-16', ...size, '--html', 'labels.html'], { folder });
    await browser.open(join(folder, 'labels.html'), { width: 800, height: 800, scheme: 'light' });
    const pdf = Buffer.from(await browser.pdf(), 'base64').toString('latin1');
    expect(pdf.match(/\/MediaBox/gu)).toHaveLength(2);
  });
});

if (name === undefined)
  describe('the report in a browser', () => {
    it('is not looked at here: there is no Chromium on this machine', async () => {
      expect(await scratchFolder()).toContain('neckring-');
    });
  });
