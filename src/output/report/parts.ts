/** What a section is made of, as HTML. */

import { aimsChart } from '../draw/aims.ts';
import { amountsChart } from '../draw/amounts.ts';
import { courseChart } from '../draw/course.ts';
import { foamHeads } from '../draw/foam-heads.ts';
import { heldWindowChart } from '../draw/held-window.ts';
import { holdCurve } from '../draw/hold-curve.ts';
import { outcomeGrid } from '../draw/outcome-grid.ts';
import { triangleMap } from '../draw/triangle.ts';
import { vessel } from '../draw/vessel.ts';
import { type Html, html } from '../html.ts';
import { blockHtml, tableHtml } from './blocks.ts';
import { boardHtml } from './board.ts';
import type { Chart, Part, Photo, Tasting } from './model.ts';

/** From so many columns on the table stands under its chart. */
const wideTable = 5;

export function partHtml(part: Part): Html {
  switch (part.kind) {
    case 'board':
      return boardHtml(part.board);
    case 'chart':
      return html`<figure class="${part.table.columns.length < wideTable ? 'chart' : 'chart under'}">${chartHtml(part.chart)}${tableHtml(part.table)}</figure>
`;
    case 'tastings':
      return tastingsHtml(part.words, part.tastings);
    case 'photos':
      return html`<div class="photos">${part.photos.map(photoHtml)}</div>
`;
    default:
      return blockHtml(part);
  }
}

function chartHtml(chart: Chart): Html {
  switch (chart.draws) {
    case 'hold':
      return holdCurve(chart.of);
    case 'window':
      return heldWindowChart(chart.of);
    case 'grid':
      return outcomeGrid(chart.of);
    case 'map':
      return triangleMap(chart.of);
    case 'foam':
      return foamHeads(chart.of);
    case 'amounts':
      return amountsChart(chart.of);
    case 'aims':
      return aimsChart(chart.of);
    case 'course':
      return courseChart(chart.of);
  }
}

const photoHtml = ({ caption, data }: Photo): Html =>
  html`<figure><img src="${data}" alt="${caption}"><figcaption>${caption}</figcaption></figure>
`;

/** Scores beside what was seen: a bar of five, and the number. */
function tastingsHtml(words: readonly string[], tastings: readonly Tasting[]): Html {
  const hasNotes = tastings.some(({ notes }) => notes !== '');
  const heads = ['beaker', 'looked', 'tasted', ...words, ...(hasNotes ? ['how'] : [])];
  const rows = tastings.map(
    (one) =>
      html`<tr><th scope="row">${one.head}<br><span class="faint">${one.about}</span></th><td>${vessel(one.look)}${one.look.join(', ') || 'no look'}</td><td>${one.when}</td>${one.scores.map(scoreHtml)}${hasNotes ? html`<td>${one.notes}</td>` : html``}</tr>
`,
  );
  return html`<div class="scroll tastings" role="region" tabindex="0" aria-label="taste scores beside looks"><table>
<caption>0 none, 5 strong</caption>
<thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>
${rows}</tbody></table></div>
`;
}

const most = 5;

function scoreHtml(score: number | undefined): Html {
  if (score === undefined) return html`<td>-</td>`;
  const steps = Array.from({ length: most }, (_, at) => {
    const isOn = at < Math.round(score);
    return html`<rect class="${isOn ? 'on' : 'off'}" x="${at * 15 + 1}" y="1" width="11" height="10" rx="2"/>`;
  });
  const text = Number.isInteger(score) ? String(score) : score.toFixed(1);
  return html`<td class="score"><svg viewBox="0 0 74 12" aria-hidden="true" focusable="false">${steps}</svg>${text}</td>`;
}
