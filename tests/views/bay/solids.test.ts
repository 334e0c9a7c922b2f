import { describe, expect, test } from 'vitest';
import { cross, dot, HOME, subtract, turnAbout, type Vec3 } from '../../../src/base/index.ts';
import { boxShape, capsuleShape } from '../../../src/bodies/index.ts';
import type { NodeId } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { pushConvex } from '../../../src/shop/solids/convex-solid.ts';
import { type GearForm, pushGear } from '../../../src/shop/solids/gear-solid.ts';
import { type Housed, housedParts, NOT_HOUSED } from '../../../src/shop/solids/housed.ts';
import { emptyMesh, type LineData, type MeshData } from '../../../src/shop/solids/mesh-data.ts';
import { pushPanel } from '../../../src/shop/solids/panel-solid.ts';
import { carcassShade, fullLight } from '../../../src/shop/solids/shade.ts';
import { triangulate } from '../../../src/views/editor/bay/scene/geometry.ts';

type Panel = FitOut['panels'][number];

const at = (list: readonly number[], i: number): Vec3 => [list[i] ?? 0, list[i + 1] ?? 0, list[i + 2] ?? 0];

interface Face {
  readonly corners: readonly [Vec3, Vec3, Vec3];
  readonly normal: Vec3;
}

const facesOf = (mesh: MeshData): readonly Face[] =>
  Array.from({ length: mesh.positions.length / 9 }, (_, i) => ({
    corners: [at(mesh.positions, 9 * i), at(mesh.positions, 9 * i + 3), at(mesh.positions, 9 * i + 6)],
    normal: at(mesh.normals, 9 * i),
  }));

/** Six times the volume that a closed skin encloses; positive when its faces look outward. */
const volumeOf = (mesh: MeshData): number =>
  facesOf(mesh).reduce((sum, { corners: [a, b, c] }) => sum + dot(a, cross(b, c)), 0) / 6;

const facesAgree = (mesh: MeshData): boolean =>
  facesOf(mesh).every(({ corners: [a, b, c], normal }) => dot(cross(subtract(b, a), subtract(c, a)), normal) >= 0);

const panel = (change: Partial<Panel>): Panel => ({
  id: 'p',
  origin: 'p' as NodeId,
  carcass: 'c' as NodeId,
  role: 'plate',
  name: 'plate',
  material: 'aluminium-32',
  thickness: 10,
  length: 400,
  width: 200,
  outline: null,
  grain: 'length',
  bands: { l1: null, l2: null, w1: null, w2: null },
  hand: null,
  cuts: [],
  pose: turnAbout([10, 20, 30], [1, 2, 3], 0.7),
  mover: null,
  volumeMm3: 0,
  massKg: 0,
  ...change,
});

const drawn = (of: Panel, housed: Housed = NOT_HOUSED): { readonly mesh: MeshData; readonly lines: LineData } => {
  const mesh = emptyMesh();
  const lines: LineData = [];
  pushPanel(of, triangulate, {
    faces: mesh,
    edges: mesh,
    lines,
    colour: [1, 1, 1],
    edgeColour: [1, 1, 1],
    shadeAt: fullLight,
    grainFrom: [0, 0],
    housed,
  });
  return { mesh, lines };
};

describe('panels', () => {
  test('a plain panel encloses length × width × thickness, wherever it stands', () => {
    const { mesh, lines } = drawn(panel({}));
    expect(volumeOf(mesh)).toBeCloseTo(400 * 200 * 10, 3);
    expect(facesAgree(mesh)).toBe(true);
    // twelve edges of a box, each two ends of three numbers
    expect(lines).toHaveLength(12 * 6);
  });

  test('cut-outs go right through: two rectangles of 60 × 40 less', () => {
    const cutout = (x: number) =>
      ({
        kind: 'cutout',
        why: 'radio',
        outline: { shape: 'rectangle', from: [x, 50], to: [x + 60, 90], cornerRadius: 0 },
      }) as const;
    const { mesh } = drawn(panel({ cuts: [cutout(40), cutout(200)] }));
    expect(volumeOf(mesh)).toBeCloseTo((400 * 200 - 2 * 60 * 40) * 10, 3);
    expect(facesAgree(mesh)).toBe(true);
  });

  test('a round cut-out takes the 24-cornered polygon of its circle', () => {
    const round = {
      kind: 'cutout',
      why: 'socket',
      outline: { shape: 'circle', at: [100, 100], diameter: 50 },
    } as const;
    const { mesh } = drawn(panel({ cuts: [round] }));
    // a regular polygon of n corners on radius r has the area n r² sin(2π/n) / 2
    const hole = (24 * 25 ** 2 * Math.sin((2 * Math.PI) / 24)) / 2;
    expect(volumeOf(mesh)).toBeCloseTo((400 * 200 - hole) * 10, 3);
  });

  test('a sloped outline is drawn true, whichever way round it is given', () => {
    const outline = [
      [0, 0],
      [400, 0],
      [300, 200],
      [0, 200],
    ] as const;
    // the trapezoid (400 + 300) / 2 × 200
    for (const ring of [outline, outline.toReversed()])
      expect(volumeOf(drawn(panel({ outline: ring })).mesh)).toBeCloseTo(70_000 * 10, 3);
  });
});

