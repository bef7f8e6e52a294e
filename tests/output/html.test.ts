import { describe, expect, it } from 'vitest';
import { markdownText } from '../../src/output/batch-sheet-markdown.ts';
import { cssString, escaped, html, htmlDocument } from '../../src/output/html.ts';

describe('html', () => {
  it('texts stay texts, pieces made here go in as they are', () => {
    const cell = html`<td title="${'a "b" <c> & d\'e'}">${html`<b>${'<i>'}</b>`}${3}</td>`;
    expect(cell.html).toBe('<td title="a &quot;b&quot; &lt;c&gt; &amp; d&#39;e"><b>&lt;i&gt;</b>3</td>');
    expect(html`${['x', '<'].map((one) => html`<li>${one}</li>`)}`.html).toBe('<li>x</li><li>&lt;</li>');
  });

  it('control characters and turned writing are made visible', () => {
    expect(escaped('a\u001b[31mb\u202e')).toBe('a\u241b[31mb&lt;U+202E&gt;');
  });

  it('a string of a style sheet can not end the string or the sheet', () => {
    const text = cssString('a"; } </style><script>');
    expect(text).toMatch(/^"[a-zA-Z0-9 .,:()\\-]*"$/);
    expect(text).not.toContain('<');
  });

  it('a document says whose it is in its first line and loads nothing', () => {
    const page = htmlDocument({ title: '<x>', style: 'p {}', body: html`<p>${'&'}</p>` });
    expect(page.split('\n')[0]).toBe('<!doctype html><!-- neckring -->');
    expect(page).toContain("default-src 'none'");
    expect(page).toContain('<title>&lt;x&gt;</title>');
  });
});

describe('markdownText', () => {
  it('keeps signs of Markdown and HTML from meaning anything', () => {
    expect(markdownText('a|b *c* <i> `d` [e]')).toBe('a\\|b \\*c\\* \\<i\\> \\`d\\` \\[e\\]');
  });
});
