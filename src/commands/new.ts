import type { Io } from '../io.ts';
import { copiedPlan } from '../ledger/copy-stages.ts';
import { nodeDisk } from '../ledger/disk.ts';
import type { Fact } from '../ledger/fact-text.ts';
import { seeFolder } from '../ledger/land.ts';
import { newTrialText, trialFileName } from '../ledger/new-files.ts';
import { numberInName } from '../ledger/single-trial.ts';
import { writtenTime } from '../ledger/typed-time.ts';
import { envelope } from '../output/answer-json.ts';
import { type Call, type Outcome, optionValue } from './command.ts';
import { landHere } from './land-text.ts';
import { type Here, type OpenedTrial, openHere, openTrialNamed } from './open-ledger.ts';

const folder = 'trials';

export async function runNew(call: Call, io: Io): Promise<Outcome> {
  const here = await openHere(io);
  const from = optionValue(call, 'from');
  const source = from === undefined ? undefined : await openTrialNamed(here, io, from);
  const isDry = call.flags.has('dry-run');
  let file = '';
  let number = 0;
  let text = '';
  const make = async () => {
    const seen = await seeFolder(nodeDisk, here.root, folder);
    number = 1 + Math.max(0, ...seen.names.flatMap((name) => numberInName(name) ?? []));
    const facts = factsOf(call, io, here, source);
    file = `${folder}/${trialFileName(number, optionValue(call, 'title') ?? source?.card.title)}`;
    text = newTrialText({
      number,
      facts,
      copied: source ? copiedPlan(source.card, source.document.source.text) : undefined,
    });
    return [seen, { path: file, before: undefined, after: text }];
  };
  if (isDry) await make();
  else await landHere(here.root, call, io, make);
  return {
    exitCode: 0,
    page: [{ kind: 'lines', lines: isDry ? text.trimEnd().split('\n') : [`trial ${number}`] }],
    json: envelope({
      schema: 'new@1',
      given: { ...(from === undefined ? {} : { from }) },
      found: { trial: number, file },
    }),
    notes: [`${isDry ? 'would write' : 'wrote'} ${file}`],
  };
}

function factsOf(call: Call, io: Io, here: Here, source: OpenedTrial | undefined): readonly Fact[] {
  const title = optionValue(call, 'title') ?? source?.card.title;
  const series = optionValue(call, 'series') ?? source?.card.series?.text;
  const why = optionValue(call, 'why');
  return [
    ...(title === undefined ? [] : [['title', title] as const]),
    ['made', writtenTime(io.now(), here.settings.zone)],
    ...(source ? [['from', String(source.card.number)] as const] : []),
    ...(why === undefined ? [] : [['why', why] as const]),
    ...(series === undefined ? [] : [['series', series] as const]),
  ];
}
