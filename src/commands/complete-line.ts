/** The line in front of the cursor, as the shell reads it: words without their quotes, and where the last one stands. */

export const shells = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof shells)[number];

export type Quote = '' | '"' | "'";

export interface TypedWord {
  readonly text: string;
  /** The quote that is open at its end. */
  readonly open: Quote;
  /** Where in `text` begins what the shell puts its completion in place of. */
  readonly from: number;
}

export interface TypedLine {
  /** The whole words, the program first. */
  readonly words: readonly string[];
  /** The word at the cursor; empty after a blank. */
  readonly current: TypedWord;
}

interface Reading {
  readonly shell: Shell;
  readonly line: string;
  /** Signs at which bash begins a word of its own for completion. */
  readonly breaks: string;
}

/** What a backslash takes the meaning from, inside quotes; elsewhere in a quote it stands for itself. */
const escapable: Readonly<Record<Shell, Readonly<Record<'"' | "'", string>>>> = {
  bash: { '"': '$`"\\', "'": '' },
  zsh: { '"': '$`"\\', "'": '' },
  fish: { '"': '$"\\', "'": "'\\" },
};

export function readLine({ shell, line, breaks }: Reading): TypedLine {
  const words: string[] = [];
  let text = '';
  let open: Quote = '';
  let from = 0;
  let isWord = false;
  for (let at = 0; at < line.length; at += 1) {
    const sign = line[at] ?? '';
    const next = line[at + 1];
    const isBlank = open === '' && /\s/.test(sign);
    if (isBlank) {
      if (isWord) words.push(text);
      text = '';
      from = 0;
      isWord = false;
      continue;
    }
    isWord = true;
    if (sign === '\\' && next !== undefined && (open === '' || escapable[shell][open].includes(next))) {
      text += next;
      at += 1;
    } else if (open === '' && (sign === '"' || sign === "'")) {
      open = sign;
      from = text.length;
    } else if (sign === open) {
      open = '';
      from = 0;
    } else {
      text += sign;
      if (open === '' && breaks.includes(sign)) from = text.length;
    }
  }
  return { words, current: { text, open, from } };
}
