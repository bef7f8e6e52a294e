import { type DropMass, dropConfidence, dropMassOf, parseDropWeighing } from '../calc/dilution/drop-mass.ts';
import { numberText, trimmedNumber } from '../calc/number-text.ts';
import type { Io } from '../io.ts';
import { benchFile } from '../ledger/find-root.ts';
import { ingredientsFile } from '../ledger/folder.ts';
import { setDropper } from '../ledger/ingredient-edit.ts';
import { isSameName } from '../ledger/stage-name.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { fail, ProblemError } from '../problem.ts';
import { usualDrop } from '../reference/drops.ts';
import { quantityOption } from './batch-options.ts';
import { withArithmetic } from './calculate.ts';
import { type Call, type Explanation, type Outcome, optionValue } from './command.ts';
import { changedLines, landHere, textNow } from './land-text.ts';
import { openIngredients } from './ledger-book.ts';
import { openHere } from './open-ledger.ts';

export async function runDropper(call: Call, io: Io): Promise<Outcome> {
  const weighed = await withArithmetic(() => weighingsOf(call));
  const mass = dropMassOf(weighed);
  const facts = await withArithmetic(() => dropFacts(call, mass));
  const recorded = await record(call, io, facts);
  const questions = unusual(mass);
  return {
    exitCode: 0,
    page: [
      ...massPage(mass),
      ...(questions.length > 0
        ? [{ kind: 'notes', mark: '!', notes: questions, tone: 'warn' } as const]
        : []),
      ...(recorded.diff.length > 0 ? [{ kind: 'lines', lines: recorded.diff } as const] : []),
    ],
    json: envelope({
      schema: 'dropper@1',
      given: { weighings: call.values['weighings'] ?? [] },
      found: {
        drop: { value: mass.dropGrams, unit: 'g' },
        spread: { value: mass.spreadGrams ?? null, unit: 'g' },
        low: { value: mass.interval?.[0] ?? null, unit: 'g' },
        high: { value: mass.interval?.[1] ?? null, unit: 'g' },
        confidence: { value: dropConfidence, unit: '' },
        weighings: { value: mass.weighings, unit: '' },
        drops: { value: mass.drops, unit: '' },
      },
      cautions: questions.map((text) => ({ code: 'slip-drop', text, source: usualDrop.source })),
    }),
    notes: recorded.notes,
    explained: () => dropExplanation(mass),
  };
}

function dropExplanation({
  dropGrams,
  spreadGrams,
  interval,
  drops,
  weighings,
  student,
}: DropMass): Explanation {
  const mean = {
    equation: 'drop = all grams / all drops',
    numbers: `${trimmedNumber(dropGrams * drops, 5)} g / ${drops} = ${trimmedNumber(dropGrams, 5)} g`,
  };
  if (student === undefined || spreadGrams === undefined || !interval)
    return { working: [mean], sources: [], restsOn: ['dropper'] };
  return {
    working: [
      mean,
      {
        equation: 'spread^2 = sum of n (m/n - drop)^2 / (weighings - 1)',
        numbers: `over ${weighings} weighings: spread ${trimmedNumber(spreadGrams, 4)} g`,
      },
      {
        equation: 'interval = drop +- t x spread / root of all drops',
        numbers: `t ${trimmedNumber(student, 4)}, freedom ${weighings - 1}, root of ${drops}: ${trimmedNumber(interval[0], 4)} to ${trimmedNumber(interval[1], 4)} g`,
      },
    ],
    sources: [{ for: 'interval of a mean', source: 'jcgm-100#4.2.3 and G.3.2', fromMemory: false }],
    restsOn: ['dropper'],
  };
}

/** Each `--weighings` may hold several, with commas or semicolons between. */
function weighingsOf(call: Call) {
  const texts = (call.values['weighings'] ?? [])
    .flatMap((text) => text.split(/[;,]\s+|;/u))
    .filter((one) => one.trim() !== '');
  if (texts.length === 0)
    fail(
      'missing',
      '--weighings is needed',
      'weigh counted drops a few times: --weighings "0.612 g / 20" --weighings "0.604 g / 20"',
    );
  return texts.map((text) => {
    const read = parseDropWeighing(text);
    return read.ok
      ? read.value
      : fail(read.fault.code, `--weighings: ${read.fault.message}`, read.fault.hint);
  });
}

