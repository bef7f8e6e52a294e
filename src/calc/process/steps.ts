/** The steps of a stage as the cautions read them: what is named in each, and how warm it is. */

import { warmFromKelvin } from '../../reference/cautions.ts';
import { normaliseName } from '../../reference/name.ts';

/** What an item brings that matters for the order. */
export type Trait = 'acid' | 'preservative salt' | 'potent' | 'antifoam' | 'oil' | 'emulsifier';

export interface ProcessItem {
  readonly name: string;
  /** Other names that a step may use for it. */
  readonly alsoCalled: readonly string[];
  readonly traits: ReadonlySet<Trait>;
  /** True for a stage that is used: of this trial, or of another. */
  readonly isStage: boolean;
  /** Written as typed, where the item makes the stage up to a volume: `to 1 L`. */
  readonly makesUpTo?: string;
}

export interface ProcessStep {
  /** `warm`, `shear` and so on; undefined for a plain sentence. */
  readonly does: string | undefined;
  /** Everything else that the step says in words. */
  readonly words: string;
  readonly temperatureKelvin?: number;
}

export interface ProcessStage {
  readonly name: string;
  /** In the order of addition. */
  readonly items: readonly ProcessItem[];
  readonly steps: readonly ProcessStep[];
}

/** How warm the stage is; the temperature is there where a step said it. */
export interface Warmth {
  readonly isWarm: boolean;
  readonly kelvin?: number;
}

const degrees = /(\d+(?:\.\d+)?)\s*°?\s*C\b/u;
const hotWords = /\b(?:hot|boil\w*|simmer\w*|heat\w*|warm\w*|pasteuri[sz]\w*)\b/iu;
const coldWords = /\b(?:cool\w*|cold|chill\w*|room temperature|bench temperature|not (?:heated|warmed))\b/iu;
const shearWords = /\b(?:shear\w*|homogeni[sz]\w*|rotor|blender|high[ -]speed)\b/iu;
const icePointKelvin = 273.15;

/** The temperature that a step gives, in a field or in its words. */
function kelvinOf({ temperatureKelvin, words }: ProcessStep): number | undefined {
  if (temperatureKelvin !== undefined) return temperatureKelvin;
  const typed = degrees.exec(words)?.[1];
  return typed === undefined ? undefined : Number(typed) + icePointKelvin;
}

/** How warm the stage is after a step. A step that says nothing of it leaves it as it was. */
export function warmthAfter(step: ProcessStep, before: Warmth): Warmth {
  const kelvin = kelvinOf(step);
  if (kelvin !== undefined)
    return kelvin >= warmFromKelvin.value ? { isWarm: true, kelvin } : { isWarm: false };
  if (step.does === 'cool' || coldWords.test(step.words)) return { isWarm: false };
  if (step.does === 'warm') return { isWarm: true };
  return hotWords.test(step.words) ? { ...before, isWarm: true } : before;
}

/** The warmth before each step, and after the last. */
export function warmths(steps: readonly ProcessStep[]): readonly Warmth[] {
  const all: Warmth[] = [{ isWarm: false }];
  for (const step of steps) all.push(warmthAfter(step, all.at(-1) ?? { isWarm: false }));
  return all;
}

export const isShear = ({ does, words }: ProcessStep): boolean => does === 'shear' || shearWords.test(words);

/** Words that stand for every item with a trait. */
const traitWords: readonly (readonly [word: string, traits: readonly Trait[]])[] = [
  ['acid', ['acid']],
  ['acids', ['acid']],
  ['preservative', ['preservative salt']],
  ['preservatives', ['preservative salt']],
  ['aroma', ['potent']],
  ['aromas', ['potent']],
  ['antifoam', ['antifoam']],
  ['emulsion', ['oil', 'emulsifier']],
];

const everything = /\b(?:everything|all|the rest)\b/u;

/** The first step that names an item, by its place; undefined where none does. */
export function stepOf(stage: ProcessStage, item: ProcessItem): number | undefined {
  const names = namesOf(stage, item);
  const place = stage.steps.findIndex((step) => namesAny(step, names));
  return place < 0 ? undefined : place;
}

/** The last step that adds an item or says that the stage is made up; undefined where none does. */
export function makeUpStepOf(stage: ProcessStage, item: ProcessItem): number | undefined {
  const names = namesOf(stage, item);
  const place = stage.steps.findLastIndex(
    (step) =>
      makeUpWords.test(step.words) ||
      ((step.does === 'add' || step.does === undefined) && namesAny(step, names)),
  );
  return place < 0 ? undefined : place;
}

const makeUpWords =
  /\b(?:(?:make|made|top|topped|fill|filled|bring|brought)(?: it)? up|to volume|to the mark)\b/iu;

function namesAny({ words }: ProcessStep, names: readonly string[]): boolean {
  const text = ` ${plainWords(words)} `;
  return everything.test(text) || names.some((name) => text.includes(` ${name} `));
}

const plainWords = (name: string): string =>
  normaliseName(name)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Its names, the words for what it is, and words of its name that no other item of the stage has. */
function namesOf(stage: ProcessStage, item: ProcessItem): readonly string[] {
  const others = stage.items.filter((other) => other !== item).map(({ name }) => plainWords(name).split(' '));
  const ownWords = plainWords(item.name)
    .split(' ')
    .filter((word) => word.length >= 4 && !others.some((words) => words.includes(word)));
  const kinds = traitWords
    .filter(
      ([word, traits]) =>
        traits.every((trait) => item.traits.has(trait)) && (word !== 'emulsion' || item.isStage),
    )
    .map(([word]) => word);
  return [plainWords(item.name), ...item.alsoCalled.map(plainWords), ...ownWords, ...kinds];
}
