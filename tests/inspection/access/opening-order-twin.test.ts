import { expect, it } from 'vitest';
import { type Random, seededRandom } from '../../../src/base/index.ts';
import { type ConvexShape, gapBetween, motionPose, shapeAt, shapeBox } from '../../../src/bodies/index.ts';
import type { Design, Gear } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { workOutOrder } from '../../../src/inspection/index.ts';
import { body, catalog, designWith, fitOut, node, room, rules } from '../fixture.ts';

/** The opening order against a plain twin: every place of every mover, every set of items taken, motions on samples. */
const SEED = 4_711;
const SCENES = 60;
/** Samples of a motion; bodies of the scenes are thicker than a step is long. */
const SAMPLES = 90;
const MEETS_MM = 0.05;

type Mover = FitOut['movers'][number];
type Body = FitOut['bodies'][number];

interface Scene {
  readonly parts: FitOut;
  readonly gear: readonly string[];
}

const BAY = 130;

const rests = (...shares: readonly number[]): Mover['rests'] =>
  shares.map((share) => ({ name: share === 0 ? 'stowed' : `out ${share}`, share }));

/** Three bays side by side: gear one before the other or a drawer in each, leaves before some, a post somewhere before. */
const someScene = (random: Random): Scene => {
  const bodies: Body[] = [];
  const movers: Mover[] = [];
  const hardware: FitOut['hardware'][number][] = [];
  const rooms: FitOut['rooms'][number][] = [];
  const stowed: FitOut['gear'][number][] = [];
  const mover = (id: string, motion: Mover['motion'], of: Mover['rests']): void => {
    movers.push({ id, origin: node(id), name: id, motion, carriedBy: null, rests: of });
    if (random() < 0.5)
      hardware.push({
        id: `${id}/latch`,
        origin: node(id),
        carcass: null,
        from: 'hardware',
        item: 'latch-slam',
        name: 'latch',
        quantity: 1,
        lengthMm: null,
        at: null,
        mover: id,
      });
  };
  for (let bay = 0; bay < 3; bay++) {
    const y = bay * BAY;
    bodies.push(body({ id: `top ${bay}`, min: [100, y, 105], max: [300, y + 100, 115] }));
    if (random() < 0.35) {
      const id = `drawer ${bay}`;
      mover(id, { kind: 'slide', direction: [-1, 0, 0], travel: 200 }, rests(0, 0.5, 1));
      bodies.push(body({ id: `${id}/box`, origin: node(id), mover: id, min: [101, y, 0], max: [280, y + 100, 100] }));
    } else {
      const opening = `bay ${bay}`;
      const keeps = random() < 0.4 ? 'net' : 'nothing';
      const turn: [[number, number, number], [number, number, number], [number, number, number]] = [
        [0, -1, 0],
        [1, 0, 0],
        [0, 0, 1],
      ];
      rooms.push(room(opening, [100, 200, 101], { keeps, pose: { turn, at: [100, y + 100, 0] } }));
      for (const [i, x] of (random() < 0.6 ? [110, 190] : [110]).entries()) {
        const id = `item ${bay} ${i}`;
        bodies.push(
          body({ id, origin: node(id), kind: 'gear', carcass: null, min: [x, y + 5, 0], max: [x + 60, y + 95, 100] }),
        );
        stowed.push({
          gear: node(id),
          opening: node(opening),
          level: 0,
          from: [0, 0, 0],
          size: [60, 90, 100],
          body: id,
        });
      }
    }
    if (random() < 0.6) {
      const id = `leaf ${bay}`;
      const wide = bay < 2 && random() < 0.3 && !movers.some((own) => own.id === `leaf ${bay + 1}`);
      const [low, high] = [y - 12, y + (wide ? 2 : 1) * BAY - 16];
      const left = random() < 0.5;
      mover(
        id,
        {
          kind: 'turn',
          point: [70, left ? high : low, 0],
          axis: [0, 0, left ? -1 : 1],
          travelRad: (170 * Math.PI) / 180,
        },
        rests(0, 0.5, 1),
      );
      bodies.push(body({ id: `${id}/board`, origin: node(id), mover: id, min: [62, low, 0], max: [80, high, 100] }));
    }
  }
  if (random() < 0.4) {
    const y = -60 + random() * 460;
    bodies.push(body({ id: 'post', carcass: null, min: [-90, y, 0], max: [-60, y + 30, 100] }));
  }
  return {
    parts: fitOut({ bodies, movers, hardware, rooms, gear: stowed }),
    gear: stowed.map(({ gear }) => gear),
  };
};

const meets = (a: ConvexShape, b: ConvexShape): boolean => gapBetween(a, b).distance < -MEETS_MM;

