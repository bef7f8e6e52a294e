import type { Io } from '../io.ts';
import { envelope } from '../output/answer-json.ts';
import type { Page } from '../output/view.ts';
import { fail } from '../problem.ts';
import type { Call, Outcome } from './command.ts';
import { type CourseDay, courseDays } from './days-course.ts';
import { exampleBlocks } from './help.ts';

const closing =
  'The numbers of the beakers and the name of the series are those of your own ledger. Each command has more behind --help.';

export async function runDays(call: Call, io: Io): Promise<Outcome> {
  const [typed] = call.words;
  const days = typed === undefined ? courseDays : [dayNamed(typed)];
  return {
    exitCode: 0,
    page: [
      ...days.flatMap((day) => dayBlocks(day, io.columns)),
      { kind: 'text', text: closing, tone: 'faint' },
    ],
    json: envelope({
      schema: 'days@1',
      found: {
        days: days.map(({ day, title, lines }) => ({
          day: { value: day, unit: 'd' },
          title,
          lines: lines.map(({ line, says }) => ({ line: `neckring ${line}`, says })),
        })),
      },
    }),
  };
}

const dayBlocks = ({ day, title, lines }: CourseDay, width: number): Page => [
  { kind: 'heading', text: `Day ${day}: ${title}` },
  ...exampleBlocks(lines, Math.min(width, 100)),
];

function dayNamed(typed: string): CourseDay {
  const found = courseDays.find(({ day }) => String(day) === typed.replace(/^day\s*/iu, '').trim());
  const days = courseDays.map(({ day }) => day).join(', ');
  return (
    found ?? fail('no-day', `there is no page for day ${typed}`, `say one of ${days}, or nothing for all`)
  );
}
