/** A batch sheet as one self-contained HTML file. */

import { type BatchSheet, portionsText, type SheetItem, type SheetStage } from './batch-sheet.ts';
import { batchSheetStyle } from './batch-sheet-style.ts';
import { type Html, html, htmlDocument } from './html.ts';

export function batchSheetHtml(sheet: BatchSheet): string {
  const name = `Batch ${sheet.batch}: ${sheet.design}`;
  return htmlDocument({
    title: name,
    style: batchSheetStyle(`${name}, ${sheet.revision}`),
    body: html`${head(sheet)}
${cautions(sheet)}
${sheet.stocks.map((stock) => stockPart(stock))}
${sheet.stages.map((stage, at) => stagePart(stage, at + 1))}
${fillingPart(sheet)}
${checksPart(sheet)}
${notesPart()}
<p class="mark">${sheet.closing}</p>`,
  });
}

const nothing: Html = { html: '' };

function head({ batch, design, revision, facts, remarks }: BatchSheet): Html {
  const fact = (label: string, value: string): Html => html`<div><small>${label}</small>${value}</div>`;
  const list = remarks.map((remark) => html`<li>${remark}</li>`);
  return html`<header>
<h1>${design}</h1>
<div class="facts">
${fact('batch', batch)}${fact('revision', revision)}${fact('made on, by', '')}
${facts.map(([label, value]) => fact(label, value))}
</div>
${remarks.length > 0 ? html`<ul>${list}</ul>` : nothing}
</header>`;
}

function cautions({ cautions: all }: BatchSheet): Html {
  if (all.length === 0) return nothing;
  const list = all.map((one) => html`<li>${one}</li>`);
  return html`<div class="cautions"><h2>Take care</h2><ul>${list}</ul></div>`;
}

/** More boxes than this are ticked off in one. */
const mostBoxes = 12;

/** The cell itself is the box; several portions get one each in it. */
function boxes(count: number): Html {
  if (count === 1) return nothing;
  if (count > mostBoxes)
    return html`<span class="blanks"><span class="blank">tick off ${count}</span></span>`;
  const each = Array.from({ length: count }, (_, at) => html`<span class="blank">${at + 1}</span>`);
  return html`<span class="blanks">${each}</span>`;
}

/** A table longer than this may go over two pages. */
const longTable = 18;
const keptOver = (rows: number): string => (rows > longTable ? 'long' : 'keep');

function stagePart(stage: SheetStage, number: number): Html {
  const isMany = stage.subBatches > 1;
  const size = isMany
    ? `${stage.subBatches} times the same, each ${stage.total}, ${stage.volume}`
    : `${stage.total}, ${stage.volume}`;
  return html`<section>
<div class="${keptOver(stage.items.length)}">
<h2>${number}. ${stage.name} <small>${[size, stage.where].filter(Boolean).join(', ')}</small></h2>
${stage.notes.map((note) => html`<p>${note}</p>`)}
<table>
<colgroup><col style="width:27%"><col style="width:13%"><col style="width:18%"><col style="width:9%"><col style="width:24%"><col style="width:9%"></colgroup>
<thead><tr><th>what, in this order</th><th>lot</th><th class="amount">${isMany ? 'weigh, each time' : 'weigh'}</th><th>balance</th><th>weighed</th><th>initials</th></tr></thead>
<tbody>
${stage.items.map((item) => itemRow(item, stage.subBatches))}
<tr class="sum"><td>together${isMany ? html`<small>in all ${stage.totalOfAll}</small>` : nothing}</td><td></td><td class="amount">${stage.total}</td><td></td><td class="box"></td><td></td></tr>
</tbody></table>
</div>
${stepsPart(stage)}
</section>`;
}

function itemRow(item: SheetItem, subBatches: number): Html {
  const notes = [...(item.whole === '' ? [] : [`${item.whole} in equal portions`]), ...item.notes];
  return html`<tr><td>${item.what}${notes.map((note) => html`<small>${note}</small>`)}</td><td>${item.lot}</td><td class="amount"><b>${portionsText(item)}</b></td><td class="narrow">${item.balance}</td><td class="box">${boxes(item.portions * subBatches)}</td><td></td></tr>
`;
}

function stepsPart({ name, steps, subBatches }: SheetStage): Html {
  if (steps.length === 0) return nothing;
  const rows = steps.map(
    (step, at) =>
      html`<tr><td class="narrow">${at + 1}</td><td>${step}</td><td class="box">${boxes(subBatches)}</td><td class="box">${boxes(subBatches)}</td><td></td></tr>
`,
  );
  return html`<div class="${keptOver(steps.length)}"><h3>Process of ${name}</h3>
<table><colgroup><col style="width:5%"><col style="width:45%"><col style="width:20%"><col style="width:20%"><col style="width:10%"></colgroup>
<thead><tr><th></th><th>step</th><th>temperature, C</th><th>time</th><th>initials</th></tr></thead>
<tbody>${rows}</tbody></table></div>`;
}

function stockPart({ name, lines }: BatchSheet['stocks'][number]): Html {
  const rows = lines.map(
    ({ text, balance }) =>
      html`<tr><td>${text}</td><td class="narrow">${balance}</td><td class="box"></td><td></td></tr>
`,
  );
  return html`<section class="keep"><h2>First, a stock: ${name}</h2>
<table><colgroup><col style="width:56%"><col style="width:10%"><col style="width:24%"><col style="width:10%"></colgroup>
<thead><tr><th>do</th><th>balance</th><th>weighed</th><th>initials</th></tr></thead><tbody>${rows}</tbody></table></section>`;
}

function fillingPart({ filling }: BatchSheet): Html {
  if (!filling) return nothing;
  const rows = filling.parts.map(
    (part) =>
      html`<tr><td>${part.what}</td><td class="amount">${part.grams}</td><td class="amount">${part.millilitres}</td><td class="amount">${part.inAll}</td><td class="box"></td></tr>
`,
  );
  return html`<section class="keep"><h2>Filling <small>${filling.heading}</small></h2>
<table><thead><tr><th>what</th><th class="amount">by mass</th><th class="amount">by volume</th><th class="amount">in all</th><th>measured</th></tr></thead><tbody>${rows}</tbody></table>
<ul>${filling.notes.map((note) => html`<li>${note}</li>`)}</ul></section>`;
}

function checksPart({ checks }: BatchSheet): Html {
  if (checks.length === 0) return nothing;
  const rows = checks.map(
    (check) =>
      html`<tr><td>${check.of}</td><td>${check.what}</td><td>${check.aim}</td><td>${check.reckoned}</td><td class="box"></td><td></td></tr>
`,
  );
  return html`<section class="${keptOver(checks.length)}"><h2>Checks</h2>
<table><colgroup><col style="width:17%"><col style="width:17%"><col style="width:20%"><col style="width:16%"><col style="width:20%"><col style="width:10%"></colgroup>
<thead><tr><th>of</th><th>check</th><th>aim</th><th>reckoned</th><th>found</th><th>initials</th></tr></thead><tbody>${rows}</tbody></table></section>`;
}

const notesPart = (): Html => html`<section class="keep"><h2>Notes</h2>
<div class="lines"><div></div><div></div><div></div><div></div><div></div></div></section>`;
