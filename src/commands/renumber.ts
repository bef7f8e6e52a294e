/** `renumber FILE --to 24`: a trial gets another number, with its file and every reference that means it. */

import { isAbsolute, relative, resolve, sep } from 'node:path';
import type { Io } from '../io.ts';
import type { TrialCard } from '../ledger/cards.ts';
import { nodeDisk } from '../ledger/disk.ts';
import { readLedger } from '../ledger/folder.ts';
import { type Change, seeFolder } from '../ledger/land.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { numberInName } from '../ledger/single-trial.ts';
import { envelope } from '../output/answer-json.ts';
import { fail } from '../problem.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { landHere } from './land-text.ts';
import { openHere } from './open-ledger.ts';
import { renumberedJson, renumberedPage, unreadProblems } from './renumber-page.ts';
import { type Answers, placesOf, settledPlaces } from './renumber-places.ts';
import { changesFor, halfMovedTo, renamed } from './renumber-texts.ts';

export async function runRenumber(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const ledger = await readLedger(here.root, here.port);
  const trial = trialOf(ledger, call, io);
  const to = numberFor(ledger, trial, optionValue(call, 'to'));
  const isDry = call.flags.has('dry-run');
  const answers: Answers = new Map();
  const placesIn = async (now: Ledger) => {
    const there = now.trials.find(({ file }) => file === trial.file);
    if (there?.number !== trial.number)
      return fail('gone', `${trial.file} is no longer trial ${trial.number}`, 'look with neckring list');
    return settledPlaces(await placesOf(now, there), {
      call,
      io,
      ledger: now,
      settings: here.settings,
      answers,
    });
  };
  const settled = await placesIn(ledger);
  const make = async (): Promise<readonly Change[]> => {
    const now = await readLedger(here.root, here.port);
    return [
      ...changesFor(now, trial, to, await placesIn(now)),
      await seeFolder(nodeDisk, here.root, 'trials'),
    ];
  };
  if (!isDry) await landHere(here.root, call, io, make);
  const told = { ledger, trial, to, settled, file: renamed(trial.file, to) };
  return {
    exitCode: 0,
    page: renumberedPage(told),
    json: envelope({ schema: 'renumber@1', given: { file: trial.file, to }, found: renumberedJson(told) }),
    problems: unreadProblems(ledger, trial),
    notes: [
      isDry ? 'nothing written (--dry-run)' : `trial ${trial.number} is now trial ${to}, in ${told.file}`,
    ],
  };
}

function trialOf(ledger: Ledger, call: Call, io: Io): TrialCard {
  const typed = call.words[0] ?? '';
  if (/^\d{1,9}$/u.test(typed)) return byNumber(ledger, Number(typed));
  const file = relative(ledger.root, resolve(io.workingFolder, typed)).split(sep).join('/');
  const found = ledger.trials.find((one) => one.file === file);
  if (found) return found;
  if (file.startsWith('..') || isAbsolute(file))
    return fail(
      'outside',
      `${typed} is outside the ledger in ${ledger.root}`,
      'name a trial of this ledger by its file',
    );
  const hint = ledger.unread.includes(file) ? 'neckring check says why' : 'neckring list shows what there is';
  return fail('no-trial', `there is no trial that can be read in ${typed}`, hint);
}

function byNumber(ledger: Ledger, number: number): TrialCard {
  const found = ledger.trials.filter((one) => one.number === number);
  const [first] = found;
  if (!first) return fail('no-trial', `there is no trial ${number}`, 'neckring list shows what there is');
  if (found.length === 1) return first;
  const files = found.map(({ file }) => file).join(' and ');
  return fail(
    'two-trials',
    `trial ${number} is ${files}`,
    'name the file of the one that is to have another number',
  );
}

/** The number to which it was on its way; the one that was typed, if it is free; else the next free one. */
function numberFor(ledger: Ledger, trial: TrialCard, typed: string | undefined): number {
  const { trials, unread } = ledger;
  const half = halfMovedTo(ledger, trial);
  if (half !== undefined && (typed === undefined || Number(typed) === half)) return half;
  const named = [...trials.map(({ file }) => file), ...unread].map((file) => numberInName(file) ?? 0);
  const taken = new Set([...trials.map(({ number }) => number), ...named]);
  const next = Math.max(0, ...taken) + 1;
  if (typed === undefined) return next;
  if (!/^\d{1,9}$/u.test(typed) || Number(typed) === 0)
    return fail(
      'bad-number',
      `"${typed}" is no number of a trial`,
      `write a whole number, such as --to ${next}`,
    );
  const to = Number(typed);
  if (to === trial.number)
    return fail('same-number', `it is trial ${to} already`, `the next free number is ${next}`);
  if (taken.has(to))
    return fail('number-taken', `there is a trial ${to} already`, `the next free number is ${next}`);
  return to;
}
