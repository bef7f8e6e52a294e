/** The schemas as this version of the program writes them; loaded only where they are wanted. */

import { allKindSchemas, type KindSchema } from '../ledger/json-schema.ts';
import { versionText } from './help.ts';

/** `0.1.0` */
const version = versionText.trim().split(' ').at(-1) ?? '';

export const ledgerSchemas = (): readonly KindSchema[] => allKindSchemas(version);
