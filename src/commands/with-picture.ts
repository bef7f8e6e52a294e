/** What is loaded where the stages of a trial are resolved. */

export { recordAnswers, runReckon } from './reckon.ts';
export { runShow } from './show.ts';
export { openPicture } from './trial-picture.ts';
export { runUses } from './uses.ts';
