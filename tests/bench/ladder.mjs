// How good the planner of ladders is, beside plain halving and step ladders, on simulated benches.
// Usage: node tests/bench/ladder.mjs [benches for each scatter]
import { halving, planner, stepLadder } from './ladder-plans.mjs';
import { simulatedBench } from './ladder-simulated.mjs';
import { printTable } from './paired.mjs';

const benches = Number(process.argv[2] ?? 1000);
const SCATTERS = [0.04, 0.08, 0.15];
const AFTER = [8, 12, 16];
const MOST = 40;
/** Wanted of the planner: share of benches within 10 % of the truth, by scatter and beakers made. */
const WANTED = [
  [0.04, 12, 0.84],
  [0.04, 16, 0.92],
  [0.08, 12, 0.7],
  [0.08, 16, 0.83],
  [0.15, 12, 0.54],
  [0.15, 16, 0.62],
];
/** Wanted of its 90 % interval: how often it holds the truth, over all scatters and at each. */
const WANTED_OVERALL = [0.87, 0.95];
const WANTED_EACH = 0.83;
const plans = [
  ['planner', planner],
  ['plain halving', halving],
  ['steps of 1.1', stepLadder(1.1)],
  ['steps of 1.25', stepLadder(1.25)],
];

const percent = (share) => (share < 1e6 ? `${(100 * share).toFixed(1)} %` : 'none yet');
const middle = (values, share = 0.5) => [...values].sort((a, b) => a - b)[Math.floor(share * values.length)];
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const share = (values, test) => values.filter(test).length / values.length;

const started = performance.now();
const runs = plans.flatMap(([name, plan]) =>
  SCATTERS.flatMap((scatter) =>
    Array.from({ length: benches }, (_, at) => {
      const bench = simulatedBench(at + 1, scatter);
      return { name, scatter, truth: bench.truth, days: plan(bench, MOST) };
    }),
  ),
);

const dayAfter = ({ days }, made) => days.find((day) => day.made === made);
const errorAfter = (run, made) => {
  const { estimate } = dayAfter(run, made);
  return estimate === null ? Number.POSITIVE_INFINITY : Math.abs(estimate / run.truth - 1);
};
const needed = ({ days }) => days.find(({ stop }) => stop)?.made ?? MOST;

printTable(
  [
    'plan',
    'scatter',
    ...AFTER.flatMap((n) => [`<10 % at ${n}`, `error at ${n}`]),
    'needed',
    'worst tenth',
    '<10 % then',
  ],
  plans.flatMap(([name]) =>
    SCATTERS.map((scatter) => {
      const own = runs.filter((run) => run.name === name && run.scatter === scatter);
      const errors = (n) => own.map((run) => errorAfter(run, n));
      return [
        name,
        percent(scatter),
        ...AFTER.flatMap((n) => [percent(share(errors(n), (e) => e <= 0.1)), percent(middle(errors(n)))]),
        mean(own.map(needed)).toFixed(1),
        middle(own.map(needed), 0.9),
        percent(share(own, (run) => errorAfter(run, needed(run)) <= 0.1)),
      ];
    }),
  ),
);

const inside = ({ truth, day }) => (day.low ?? 0) <= truth && truth <= (day.high ?? Number.POSITIVE_INFINITY);
const width = ({ day }) => (day.high ?? Number.POSITIVE_INFINITY) / (day.low ?? 0) - 1;
console.log(
  '\nThe 90 % interval of the planner: how often it holds the truth, and its median width (high / low - 1)',
);
printTable(
  ['scatter', ...AFTER.flatMap((n) => [`holds at ${n}`, `width at ${n}`])],
  [undefined, ...SCATTERS].map((scatter) => [
    scatter === undefined ? 'all' : percent(scatter),
    ...AFTER.flatMap((n) => {
      const own = runs
        .filter((run) => run.name === 'planner' && (scatter === undefined || run.scatter === scatter))
        .map((run) => ({ truth: run.truth, day: dayAfter(run, n) }));
      return [percent(share(own, inside)), percent(middle(own.map(width)))];
    }),
  ]),
);
const ofPlanner = runs.filter(({ name }) => name === 'planner');
console.log('\nExpected beakers left, said after 8, beside those then made');
for (const scatter of SCATTERS) {
  const own = ofPlanner.filter((run) => run.scatter === scatter);
  const said = mean(own.map((run) => dayAfter(run, 8).expectedBeakersLeft));
  const made = mean(own.map((run) => Math.max(0, needed(run) - 8)));
  console.log(
    `  ${percent(scatter)}: ${said.toFixed(1)} said, ${made.toFixed(1)} made (at most ${MOST - 8} here)`,
  );
}

const holding = (n, scatter) =>
  share(
    ofPlanner
      .filter((run) => scatter === undefined || run.scatter === scatter)
      .map((run) => ({ truth: run.truth, day: dayAfter(run, n) })),
    inside,
  );
const missed = [
  ...WANTED.filter(([scatter, n, least]) => {
    const own = ofPlanner.filter((run) => run.scatter === scatter);
    return share(own, (run) => errorAfter(run, n) <= 0.1) < least;
  }).map(([scatter, n]) => `within 10 % after ${n} at ${percent(scatter)}`),
  ...AFTER.filter((n) => holding(n) < WANTED_OVERALL[0] || holding(n) > WANTED_OVERALL[1]).map(
    (n) => `interval after ${n}`,
  ),
  ...AFTER.flatMap((n) =>
    SCATTERS.filter((scatter) => holding(n, scatter) < WANTED_EACH).map(
      (scatter) => `interval after ${n} at ${percent(scatter)}`,
    ),
  ),
];
console.log(missed.length === 0 ? '\nEverything wanted is met' : `\nMissed: ${missed.join('; ')}`);
process.exitCode = missed.length === 0 ? 0 : 1;
console.log(`${benches} benches for each scatter, ${((performance.now() - started) / 1000).toFixed(0)} s`);
