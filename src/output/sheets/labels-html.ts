/** A sheet of beaker labels: number and date large, days to look by, nothing that leads the eye unless asked. */

import { type Html, html, htmlDocument } from '../html.ts';

export interface BeakerLabel {
  readonly number: string;
  /** Of several samples of a trial. */
  readonly sample: string;
  /** `2 Mar 2026`; empty where nobody wrote it. */
  readonly made: string;
  /** `3 Mar`, in their order. */
  readonly looks: readonly string[];
  /** What is in it; empty unless asked for. */
  readonly inside: string;
}

export interface LabelPaper {
  readonly widthMillimetres: number;
  readonly heightMillimetres: number;
  /** How many labels of the first sheet are gone. */
  readonly skip: number;
  /** Lines to cut along, for plain paper. */
  readonly hasLines: boolean;
}

export interface LabelSheet {
  readonly title: string;
  readonly labels: readonly BeakerLabel[];
  readonly paper: LabelPaper;
}

/** ISO 216. */
const a4 = { width: 210, height: 297 };

export interface LabelGrid {
  readonly columns: number;
  readonly rows: number;
}

/**
 * How many labels a sheet of A4 has.
 *
 * Formula   as many as fit beside and below each other
 * Example   70 mm by 37 mm -> 3 columns, 8 rows
 */
export const labelGrid = ({
  widthMillimetres,
  heightMillimetres,
}: Pick<LabelPaper, 'widthMillimetres' | 'heightMillimetres'>): LabelGrid => ({
  columns: Math.floor(a4.width / widthMillimetres + 1e-9),
  rows: Math.floor(a4.height / heightMillimetres + 1e-9),
});

export function labelsHtml({ title, labels, paper }: LabelSheet): string {
  const { columns, rows } = labelGrid(paper);
  const perSheet = columns * rows;
  const cells: readonly (BeakerLabel | undefined)[] = [
    ...Array.from({ length: paper.skip }, () => undefined),
    ...labels,
  ];
  const sheets = Array.from({ length: Math.ceil(cells.length / perSheet) }, (_, at) =>
    cells.slice(at * perSheet, (at + 1) * perSheet),
  );
  return htmlDocument({
    title,
    style: labelStyle(paper),
    body: html`<h1>${title}</h1>
<main>
${sheets.map(
  (sheet) => html`<ul class="sheet">
${sheet.map((one) => (one ? labelHtml(one) : html`<li class="gone"></li>`))}</ul>
`,
)}</main>`,
  });
}

function labelHtml({ number, sample, made, looks, inside }: BeakerLabel): Html {
  const of = sample === '' ? html`` : html`<span class="sample">${sample}</span>`;
  const days = looks.map((day) => html`<span>☐ ${day}</span> `);
  return html`<li><p class="top"><b>${number}</b>${of}<span class="made">${made === '' ? 'made ________' : made}</span></p>${inside === '' ? html`` : html`<p class="inside">${inside}</p>`}${looks.length > 0 ? html`<p class="days">look ${days}</p>` : html``}</li>
`;
}

function labelStyle({ widthMillimetres: width, heightMillimetres: height, hasLines }: LabelPaper): string {
  const { columns, rows } = labelGrid({ widthMillimetres: width, heightMillimetres: height });
  const left = (a4.width - columns * width) / 2;
  const top = (a4.height - rows * height) / 2;
  /** A label of 37 mm has a number of 12 mm. */
  const large = Math.min(height * 0.33, width * 0.2);
  return `
@page { size: A4; margin: 0; }
:root { color-scheme: light; }
* { box-sizing: border-box; }
html { color: #000; background: #fff; -webkit-text-size-adjust: 100%; }
body { margin: 0; font: 9pt/1.25 "Noto Sans", "Liberation Sans", Arial, Helvetica, sans-serif; }
h1 { font-size: 13pt; margin: 4mm; }
.sheet { list-style: none; margin: 0; padding: ${mm(top)} ${mm(left)}; display: grid; width: ${a4.width}mm; height: ${mm(a4.height - 0.2)};
  grid-template-columns: repeat(${columns}, ${mm(width)}); grid-auto-rows: ${mm(height)}; align-content: start; break-after: page; }
.sheet:last-child { break-after: auto; }
li { padding: ${mm(Math.min(3.5, height * 0.09))} ${mm(Math.min(5, width * 0.07))}; overflow: hidden; overflow-wrap: anywhere;${hasLines ? ' outline: 0.3pt dashed #777;' : ''} }
p { margin: 0; } .top { display: flex; align-items: baseline; gap: 0 2.5mm; flex-wrap: wrap; }
.top b { font-size: ${mm(large)}; line-height: 1; font-variant-numeric: tabular-nums; } .made { font-size: ${mm(large * 0.46)}; font-weight: 600; margin-left: auto; }
.sample { font-size: ${mm(large * 0.36)}; } .inside { font-size: ${mm(large * 0.34)}; margin-top: 0.6mm; }
.days { font-size: ${mm(Math.max(2.6, large * 0.27))}; margin-top: 1mm; } .days span { white-space: nowrap; margin-left: 1.2mm; }
@media print { h1 { display: none; } }
@media screen { .sheet { height: auto; } }
@media screen and (max-width: 215mm) { .sheet { display: block; width: auto; padding: 0 3mm; } li { border: 1px solid #777; margin-bottom: 2mm; min-height: ${mm(height)}; } .gone { display: none; } }
`;
}

const mm = (millimetres: number): string => `${Math.round(millimetres * 100) / 100}mm`;
