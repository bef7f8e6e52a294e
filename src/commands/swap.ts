import type { Run } from './command.ts';

export const runSwap: Run = async () => {
  throw new Error('not there yet');
};
