/** All that is loaded only where a ledger is opened: the commands on it, and what quick commands ask of it. */

export { runBatch } from './batch.ts';
export { runCheck } from './check.ts';
export { runCorrect } from './correct.ts';
export { runDilute } from './dilute.ts';
export { runDropper } from './dropper.ts';
export { stockForDrops } from './drops-stock.ts';
export { runInit } from './init.ts';
export { openLedgerBook } from './ledger-book.ts';
export { runList } from './list.ts';
export { runEnd, runLook, runSame } from './look.ts';
export { runNew } from './new.ts';
export { runObserve } from './observe.ts';
export { runOverpoured } from './overpour.ts';
export { recordAnswers, runReckon } from './reckon.ts';
export { runShow } from './show.ts';
export { runStocks } from './stocks.ts';
export { openPicture } from './trial-picture.ts';
export { runUses } from './uses.ts';
export { runWeigh } from './weigh.ts';
