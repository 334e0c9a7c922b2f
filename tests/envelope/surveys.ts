import { type Survey, surveySchema } from '../../src/design/index.ts';

export type Points = readonly (readonly [number, number])[];

export interface StationRow {
  readonly xMm: number;
  readonly left: Points;
  readonly right?: Points;
}

/** A survey as the schema reads it: stations named in order, the right side like the left unless it is given. */
export const surveyOf = (stations: readonly StationRow[], rest: Record<string, unknown> = {}): Survey =>
  surveySchema.parse({
    stations: stations.map(({ xMm, left, right }, i) => ({ id: `station-${i + 1}`, xMm, left, right: right ?? left })),
    obstacles: [],
    closures: [],
    zones: [],
    ...rest,
  });

/** A straight wall with one point half way up. */
export const wall = (halfWidth: number, height: number): Points => [
  [halfWidth, 0],
  [halfWidth, height / 2],
  [halfWidth, height],
];

/** A room of boards: 1,200 wide, 900 high, 1,500 deep from the sill. */
export const BOX_ROOM = { width: 1200, height: 900, depth: 1500 } as const;

export const boxSurvey = (rest: Record<string, unknown> = {}): Survey =>
  surveyOf(
    [
      { xMm: 0, left: wall(BOX_ROOM.width / 2, BOX_ROOM.height) },
      { xMm: BOX_ROOM.depth, left: wall(BOX_ROOM.width / 2, BOX_ROOM.height) },
    ],
    rest,
  );

/** A lift hatch hinged 20 behind the sill at the roof, flat trim 40 thick hanging 900 down, opening by 90 degrees. */
export const HATCH = {
  id: 'hatch',
  name: 'Hatch',
  kind: 'lift-hatch',
  hinge: { from: [-20, -550, 900], to: [-20, 550, 900] },
  outward: 'rear',
  hangs: 'down',
  innerProfile: [
    [0, 0],
    [900, 0],
  ],
  thicknessMm: 40,
  opensDeg: 90,
} as const;
