/** What the sheets for the shelf have in common: black on white, for a printer. */

import { cssString } from '../html.ts';

/** Input: what stands at the foot, and whether the paper lies on its side. */
export const sheetStyle = (foot: string, isWide: boolean): string => `
@page { size: A4${isWide ? ' landscape' : ''}; margin: 12mm 12mm 15mm; @bottom-left { content: ${cssString(foot)}; font: 8pt sans-serif; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
:root { color-scheme: light; }
* { box-sizing: border-box; }
html { color: #000; background: #fff; -webkit-text-size-adjust: 100%; }
body { font: 10pt/1.35 "Noto Sans", "Liberation Sans", Arial, Helvetica, sans-serif; margin: 0 auto; max-width: ${isWide ? 273 : 186}mm;
  overflow-wrap: break-word; }
@media screen { body { padding: 6mm 4mm; } }
h1 { font-size: 15pt; line-height: 1.15; margin: 0 0 1mm; } h2 { font-size: 11.5pt; margin: 5mm 0 1.5mm; break-after: avoid; }
p, ul, ol { margin: 0 0 2mm; } ul, ol { padding-left: 5mm; }
.scroll { overflow-x: auto; } @media print { .scroll { overflow: visible; } }
table { width: 100%; border-collapse: collapse; } thead { display: table-header-group; } tr { break-inside: avoid; }
caption { text-align: left; font-size: 9pt; padding-bottom: 1mm; }
th, td { border: 0.5pt solid #000; padding: 1mm 1.5mm; text-align: left; vertical-align: top; font-variant-numeric: tabular-nums; }
thead th { font-size: 8.5pt; border-bottom-width: 1.2pt; vertical-align: bottom; }
tbody th { font-size: 15pt; line-height: 1.1; } tbody th small, thead th small { font-size: 8pt; font-weight: normal; display: block; line-height: 1.25; }
:focus-visible { outline: 2px solid #000; outline-offset: 2px; }
`;
