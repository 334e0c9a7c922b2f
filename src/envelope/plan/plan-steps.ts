import type { Instrument, NodeId, ReadingKind } from '../../design/index.ts';
import { LEVELS, STATION_NAMES, type StationName } from './class-sizes.ts';
import type { PlanGroup, PlanInto, PlanStep } from './plan.ts';
import { markId, OPENING_LEVELS, SIDES, type Side, wallMark } from './plan-marks.ts';

/** A step before it has its number. */
export type RawStep = Omit<PlanStep, 'number'>;

interface Given {
  readonly at?: NodeId;
  readonly instrument?: Instrument;
  readonly check?: boolean;
  readonly figure: string;
}

/** What is read straight from mark to mark has a drawing of its own: a net of diagonals hides widths and heights. */
export const straightFigure = (figure: string): string => `${figure}-straight`;

/** A step that becomes a reading between marks. */
export const readStep = (
  group: PlanGroup,
  kind: ReadingKind,
  [from, to]: readonly [NodeId, NodeId | null],
  [name, why]: readonly [string, string],
  given: Given,
): RawStep => ({
  group,
  name,
  why,
  instrument: given.instrument ?? (kind === 'level' ? 'level' : kind === 'angle' ? 'angle-gauge' : 'tape'),
  into: 'reading',
  reading: { kind, from, to, at: given.at ?? null },
  must: !(given.check ?? false),
  points: null,
  figure: kind === 'distance' ? straightFigure(given.figure) : given.figure,
});

/** A step whose result is entered somewhere else than in the table of readings. */
export const noteStep = (
  group: PlanGroup,
  into: PlanInto,
  [name, why]: readonly [string, string],
  instrument: Instrument = 'tape',
): RawStep => ({ group, name, why, instrument, into, reading: null, must: true, points: null, figure: null });

/** A curve taken point by point: what is written of each of them. */
export const curveStep = (
  group: PlanGroup,
  into: PlanInto,
  words: readonly [string, string],
  points: readonly string[],
): RawStep => ({ ...noteStep(group, into, words), points });

const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');

const floorSteps = (station: StationName): readonly RawStep[] => {
  const group: PlanGroup = `section ${station}`;
  const centre = markId(station, 'centre');
  const figure = `section-${station}`;
  const [left, right] = [wallMark(station, 'floor', 'left'), wallMark(station, 'floor', 'right')];
  return [
    readStep(group, 'across', [right, left], ['floor width', 'the widest that stands on the floor'], {
      figure,
      instrument: 'stick',
    }),
    ...SIDES.flatMap((side) => {
      const mark = wallMark(station, 'floor', side);
      return [
        readStep(
          group,
          'offset',
          [mark, null],
          [`floor, centre line to ${side}`, 'left and right must make the full width'],
          { figure },
        ),
        readStep(group, 'height', [centre, mark], [`floor edge ${side} above the string`, 'a floor is seldom flat'], {
          figure,
        }),
      ];
    }),
    readStep(group, 'level', [right, left], ['level across the floor', 'checks both floor heights'], {
      figure,
      check: true,
    }),
    readStep(group, 'distance', [centre, left], ['string to floor edge left', 'checks the half width'], {
      figure,
      check: true,
    }),
    readStep(group, 'distance', [centre, right], ['string to floor edge right', 'checks the half width'], {
      figure,
      check: true,
    }),
  ];
};

/**
 * What braces a wall mark beside width, height and the string. Low on the wall a diagonal across the floor runs nearly
 * level and says little of the height, so there the tape goes straight up the wall.
 */
const braceStep = (station: StationName, level: (typeof LEVELS)[number]['name'], side: Side): RawStep => {
  const low = level === 'belt';
  const foot = low ? side : other(side);
  return readStep(
    `section ${station}`,
    'distance',
    [wallMark(station, 'floor', foot), wallMark(station, level, side)],
    [
      low ? `up the wall, floor ${foot} to ${level} ${side}` : `diagonal, floor ${foot} to ${level} ${side}`,
      'one wrong width or height shows here',
    ],
    { figure: `section-${station}`, check: true },
  );
};

