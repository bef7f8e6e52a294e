/**
 * The lines by which git calls us for the files of a ledger. Git hands what stands in its settings to a shell: these
 * are the only shell lines there are. They are constants, with two paths set in, each in single quotes.
 */

/** The name of the drivers in git's settings and in `.gitattributes`. */
export const driverName = 'neckring';

/** Node and the script that was started. */
export interface Program {
  readonly node: string;
  readonly script: string;
}

/** A word that a POSIX shell takes letter by letter. */
export const quoted = (word: string): string => `'${word.replaceAll("'", "'\\''")}'`;

const start = ({ node, script }: Program): string => `${quoted(node)} ${quoted(script)}`;

/** In the line of a merge driver git reads `%` as the beginning of a name of its own. */
const withoutPercents = (line: string): string => line.replaceAll('%', '%%');

/**
 * Where we are gone or fail, the file is merged by its lines: git alone would leave ours without a mark in it. Node
 * ends with 1 too when it does not find the script, so a conflict only counts where its marks are in the file.
 */
const mergeLine = (program: Program): string =>
  `${withoutPercents(start(program))} merge-driver --path=%P --marker-size=%L --ours=%X --theirs=%Y %O %A %B; ` +
  'status=$?; test $status -eq 0 && exit 0; test $status -eq 1 && grep -q "^<<<<" %A && exit 1; ' +
  'git merge-file --marker-size=%L -L ours -L base -L theirs %A %O %B && exit 0; test $? -lt 128 && exit 1; exit 129';

/** Git adds the names of the files behind the line. Where we are gone, the plain lines are shown. */
const diffLine = (program: Program): string =>
  `show() { ${start(program)} diff-driver "$@" || ` +
  'git --no-pager diff --no-index --no-ext-diff --no-textconv -- "$2" "$5"; true; }; show';

const textLine = (program: Program): string =>
  `show() { ${start(program)} diff-driver --text "$1" || cat "$1"; }; show`;

/** Keys and values for the settings of a clone. */
export const driverSettings = (program: Program): readonly (readonly [key: string, value: string])[] => [
  [`merge.${driverName}.name`, 'ledger files, by what they say'],
  [`merge.${driverName}.driver`, mergeLine(program)],
  [`diff.${driverName}.command`, diffLine(program)],
  [`diff.${driverName}.textconv`, textLine(program)],
];

const files = [
  'bench.yaml',
  'ingredients.yaml',
  'trials/*.yaml',
  'series/*.yaml',
  'formulas/*.yaml',
  'batches/*.yaml',
];

const head = '# neckring: files of the ledger are compared and merged by what they say';
/** Says that the text above had no line end, so that taking the lines out leaves it as it was. */
const headAfterOpenEnd = `${head} `;

/** The lines of `.gitattributes` beside the ledger. */
export const attributeLines: readonly string[] = files.map(
  (file) => `/${file} diff=${driverName} merge=${driverName}`,
);

const newlineOf = (text: string): string => (/^[^\n]*\r\n/u.test(text) ? '\r\n' : '\n');

/** The text with the lines that it lacks added at its end. */
export function withAttributes(text: string): string {
  const there = new Set(text.split(/\r?\n/u));
  const missing = attributeLines.filter((line) => !there.has(line));
  if (missing.length === 0) return text;
  const newline = newlineOf(text);
  const isOpen = text !== '' && !text.endsWith('\n');
  return `${text}${isOpen ? newline : ''}${[isOpen ? headAfterOpenEnd : head, ...missing].join(newline)}${newline}`;
}

/** The text without those lines, whatever else was added since. */
export function withoutAttributes(text: string): string {
  const ours = new Set([head, headAfterOpenEnd, ...attributeLines]);
  let kept = '';
  let openEnd: number | undefined;
  for (const line of text.match(/[^\n]*\n|[^\n]+$/gu) ?? []) {
    const words = line.replace(/\r?\n$/u, '');
    if (!ours.has(words)) kept += line;
    if (words === headAfterOpenEnd) openEnd = kept.length;
  }
  return openEnd === kept.length ? kept.replace(/\r?\n$/u, '') : kept;
}
