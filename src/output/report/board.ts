/** The board of beakers: a row a rung, a column a day, in each cell the beaker as it looked and the word for it. */

import { vessel } from '../draw/vessel.ts';
import { type Html, html } from '../html.ts';
import type { Board, BoardCell, BoardRow } from './model.ts';

/** A wider board goes on in a second one, so that it prints. */
const mostDays = 9;

export function boardHtml(board: Board): Html {
  if (board.isShort) return shelfHtml(board);
  const days = [...new Set(board.rows.flatMap(({ cells }) => [...cells.keys()]))].sort((a, b) => a - b);
  const count = Math.max(1, Math.ceil(days.length / mostDays));
  const perPiece = Math.max(1, Math.ceil(days.length / count));
  const pieces = Array.from({ length: count }, (_, at) => days.slice(at * perPiece, (at + 1) * perPiece));
  return html`${pieces.map((piece, at) => tableOf(board, piece, at === 0))}${keyOf(board)}`;
}

/** In a piece that goes on, beakers that nobody looked at any more are left out. */
function tableOf(board: Board, days: readonly number[], isFirst: boolean): Html {
  const [first, last] = [days[0], days.at(-1)];
  const range = first === last ? '' : `, day ${first} to ${last}`;
  const caption = `${board.caption}${range}`;
  const heads = days.map((day) => html`<th scope="col">day ${day}</th>`);
  const rows = board.rows.filter(({ cells }) => isFirst || days.some((day) => cells.has(day)));
  return html`<div class="scroll board" role="region" tabindex="0" aria-label="${caption}"><table>
<caption>${caption}</caption>
<thead><tr><th scope="col">${board.head}</th>${heads}</tr></thead>
<tbody>
${rows.map((row) => rowOf(row, days))}</tbody></table></div>
`;
}

function rowOf(row: BoardRow, days: readonly number[]): Html {
  const beside = row.beside === undefined ? html`` : html`<span>${row.beside}</span>`;
  return html`<tr><th scope="row"><b>${row.head}</b><span>${row.about}</span>${beside}<span class="fate">${row.outcome}</span></th>${days.map((day) => cellOf(row.cells.get(day)))}</tr>
`;
}

function cellOf(cell: BoardCell | undefined): Html {
  if (!cell) return html`<td class="none" aria-label="no look">·</td>`;
  const { looks, ended } = cell;
  const text = [...looks, ...(ended === undefined ? [] : [`ended: ${ended}`])].join(', ');
  return html`<td>${vessel(looks, ended !== undefined)}${text}</td>`;
}

const order = ['clear', 'bluish', 'hazy', 'cloudy', 'gel', 'broken', 'specks', 'ring', 'sediment'];

/** How each look that was seen is drawn. */
function keyOf({ rows }: Board): Html {
  const seen = new Set(rows.flatMap(({ cells }) => [...cells.values()].flatMap(({ looks }) => looks)));
  const shown = order.filter((look) => seen.has(look));
  if (shown.length < 2) return html``;
  const items = shown.map((look) => html`<li>${vessel([look])}${look}</li>`);
  return html`<ul class="key" aria-label="how the looks are drawn">${items}</ul>`;
}

/** The beakers beside each other, each as it was last seen. */
function shelfHtml({ caption, rows }: Board): Html {
  const items = rows.map(({ head, about, beside, cells }) => {
    const [day, cell] = [...cells].at(-1) ?? [];
    const looks = cell?.looks ?? [];
    const seen =
      cell === undefined
        ? 'no look yet'
        : `${looks.join(', ')}${cell.ended === undefined ? '' : ' ended'}, day ${day}`;
    const name = beside === undefined ? html`` : html`<span>${beside}</span>`;
    return html`<li>${vessel(looks, cell?.ended !== undefined)}<b>${head}</b><span>${about}</span>${name}<em>${seen}</em></li>
`;
  });
  return html`<ul class="shelf" aria-label="${caption}">
${items}</ul>
`;
}
