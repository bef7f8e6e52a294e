// How good the planner of ladders is, beside plain halving and step ladders, on simulated benches.
// Usage: node tests/bench/ladder.mjs [benches for each scatter]
import { halving, planner, stepLadder } from './ladder-plans.mjs';
import { simulatedBench } from './ladder-simulated.mjs';
import { printTable } from './paired.mjs';

const benches = Number(process.argv[2] ?? 1000);
const SCATTERS = [0.04, 0.08, 0.15];
const AFTER = [8, 12, 16];
const MOST = 40;
const plans = [
  ['planner', planner],
  ['plain halving', halving],
  ['steps of 1.1', stepLadder(1.1)],
  ['steps of 1.25', stepLadder(1.25)],
];

const percent = (share) => `${(100 * share).toFixed(1)} %`;
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
console.log(`\n${benches} benches for each scatter, ${((performance.now() - started) / 1000).toFixed(0)} s`);
