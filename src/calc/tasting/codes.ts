/** Three-digit codes for glasses, such as can't be told apart by anything but themselves. */

/** As likely each: Fisher and Yates. `random` gives a number from 0 to 1, 1 left out. */
export function shuffled<T>(list: readonly T[], random: () => number): readonly T[] {
  const mixed = [...list];
  for (let last = mixed.length - 1; last > 0; last -= 1) {
    const pick = Math.floor(random() * (last + 1));
    const [one, other] = [mixed[last], mixed[pick]];
    if (one === undefined || other === undefined) continue;
    mixed[last] = other;
    mixed[pick] = one;
  }
  return mixed;
}

/** Digits that are a digit upside down too: a glass marked 168 may stand as 891. */
const turnable = /^[01689]+$/;

const isRun = (digits: string): boolean => '0123456789'.includes(digits) || '9876543210'.includes(digits);

/**
 * Every code that may be used: 100 to 999, three different digits, no run such as 123 or 987, none that reads as
 * another one upside down. Common practice, no source.
 */
export const glassCodes: readonly string[] = Array.from({ length: 900 }, (_, at) => String(100 + at)).filter(
  (code) => new Set(code).size === 3 && !isRun(code) && !turnable.test(code),
);
