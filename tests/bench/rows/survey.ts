import { seededRandom } from '../../../src/base/index.ts';
import {
  adjust,
  checkScan,
  judgeReadings,
  makeTriangleGrid,
  type Network,
  readScan,
  surveyNetwork,
} from '../../../src/envelope/index.ts';
import { randomSurvey, rules } from '../../envelope/random-survey.ts';
import { asStl, boxMesh } from '../../envelope/scan/meshes.ts';
import type { BenchRow } from '../harness.ts';

/** A survey of a lift hatch, cut down to 120 readings with every mark still held. */
const networkOf120 = (): Network => {
  const { network } = surveyNetwork(randomSurvey(seededRandom(2), { kind: 'lift-hatch' }).survey, rules);
  const readings = network.readings.slice(0, 120);
  const used = new Set(readings.flatMap((reading) => [reading.from, ...('to' in reading ? [reading.to] : [])]));
  return { marks: network.marks.filter(({ id }) => used.has(id)), readings };
};

/** What a plain program would do: the same normal equations, dense, by elimination over all unknowns, three rounds. */
const denseSolve = (unknowns: number, readings: number): (() => number) => {
  const random = seededRandom(5);
  const rows = Array.from({ length: readings }, () => Array.from({ length: unknowns }, () => random() - 0.5));
  return () => {
    let last = 0;
    for (let round = 0; round < 3; round++) {
      const matrix = Array.from({ length: unknowns }, (_, i) =>
        Array.from({ length: unknowns + 1 }, (_unused, j) =>
          rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 1), 0),
        ),
      );
      for (let i = 0; i < unknowns; i++)
        for (let k = i + 1; k < unknowns; k++) {
          const [pivot, row] = [matrix[i] ?? [], matrix[k] ?? []];
          const share = (row[i] ?? 0) / (pivot[i] ?? 1);
          for (let j = i; j <= unknowns; j++) row[j] = (row[j] ?? 0) - share * (pivot[j] ?? 0);
        }
      last = matrix[unknowns - 1]?.[unknowns] ?? 0;
    }
    return last;
  };
};

/** 12 n² triangles: 204 gives 499,392. */
const scanBytes = (n: number): Uint8Array => asStl(boxMesh([0, -600, 0], [1500, 600, 900], n));

export const rows: readonly BenchRow[] = [
  {
    name: 'survey: adjust 120 readings',
    make: () => {
      const network = networkOf120();
      return () => adjust(network);
    },
  },
  {
    name: 'survey: a plain dense solve of the same size, three rounds',
    make: () => {
      const network = networkOf120();
      const unknowns = network.marks.reduce((sum, mark) => sum + mark.fixed.filter((fixed) => !fixed).length, 0);
      return denseSolve(unknowns, network.readings.length);
    },
  },
  {
    name: 'survey: judge 120 readings, one of them wrong',
    make: () => {
      const network = networkOf120();
      const wrong = {
        ...network,
        readings: network.readings.map((r, i) => (i === 20 ? { ...r, value: r.value + 25 } : r)),
      };
      return () => judgeReadings(wrong);
    },
  },
  {
    name: 'survey: read a scan of half a million triangles (binary STL, welded)',
    make: () => {
      const bytes = scanBytes(204);
      return () => readScan(bytes);
    },
  },
  {
    name: 'survey: check that scan for holes and flipped triangles',
    make: () => {
      const read = readScan(scanBytes(204));
      return () => (read.ok ? checkScan(read.value) : null);
    },
  },
  {
    name: 'survey: sort that scan into cells',
    make: () => {
      const read = readScan(scanBytes(204));
      return () => (read.ok ? makeTriangleGrid(read.value).cell : 0);
    },
  },
];
