import type { Caution } from '../calc/answer.ts';
import type { Calculator, FiledAnswer } from '../calc/calculator.ts';
import type { Io } from '../io.ts';
import { addResult, type NewResult } from '../ledger/results-edit.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { answerJson, envelope } from '../output/answer-json.ts';
import { cautionBlocks, closedOnce } from '../output/answer-page.ts';
import type { Block, Page } from '../output/view.ts';
import { type Problem, ProblemError } from '../problem.ts';
import { askAboutCaffeine } from './caffeine-gate.ts';
import type { Call, Explanation, Outcome } from './command.ts';
import { type MeasuredDrink, measuredBlocks, measuredJson } from './drink-measured.ts';
import { type HazeBeside, hazeBeside } from './haze-beside.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { bookOf } from './ledger-book.ts';
import { measuredOf } from './measured-of.ts';
import { openDesign } from './open-formula.ts';
import { type Here, type OpenedTrial, openHere, openTrialNamed } from './open-ledger.ts';
import { type ReckonedFormula, reckonFormula } from './reckon-formula.ts';
import { markOf, type Reckoned, type Reckoning, reckonTrial } from './reckoned.ts';
import { reckonedPage, shortTrial } from './reckoned-page.ts';
import { figureFacts, givenFacts } from './result-facts.ts';
import { trialCautions } from './trial-cautions.ts';
import { pictureOf } from './trial-picture.ts';
import { wordSources } from './worded-sources.ts';

export async function runReckon(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const isExplained = call.flags.has('explain');
  const isShort = !isExplained && !call.flags.has('all');
  const book = await bookOf(here);
  const { sources } = await import('../reference/kept-sources.ts');
  const all: {
    readonly trial: OpenedTrial;
    readonly reckoning: Reckoning;
    readonly warnings: readonly Problem[];
    readonly cautions: readonly Caution[];
    readonly measured: MeasuredDrink | undefined;
    readonly haze: HazeBeside;
  }[] = [];
  const formulas: ReckonedFormula[] = [];
  for (const word of call.words) {
    const design = await openDesign(here, io, word);
    if (design.card.kind === 'formula') {
      const around = { here, book, sources, explain: isExplained, isShort };
      formulas.push(await reckonFormula({ ...design, card: design.card }, around));
      continue;
    }
    const trial = { ...design, card: design.card };
    const { picture, warnings } = await pictureOf(here, trial, book);
    const reckoning = await reckonTrial(picture, book);
    const { cautions, gate } = await trialCautions(here, trial, { book, mixture: picture.mixture });
    await askAboutCaffeine(call, io, gate);
    const measured = await measuredOf(here, trial, book);
    const haze = await hazeBeside(here, trial, { mixture: picture.mixture, book });
    all.push({ trial, warnings, reckoning, measured, haze, cautions: notYetSaid(cautions, reckoning) });
  }
  const isDry = call.flags.has('dry-run');
  const written = await writeResults({
    call,
    io,
    here,
    isDry,
    entries: all.map(({ trial, reckoning }) => ({
      file: trial.file,
      results: reckoning.answers.map((one) => newResult(one, io, here)),
    })),
  });
  return {
    exitCode: formulas.some(({ isMissed }) => isMissed) ? 1 : 0,
    page: closedOnce([
      ...all.flatMap(({ trial, reckoning, measured, haze, cautions }) => [
        ...(isShort
          ? shortTrial(trial, reckoning, sources)
          : reckonedPage(trial, reckoning, sources, isExplained)),
        ...measuredBlocks(measured),
        ...haze.blocks,
        ...cautionBlocks(cautions),
      ]),
      ...formulas.flatMap(({ page }) => page),
      ...diffBlocks(written, isDry && !isShort),
    ]),
    json: envelope({
      schema: 'reckon@1',
      given: { trials: all.map(({ trial }) => trial.card.number) },
      found: {
        trials: all.map(({ trial, reckoning, measured, haze, cautions }) => ({
          trial: trial.card.number,
          ...measuredJson(measured),
          haze: haze.json,
          cautions,
          answers: reckoning.answers.map(({ filed }) => ({
            ...answerJson(wordSources(filed.answer, sources), isExplained),
            stage: filed.stage ?? '',
          })),
          notApplied: reckoning.notApplied.map(({ calculator, why }) => ({
            calculator: calculator.name,
            why,
          })),
        })),
        formulas: formulas.map(({ json }) => json),
      },
      cautions: [...all, ...formulas].flatMap(({ cautions }) => cautions),
    }),
    problems: [...all, ...formulas].flatMap(({ warnings }) => warnings),
    notes: notesOf(written, isDry),
    explained: () =>
      explanationOf([
        ...all.flatMap(({ reckoning }) => reckoning.answers),
        ...formulas.flatMap(({ answers }) => answers),
      ]),
  };
}

