/** Writes a made-up ledger of so many trials into a folder that is there. */
export function writeLedger(folder: string, count: number, now?: number): void;
