/** The bench: what the person owns and how they work. */

import { parseRatio } from '../calc/ratio.ts';
import { benchDefaults } from './bench-defaults.ts';
import type { Balance, BenchCard, BenchWater, FoamTest, Vessel } from './cards.ts';
import { offer } from './nearest.ts';
import type { LedgerDocument } from './parse.ts';
import { readFile } from './read-file.ts';
import { readDrop } from './read-ingredients.ts';
import {
  countUnder,
  find,
  numberUnder,
  quantitiesUnder,
  quantityUnder,
  type Read,
  type Reading,
  textNodesUnder,
  textNodeUnder,
  textsUnder,
  textUnder,
} from './reading.ts';
import { isTimeZone } from './times.ts';
import { type TreeNode, valueUnder } from './tree.ts';

const formatVersion = '1';

/** Reads `bench.yaml`. */
export function readBenchCard(document: LedgerDocument): Read<BenchCard> {
  return readFile<BenchCard>(
    document,
    {},
    {
      kind: 'bench',
      read: (reading, root) => {
        checkVersion(reading, root);
        const bench = valueUnder(root, 'bench');
        return { kind: 'bench', ...readHabits(reading, bench), ...readOwned(reading, bench) };
      },
    },
  );
}

function checkVersion(reading: Reading, root: TreeNode): void {
  const version = textNodeUnder(root, 'ledger');
  if (!version || version.text === formatVersion) return;
  const message = `"${version.text}" is a format of the ledger that is not known here`;
  find(reading, { code: 'unknown-version', message, hint: `write "ledger: ${formatVersion}"` }, version);
}

function readHabits(reading: Reading, bench: TreeNode | undefined) {
  const looks = quantitiesUnder(reading, bench, 'looks', ['time']);
  const longWatch = quantitiesUnder(reading, bench, 'long watch', ['time']);
  const limits = textNodesUnder(bench, 'limits');
  for (const node of limits) {
    if (benchDefaults.limits.some((body) => body === node.text)) continue;
    const message = `"${node.text}" is not an authority whose figures are known here`;
    find(reading, { code: 'unknown-word', message, hint: offer(node.text, benchDefaults.limits) }, node);
  }
  return {
    name: textUnder(bench, 'name'),
    timeZone: readTimeZone(reading, bench),
    weighing: quantityUnder(reading, bench, 'weighing', ['share']) ?? benchDefaults.weighing,
    temperature: quantityUnder(reading, bench, 'temperature', ['temperature']) ?? benchDefaults.temperature,
    viewed: textsUnder(bench, 'viewed'),
    covers: textsUnder(bench, 'covers'),
    settle: quantityUnder(reading, bench, 'settle', ['time']) ?? benchDefaults.settle,
    watch: quantityUnder(reading, bench, 'watch', ['time']) ?? benchDefaults.watch,
    looks: looks.length > 0 ? looks : benchDefaults.looks,
    longWatch: longWatch.length > 0 ? longWatch : benchDefaults.longWatch,
    tastes: textsUnder(bench, 'tastes'),
    margin: quantityUnder(reading, bench, 'margin', ['share']) ?? benchDefaults.margin,
    limits: valueUnder(bench, 'limits') ? limits.map(({ text }) => text) : benchDefaults.limits,
  };
}

function readTimeZone(reading: Reading, bench: TreeNode | undefined): string | undefined {
  const node = textNodeUnder(bench, 'time zone');
  if (!node || isTimeZone(node.text)) return node?.text;
  const zones = Intl.supportedValuesOf('timeZone');
  const near = offer(node.text, zones);
  const hint = near.startsWith('write "') ? near : 'write it like Europe/Lisbon';
  find(reading, { code: 'unknown-time-zone', message: `"${node.text}" is not a time zone`, hint }, node);
  return undefined;
}

function readOwned(reading: Reading, bench: TreeNode | undefined) {
  return {
    balances: listUnder(bench, 'balances').flatMap((node) => readBalance(reading, node) ?? []),
    vessels: listUnder(bench, 'vessels').map((node) => readVessel(reading, node)),
    drop: bench && readDrop(reading, bench),
    largestDilution: readDilution(reading, bench),
    water: readWater(reading, valueUnder(bench, 'water')),
    foamTest: readFoamTest(reading, valueUnder(bench, 'foam test')),
  };
}

function listUnder(map: TreeNode | undefined, key: string): readonly TreeNode[] {
  const list = valueUnder(map, key);
  return list?.kind === 'list' ? list.items : [];
}

function readBalance(reading: Reading, node: TreeNode): Balance | undefined {
  const division = quantityUnder(reading, node, 'division', ['mass']);
  const limit = quantityUnder(reading, node, 'limit', ['mass']);
  return division && { division, limit, name: textUnder(node, 'name') };
}

const readVessel = (reading: Reading, node: TreeNode): Vessel => ({
  name: textUnder(node, 'name'),
  volume: quantityUnder(reading, node, 'volume', ['volume']),
  mass: quantityUnder(reading, node, 'mass', ['mass']),
  count: countUnder(reading, node, 'count'),
});

const readWater = (reading: Reading, node: TreeNode | undefined): BenchWater => ({
  alkalinity: quantityUnder(reading, node, 'alkalinity', ['alkalinity']),
  hardness: quantityUnder(reading, node, 'hardness', ['alkalinity']),
  chlorine: quantityUnder(reading, node, 'chlorine', ['mass per volume']),
  iron: quantityUnder(reading, node, 'iron', ['mass per volume']),
  sodium: quantityUnder(reading, node, 'sodium', ['mass per volume']),
  ph: numberUnder(reading, node, 'ph'),
});

function readFoamTest(reading: Reading, node: TreeNode | undefined): FoamTest | undefined {
  if (node?.kind !== 'map') return undefined;
  return {
    glass: textUnder(node, 'glass'),
    volume: quantityUnder(reading, node, 'volume', ['volume']),
    temperature: quantityUnder(reading, node, 'temperature', ['temperature']),
    pour: quantityUnder(reading, node, 'pour', ['length']),
  };
}

/** `1:100`, or `100`. */
function readDilution(reading: Reading, bench: TreeNode | undefined): number | undefined {
  const node = textNodeUnder(bench, 'largest dilution');
  if (!node) return undefined;
  const ratio = parseRatio(/^[\d.]+$/u.test(node.text) ? `1:${node.text}` : node.text);
  if (ratio.ok) return ratio.value.right / ratio.value.left;
  find(reading, ratio.fault, node);
  return undefined;
}
