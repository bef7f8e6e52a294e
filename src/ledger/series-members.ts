/** The trials of one series, without parsing those that belong to none or to another. */

import { join } from 'node:path';
import { normaliseName } from '../reference/name.ts';
import type { TrialCard } from './cards.ts';
import { naming } from './disk-problem.ts';
import { filesIn, type LedgerPlace } from './folder.ts';
import { decodeFile, largestBytes } from './guard.ts';
import { needsArithmetic, type Opened, openFile, readText, withArithmetic } from './open-file.ts';
import { readTrialCard } from './read-trial.ts';
import { numberInName } from './single-trial.ts';
import { isSameName } from './stage-name.ts';

/** A value that reads as it stands: one word or several, no quotes, no comment, nothing YAML gives a meaning. */
const plainLine = /^series:[ \t]+([\p{L}\d](?:[\p{L}\d _./+-]*[\p{L}\d])?)[ \t]*\r?$/mu;
const anywhere = /series/u;
/** A key or value could be hidden in an escape. */
const escapes = /\\[xuU]/u;

/**
 * Whether a file certainly does not belong to the series; in doubt it is read.
 * Input     the text of a trial's file; the name of the series, normalised
 */
export function isOfAnother(text: string, name: string): boolean {
  if (escapes.test(text)) return false;
  if (!anywhere.test(text)) return true;
  const line = plainLine.exec(text);
  if (line?.[1] === undefined || text.indexOf('series', line.index + 6) !== -1 || line.index === 0)
    return false;
  if (text.lastIndexOf('series', line.index - 1) !== -1) return false;
  const after = text.slice(line.index + line[0].length + 1, line.index + line[0].length + 2);
  const goesOn = after === ' ' || after === '\t' || after === '\r' || after === '\n';
  return !goesOn && normaliseName(line[1]) !== name;
}

export interface Member extends Opened<TrialCard> {
  /** By the name of its file, where its card can't be read. */
  readonly number: number | undefined;
}

/** The trials that say `series: NAME`, and those that are named beside it (its control, its blank). */
export async function openMembers(
  place: LedgerPlace,
  name: string,
  beside: readonly number[],
): Promise<readonly Member[]> {
  const wanted = normaliseName(name);
  const members: Member[] = [];
  for (const file of filesIn(place.root, 'trials', place.port)) {
    const number = numberInName(file);
    const isBeside = number !== undefined && beside.includes(number);
    const opened = await openUnlessOther(place, file, isBeside ? undefined : wanted);
    if (opened) members.push(...membersAmong([opened], name, beside));
  }
  return members;
}

/** The same, of trials that are open already. */
export function membersAmong(
  trials: readonly Opened<TrialCard>[],
  name: string,
  beside: readonly number[],
): readonly Member[] {
  const wanted = normaliseName(name);
  return trials.flatMap((opened): readonly Member[] => {
    const number = numberInName(opened.file);
    const isBeside = number !== undefined && beside.includes(number);
    const named = opened.card?.series?.text;
    const isMember = named !== undefined && isSameName(named, name);
    // A file that can't be read as a trial is told of where its text names the series.
    const isBroken = !opened.card && normaliseName(opened.document.source.text).includes(wanted);
    return isMember || isBroken || isBeside ? [{ ...opened, number: opened.card?.number ?? number }] : [];
  });
}

/** Read once: what was looked at is what is parsed. */
async function openUnlessOther(
  place: LedgerPlace,
  file: string,
  wanted: string | undefined,
): Promise<Opened<TrialCard> | undefined> {
  const path = join(place.root, file);
  const size = place.port.sizeOf(path);
  if (size === undefined) return undefined;
  const request = {
    root: place.root,
    file,
    read: (document: Opened<TrialCard>['document']) => readTrialCard(document, place.settings),
  };
  if (size > largestBytes) return openFile(place.port, request);
  const decoded = await naming(file, async () => decodeFile(file, place.port.read(path)));
  if ('problem' in decoded) return openFile(place.port, request);
  if (wanted !== undefined && isOfAnother(decoded.text, wanted)) return undefined;
  const opened = readText(file, decoded.text, request.read);
  return needsArithmetic(opened) ? withArithmetic(opened, request) : opened;
}
