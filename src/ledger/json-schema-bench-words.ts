/** What is said of the keys of the bench. */

import { type KeysSaid, said } from './json-schema-said.ts';

const dropSaid = said('mass of a drop from the usual dropper', 'amount', '0.030 g');
export const dropperSaid = said('the drop with what else is known of it; neckring dropper works it out');

export const balanceSaid: KeysSaid = {
  division: said('the smallest step that it shows', 'amount', '0.01 g'),
  limit: said('the most that it takes, vessel included', 'amount', '600 g'),
  name: said('how you call it'),
};

export const vesselSaid: KeysSaid = {
  name: said('how you call it', 'words', 'beaker'),
  volume: said('how much it holds', 'amount', '100 mL'),
  mass: said('what it weighs empty', 'amount', '48.2 g'),
  count: said('how many there are', 'count', '6'),
};

export const dropperKeysSaid: KeysSaid = {
  drop: said('mass of one drop', 'amount', '0.021 g'),
  spread: said('standard deviation of a drop', 'amount', '0.0006 g'),
  liquid: said('what was dropped'),
  temperature: said('how warm it was', 'amount', '20 C'),
  weighings: said('how many weighings it was worked out from', 'count', '3'),
  drops: said('how many drops in all of them', 'count', '60'),
};

export const waterSaid: KeysSaid = {
  alkalinity: said('takes up acid; stands on the report of your waterworks', 'amount', '60 mg/L as CaCO3'),
  hardness: said('calcium and magnesium together', 'amount', '120 mg/L as CaCO3'),
  chlorine: said('free chlorine', 'amount', '0.1 mg/L'),
  iron: said('iron', 'amount', '0.05 mg/L'),
  sodium: said('sodium', 'amount', '15 mg/L'),
  ph: said('pH of the water', 'number', '7.6'),
};

export const foamTestSaid: KeysSaid = {
  glass: said('the glass it is poured into'),
  volume: said('how much is poured', 'amount', '250 mL'),
  temperature: said('how warm it is', 'amount', '6 C'),
  pour: said('from how high', 'amount', '20 cm'),
};

export const habitsSaid: KeysSaid = {
  name: said('whose bench it is'),
  'time zone': said('then a time may be typed without an offset', 'words', 'Europe/Lisbon'),
  balances: said('your balances, finest first'),
  vessels: said('your vessels'),
  weighing: said('the relative error that you accept for a weighing', 'amount', '1 %'),
  drop: dropSaid,
  dropper: dropperSaid,
  temperature: said('how warm the bench is', 'amount', '20 C'),
  viewed: said(
    'how beakers are looked at; the first is the usual way',
    'words',
    'black card, lamp from the side',
  ),
  covers: said('what your samples are covered with', 'words', 'film'),
  settle: said('before this only ring and broken count', 'amount', '1 d'),
  watch: said('how long a beaker is watched before it has held', 'amount', '7 d'),
  looks: said('when to look', 'amount', '1 d'),
  'long watch': said('when to look at what has held', 'amount', '30 d'),
  tastes: said('your own words for scores from 0 to 5', 'words', 'soapy'),
  margin: said('how far to back off from the break', 'amount', '10 %'),
  'largest dilution': said('the largest dilution in one step', 'words', '1:100'),
  water: said('your own water'),
  'foam test': said('how you pour when you measure foam'),
  limits: said('whose published figures to show', 'body'),
};
