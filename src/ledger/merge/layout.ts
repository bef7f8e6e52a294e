/** What a file is written with apart from its lines: byte order mark, line ends, and whether the last line ends. */

const mark = '\ufeff';

export interface Layout {
  readonly hasMark: boolean;
  /** Line ends that are not all alike stay as they are, line by line. */
  readonly newline: '\n' | '\r\n' | 'mixed';
  readonly hasLastEnd: boolean;
}

export interface Laid {
  readonly layout: Layout;
  /** Lines that end in `\n` alone, the last one too; those of a mixed file keep their own ends. */
  readonly body: string;
}

/** Takes a text out of its layout. */
export function laid(text: string): Laid {
  const hasMark = text.startsWith(mark);
  const lines = hasMark ? text.slice(1) : text;
  const newline = newlineIn(lines);
  const even = newline === '\r\n' ? lines.replaceAll('\r\n', '\n') : lines;
  const hasLastEnd = even === '' || even.endsWith('\n');
  return { layout: { hasMark, newline, hasLastEnd }, body: hasLastEnd ? even : `${even}\n` };
}

function newlineIn(text: string): Layout['newline'] {
  const windows = text.split('\r\n').length - 1;
  const all = text.split('\n').length - 1;
  if (windows === 0) return '\n';
  return windows === all ? '\r\n' : 'mixed';
}

/** Puts a text into a layout. */
export function relaid(body: string, { hasMark, newline, hasLastEnd }: Layout): string {
  const lines = hasLastEnd ? body : body.replace(/\n$/u, '');
  return `${hasMark ? mark : ''}${newline === '\r\n' ? lines.replaceAll('\n', '\r\n') : lines}`;
}

/** The layout that one side changed; where both did, that of ours. */
export function mergedLayout(base: Layout, ours: Layout, theirs: Layout): Layout {
  const newline = ours.newline === base.newline ? theirs.newline : ours.newline;
  return {
    hasMark: ours.hasMark === base.hasMark ? theirs.hasMark : ours.hasMark,
    newline: ours.newline === 'mixed' || newline === 'mixed' ? ours.newline : newline,
    hasLastEnd: ours.hasLastEnd === base.hasLastEnd ? theirs.hasLastEnd : ours.hasLastEnd,
  };
}
