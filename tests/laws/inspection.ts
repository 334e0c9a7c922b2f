import fc from 'fast-check';
import { expect } from 'vitest';
import { type Box, ROUNDING_KG, ROUNDING_MM, shift, type Vec3 } from '../../src/base/index.ts';
import { boxShape, shapeAt } from '../../src/bodies/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import type { Finding, Inspection } from '../../src/inspection/index.ts';
import { type Points, surveyOf } from '../envelope/surveys.ts';
import { inspectScene, mass, node, type Scene, vehicleWith } from '../inspection/fixture.ts';

/** One box of a random scene, before it is a body. */
export interface BoxRow {
  readonly kind: FitOut['bodies'][number]['kind'];
  readonly carcass: string;
  readonly mover: string | null;
  readonly box: Box;
}

export interface RandomScene {
  readonly rows: readonly BoxRow[];
  readonly obstacles: readonly Box[];
}

const boxIn = (low: number, high: number, most: number): fc.Arbitrary<Box> => {
  const size = fc.integer({ min: 5, max: most });
  return fc
    .tuple(
      fc.integer({ min: -50, max: 1450 }),
      fc.integer({ min: low, max: high }),
      fc.integer({ min: -10, max: 850 }),
      size,
      size,
      size,
    )
    .map(([x, y, z, a, b, c]) => ({ min: [x, y, z], max: [x + a, y + b, z + c] }));
};

const row: fc.Arbitrary<BoxRow> = fc.record({
  kind: fc.constantFrom('panel', 'gear', 'device', 'plug-room', 'hardware'),
  carcass: fc.constantFrom('carcass-1', 'carcass-2'),
  mover: fc.constantFrom(null, null, 'drawer-1', 'drawer-2'),
  box: boxIn(-650, 500, 400),
});

/** Up to ten boxes, some poking out of a tapering room, and up to three obstacles in it. */
export const anyScene: fc.Arbitrary<RandomScene> = fc.record({
  rows: fc.array(row, { maxLength: 10 }),
  obstacles: fc.array(boxIn(-600, 400, 200), { maxLength: 3 }),
});

const LEFT: Points = [
  [560, 0],
  [600, 400],
  [500, 900],
];
const RIGHT: Points = [
  [600, 0],
  [600, 300],
  [450, 900],
];

const mirrored = ({ min, max }: Box): Box => ({ min: [min[0], -max[1], min[2]], max: [max[0], -min[1], max[2]] });

/** The scene as a survey and a fit-out, or the same seen in a mirror that swaps left and right. */
const sceneOf = ({ rows, obstacles }: RandomScene, inMirror: boolean): Scene => {
  const placed = (box: Box): Box => (inMirror ? mirrored(box) : box);
  const [left, right] = inMirror ? [RIGHT, LEFT] : [LEFT, RIGHT];
  return {
    survey: surveyOf(
      [
        { xMm: 0, left, right },
        { xMm: 1500, left, right },
      ],
      {
        obstacles: obstacles.map((box, i) => ({
          id: `obstacle-${i + 1}`,
          name: `obstacle ${i + 1}`,
          kind: 'trim',
          solid: { shape: 'box', ...placed(box) },
        })),
      },
    ),
    fitout: {
      bodies: rows.map(({ box, kind, carcass, mover }, i) => ({
        id: `body-${i + 1}`,
        origin: node(`body-${i + 1}`),
        carcass: node(carcass),
        kind,
        name: `body ${i + 1}`,
        mover,
        shape: boxShape(placed(box)),
      })),
    },
  };
};

export const inspectRandom = (scene: RandomScene, inMirror = false): Inspection =>
  inspectScene(sceneOf(scene, inMirror));

const keyOf = (finding: Finding): string => `${finding.severity} ${finding.rule} ${finding.parts.join('+')}`;

/** Left and right are treated alike: the mirrored scene has the same findings with the same values. */
export const mirrorChangesNothing = (scene: RandomScene): void => {
  const [plain, mirror] = [inspectRandom(scene), inspectRandom(scene, true)];
  const valuesOf = (inspection: Inspection) =>
    new Map(inspection.findings.map((finding) => [keyOf(finding), finding.value] as const));
  const [a, b] = [valuesOf(plain), valuesOf(mirror)];
  expect([...b.keys()].toSorted()).toEqual([...a.keys()].toSorted());
  for (const [key, value] of a) expect(Math.abs((b.get(key) ?? Number.NaN) - value), key).toBeLessThan(ROUNDING_MM);
};

