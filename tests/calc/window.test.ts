import { describe, expect, it } from 'vitest';
import { heldWindow, type Tried } from '../../src/calc/window.ts';

const tried = (text: string): readonly Tried[] =>
  text.split(' ').map((one) => ({
    value: Number(one.slice(1)),
    outcome: one.startsWith('o') ? 'held' : one.startsWith('x') ? 'failed' : 'watching',
  }));

describe('a window', () => {
  it('lowest and highest that held, the nearest failure on each side, failures inside', () => {
    expect(heldWindow(tried('x8 x9 o10 x11 o12 ?13 x14 x15'))).toEqual({
      lowestHeld: 10,
      highestHeld: 12,
      failedBelow: 9,
      failedAbove: 14,
      failedInside: [11],
    });
  });

  it('open where nothing failed; nothing where nothing held', () => {
    expect(heldWindow(tried('o10 o12'))).toMatchObject({ failedBelow: null, failedAbove: null });
    expect(heldWindow(tried('x10 x12'))).toMatchObject({ lowestHeld: null, failedBelow: null });
  });

  it('law: one that is still watched moves no end', () => {
    const before = heldWindow(tried('x9 o10 o12 x14'));
    expect(heldWindow(tried('x9 o10 o12 x14 ?1 ?11 ?20'))).toEqual(before);
  });
});
