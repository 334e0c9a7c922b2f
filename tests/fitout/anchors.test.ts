import { describe, expect, it } from 'vitest';
import { carcass, empty, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

const floor = (id: string, rest: Record<string, unknown> = {}) => ({
  id,
  on: 'floor',
  across: { from: 'left', mm: 80 },
  deep: { from: 'back', mm: 100 },
  bolt: 'bolt-m8x40',
  washer: 'washer-m8-30',
  plate: 'backing-plate-80',
  ...rest,
});

const bay = (anchors: readonly unknown[]) => solved([carcass(empty('opening-1'), { facing: 'rear', anchors })]);

describe('anchors of a carcass 900 wide, 700 high, 600 deep of 17.7 mm', () => {
  it('stand where the tape says, in the vehicle', () => {
    const [anchor] = bay([floor('anchor-1')]).anchors;
    // Rear-facing with its low corner at the origin: deep is x, the viewer's left is the high y: 900 − 80.
    expect(anchor).toMatchObject({
      carcass: 'carcass-1',
      at: [500, 820, 0],
      into: [0, 0, -1],
      panel: 'carcass-1/bottom',
    });
    // The bottom reaches 6 into each side: from 11.7 it is 68.3 to its end, nearer than 100 to the back.
    expect(anchor?.edgeMm).toBeCloseTo(68.3, 9);
  });

  it('let the head into the floor: a bore as deep as head and washer, and a hole through', () => {
    const parts = bay([floor('anchor-1')]);
    const holes = panelOf(parts, 'carcass-1/bottom').cuts.filter(({ kind }) => kind === 'hole');
    // Head 45.2 − 40 = 5.2 and washer 1.6 make 6.8; the bore is 30 + 2 wide, the hole 8 + 0.5.
    expect(holes).toMatchObject([
      { diameter: 32, depth: expect.closeTo(6.8, 9) },
      { diameter: 8.5, depth: null },
    ]);
    expect(parts.anchors[0]?.gripMm).toBeCloseTo(17.7 - 6.8, 9);
    expect(parts.bodies.filter(({ origin }) => origin === 'anchor-1')).toEqual([]);
  });

  it('weigh, and go on the pick list', () => {
    const parts = bay([floor('anchor-1')]);
    const own = parts.masses.filter(({ origin }) => origin === 'anchor-1');
    // Bolt 0.0215, washer 0.008, nut 0.0095, plate 0.247.
    expect(own.reduce((sum, { massKg }) => sum + massKg, 0)).toBeCloseTo(0.286, 9);
    expect(parts.hardware.filter(({ origin }) => origin === 'anchor-1').map(({ item }) => item)).toEqual([
      'bolt-m8x40',
      'washer-m8-30',
      'lock-nut-m8',
      'backing-plate-80',
    ]);
  });

  it('take room inside where the head stands proud', () => {
    const parts = bay([floor('anchor-1', { letIn: false })]);
    expect(parts.bodies.filter(({ origin }) => origin === 'anchor-1')).toHaveLength(1);
    expect(parts.anchors[0]?.gripMm).toBeCloseTo(17.7, 9);
  });

  it('take an insert instead of a nut', () => {
    const items = bay([floor('anchor-1', { insert: 'rivet-nut-steel-m8', plate: null })]).hardware.map(
      ({ item }) => item,
    );
    expect(items).toContain('rivet-nut-steel-m8');
    expect(items).not.toContain('lock-nut-m8');
  });

  it('reach from a side or the back to the wall of the vehicle', () => {
    const wall = (side: string) => ({
      id: `anchor-${side}`,
      on: 'wall',
      side,
      along: { from: 'end', mm: 100 },
      up: { from: 'top', mm: 150 },
      bracket: 'bracket-angle-100',
      bolt: 'bolt-m8x40',
    });
    const parts = bay([wall('left'), wall('right'), wall('back')]);
    // Legs of 100 out from the side at 900 and up about the bolt, 60 wide; fitted once the carcass stands.
    const bracket = parts.bodies.find(({ id }) => id === 'anchor-left/bracket');
    expect(bracket?.carcass).toBeNull();
    expect(bodyBox(bracket as never)).toEqual({ min: [470, 900, 500], max: [530, 1000, 600] });
    expect(parts.masses.find(({ id }) => id === 'anchor-left/bracket')).toMatchObject({ carcass: 'carcass-1' });
    // The back stands 12 from the rear; an end of the back is the viewer's right, the low y.
    expect(parts.anchors.map(({ at, into }) => [at, into])).toEqual([
      [
        [500, 900, 550],
        [0, 1, 0],
      ],
      [
        [500, 0, 550],
        [0, -1, 0],
      ],
      [
        [588, 100, 550],
        [1, 0, 0],
      ],
    ]);
  });

  it('say so where there is no panel, or no such piece', () => {
    const joints = { corner: 'dado', dadoDepthMm: 6, back: { kind: 'none' } };
    const wall = {
      id: 'a-1',
      on: 'wall',
      side: 'back',
      along: { from: 'end', mm: 9 },
      up: { from: 'top', mm: 9 },
      bracket: 'b',
      bolt: 'c',
    };
    expect(solved([carcass(empty('opening-1'), { joints, anchors: [wall] })]).problems).toMatchObject([
      { code: 'bad-joint', because: ['anchor meets no panel at its back'] },
    ]);
    expect(
      bay([floor('anchor-1', { bolt: 'no-bolt', plate: 'no-plate' })]).problems.map(({ because }) => because[0]),
    ).toEqual(['no-bolt', 'no-plate']);
  });
});

describe('back stops', () => {
  const tray = (backStop: string | null, slideLengthMm = 500) => ({
    id: 'opening-1',
    name: 'tray',
    content: {
      kind: 'fitted',
      fitting: {
        kind: 'slide-out',
        slide: 'slide-100-lock',
        slideLengthMm,
        deckMaterial: 'birch-ply-18',
        lipMaterial: 'birch-ply-12',
        backStop,
        inside: empty('opening-2'),
      },
    },
  });

  it('stand in the room behind the tray, one on each side', () => {
    const parts = solved([carcass(tray('stop-angle-18'))]);
    const stops = parts.hardware.filter(({ item }) => item === 'stop-angle-18');
    expect(stops).toHaveLength(2);
    expect(parts.problems).toEqual([]);
    expect(solved([carcass(tray(null))]).hardware.filter(({ item }) => item === 'stop-angle-18')).toEqual([]);
  });

  it('refuse where they are deeper than that room', () => {
    expect(solved([carcass(tray('bracket-corner-stop'))]).problems).toMatchObject([
      { code: 'too-small', at: 'opening-1', axis: 'deep', needMm: 60, haveMm: 20, because: ['bracket-corner-stop'] },
    ]);
  });
});
