/** The heads of foam that a series noted, by the dose of its rungs. */

import type { Pour } from '../calc/foam/head-band.ts';
import { normaliseName } from '../reference/name.ts';
import type { ObservationCard, SampleCard, TrialCard } from './cards.ts';
import type { Standing } from './rung-standing.ts';
import type { SeriesRungs } from './rungs.ts';
import { observationsOf } from './sample-record.ts';

/** A head with where it was written, and its dose. */
export interface NotedHead extends Pour {
  readonly trial: TrialCard;
  readonly observation: ObservationCard;
  readonly isBlank: boolean;
}

/** What is varied is an antifoam: by its role, or by the role of the item of that name. */
export function isFoamSeries({ scales, rungs }: SeriesRungs): boolean {
  const [scale, second] = scales;
  if (!scale || second) return false;
  const wanted = normaliseName(scale.text);
  if (wanted === 'antifoam') return true;
  return rungs.some(({ mixture }) =>
    mixture?.stages.some(({ items, substances }) =>
      [
        ...items.map(({ name, role, source }) => ({
          role,
          names:
            source.kind === 'ingredient' ? [name, source.entry.name, ...(source.entry.like ?? [])] : [name],
        })),
        ...substances.map(({ name, role, entry }) => ({
          role,
          names: [name, entry.name, ...(entry.like ?? [])],
        })),
      ].some(
        ({ role, names }) => role === 'antifoam' && names.some((name) => normaliseName(name) === wanted),
      ),
    ),
  );
}

/** Every head of the rungs, and of the blank as dose 0; of a trial with several samples those of the judged one. */
export function notedHeads({ rungs, blank }: SeriesRungs): readonly NotedHead[] {
  return [
    ...(blank ? headsOf(blank, 0, true) : []),
    ...rungs.flatMap((rung) => headsOf(rung, rung.values[0] ?? 0, false)),
  ];
}

function headsOf({ trial, judged, others }: Standing, dose: number, isBlank: boolean): readonly NotedHead[] {
  const samples: readonly SampleCard[] = [...(judged ? [judged] : []), ...others].map(({ sample }) => sample);
  const noted = samples.map((sample) =>
    observationsOf(trial, sample).filter(({ head }) => head !== undefined),
  );
  const shown = noted.find((heads) => heads.length > 0) ?? [];
  return shown.flatMap((observation) => {
    const { head, headLife } = observation;
    if (!head) return [];
    return [{ trial, observation, isBlank, dose, headMetres: head.inner, lifeSeconds: headLife?.inner }];
  });
}
