/** A sheet for the shelf: a row a beaker, a column a look, a box to write what is seen. */

import { type Html, html, htmlDocument } from '../html.ts';
import { sheetStyle } from './sheet-style.ts';

export interface LookRow {
  readonly number: string;
  readonly about: string;
  /** By the name of the column; absent where no look is planned, or it is done. */
  readonly dates: ReadonlyMap<string, string>;
}

export interface LookSheet {
  readonly title: string;
  /** `day 1`, `day 2` … */
  readonly columns: readonly string[];
  readonly rows: readonly LookRow[];
  /** The words to write, and their order. */
  readonly words: readonly string[];
  readonly how: string;
}

/** More columns lie on their side. */
const uprightColumns = 6;

export function lookSheetHtml(sheet: LookSheet): string {
  const { title, columns, rows, words, how } = sheet;
  const heads = columns.map((column) => html`<th scope="col">${column}</th>`);
  return htmlDocument({
    title,
    style: `${sheetStyle(title, columns.length > uprightColumns)}
td { height: 15mm; min-width: 17mm; } td small { font-size: 8pt; } td.none { background: repeating-linear-gradient(45deg, #fff 0 1.6mm, #bbb 1.6mm 1.8mm); print-color-adjust: exact; }
`,
    body: html`<main>
<h1>${title}</h1>
<p>Write what the eye sees: ${words.join(', ')}; several where there are several. ${how}</p>
<div class="scroll" role="region" tabindex="0" aria-label="beakers by days"><table>
<caption>Hatched: nothing planned, or seen already.</caption>
<thead><tr><th scope="col">beaker</th>${heads}</tr></thead>
<tbody>
${rows.map((row) => rowHtml(row, columns))}</tbody></table></div>
</main>`,
  });
}

function rowHtml({ number, about, dates }: LookRow, columns: readonly string[]): Html {
  const cells = columns.map((column) => {
    const date = dates.get(column);
    return date === undefined
      ? html`<td class="none" aria-label="nothing planned"></td>`
      : html`<td><small>${date}</small></td>`;
  });
  return html`<tr><th scope="row">${number}<small>${about}</small></th>${cells}</tr>
`;
}