const grams = (value: number): string => `${numberText(value, 3)} g`;

function massPage(mass: DropMass): Page {
  const { dropGrams, spreadGrams, interval, drops, weighings } = mass;
  const rows: (readonly [string, string])[] = [['a drop', grams(dropGrams)]];
  if (spreadGrams !== undefined && interval) {
    rows.push([
      'spread of one drop',
      `${grams(spreadGrams)}, ${numberText((spreadGrams / dropGrams) * 100, 2)} %`,
    ]);
    rows.push(['95 % interval of its mass', `${grams(interval[0])} to ${grams(interval[1])}`]);
  }
  rows.push(['from', `${drops} drops in ${weighings} weighing${weighings === 1 ? '' : 's'}`]);
  return [
    {
      kind: 'table',
      columns: [
        { head: '', align: 'left' },
        { head: '', align: 'left' },
      ],
      rows,
    },
    ...(spreadGrams === undefined
      ? [
          {
            kind: 'text',
            text: 'One weighing says nothing of the spread: weigh 20 drops three times or more.',
          } as const,
        ]
      : []),
  ];
}

/** A drop far from any that falls of itself is most often a miscount. */
function unusual({ dropGrams }: DropMass): readonly string[] {
  const { low, high } = usualDrop;
  if (dropGrams >= low && dropGrams <= high) return [];
  return [
    `a drop of ${grams(dropGrams)} is far from the ${low} to ${high} g of most droppers; is the count meant?`,
  ];
}

type Facts = readonly (readonly [string, string])[];

function dropFacts(call: Call, mass: DropMass): Facts {
  const liquid = optionValue(call, 'liquid');
  const temperature = quantityOption(call, 'temperature', ['temperature'])?.written;
  return [
    ['drop', `${trimmedNumber(mass.dropGrams, 4)} g`],
    ...(mass.spreadGrams === undefined
      ? []
      : [['spread', `${trimmedNumber(mass.spreadGrams, 3)} g`] as const]),
    ...(liquid === undefined ? [] : [['liquid', liquid] as const]),
    ...(temperature === undefined ? [] : [['temperature', temperature] as const]),
    ['weighings', String(mass.weighings)],
    ['drops', String(mass.drops)],
  ];
}

async function record(call: Call, io: Io, facts: Facts) {
  const target = optionValue(call, 'record');
  if (target === undefined) return { diff: [], notes: [] };
  const here = await openHere(io);
  const isBench = isSameName(target, 'bench');
  const file = isBench ? benchFile : ingredientsFile;
  const path = isBench ? ['bench'] : ['ingredients', await ownName(target, here)];
  let diff: readonly string[] = [];
  const make = async () => {
    const before = textNow(here.root, file, io);
    const edited = setDropper(file, before, path, facts);
    if (!edited.ok) throw new ProblemError(edited.problems);
    diff = changedLines(before, edited.text);
    return edited.text === before ? [] : [{ path: file, before, after: edited.text }];
  };
  const isDry = call.flags.has('dry-run');
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  return {
    diff,
    notes: [diff.length === 0 ? `${file} says so already` : `${isDry ? 'would write' : 'wrote'} ${file}`],
  };
}

/** Only what is in the person's own file can be written to. */
async function ownName(target: string, here: Awaited<ReturnType<typeof openHere>>): Promise<string> {
  const cards = (await openIngredients(here))?.card?.ingredients ?? [];
  const found = cards.find(({ name }) => isSameName(name, target));
  return (
    found?.name ??
    fail(
      'unknown-ingredient',
      `--record: "${target}" is not in ingredients.yaml`,
      `say bench, or ${
        cards.length > 0
          ? cards
              .slice(0, 5)
              .map(({ name }) => `"${name}"`)
              .join(', ')
          : 'write the ingredient first'
      }`,
    )
  );
}
