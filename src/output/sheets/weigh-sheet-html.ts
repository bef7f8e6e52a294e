/** What to weigh into each beaker of a ladder, with room for what the balance said. */

import { type Html, html, htmlDocument } from '../html.ts';
import { sheetStyle } from './sheet-style.ts';

export interface WeighRow {
  readonly number: string;
  readonly about: string;
  /** `2.00 g`, in the order of the items. */
  readonly amounts: readonly string[];
}

export interface WeighTable {
  readonly title: string;
  /** In the order of addition. */
  readonly items: readonly string[];
  readonly rows: readonly WeighRow[];
  readonly steps: readonly string[];
}

export interface WeighSheet {
  readonly title: string;
  readonly tables: readonly WeighTable[];
  readonly how: string;
}

/** More items lie on their side. */
const uprightItems = 5;

export function weighSheetHtml({ title, tables, how }: WeighSheet): string {
  const isWide = tables.some(({ items }) => items.length > uprightItems);
  return htmlDocument({
    title,
    style: `${sheetStyle(title, isWide)}
td { height: 16mm; min-width: 19mm; } td b { font-size: 11.5pt; display: block; border-bottom: 0.4pt dotted #000; padding-bottom: 0.6mm; white-space: nowrap; }
`,
    body: html`<main>
<h1>${title}</h1>
<p>${how}</p>
${tables.map(tableHtml)}</main>`,
  });
}

function tableHtml({ title, items, rows, steps }: WeighTable): Html {
  const heads = items.map((item) => html`<th scope="col">${item}</th>`);
  const lines = rows.map(
    ({ number, about, amounts }) =>
      html`<tr><th scope="row">${number}<small>${about}</small></th>${amounts.map((amount) => html`<td><b>${amount}</b></td>`)}</tr>
`,
  );
  const process = steps.length === 0 ? html`` : html`<ol>${steps.map((step) => html`<li>${step}</li>`)}</ol>`;
  return html`<section><h2>${title}</h2>
${process}
<div class="scroll" role="region" tabindex="0" aria-label="${title}"><table>
<thead><tr><th scope="col">beaker</th>${heads}</tr></thead>
<tbody>
${lines}</tbody></table></div></section>
`;
}
