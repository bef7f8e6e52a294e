/** How a batch sheet looks: black on white, for A4 and Letter, readable from a screen too. */

import { cssString } from './html.ts';

/** Input: what stands at the foot of every page. */
export const batchSheetStyle = (foot: string): string => `
@page { margin: 14mm 13mm 16mm; @bottom-left { content: ${cssString(foot)}; font: 8pt sans-serif; }
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; } }
* { box-sizing: border-box; }
html { color: #000; background: #fff; }
body { font: 10pt/1.35 "Liberation Sans", Arial, Helvetica, sans-serif; margin: 0 auto; max-width: 184mm; }
@media screen { body { padding: 8mm 4mm; } }
h1 { font-size: 17pt; line-height: 1.15; margin: 0 0 1mm; }
h2 { font-size: 12pt; line-height: 1.2; margin: 6mm 0 1.5mm; border-bottom: 1.2pt solid #000; padding-bottom: 0.8mm;
  break-after: avoid; }
h2 small { font-size: 9.5pt; font-weight: normal; }
h3 { font-size: 10pt; margin: 3mm 0 1mm; break-after: avoid; }
p, ul, ol { margin: 1mm 0; } ul, ol { padding-left: 5mm; }
table { width: 100%; border-collapse: collapse; margin: 1.5mm 0; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { text-align: left; vertical-align: middle; padding: 1mm 1.6mm; border: 0.5pt solid #000; overflow-wrap: anywhere; }
th { font-size: 8pt; font-weight: bold; vertical-align: bottom; background: #fff; border-bottom-width: 1pt; }
td.amount, th.amount { text-align: right; white-space: nowrap; }
td.amount { font-size: 11pt; font-variant-numeric: tabular-nums; }
td.amount b { font-weight: bold; }
td small, .facts small { font-weight: normal; font-size: 8pt; display: block; line-height: 1.25; }
td.narrow { white-space: nowrap; }
td.box { padding: 0.8mm; height: 8.5mm; }
tr.sum td { border-top-width: 1pt; font-weight: bold; }
tr.sum { break-before: avoid; }
.blanks { display: grid; gap: 0.8mm; grid-template-columns: repeat(auto-fill, minmax(15mm, 1fr)); }
.blank { border: 0.5pt solid #000; height: 7mm; font-size: 6.5pt; padding: 0.3mm 0.8mm; line-height: 1; }
.facts { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0; border: 0.8pt solid #000; margin: 2mm 0; }
.facts div { padding: 1mm 1.6mm; border: 0.3pt solid #000; min-height: 10mm; overflow-wrap: anywhere; }
.facts small { font-weight: bold; }
.cautions { border: 1.2pt solid #000; padding: 1mm 2.5mm 1.5mm; margin: 3mm 0; }
.cautions h2 { border: 0; margin: 0.5mm 0; padding: 0; }
.cautions li { font-size: 8.5pt; line-height: 1.25; break-inside: avoid; }
.keep { break-inside: avoid; }
.lines div { border-bottom: 0.4pt solid #000; height: 8mm; }
.mark { font-size: 8.5pt; }
`;
