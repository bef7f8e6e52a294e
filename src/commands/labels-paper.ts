/** The label paper as it was typed. */

import { type LabelPaper, labelGrid } from '../output/sheets/labels-html.ts';
import { fail } from '../problem.ts';
import { type Call, optionValue } from './command.ts';

/** Common practice, no source: beaker labels on plain paper. */
const plain = { widthMillimetres: 63, heightMillimetres: 38 };
const smallest = { width: 25, height: 15 };

export function paperOf(call: Call): LabelPaper {
  const typed = optionValue(call, 'size');
  const size = typed === undefined ? plain : sizeOf(typed);
  const { columns, rows } = labelGrid(size);
  if (columns < 1 || rows < 1)
    return fail('large-label', `--size ${typed}: no such label fits on A4`, 'A4 is 210 x 297 mm');
  return { ...size, hasLines: typed === undefined, skip: skipOf(optionValue(call, 'skip'), columns * rows) };
}

function sizeOf(typed: string) {
  const [, width, height] =
    /^\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*[x×]\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*$/iu.exec(typed) ?? [];
  if (width === undefined || height === undefined)
    return fail('bad-size', `--size: "${typed}" is no size`, 'write width and height, such as "70 x 37 mm"');
  const size = { widthMillimetres: Number(width), heightMillimetres: Number(height) };
  if (size.widthMillimetres < smallest.width || size.heightMillimetres < smallest.height)
    return fail(
      'small-label',
      `--size ${typed} is too small to read`,
      `take labels of at least ${smallest.width} x ${smallest.height} mm`,
    );
  return size;
}

function skipOf(typed: string | undefined, perSheet: number): number {
  if (typed === undefined) return 0;
  if (/^\d{1,4}$/u.test(typed) && Number(typed) < perSheet) return Number(typed);
  return fail(
    'bad-count',
    `--skip: "${typed}" is not from 0 to ${perSheet - 1}`,
    `a sheet has ${perSheet} labels: give how many of them are used up`,
  );
}