const levelSteps = (station: StationName, level: (typeof LEVELS)[number]['name']): readonly RawStep[] => {
  const group: PlanGroup = `section ${station}`;
  const centre = markId(station, 'centre');
  const figure = `section-${station}`;
  const mark = (side: Side): NodeId => wallMark(station, level, side);
  return [
    readStep(
      group,
      'across',
      [mark('right'), mark('left')],
      [`width at the ${level}`, 'sets the width of what stands there'],
      { figure, instrument: 'stick' },
    ),
    ...SIDES.flatMap((side) => [
      readStep(
        group,
        'offset',
        [mark(side), null],
        [`${level}, centre line to ${side}`, 'trim is not the same on both sides'],
        { figure },
      ),
      readStep(
        group,
        'height',
        [centre, mark(side)],
        [`height of the ${level} mark ${side}`, 'sets how high the wall stays wide'],
        { figure },
      ),
      braceStep(station, level, side),
      readStep(
        group,
        'distance',
        [centre, mark(side)],
        [`string to ${level} ${side}`, 'tells a wrong height from a wrong width'],
        { figure, check: true },
      ),
    ]),
  ];
};

const sectionSteps = (station: StationName): readonly RawStep[] => [
  ...floorSteps(station),
  ...LEVELS.slice(1).flatMap((level) => levelSteps(station, level.name)),
];

const frameSteps = (): readonly RawStep[] => {
  const [rear, middle, front] = STATION_NAMES.map((name) => markId(name, 'centre'));
  if (!rear || !middle || !front) return [];
  const figure = 'plan-frame';
  return [
    noteStep('frame', 'photo', [
      'stretch a string from the middle of the sill to the seat-back, and stick the marks',
      'every reading starts from it',
    ]),
    readStep(
      'frame',
      'height',
      [rear, middle],
      ['floor under the string at the middle section', 'shows a floor that sags or climbs'],
      { figure },
    ),
    readStep(
      'frame',
      'level',
      [rear, middle],
      ['level along the floor, rear half, less that of the whole', 'checks the sag'],
      { figure, check: true },
    ),
    readStep(
      'frame',
      'level',
      [middle, front],
      ['level along the floor, front half, less that of the whole', 'checks the sag from the other side'],
      { figure, check: true },
    ),
  ];
};

const seatSteps = (): readonly RawStep[] => {
  const [rear, front] = [markId('rear', 'centre'), markId('front', 'centre')];
  const seat = (...words: readonly string[]): NodeId => markId('seat', ...words);
  const figure = 'plan-seat';
  const floor = ['centre', ...SIDES].flatMap((place) => [
    readStep(
      'seat',
      'along',
      [rear, seat('floor', place)],
      [`sill to seat-back at the floor, ${place}`, 'the depth that a carcass may have'],
      { figure },
    ),
    readStep(
      'seat',
      'along',
      [front, seat('floor', place)],
      [`front section to seat-back, ${place}`, 'the parts must make the whole'],
      { figure, check: true },
    ),
  ]);
  const sides = SIDES.flatMap((side) => [
    readStep(
      'seat',
      'offset',
      [seat('floor', side), null],
      [`seat-back corner, centre line to ${side}`, 'sets the width at the seat'],
      { figure },
    ),
    readStep(
      'seat',
      'distance',
      [wallMark('rear', 'floor', other(side)), seat('floor', side)],
      [`floor diagonal, rear ${other(side)} to seat ${side}`, 'two diagonals show a floor that is out of square'],
      { figure },
    ),
    readStep(
      'seat',
      'distance',
      [wallMark('rear', 'floor', side), seat('floor', side)],
      [`floor edge ${side}, sill to seat`, 'checks depth and diagonal'],
      { figure, check: true },
    ),
  ]);
  const belt = seat('belt', 'centre');
  const middle = markId('middle', 'centre');
  const cross = (from: NodeId, to: NodeId, name: string, where: string): RawStep =>
    readStep('seat', 'distance', [from, to], [name, 'tells which of the depths is wrong'], {
      figure: where,
      check: true,
    });
  return [
    noteStep('seat', 'zone', ['seat fully rearward and at its worst recline; note both', 'the seat keeps its travel']),
    ...floor,
    cross(
      wallMark('rear', 'floor', 'left'),
      seat('floor', 'centre'),
      'rear floor edge left to the middle of the seat-back',
      figure,
    ),
    ...sides,
    cross(middle, belt, 'middle section to the seat-back mark at belt height', 'side-seat'),
    readStep(
      'seat',
      'across',
      [seat('floor', 'right'), seat('floor', 'left')],
      ['width between the seat-back corners', 'left and right must make the full width'],
      { figure, check: true },
    ),
    readStep('seat', 'along', [rear, belt], ['sill to seat-back at belt height', 'the rake takes depth from the top'], {
      figure: 'side-seat',
    }),
    readStep('seat', 'height', [rear, belt], ['height of that mark', 'places the rake'], { figure: 'side-seat' }),
    readStep('seat', 'distance', [front, belt], ['front section to that mark', 'checks depth against rake'], {
      figure: 'side-seat',
      check: true,
    }),
    readStep('seat', 'distance', [seat('floor', 'centre'), belt], ['up the seat-back', 'checks the rake'], {
      figure: 'side-seat',
      check: true,
    }),
    readStep('seat', 'distance', [rear, belt], ['sill to that mark, straight', 'checks the rake'], {
      figure: 'side-seat',
      check: true,
    }),
  ];
};