/** The least count of motions to each item, by looking at everything there is. */
const twin = ({ parts, gear }: Scene): ReadonlyMap<string, number> => {
  const poseOf = ({ motion }: Mover, share: number) =>
    motion.kind === 'slide'
      ? motionPose({ kind: 'slide', along: motion.direction, fromMm: 0, toMm: 1 }, motion.travel * share)
      : motionPose(
          { kind: 'turn', point: motion.point, axis: motion.axis, fromRad: 0, toRad: 1 },
          motion.travelRad * share,
        );
  const own = (id: string) => parts.bodies.filter(({ mover }) => mover === id);
  const touchesStowed = (a: Body, b: Body): boolean => gapBetween(a.shape, b.shape).distance <= 1e-6;
  const goes = (mover: Mover, from: number, to: number, stand: ReadonlyMap<string, number>): boolean => {
    const others = parts.bodies.filter((each) => each.mover !== mover.id);
    const placed = others.map((each) => {
      const on = parts.movers.find(({ id }) => id === each.mover);
      return { each, shape: on ? shapeAt(each.shape, poseOf(on, stand.get(on.id) ?? 0)) : each.shape };
    });
    return own(mover.id).every((moving) =>
      placed.every(({ each, shape }) => {
        if (touchesStowed(moving, each)) return true;
        for (let k = 0; k <= SAMPLES; k++)
          if (meets(shapeAt(moving.shape, poseOf(mover, from + ((to - from) * k) / SAMPLES)), shape)) return false;
        return true;
      }),
    );
  };
  const outX = Math.min(
    ...parts.bodies.filter(({ mover }) => mover === null).map(({ shape }) => shapeBox(shape).min[0]),
  );
  const comesOut = (id: string, stand: ReadonlyMap<string, number>, gone: ReadonlySet<string>): boolean => {
    const item = parts.bodies.find((each) => each.id === id);
    if (!item) return false;
    const way = shapeBox(item.shape).max[0] - outX;
    return parts.bodies.every((each) => {
      if (each === item || gone.has(each.id)) return true;
      const on = parts.movers.find((mover) => mover.id === each.mover);
      const shape = on ? shapeAt(each.shape, poseOf(on, stand.get(on.id) ?? 0)) : each.shape;
      for (let k = 0; k <= SAMPLES; k++) {
        const at = motionPose({ kind: 'slide', along: [-1, 0, 0], fromMm: 0, toMm: way }, (way * k) / SAMPLES);
        if (meets(shapeAt(item.shape, at), shape)) return false;
      }
      return true;
    });
  };
  const latched = new Set<string>(parts.hardware.map(({ origin }) => origin));
  const roomOf = (id: string) => parts.gear.find((each) => each.gear === id)?.opening;
  const undo = (id: string, gone: ReadonlySet<string>): number => {
    const keeps = parts.rooms.find(({ opening }) => opening === roomOf(id))?.keeps;
    return keeps === 'net' && ![...gone].some((other) => roomOf(other) === roomOf(id)) ? 1 : 0;
  };
  const known = new Map<string, boolean>();
  const once = (key: string, look: () => boolean): boolean => {
    const answer = known.get(key) ?? look();
    known.set(key, answer);
    return answer;
  };
  interface State {
    readonly stand: ReadonlyMap<string, number>;
    readonly gone: ReadonlySet<string>;
    readonly count: number;
  }
  const standKey = (stand: ReadonlyMap<string, number>): string =>
    parts.movers.map(({ id }) => stand.get(id) ?? 0).join(' ');
  const best = new Map<string, number>();
  const open: State[] = [{ stand: new Map(), gone: new Set(), count: 0 }];
  const done = new Set<string>();
  while (open.length > 0) {
    open.sort((a, b) => b.count - a.count);
    const state = open.pop();
    if (!state) break;
    const { stand, gone, count } = state;
    const where = standKey(stand);
    const key = `${where} | ${[...gone].sort().join()}`;
    if (done.has(key)) continue;
    done.add(key);
    for (const id of gear) {
      if (gone.has(id) || !once(`take ${id} ${key}`, () => comesOut(id, stand, gone))) continue;
      best.set(id, Math.min(best.get(id) ?? Infinity, count + undo(id, gone)));
      open.push({ stand, gone: new Set([...gone, id]), count: count + undo(id, gone) + 1 });
    }
    for (const mover of parts.movers)
      for (const { share } of mover.rests) {
        const from = stand.get(mover.id) ?? 0;
        if (share === from || !once(`${mover.id} ${share} ${where}`, () => goes(mover, from, share, stand))) continue;
        const first = from === 0 && latched.has(mover.id) ? 1 : 0;
        open.push({ stand: new Map([...stand, [mover.id, share]]), gone, count: count + first + 1 });
      }
  }
  return best;
};

it(`finds for each item the very count that looking at everything finds, seed ${SEED}`, () => {
  const random = seededRandom(SEED);
  const seen = { found: 0, several: 0, none: 0 };
  for (let i = 0; i < SCENES; i++) {
    const scene = someScene(random);
    const listed = scene.gear.map((id) => ({ id: node(id), name: id, firstDue: false }) as unknown as Gear);
    const design: Design = designWith({ gear: listed });
    const order = workOutOrder({ design, space: null, fitout: scene.parts, catalog, rules });
    const plain = twin(scene);
    for (const { gear, count } of order.gear) {
      expect([i, gear, count]).toEqual([i, gear, plain.get(gear) ?? null]);
      if (count === null) seen.none += 1;
      else seen.found += 1;
      if (count !== null && count > 2) seen.several += 1;
    }
  }
  expect(seen.found).toBeGreaterThan(100);
  expect(seen.several).toBeGreaterThan(20);
  expect(seen.none).toBeGreaterThan(2);
}, 120_000);