/** Stops come first; every finding has a limit with a source; every finding of a margin is among what was measured. */
export const findingsAreWhole = (scene: RandomScene): void => {
  const inspection = inspectRandom(scene);
  const ranks = inspection.findings.map(({ severity }) => ['stop', 'caution', 'note'].indexOf(severity));
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  expect(new Set(inspection.findings.map(keyOf)).size).toBe(inspection.findings.length);
  for (const finding of inspection.findings) {
    expect(finding.source).not.toBe('');
    expect(finding.parts.every((part) => part !== '')).toBe(true);
    if (finding.margin === null) continue;
    const taken = inspection.measured.find(
      ({ rule, parts }) => rule === finding.rule && parts.join('+') === finding.parts.join('+'),
    );
    expect(taken, keyOf(finding)).toMatchObject({ value: finding.value, margin: finding.margin });
  }
};

/** A feeler is as long as the gap that it shows. */
export const feelersMeasureTheirGap = (scene: RandomScene): void => {
  for (const finding of inspectRandom(scene).findings) {
    if (!finding.at || finding.unit !== 'mm') continue;
    const [from, to] = finding.at;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
    expect(Math.abs(length - Math.abs(finding.value)), keyOf(finding)).toBeLessThan(ROUNDING_MM);
  }
};

/** Nobody's order matters: bodies listed the other way round give the same findings. */
export const orderOfBodiesDoesNotMatter = (scene: RandomScene): void => {
  const made = sceneOf(scene, false);
  const turned = { ...made, fitout: { bodies: (made.fitout?.bodies ?? []).toReversed() } };
  expect(inspectScene(turned).findings.map(keyOf)).toEqual(inspectScene(made).findings.map(keyOf));
};

export interface LoadRow {
  readonly kg: number;
  readonly at: Vec3;
  readonly forward: number;
}

export const anyLoad: fc.Arbitrary<LoadRow> = fc.record({
  kg: fc.integer({ min: 1, max: 500 }),
  at: fc.tuple(
    fc.integer({ min: -200, max: 2500 }),
    fc.integer({ min: -600, max: 600 }),
    fc.integer({ min: 0, max: 900 }),
  ),
  forward: fc.integer({ min: -500, max: 500 }),
});

const WHEELBASE = 3000;

/** Weight is neither made nor lost, and moving a load forward by d puts m · d / L from the rear axle on the front one. */
export const loadsFollowTheirMoments = ({ kg, at, forward }: LoadRow): void => {
  const vehicle = vehicleWith({
    wheelbaseMm: WHEELBASE,
    trackMm: 1600,
    sillBehindRearAxleMm: 900,
    slip: { frontKg: 1200, rearKg: 1000 },
  });
  const caseOf = (place: Vec3) =>
    inspectScene({
      survey: null,
      design: { vehicle },
      fitout: { masses: [mass('load', kg, place, { kind: 'gear' })] },
    }).cases.find(({ id }) => id === 'fitted');
  const [before, after] = [caseOf(at), caseOf([at[0] + forward, at[1], at[2]])];
  if (!before || !after) throw new Error('no case');
  expect(Math.abs(before.frontKg + before.rearKg - before.totalKg)).toBeLessThan(ROUNDING_KG);
  expect(Math.abs(before.totalKg - 2200 - kg)).toBeLessThan(ROUNDING_KG);
  expect(Math.abs(after.frontKg - before.frontKg - (kg * forward) / WHEELBASE)).toBeLessThan(ROUNDING_KG);
  expect(Math.abs(after.totalKg - before.totalKg)).toBeLessThan(ROUNDING_KG);
};

/** The same gap wherever the pair stands: bodies of the cabinet shifted together keep their findings about each other. */
export const cabinetFindingsMoveWithTheCabinet = (scene: RandomScene, by: Vec3): void => {
  const made = sceneOf(scene, false);
  const moved = (made.fitout?.bodies ?? []).map((body) => ({ ...body, shape: shapeAt(body.shape, shift(by)) }));
  const about = (inspection: Inspection) =>
    inspection.findings
      .filter(({ rule }) => ['body-body', 'moving-gap', 'carcass-gap'].includes(rule))
      .map(({ rule, severity, parts, value }) => `${rule} ${severity} ${parts.join('+')} ${value.toFixed(6)}`);
  expect(about(inspectScene({ ...made, fitout: { bodies: moved } }))).toEqual(about(inspectScene(made)));
};
