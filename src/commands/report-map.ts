/** Compositions on the map of oil, emulsifier with carrier, and water. */

import { meetingStage } from '../calc/mixture/meeting-stage.ts';
import type { Mixture } from '../calc/mixture/picture.ts';
import { trimmedNumber } from '../calc/number-text.ts';
import type { MapPoint } from '../output/draw/triangle.ts';
import type { Part } from '../output/report/model.ts';
import { visible } from '../output/visible.ts';

export interface Placed {
  readonly mixture: Mixture | undefined;
  readonly label: string;
  readonly state: MapPoint['state'];
}

interface OnMap extends MapPoint {
  /** The share of the stage that is none of the three. */
  readonly rest: number;
}

function pointOf({ mixture, label, state }: Placed): readonly OnMap[] {
  const meeting = mixture && meetingStage(mixture);
  if (!meeting) return [];
  const { stage, oilGrams, emulsifierGrams, carrierGrams } = meeting;
  const water = stage.substances
    .filter(({ role }) => role === 'water')
    .reduce((sum, { massGrams }) => sum + massGrams, 0);
  const all = oilGrams + emulsifierGrams + carrierGrams + water;
  const point = {
    oil: oilGrams / all,
    emulsifier: (emulsifierGrams + carrierGrams) / all,
    water: water / all,
  };
  return [{ ...point, label, state, rest: Math.max(0, 1 - all / stage.massGrams) }];
}

const percent = (share: number): string => `${trimmedNumber(share * 100, 3)} %`;
/** Less than this of anything else is not worth a column. */
const leastRest = 0.001;

export function mapParts(placed: readonly Placed[]): readonly Part[] {
  const points = placed.flatMap(pointOf);
  if (points.length === 0) return [];
  const hasRest = points.some(({ rest }) => rest > leastRest);
  return [
    {
      kind: 'chart',
      chart: {
        draws: 'map',
        of: {
          id: 'map-drawing',
          title: 'Map of oil, emulsifier with carrier, and water',
          about: `Where ${points.length === 1 ? 'the emulsion lies' : 'the beakers lie'}, by mass; the table has the figures.`,
          points,
        },
      },
      table: {
        caption: 'by mass, the three together 100 %',
        columns: [
          { head: '', align: 'left' },
          { head: 'oil', align: 'right' },
          { head: 'emulsifier with carrier', align: 'right' },
          { head: 'water', align: 'right' },
          ...(hasRest ? [{ head: 'else in it', align: 'right' } as const] : []),
        ],
        rows: points.map(({ label, oil, emulsifier, water, rest }) => [
          visible(label),
          percent(oil),
          percent(emulsifier),
          percent(water),
          ...(hasRest ? [percent(rest)] : []),
        ]),
      },
    },
  ];
}