/** The working stands with each answer; sources once for all. */
const explanationOf = (answers: readonly Reckoned[]): Explanation => ({
  working: answers.flatMap(({ filed }) => filed.answer.working),
  sources: answers.flatMap(({ filed }) => filed.answer.sources),
  restsOn: answers.map(({ calculator }) => calculator.name),
  isShown: true,
});

/** A question that an answer asks already is not asked again. */
const notYetSaid = (cautions: readonly Caution[], { answers }: Reckoning): readonly Caution[] => {
  const said = new Set(answers.flatMap(({ filed }) => filed.answer.cautions.map(({ code }) => code)));
  return cautions.filter(({ code }) => !(code.startsWith('slip-') && said.has(code)));
};

/** `--record`: answers of a quick command into a trial. `typed` is what was typed over the trial. */
export async function recordAnswers(recording: {
  readonly calculator: Calculator;
  readonly filed: FiledAnswer;
  readonly typed: Readonly<Record<string, readonly string[]>>;
  readonly call: Call;
  readonly trial: string;
  readonly io: Io;
}): Promise<readonly string[]> {
  const { calculator, filed, typed, call, io } = recording;
  const here = await openHere(io);
  const trial = await openTrialNamed(here, io, recording.trial);
  const result = newResult({ calculator, filed }, io, here, typed);
  const written = await writeResults({
    call,
    io,
    here,
    isDry: false,
    entries: [{ file: trial.file, results: [result] }],
  });
  return notesOf(written, false);
}

function newResult(
  { calculator, filed }: Reckoned,
  io: Io,
  here: Here,
  typed: Readonly<Record<string, readonly string[]>> = {},
): NewResult {
  return {
    at: writtenTime(io.now(), here.settings.zone, true),
    calculator: calculator.name,
    ...(filed.stage === undefined ? {} : { stage: filed.stage }),
    of: markOf(filed),
    typed: Object.entries(typed).flatMap(([field, texts]) => texts.map((text) => [field, text] as const)),
    given: givenFacts(filed.answer, calculator),
    figures: figureFacts(filed.answer, calculator.readings),
  };
}

interface Written {
  readonly file: string;
  readonly added: number;
  readonly diff: readonly string[];
}

interface WriteRequest {
  readonly call: Call;
  readonly io: Io;
  readonly here: Here;
  readonly isDry: boolean;
  readonly entries: readonly { readonly file: string; readonly results: readonly NewResult[] }[];
}

async function writeResults({ call, io, here, isDry, entries }: WriteRequest): Promise<readonly Written[]> {
  let written: readonly Written[] = [];
  const make = async () => {
    const made = entries.map(({ file, results }) => {
      const before = textNow(here.root, file, io);
      const { text, added } = withResults(file, before, results);
      return { file, before, after: text, added };
    });
    written = made.map(({ file, before, after, added }) => ({
      file,
      added,
      diff: changedLines(before, after),
    }));
    return made
      .filter(({ added }) => added > 0)
      .map(({ file, before, after }) => ({ path: file, before, after }));
  };
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  return written;
}

function withResults(
  file: string,
  before: string,
  results: readonly NewResult[],
): { readonly text: string; readonly added: number } {
  let text = before;
  let added = 0;
  for (const result of results) {
    const edited = addResult(file, text, result);
    if (!edited.ok) throw new ProblemError(edited.problems);
    text = edited.text;
    if (edited.state === 'added') added++;
  }
  return { text, added };
}

function notesOf(written: readonly Written[], isDry: boolean): readonly string[] {
  return written.map(({ file, added }) =>
    added === 0
      ? `${file}: nothing new; nothing written`
      : `${isDry ? 'would write' : 'wrote'} ${added} result${added === 1 ? '' : 's'} to ${file}`,
  );
}

const diffBlocks = (written: readonly Written[], isDry: boolean): Page =>
  isDry
    ? written
        .filter(({ added }) => added > 0)
        .flatMap(({ file, diff }): readonly Block[] => [
          { kind: 'heading', text: file },
          { kind: 'lines', lines: diff },
        ])
    : [];