const openingSteps = (): readonly RawStep[] => {
  const figure = 'opening';
  const centre = markId('rear', 'centre');
  const mark = (level: string, side: Side): NodeId => markId('opening', level, side);
  const across = OPENING_LEVELS.flatMap((level) => [
    readStep(
      'opening',
      'across',
      [mark(level, 'right'), mark(level, 'left')],
      [`clear width at the ${level}`, 'everything passes through here; measure inside the seal'],
      { figure, instrument: 'stick' },
    ),
    ...SIDES.flatMap((side) => [
      readStep(
        'opening',
        'offset',
        [mark(level, side), null],
        [`opening ${level}, centre line to ${side}`, 'left and right must make the full width'],
        { figure, check: side === 'right' },
      ),
      readStep(
        'opening',
        'height',
        [centre, mark(level, side)],
        [`height of the opening's ${level} mark ${side}`, 'the clear height on this side'],
        { figure },
      ),
      readStep(
        'opening',
        'distance',
        [centre, mark(level, side)],
        [`sill middle to opening ${level} ${side}`, 'tells a wrong height from a wrong width'],
        { figure, check: true },
      ),
    ]),
  ]);
  const diagonals = SIDES.flatMap((side) =>
    (['middle', 'top'] as const).map((level) =>
      readStep(
        'opening',
        'distance',
        [mark('sill', other(side)), mark(level, side)],
        [`opening diagonal, sill ${other(side)} to ${level} ${side}`, 'shows an opening that is out of square'],
        { figure, check: true },
      ),
    ),
  );
  return [...across, ...diagonals];
};

const obstacleSteps = (): readonly RawStep[] => [
  ...SIDES.flatMap((side) => [
    curveStep(
      'obstacles',
      'obstacle',
      [`wheelhouse ${side}: five points along its top edge`, 'take its curve with a card template'],
      ['ahead of the sill', 'above the floor', 'in from the centre line'],
    ),
  ]),
  noteStep('obstacles', 'obstacle', ['striker and latch: depth, height, width', 'the first thing that a drawer hits']),
  noteStep('obstacles', 'obstacle', [
    'tie-downs, bolts, tether anchors: place and thread',
    'they may carry the cabinet, or stand in its way',
  ]),
  noteStep('obstacles', 'obstacle', ['trim humps, lamps, outlets', 'a lamp is forgotten until the carcass meets it']),
  curveStep(
    'obstacles',
    'zone',
    ['line of the curtain airbag and its inflator ends, each side', 'nothing may stand in its way'],
    ['ahead of the sill', 'above the floor', 'in from the trim'],
  ),
  noteStep('obstacles', 'photo', [
    'carpet and pad: thickness as laid and pressed down',
    'a cabinet sinks in by the difference',
  ]),
];

const closingSteps = (): readonly RawStep[] => [
  ...['tank', 'lines and harness', 'high-voltage parts, exhaust, spare wheel'].map((what) =>
    curveStep(
      'under the floor',
      'zone',
      [`${what}: outline from below, with photos`, 'no hole is drilled over it'],
      ['ahead of the sill', 'left of the centre line'],
    ),
  ),
  noteStep('under the floor', 'photo', [
    'power feed, ground, antenna path, outlets, drains',
    'the cabinet must leave them within reach',
  ]),
  noteStep('labels', 'ratings', [
    'gross rating, both axle ratings, from the door label',
    'every load is held against them',
  ]),
  noteStep('labels', 'ratings', [
    'weigh slip as received: front, rear, left and right if the scale gives them; fuel level; who was aboard',
    'the prediction starts from it',
  ]),
  noteStep('labels', 'ratings', [
    'wheelbase, track, sill behind the rear axle, floor above ground',
    'they place every kilogram',
  ]),
];

/** The steps that every vehicle takes, those of its closures in their place. */
export const allSteps = (closureSteps: readonly RawStep[]): readonly PlanStep[] =>
  [
    ...frameSteps(),
    ...STATION_NAMES.flatMap(sectionSteps),
    ...seatSteps(),
    ...openingSteps(),
    ...closureSteps,
    ...obstacleSteps(),
    ...closingSteps(),
  ].map((step, i) => ({ ...step, number: i + 1 }));
