/** Three-digit codes for glasses, such as can't be told apart by anything but themselves. */

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