describe('housedParts', () => {
  // A side stands upright, its face b (−z of the panel) towards the shelf that comes from the left of it.
  const side = panel({
    id: 'side',
    length: 500,
    width: 300,
    thickness: 18,
    pose: {
      ...HOME,
      at: [400, 0, 0],
      turn: [
        [0, 0, 1],
        [0, 1, 0],
        [-1, 0, 0],
      ],
    },
    cuts: [{ kind: 'dado', face: 'a', from: [100, 0], to: [118, 300], depth: 6, takes: 'shelf' }],
  });
  // The shelf reaches 6 mm into the side: its length runs along x from 0 to 388, the side's face a stands at x = 382.
  const shelf = panel({ id: 'shelf', length: 388, width: 300, thickness: 18, pose: { ...HOME, at: [0, 0, 100] } });

  test('the end that stands in a dado is housed by its depth, the other edges are not', () => {
    expect(housedParts([side, shelf]).get('shelf')).toEqual({ x0: 0, x1: 6, y0: 0, y1: 0 });
  });

  test('and is not drawn: 6 mm less of length', () => {
    const { mesh } = drawn(shelf, housedParts([side, shelf]).get('shelf'));
    expect(volumeOf(mesh)).toBeCloseTo((388 - 6) * 300 * 18, 3);
  });

  test('holes and recesses for nobody house nothing', () => {
    const other = panel({
      id: 'other',
      cuts: [{ kind: 'groove', face: 'a', from: [0, 0], to: [9, 9], depth: 4, takes: null }],
    });
    expect(housedParts([other, shelf]).size).toBe(0);
  });
});

describe('bodies', () => {
  test('a box has its volume and faces that look outward', () => {
    const mesh = emptyMesh();
    const shape = boxShape({ min: [1, 2, 3], max: [11, 22, 33] });
    pushConvex(shape, { mesh, lines: null, colour: [1, 1, 1], shadeAt: fullLight });
    expect(volumeOf(mesh)).toBeCloseTo(10 * 20 * 30, 6);
    expect(facesAgree(mesh)).toBe(true);
  });

  test('a bar is closed, looks outward, and stays inside its true volume', () => {
    const mesh = emptyMesh();
    pushConvex(capsuleShape([0, 0, 0], [0, 0, 100], 10), { mesh, lines: null, colour: [1, 1, 1], shadeAt: fullLight });
    const whole = Math.PI * 100 * 100 + (4 / 3) * Math.PI * 1000;
    expect(volumeOf(mesh)).toBeLessThan(whole);
    expect(volumeOf(mesh)).toBeGreaterThan(whole * 0.94);
  });

  test.each(['box', 'bag', 'cylinder', 'pack', 'long', 'case'] satisfies readonly GearForm[])(
    'gear as a %s looks outward and stays in its box but for a hair of strap',
    (form) => {
      const mesh = emptyMesh();
      const box = { min: [10, 20, 0], max: [210, 420, 180] } as const;
      const gear = { form, box, pose: HOME, colour: [1, 1, 1], accent: [1, 1, 1] } as const;
      pushGear(gear, { mesh, lines: null, shadeAt: fullLight });
      expect(mesh.positions.length).toBeGreaterThan(0);
      expect(facesAgree(mesh)).toBe(true);
      expect(volumeOf(mesh)).toBeGreaterThan(0);
      for (let i = 0; i < mesh.positions.length; i += 3)
        for (const axis of [0, 1, 2] as const) {
          const value = mesh.positions[i + axis] ?? Number.NaN;
          expect(value).toBeGreaterThanOrEqual(box.min[axis] - 2);
          expect(value).toBeLessThanOrEqual(box.max[axis] + 2);
        }
    },
  );
});

describe('carcassShade', () => {
  const shade = carcassShade(HOME, [600, 700, 500]);

  test('is full at the face and on the outside, and less towards the back', () => {
    expect(shade([300, 0, 250], [0, -1, 0])).toBe(1);
    expect(shade([300, 600, 500], [0, 0, 1])).toBe(1);
    expect(shade([300, 350, 20], [0, 0, 1])).toBeLessThan(1);
    expect(shade([300, 690, 20], [0, 0, 1])).toBeLessThan(shade([300, 350, 20], [0, 0, 1]));
  });
});
