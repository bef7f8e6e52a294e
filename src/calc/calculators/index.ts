/** Every calculator. Adding one is adding its file and its line here. */

import type { Calculator } from '../calculator.ts';
import { acid } from './acid.ts';
import { adjust } from './adjust.ts';
import { brix } from './brix.ts';
import { carbonation } from './carbonation.ts';
import { clarity } from './clarity.ts';
import { coat } from './coat.ts';
import { dose } from './dose.ts';
import { drops } from './drops.ts';
import { emulsifier } from './emulsifier.ts';
import { hlb } from './hlb.ts';
import { hlbOf } from './hlb-of.ts';
import { intake } from './intake.ts';
import { lasts } from './lasts.ts';
import { ph } from './ph.ts';
import { ring } from './ring.ts';
import { titrate } from './titrate.ts';
import { waterActivity } from './water-activity.ts';

export const calculators: readonly Calculator[] = [
  hlb,
  hlbOf,
  emulsifier,
  dose,
  acid,
  drops,
  ph,
  adjust,
  titrate,
  brix,
  waterActivity,
  carbonation,
  clarity,
  ring,
  coat,
  lasts,
  intake,
];
