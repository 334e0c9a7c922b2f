import { describe, expect, it } from 'vitest';
import { gearSize } from '../../src/fitout/index.ts';
import { carcass, designOf, divided, empty, fitted, share, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;
const tenth = (values: readonly number[]): readonly number[] => values.map((value) => Math.round(value * 10) / 10);

const item = (place: Plain): Plain => ({
  id: 'gear-1',
  name: 'Case',
  sizeMm: [500, 300, 200],
  massKg: 12,
  massFrom: 'measured',
  massSigmaKg: 0.4,
  place,
});

describe('how gear lies', () => {
  const lying = (stance: string, turnDeg: number): readonly number[] => {
    const [gear] = designOf([], { gear: [item({ opening: 'opening-1', at: [0, 0, 0], stance, turnDeg })] }).gear;
    return gear?.place ? gearSize(gear, gear.place) : [];
  };

  it('puts length along the depth, width across and height up when it stands', () => {
    expect(lying('upright', 0)).toEqual([300, 500, 200]);
    expect(lying('upright', 180)).toEqual([300, 500, 200]);
    expect(lying('upright', 90)).toEqual([500, 300, 200]);
  });

  it('stands on its side with the width up, on its back with the length up', () => {
    expect(lying('on-side', 0)).toEqual([200, 500, 300]);
    expect(lying('on-side', 270)).toEqual([500, 200, 300]);
    expect(lying('on-back', 0)).toEqual([300, 200, 500]);
    expect(lying('on-back', 90)).toEqual([200, 300, 500]);
  });
});

describe('gear in its place', () => {
  it('is a box, a mass with its spread and an entry in its room, in vehicle axes', () => {
    const place = { x: { rule: 'at', mm: 100 }, y: { rule: 'at', mm: -450 }, z: { rule: 'at', mm: 20 } };
    const fitOut = solved([carcass(empty('opening-1'), { facing: 'rear', place })], {
      gear: [item({ opening: 'opening-1', at: [50, 30, 0] })],
    });
    const body = fitOut.bodies.find(({ kind }) => kind === 'gear');
    const { min, max } = bodyBox(body as never);
    // Deep is +x: 100 + 30 … + 500. Across is −y from y = 450: 450 − 17.7 − 50 = 382.3 down to 82.3. Up 20 + 17.7.
    expect(tenth(min)).toEqual([130, 82.3, 37.7]);
    expect(tenth(max)).toEqual([630, 382.3, 237.7]);
    expect(fitOut.masses.find(({ kind }) => kind === 'gear')).toMatchObject({ massKg: 12, sigmaKg: 0.4 });
    expect(fitOut.gear).toEqual([
      { gear: 'gear-1', opening: 'opening-1', level: 0, from: [50, 30, 0], size: [300, 500, 200], body: 'gear-1/body' },
    ]);
  });

  it('has no room in a divided opening, but still shows and weighs', () => {
    const halves = divided('opening-1', 'columns', [
      [share(), empty('opening-2')],
      [share(), empty('opening-3')],
    ]);
    const fitOut = solved([carcass(halves)], { gear: [item({ opening: 'opening-1', at: [0, 0, 0] })] });
    expect(fitOut.problems).toMatchObject([{ code: 'no-such-opening', at: 'gear-1', because: ['opening-1'] }]);
    expect(fitOut.gear).toHaveLength(1);
    const stray = solved([carcass(halves)], { gear: [item({ opening: 'opening-9', at: [0, 0, 0] })] });
    expect(stray.problems).toMatchObject([{ code: 'no-such-opening', at: 'gear-1', because: ['opening-9'] }]);
    expect(stray.gear).toEqual([]);
  });
});

describe('a bracket for a breathing set', () => {
  const bracket = (mounting: string, rest: Plain = {}, gear: readonly Plain[] = []) =>
    solved([carcass(fitted('opening-1', { kind: 'apparatus-bracket', bracket: 'cradle-pack-back', mounting }), rest)], {
      gear,
    });

  it('stands at the rear of its room and keeps the pack in front of it', () => {
    const fitOut = bracket('floor');
    expect(fitOut.problems).toEqual([]);
    const body = bodyBox(fitOut.bodies.find(({ id }) => id === 'opening-1/bracket') as never);
    const [room] = fitOut.rooms;
    const deep = body.max[1] - body.min[1];
    // On the floor at 17.7, against the back at 581.6; the room is what is left of 581.6.
    expect(body.min[2]).toBeCloseTo(17.7, 9);
    expect(body.max[1]).toBeCloseTo(581.6, 9);
    expect(room?.size[1]).toBeCloseTo(581.6 - deep, 9);
    expect(room?.keeps).toBe('bracket');
    // On the back, half way up: 17.7 + 664.6/2.
    const hung = bodyBox(bracket('back').bodies.find(({ id }) => id === 'opening-1/bracket') as never);
    expect((hung.min[2] + hung.max[2]) / 2).toBeCloseTo(350, 9);
  });

  it('is on the pick list with its bolts, and needs a back to hang on', () => {
    const fitOut = bracket('back');
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/bracket')).toMatchObject({
      item: 'cradle-pack-back',
      quantity: 1,
    });
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/bracket-bolts')?.quantity).toBe(4);
    const open = bracket('back', { joints: { corner: 'dado', dadoDepthMm: 6, back: { kind: 'none' } } });
    expect(open.problems).toMatchObject([{ code: 'bad-joint', at: 'opening-1' }]);
  });
});

describe('a mount', () => {
  it('is a device at its point, carried by the closure that it names', () => {
    const mounts = [{ id: 'mount-1', name: 'Speaker', device: 'speaker-hatch', on: null, at: [-20, 300, 800] }];
    const fitOut = solved([], { mounts });
    // 70 body and 15 plug along x, 150 wide along y, 130 high, about the point.
    const { min, max } = bodyBox(fitOut.bodies[0] as never);
    expect([min, max]).toEqual([
      [-62.5, 225, 735],
      [22.5, 375, 865],
    ]);
    expect(fitOut.masses).toMatchObject([{ origin: 'mount-1', kind: 'device', carcass: null, mover: null }]);
    const strange = solved([], { mounts: [{ ...mounts[0], device: 'nothing-such' }] });
    expect(strange.problems).toMatchObject([{ code: 'unknown-device', at: 'mount-1' }]);
  });
});
