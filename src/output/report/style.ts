/** How a report looks: a notebook page with a margin, on a telephone one column, on paper black on white. */

import { drawingStyle } from './drawing-style.ts';
import { darkTones, lightTones, toneVariables } from './tones.ts';

export const reportStyle = (foot: string): string => `
:root { color-scheme: light dark; ${toneVariables(lightTones)} }
@media screen and (prefers-color-scheme: dark) { :root { ${toneVariables(darkTones)} } }
@page { size: A4; margin: 15mm 14mm 17mm; @bottom-left { content: ${foot}; font: 8pt sans-serif; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; }
body { font: 1rem/1.5 "Noto Sans", "Liberation Sans", "Segoe UI", "Helvetica Neue", Arial, sans-serif; margin: 0 auto;
  max-width: 76rem; padding: 1rem 1.1rem 3rem; overflow-wrap: break-word; }
p { margin: 0 0 .7rem; max-width: 46rem; }
ul { margin: 0 0 .8rem; padding-left: 1.1rem; max-width: 46rem; } li { margin-bottom: .35rem; }
.skip { position: absolute; left: -80rem; } .skip:focus { position: static; }
a { color: var(--deep); text-underline-offset: .18em; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
header { border-bottom: 2px solid var(--ink); padding-bottom: 1.1rem; margin-bottom: .9rem; position: relative; }
.neck { width: 2.1rem; height: 3.6rem; position: absolute; right: 0; top: 0; }
.kind { color: var(--accent); font-weight: 600; margin: 0 3rem .1rem 0; }
h1 { font-size: clamp(1.7rem, 1.2rem + 2.4vw, 2.7rem); line-height: 1.1; letter-spacing: -.015em; margin: 0 3rem .45rem 0;
  font-weight: 700; }
.lead { font-size: 1.1rem; max-width: 42rem; margin-bottom: .9rem; }
.headline { display: flex; flex-wrap: wrap; gap: .9rem 2.4rem; margin: .9rem 0 0; }
.headline div { max-width: 21rem; } .headline dt { color: var(--soft); font-size: .87rem; }
.headline dd { margin: 0; } .headline b { display: block; font-size: 1.5rem; line-height: 1.2; font-weight: 650; }
.headline small { color: var(--soft); font-size: .87rem; line-height: 1.35; display: block; }
.facts { color: var(--soft); font-size: .9rem; margin: .9rem 0 0; display: flex; flex-wrap: wrap; gap: .1rem 1.4rem; }
.facts div { display: flex; gap: .4rem; } .facts dt::after { content: ":"; } .facts dd { margin: 0; color: var(--ink); }
nav { font-size: .92rem; margin-bottom: .6rem; } nav ul { display: flex; flex-wrap: wrap; gap: .1rem 1.1rem; list-style: none;
  padding: 0; margin: 0; max-width: none; } nav li { margin: 0; }
section { border-top: 1px solid var(--line); padding: 1.5rem 0 .8rem; }
section:first-of-type { border-top: 0; }
h2 { font-size: 1.3rem; line-height: 1.2; margin: 0 0 .3rem; font-weight: 680; letter-spacing: -.005em; }
h3 { font-size: 1rem; margin: 1.3rem 0 .4rem; font-weight: 680; } h3:first-child { margin-top: 0; }
.margin p { color: var(--soft); font-size: .92rem; line-height: 1.42; margin-bottom: .9rem; }
.faint { color: var(--soft); font-size: .92rem; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; font-size: .92rem; line-height: 1.35; }
caption { text-align: left; color: var(--soft); font-size: .87rem; padding-bottom: .3rem; }
th, td { text-align: left; vertical-align: top; padding: .28rem .9rem .28rem 0; border-bottom: 1px solid var(--line); }
th { font-weight: 600; color: var(--soft); font-size: .87rem; vertical-align: bottom; } th:last-child, td:last-child { padding-right: 0; }
tbody th { color: var(--ink); font-size: inherit; vertical-align: top; }
tbody tr:last-child > * { border-bottom: 0; }
.right { text-align: right; } tbody .right { white-space: nowrap; } td.long { min-width: 13rem; }
.scroll { overflow-x: auto; margin-bottom: 1rem; max-width: 100%; }
.pairs { display: grid; grid-template-columns: minmax(6rem, max-content) minmax(0, 1fr); gap: .25rem 1.2rem; margin: 0 0 1rem;
  max-width: 46rem; } .pairs dt { color: var(--soft); } .pairs dd { margin: 0; }
.mind { border-left: 4px solid var(--accent); padding: .1rem 0 .1rem .9rem; list-style: none; }
figure { margin: 0 0 1.2rem; } .under td:not(.long) { min-width: 5rem; }
.chart { display: grid; gap: .6rem 2rem; grid-template-columns: minmax(0, 1fr); align-items: start; }
.chart .drawing { width: 100%; max-width: 31rem; height: auto; display: block; }
.board table { font-size: .87rem; } .board th, .board td { padding: .45rem .35rem .4rem; text-align: center; }
.board tbody th { text-align: left; padding-left: 0; width: 9rem; min-width: 6.6rem; position: sticky; left: 0; background: var(--paper); }
.board tbody th b { font-size: 1.05rem; display: block; white-space: nowrap; } .board tbody th span { font-weight: 400;
  color: var(--soft); display: block; line-height: 1.3; }
.board .vessel { width: 2.65rem; height: 2.95rem; display: block; margin: 0 auto .1rem; } .board .none { color: var(--soft); }
.board thead th:first-child { text-align: left; } .board thead th:first-child { padding-left: 0; }
.board tbody th .fate { color: var(--ink); }
.key { display: flex; flex-wrap: wrap; gap: .2rem 1rem; list-style: none; padding: 0; color: var(--soft); font-size: .87rem;
  max-width: none; } .key li { display: flex; align-items: center; gap: .3rem; margin: 0; } .key .vessel { width: 1.5rem; height: 1.7rem; }
.tastings .vessel { width: 1.7rem; height: 1.9rem; display: inline-block; vertical-align: middle; margin-right: .35rem; }
tbody th .faint { font-weight: 400; } .score { white-space: nowrap; } .score svg { width: 4.4rem; height: .8rem; margin-right: .35rem; }
.photos { display: grid; gap: .9rem; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); max-width: 46rem; }
.photos img { width: 100%; height: 9rem; object-fit: cover; border: 1px solid var(--line); display: block; }
.photos figure { margin: 0; } figcaption { font-size: .87rem; color: var(--soft); line-height: 1.35; }
#sources ul { font-size: .87rem; line-height: 1.4; color: var(--soft); columns: 22rem; column-gap: 2.4rem; max-width: none; }
#sources li { break-inside: avoid; }
footer { border-top: 2px solid var(--ink); padding-top: .7rem; margin-top: 1rem; font-size: .9rem; color: var(--soft); }
@media screen and (max-width: 30rem) { th, td { padding-right: .55rem; } .score svg { width: 3rem; } }
@media (min-width: 47rem) {
  .chart:not(.under) { grid-template-columns: minmax(0, 27rem) minmax(0, 1fr); }
}
@media screen and (min-width: 62rem) {
  section { display: grid; grid-template-columns: 12.5rem minmax(0, 1fr); gap: 0 2.6rem; }
  body { padding: 2rem 2rem 4rem; } .board table { font-size: .95rem; } .board tbody th { width: 12rem; }
  .board .vessel { width: 3.5rem; height: 3.9rem; } .board th, .board td { padding: .55rem .7rem .5rem; }
}
.shelf { display: grid; grid-template-columns: repeat(auto-fill, minmax(6.6rem, 1fr)); gap: 1rem .8rem; list-style: none; padding: 0;
  max-width: none; font-size: .87rem; line-height: 1.3; margin-bottom: 1.1rem; } .shelf li { margin: 0; }
.shelf .vessel { width: 2.4rem; height: 2.7rem; display: block; } .shelf b, .shelf span, .shelf em { display: block; font-style: normal; }
.shelf b { font-size: 1rem; } .shelf span { color: var(--soft); }
${drawingStyle}
@media screen and (max-width: 30rem) { svg text.small { font-size: 13px; } }
@media print {
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  html { background: #fff; font-size: 9.5pt; } :root { --paper: #fff; } p, li { orphans: 3; widows: 3; }
  body { max-width: none; padding: 0; line-height: 1.4; }
  h1 { font-size: 22pt; } h2 { font-size: 13pt; } .headline b { font-size: 14pt; }
  nav, .skip { display: none; } a { color: inherit; text-decoration: none; }
  section { padding: 1rem 0 .4rem; } .margin { break-inside: avoid; break-after: avoid; } h2, h3 { break-after: avoid; }
  .scroll { overflow: visible; } tr, figure, li, .drawing, .pairs { break-inside: avoid; }
  .chart:not(.under) { grid-template-columns: minmax(0, 88mm) minmax(0, 1fr); gap: .6rem 1.4rem; }
  .chart.under .drawing { max-width: 100mm; }
  table, .board table, .key, #sources ul, caption { font-size: 8.5pt; } th { font-size: 8pt; }
  .board th, .board td { padding: .3rem .25rem; } .board tbody th { position: static; }
  .board .vessel { width: 2.2rem; height: 2.45rem; } .photos { grid-template-columns: repeat(4, 1fr); max-width: none; }
}
`;
