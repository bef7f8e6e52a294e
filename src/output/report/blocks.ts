/** Blocks of a page as HTML: the same that a terminal shows. */

import { type Html, html } from '../html.ts';
import type { Block, Column } from '../view.ts';
import type { Table } from './model.ts';

/** From so many columns on a table may be wider than a telephone, and is then moved sideways in its own frame. */
const wideColumns = 4;
/** A cell with more signs than this is a sentence, and gets room. */
const longCell = 28;

export function tableHtml({ caption, columns, rows }: Table): Html {
  const classOf = (at: number): string => (columns[at]?.align === 'right' ? 'right' : 'left');
  const heads = columns.map(({ head }, at) => html`<th scope="col" class="${classOf(at)}">${head}</th>`);
  const lines = rows.map((row) => {
    const cells = row.map((cell, at) =>
      at === 0
        ? html`<th scope="row" class="${classOf(at)}">${cell}</th>`
        : html`<td class="${cell.length > longCell ? 'long' : classOf(at)}">${cell}</td>`,
    );
    return html`<tr>${cells}</tr>
`;
  });
  const hasHeads = columns.some(({ head }) => head !== '');
  const head = hasHeads ? html`<thead><tr>${heads}</tr></thead>` : html``;
  const title = caption === '' ? html`` : html`<caption>${caption}</caption>`;
  const table = html`<table>${title}${head}<tbody>
${lines}</tbody></table>`;
  const label = caption === '' ? 'table' : caption;
  return columns.length < wideColumns
    ? html`<div class="scroll">${table}</div>`
    : html`<div class="scroll" role="region" tabindex="0" aria-label="${label}">${table}</div>`;
}

const sideOf = ({ align }: Column): 'left' | 'right' => (align === 'left' ? 'left' : 'right');

export function blockHtml(block: Block): Html {
  switch (block.kind) {
    case 'heading':
      return html`<h3>${block.text}</h3>
`;
    case 'text':
      return block.tone === 'faint' ? html`<p class="faint">${block.text}</p>` : html`<p>${block.text}</p>`;
    case 'pairs':
      return html`<dl class="pairs">${block.pairs.map(([label, value]) => html`<dt>${label}</dt><dd>${value}</dd>`)}</dl>
`;
    case 'table':
    case 'grid':
      return tableHtml({
        caption: '',
        columns: block.columns.map((column) => ({ head: column.head, align: sideOf(column) })),
        rows: block.rows,
      });
    case 'notes': {
      const items = block.notes.map((note) => html`<li>${note.trim()}</li>`);
      return block.mark === '!' ? html`<ul class="mind">${items}</ul>` : html`<ul>${items}</ul>`;
    }
    case 'lines':
      return html`<pre>${block.lines.join('\n')}</pre>`;
    case 'problems':
      return html`<ul class="mind">${block.problems.map(({ message, hint }) => html`<li>${message}; ${hint}</li>`)}</ul>`;
  }
}
