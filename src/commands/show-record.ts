/** What is written of a trial besides its stages: why, looks, tastes, readings, results. */

import type { MadeCard, ObservationCard, ResultCard, TrialCard } from '../ledger/cards.ts';
import { looksByDay, stripText } from '../ledger/look-strip.ts';
import { observationsOf } from '../ledger/sample-record.ts';
import { trialFiles } from '../ledger/single-trial.ts';
import type { Block, Page } from '../output/view.ts';
import { visible } from '../output/visible.ts';
import { stressCycles } from '../reference/stress-cycles.ts';
import { tasteBlocks } from './look-tastes.ts';
import type { Here } from './open-ledger.ts';
import { outcomeText, type TrialOutcomes } from './trial-outcomes.ts';

export function headBlocks(card: TrialCard, here: Here): Page {
  const later = cameFromIt(card.number, here);
  const facts: readonly (readonly [string, string | undefined])[] = [
    ['made', card.made?.written],
    ['by', card.by],
    ['came from', card.from === undefined ? undefined : String(card.from)],
    ['came from it', later.length > 0 ? later.join(', ') : undefined],
    ['why', card.why],
    ['series', card.series?.text],
    ['batch', card.batch?.text],
    ['concluded', card.concluded],
    ['note', card.note],
  ];
  const pairs = facts.flatMap(([label, value]) =>
    value === undefined ? [] : [[label, visible(value)] as const],
  );
  return [
    { kind: 'heading', text: `Trial ${card.number}${card.title ? `: ${visible(card.title)}` : ''}` },
    ...(pairs.length > 0 ? [{ kind: 'pairs', pairs } as const] : []),
  ];
}

/** Trials that say `from: N`; their texts are searched, not parsed. */
function cameFromIt(number: number, here: Here): readonly number[] {
  const line = new RegExp(`^from:[ \\t]*0*${number}[ \\t]*(?:#.*)?\\r?$`, 'm');
  return trialFiles(here.root, here.port)
    .filter(({ file }) => line.test(new TextDecoder().decode(here.port.read(`${here.root}/${file}`))))
    .map((one) => one.number);
}

/** What was seen, tasted and measured of each sample; scores in the order of the bench's words. */
export function observationBlocks(card: MadeCard, tastes: readonly string[], outcomes: TrialOutcomes): Page {
  return card.samples.flatMap((sample): readonly Block[] => {
    const seen = observationsOf(card, sample);
    if (seen.length === 0) return [];
    const place = [
      sample.in,
      sample.cover && `cover ${sample.cover}`,
      sample.at && `at ${sample.at.written}`,
      sample.stress && `${sample.stress}: ${stressCycles[sample.stress].words}`,
    ];
    const outcome = outcomeText(outcomes, sample);
    const strip = stripText(looksByDay(card, sample));
    const more = seen.map(detailText).filter((text) => text !== '');
    return [
      { kind: 'heading', text: visible([sample.name, ...place].filter(Boolean).join(', ')) },
      ...(strip === '' ? [] : [{ kind: 'text', text: strip } as const]),
      ...(outcome === '' ? [] : [{ kind: 'text', text: outcome, tone: 'strong' } as const]),
      ...tasteBlocks({ card, sample, tastes }),
      ...(more.length > 0 ? [{ kind: 'notes', mark: '-', notes: more } as const] : []),
    ];
  });
}

/** What an observation says besides its look: readings, tastes, words. */
function detailText(one: ObservationCard): string {
  const isTasting = one.taste.length > 0;
  const readings = [
    one.temperature?.written,
    one.turbidity?.written,
    one.droplet && `droplets ${one.droplet.written}`,
    one.ph !== undefined && `pH ${one.ph}`,
    one.acid && `acid ${one.acid.written}`,
    one.brix !== undefined && `${one.brix} Brix`,
    one.density?.written,
    one.mass?.written,
    one.co2 && `CO2 ${one.co2.written}`,
    one.head && `head ${one.head.written}`,
    one.headLife && `gone after ${one.headLife.written}`,
    ...(isTasting
      ? []
      : [
          one.served && `served ${one.served}`,
          one.against && `against ${one.against}`,
          one.blind && `blind: ${one.blind}`,
        ]),
    one.smell && `smell: ${one.smell}`,
    one.colour && `colour: ${one.colour}`,
    one.viewed && `viewed ${one.viewed.text}`,
    one.photo && `photo ${one.photo.text}`,
    one.note,
    !isTasting && one.by && `(${one.by})`,
  ];
  const text = readings.filter(Boolean).join(', ');
  return text === '' ? '' : visible(`${one.at.written.slice(0, 16)} ${text}`);
}

const notFigures = new Set(['at', 'calculator', 'stage', 'of', 'given', 'typed']);

export function resultBlocks(card: TrialCard): Page {
  return card.results.flatMap((result): readonly Block[] => [
    {
      kind: 'heading',
      text: visible(
        [`${result.calculator}`, result.stage, result.at.written.slice(0, 16)].filter(Boolean).join(', '),
      ),
    },
    { kind: 'pairs', pairs: resultFigures(result).map(([key, text]) => [visible(key), visible(text)]) },
  ]);
}

export function resultFigures(result: ResultCard): readonly (readonly [string, string])[] {
  return result.node.entries.flatMap(({ key, value }) =>
    value.kind === 'text' && !notFigures.has(key.text) ? [[key.text, value.text] as const] : [],
  );
}
