/** What is loaded where something is written down: the daily round, the balance, the next trial. */

export { runInit } from './init.ts';
export { runEnd, runLook, runSame } from './look.ts';
export { runNew } from './new.ts';
export { runObserve } from './observe.ts';
export { runOverpoured } from './overpour.ts';
export { runWeigh } from './weigh.ts';
