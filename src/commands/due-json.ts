/** A planned look as JSON. */

import type { TimeZone } from '../ledger/times.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import type { PlannedLook } from './due-samples.ts';

const leaf = (value: number | null, unit: string) => ({ value, unit });

export function lookJson(look: PlannedLook, now: number, zone: TimeZone | undefined): object {
  const { card, sample, outcome } = look.watched;
  return {
    kind: card.kind,
    trial: leaf(card.kind === 'trial' ? card.number : null, ''),
    batch: card.kind === 'batch' ? card.name : '',
    sample: sample.name,
    count: leaf(sample.count ?? 1, ''),
    series: (card.kind === 'trial' ? card.series?.text : undefined) ?? '',
    title: card.title ?? '',
    look: leaf(look.afterSeconds / 86_400, 'd'),
    at: writtenTime(look.atEpoch, zone),
    since: writtenTime(look.sinceEpoch, zone),
    overdue: leaf(look.isDue ? Math.max(0, now - look.sinceEpoch) / 3_600_000 : null, 'h'),
    outcome: outcome.outcome,
    file: card.file,
  };
}
