import { describe, expect, it } from 'vitest';
import { boxSize } from '../../src/base/index.ts';
import { carcass, empty, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

const SPEAKER = { id: 'mount-1', name: 'Speaker', device: 'speaker-hatch', on: null, at: [-20, 300, 800] };
const one = (change: object) => solved([], { mounts: [{ ...SPEAKER, ...change }] });
const boxOf = (fitOut: ReturnType<typeof one>, id: string) => {
  const body = fitOut.bodies.find((each) => each.id === id);
  if (!body) throw new Error(`no body ${id}`);
  return bodyBox(body as never);
};

describe('a device outside the cabinet', () => {
  it('is as deep as body and plug along its look, its face across and up, or on its end', () => {
    // 70 body and 15 plug, 150 wide, 130 high.
    const sizeFor = (change: object) => boxSize(boxOf(one(change), 'mount-1/body'));
    expect(sizeFor({})).toEqual([85, 150, 130]);
    expect(sizeFor({ looks: 'left' })).toEqual([150, 85, 130]);
    expect(sizeFor({ looks: 'down' })).toEqual([130, 150, 85]);
    expect(sizeFor({ onEnd: true })).toEqual([85, 130, 150]);
  });

  it('comes off the way that it looks, by its own depth with the plug or as far as it says', () => {
    expect(one({}).devices[0]?.off).toEqual({ along: [1, 0, 0], mm: 85 });
    expect(one({ looks: 'right', offMm: 40 }).devices[0]?.off).toEqual({ along: [0, -1, 0], mm: 40 });
  });

  it('shows only its face where it is let in, and stands on its bracket where it has one', () => {
    // The face of a device stands 15 out of its plate.
    expect(boxSize(boxOf(one({ device: 'switch-panel-6', letIn: true }), 'mount-1/body'))).toEqual([15, 170, 75]);
    const held = one({ bracket: 'bracket-angle-60' });
    // 60 × 60 × 40, its 40 between the back of the speaker at −20 − 42.5 and the trim.
    expect(boxOf(held, 'mount-1/bracket')).toEqual({ min: [-102.5, 270, 770], max: [-62.5, 330, 830] });
    // 1.1 of the speaker and 0.14 of the bracket.
    expect(held.masses.reduce((sum, { massKg }) => sum + massKg, 0)).toBeCloseTo(1.24, 9);
    expect(one({ bracket: 'nothing-such' }).problems).toMatchObject([{ code: 'unknown-hardware', at: 'mount-1' }]);
  });

  it('goes with the carcass that it hangs on, which bears it', () => {
    const on = (mm: number) =>
      solved(
        [
          carcass(empty('opening-1'), {
            place: { x: { rule: 'at', mm }, y: { rule: 'at', mm: 0 }, z: { rule: 'at', mm: 0 } },
          }),
        ],
        {
          mounts: [{ ...SPEAKER, on: 'carcass-1', at: [300, -50, 400] }],
        },
      );
    const middleX = (mm: number): number => on(mm).devices[0]?.at[0] ?? 0;
    expect(middleX(100)).toBe(400);
    expect(middleX(250)).toBe(550);
    const mass = on(100).masses.find(({ id }) => id === 'mount-1/mass');
    expect(mass).toMatchObject({ carcass: 'carcass-1', massKg: 1.1 });
    // Fitted once the carcass stands: it is not carried in with it.
    expect(on(100).bodies.find(({ id }) => id === 'mount-1/body')?.carcass).toBeNull();
    expect(on(100).devices[0]?.mover).toBeNull();
  });
});
