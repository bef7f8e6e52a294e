/** A report as one file: its head, what is in it, its sections. */

import { cssString, type Html, html, htmlDocument } from '../html.ts';
import type { Report, Section } from './model.ts';
import { partHtml } from './parts.ts';
import { reportStyle } from './style.ts';

export function reportHtml(report: Report): string {
  return htmlDocument({
    title: `${report.title}, ${report.kind}`,
    style: reportStyle(cssString(`${report.title}, ${report.kind}`)),
    body: html`<a class="skip" href="#content">to the content</a>
${headHtml(report)}
${navigation(report.sections)}
<main id="content">
${report.sections.map(sectionHtml)}</main>
<footer><p>${report.closing}</p></footer>`,
  });
}

function headHtml({ kind, title, lead, headline, facts }: Report): Html {
  const large = headline.map(
    ({ label, value, note }) =>
      html`<div><dt>${label}</dt><dd><b>${value}</b>${note === '' ? html`` : html`<small>${note}</small>`}</dd></div>`,
  );
  const small = facts.map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`);
  return html`<header>
${neck}
<p class="kind">${kind}</p>
<h1>${title}</h1>
${lead === undefined ? html`` : html`<p class="lead">${lead}</p>`}
${large.length > 0 ? html`<dl class="headline">${large}</dl>` : html``}
${small.length > 0 ? html`<dl class="facts">${small}</dl>` : html``}
</header>`;
}

/** A bottle's neck with the ring that nobody wants. */
const neck = html`<svg class="neck" viewBox="0 0 34 58" aria-hidden="true" focusable="false"><path class="full" d="M11 25H23V36Q23 41 28 46V57H6V46Q11 41 11 36Z"/><path class="oil" d="M11 22Q17 20 23 22V27Q17 29 11 27Z"/><path class="glass" d="M10 2H24M11 6V36Q11 41 6 46V57M23 6V36Q23 41 28 46V57M10 6H24V2H10Z"/></svg>`;

function navigation(sections: readonly Section[]): Html {
  if (sections.length < 2) return html``;
  const items = sections.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>`);
  return html`<nav aria-label="contents"><ul>${items}</ul></nav>`;
}

const sectionHtml = ({ id, title, note, parts }: Section): Html =>
  html`<section id="${id}" aria-labelledby="${id}-head">
<div class="margin"><h2 id="${id}-head">${title}</h2>${note === undefined ? html`` : html`<p>${note}</p>`}</div>
<div>${parts.map(partHtml)}</div>
</section>
`;
