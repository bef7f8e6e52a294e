/** Every built-in ingredient, by family. */

import type { Ingredient } from '../ingredient.ts';
import { acids } from './acids.ts';
import { antifoamAndOthers } from './antifoam-and-others.ts';
import { carriers, deionisedWater, water } from './carriers.ts';
import { citrusOils } from './citrus-oils.ts';
import { foodEmulsifiers } from './emulsifiers.ts';
import { esters } from './esters.ts';
import { fattyOils } from './fatty-oils.ts';
import { flavourCompounds } from './flavour-compounds.ts';
import { flavourOils } from './flavour-oils.ts';
import { oilCompounds } from './oil-compounds.ts';
import { otherEmulsifiers } from './other-emulsifiers.ts';
import { plainOils } from './plain-oils.ts';
import { polysorbates } from './polysorbates.ts';
import { potentAroma } from './potent-aroma.ts';
import { preservatives } from './preservatives.ts';
import { salts } from './salts.ts';
import { sorbitanEsters } from './sorbitan-esters.ts';
import { spiceOils } from './spice-oils.ts';
import { sugars } from './sugars.ts';
import { sweeteners } from './sweeteners.ts';
import { terpenes } from './terpenes.ts';
import { terpenoids } from './terpenoids.ts';
import { withdrawnSubstances } from './withdrawn.ts';

export const ingredients: readonly Ingredient[] = [
  water,
  deionisedWater,
  ...citrusOils,
  ...flavourOils,
  ...spiceOils,
  ...plainOils,
  ...fattyOils,
  ...terpenes,
  ...terpenoids,
  ...oilCompounds,
  ...esters,
  ...flavourCompounds,
  ...potentAroma,
  ...polysorbates,
  ...sorbitanEsters,
  ...otherEmulsifiers,
  ...foodEmulsifiers,
  ...carriers,
  ...acids,
  ...salts,
  ...sugars,
  ...sweeteners,
  ...preservatives,
  ...antifoamAndOthers,
  ...withdrawnSubstances,
];
