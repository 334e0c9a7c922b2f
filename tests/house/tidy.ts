import { type Fault, type House, type HouseRule, textOf } from './house.ts';
import { lineAt } from './scan.ts';

const LONGEST_FILE = 400;

/** No file of src has more than 400 lines. */
export const filesStayShort: HouseRule = ({ files }) =>
  files
    .filter(({ path }) => path.startsWith('src/'))
    .map(({ path, text }) => ({ path, lines: text.replace(/\n$/, '').split('\n').length }))
    .filter(({ lines }) => lines > LONGEST_FILE)
    .map(({ path, lines }) => ({ at: path, says: `has ${lines} lines, more than ${LONGEST_FILE}` }));

/** A folder of one machine, as an absolute path; put together here so that this line is none. */
const MACHINE_PATH = new RegExp(
  String.raw`(?<![\w.~/*-])/(?:${['work', 'tmp', 'root', 'home', 'Users'].join('|')})/\w{2}`,
  'g',
);

/** No file names a folder of the machine it was written on. */
export const noMachinePaths: HouseRule = ({ files }) =>
  files.flatMap(({ path, text }) =>
    [...text.matchAll(MACHINE_PATH)].map((match) => ({
      at: `${path}:${lineAt(text, match.index)}`,
      says: 'names a folder of one machine',
    })),
  );

/** The lock file and .npmrc leave open where packages come from. */
export const noPackageHosts: HouseRule = (house) =>
  (
    [
      ['package-lock.json', /"resolved"\s*:\s*"(?:https?|git)/g],
      ['package-lock.json', /registry\.\w|\/\/npm\.\w/g],
      ['.npmrc', /registry\s*=|\/\//g],
    ] as const
  ).flatMap(([path, pattern]) => {
    const text = textOf(house, path) ?? '';
    return [...text.matchAll(pattern)].map((match) => ({
      at: `${path}:${lineAt(text, match.index)}`,
      says: `says where packages come from: ${match[0]}`,
    }));
  });

const dependenciesOf = (house: House): readonly (readonly [string, string])[] => {
  const record = JSON.parse(textOf(house, 'package.json') ?? '{}') as Record<
    string,
    Record<string, string> | undefined
  >;
  return [...Object.entries(record.dependencies ?? {}), ...Object.entries(record.devDependencies ?? {})];
};

/** Every dependency is pinned to one version. */
export const dependenciesArePinned: HouseRule = (house) =>
  dependenciesOf(house)
    .filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))
    .map(([name, version]) => ({ at: 'package.json', says: `${name} ${version} is no exact version` }));

const REASONS = 'docs/decisions/dependencies.md';

/** Every dependency has its reason written down, and no reason outlives its dependency. */
export const dependenciesHaveReasons: HouseRule = (house) => {
  const reasons = [...(textOf(house, REASONS) ?? '').matchAll(/^\| `([^`]+)` \|[^|]*\w[^|]*\|/gm)].map((row) => row[1]);
  const names = dependenciesOf(house).map(([name]) => name);
  const fault = (says: string): Fault => ({ at: REASONS, says });
  return [
    ...names.filter((name) => !reasons.includes(name)).map((name) => fault(`gives no reason for ${name}`)),
    ...reasons.filter((name) => name && !names.includes(name)).map((name) => fault(`still speaks of ${name}`)),
  ];
};
