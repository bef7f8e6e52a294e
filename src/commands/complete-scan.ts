/**
 * Names in a ledger file by its lines alone, for completion: what is read plainly is offered, what is not is left out.
 * Nothing is decided by it.
 */

/** A plain or quoted scalar without its comment; undefined where it is written in a way that needs the library. */
export function plainScalar(written: string): string | undefined {
  const text = written.trim();
  const double = /^"([^"\\]*)"\s*(?:#.*)?$/.exec(text);
  if (double) return double[1];
  const single = /^'((?:[^']|'')*)'\s*(?:#.*)?$/.exec(text);
  if (single) return single[1]?.replaceAll("''", "'");
  if (text === '' || /^[-?:]\s|^[,[\]{}#&*!|>'"%@`]/.test(text)) return undefined;
  return text.replace(/\s+#.*$/, '');
}

/** The value of a key at the left edge, from the first lines of a file. */
export function valueAtEdge(text: string, key: string): string | undefined {
  const line = text.split(/\r?\n/).find((one) => one.startsWith(`${key}:`));
  return line === undefined ? undefined : plainScalar(line.slice(key.length + 1));
}

export interface ScannedEntry {
  readonly name: string;
  /** The plain facts that stand under it, one level deeper. */
  readonly facts: Readonly<Record<string, string>>;
}

const keyLine = /^(\s*)((?:"[^"]*"|'(?:[^']|'')*'|[^\s#'"][^#]*?))\s*:(?:\s+(.*))?$/;

/** The keys one level under a key of the left edge, or of the level below it: `ingredients`, `samples`. */
export function entriesUnder(text: string, key: string): readonly ScannedEntry[] {
  const entries: { name: string; facts: Record<string, string> }[] = [];
  let isInside = false;
  let level: number | undefined;
  for (const line of text.split(/\r?\n/)) {
    if (/^\s*(?:#|$)/.test(line)) continue;
    if (/^\S/.test(line)) isInside = line.startsWith(`${key}:`);
    else if (isInside) {
      const [, indent = '', named = '', value = ''] = keyLine.exec(line) ?? [];
      const name = named === '' ? undefined : plainScalar(named);
      if (name === undefined) continue;
      level ??= indent.length;
      const fact = plainScalar(value);
      if (indent.length === level) entries.push({ name, facts: Object.create(null) });
      else if (indent.length > level && fact !== undefined) {
        const facts = entries.at(-1)?.facts;
        if (facts && !(name in facts)) facts[name] = fact;
      }
    }
  }
  return entries;
}

/** The bullets of a list under a key, wherever the key stands: `tastes` of the bench. */
export function bulletsUnder(text: string, key: string): readonly string[] {
  const lines = text.split(/\r?\n/);
  const at = lines.findIndex((line) => line.trim() === `${key}:`);
  const bullets: string[] = [];
  if (at < 0) return bullets;
  for (const line of lines.slice(at + 1)) {
    const [, written] = /^\s*-\s+(.*)$/.exec(line) ?? [];
    if (written === undefined) break;
    const word = plainScalar(written);
    if (word !== undefined) bullets.push(word);
  }
  return bullets;
}
