/** What is loaded for stock dilutions, batches and tanks. */

export { runBatch } from './batch.ts';
export { runCorrect } from './correct.ts';
export { runDilute } from './dilute.ts';
export { runDropper } from './dropper.ts';
export { stockForDrops } from './drops-stock.ts';
export { runStocks } from './stocks.ts';
