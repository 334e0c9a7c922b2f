// npm run bench [-- WORD …]: times every row below rows/ whose name holds one of the words.
import { readdirSync } from 'node:fs';
import { seededRandom } from '../../src/base/index.ts';
import { type BenchRow, benchTable, runBench } from './harness.ts';
import { BASELINE } from './rows/baseline.ts';

const ROUNDS = 25;
const SEED = 1;

const folder = new URL('./rows/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.ts'))
  .sort();
const all: BenchRow[] = [];
for (const file of files) {
  const { rows } = (await import(new URL(file, folder).href)) as { readonly rows: readonly BenchRow[] };
  all.push(...rows);
}
const words = process.argv.slice(2);
const asked = all.filter(
  ({ name }) => name === BASELINE || words.length === 0 || words.some((word) => name.includes(word)),
);
const figures = runBench(asked, BASELINE, {
  rounds: ROUNDS,
  random: seededRandom(SEED),
  clock: () => performance.now(),
});
console.log(`${ROUNDS} rounds, rows interleaved, seed ${SEED}, Node ${process.versions.node}`);
console.log(benchTable(figures, BASELINE));
