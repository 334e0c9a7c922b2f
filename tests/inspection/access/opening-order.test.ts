import { describe, expect, it } from 'vitest';
import type { Design, Gear, NodeId } from '../../../src/design/index.ts';
import type { CargoSpace } from '../../../src/envelope/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { type GearReach, type OpeningOrder, workOutOrder } from '../../../src/inspection/index.ts';
import { sayOrderRow, sayReach } from '../../../src/says/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';
import { body, catalog, designWith, fitOut, node, room, rules, spaceOf } from '../fixture.ts';

const flow = await wholeFlow();
const acts = ({ steps }: GearReach): readonly string[] => steps.map(({ act, part }) => `${act} ${part}`);
const reachOf = (order: OpeningOrder, gear: string): GearReach => {
  const found = order.gear.find((own) => own.gear === gear);
  if (!found) throw new Error(`no ${gear}`);
  return found;
};

describe('the opening order of the large demo', () => {
  const order = flow.openingOrder(demoDesign('harrow-fell'));

  it('has the hatch open before anything comes out, and everything stowed before the hatch closes', () => {
    const movers = ['opening-3', 'opening-5', 'opening-13'];
    expect(order.rows.map(({ part, otherPart, at }) => [part, otherPart, at.join()])).toEqual([
      ...movers.map((part) => ['closure-1', part, 'stowed']),
      ...movers.map((part) => [part, 'closure-1', 'open']),
    ]);
  });

  it('counts hatch 1, latch 1, drawer 1', () => {
    const reach = reachOf(order, 'gear-18');
    expect(acts(reach)).toEqual(['open closure-1', 'undo opening-5', 'open opening-5', 'take gear-18']);
    expect(reach).toMatchObject({ count: 3, firstDue: true, found: true });
    expect(reach.shares).toEqual({ 'closure-1': 1, 'opening-5/drawer': 1 });
  });

  it('counts an item that stands before another, and the net before both once', () => {
    expect(acts(reachOf(order, 'gear-8'))).toEqual([
      'open closure-1',
      'undo opening-7',
      'lift-away gear-7',
      'take gear-8',
    ]);
  });
});

/** A box on its own room: 200 deep from x = 100, its face towards the rear. */
const gearAt = (id: string, x: number, y: number, z: number) =>
  body({ id, origin: node(id), kind: 'gear', min: [x, y, z], max: [x + 100, y + 100, z + 100] });

const FACING_REAR = {
  turn: [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  at: [100, 100, 0],
} as const;

const stowed = (gear: string, opening: string): FitOut['gear'][number] => ({
  gear: node(gear),
  opening: node(opening),
  level: 0,
  from: [0, 0, 0],
  size: [100, 100, 100],
  body: gear,
});

const drawer = (id: string): FitOut['movers'][number] => ({
  id,
  origin: node(id),
  name: id,
  motion: { kind: 'slide', direction: [-1, 0, 0], travel: 400 },
  carriedBy: null,
  rests: [
    { name: 'stowed', share: 0 },
    { name: 'open', share: 1 },
  ],
});

const door = (id: string): FitOut['movers'][number] => ({
  ...drawer(id),
  // Hung at y = 120 before the face; a turn about −z by a right angle brings it out to the rear.
  motion: { kind: 'turn', point: [80, 120, 0], axis: [0, 0, -1], travelRad: Math.PI / 2 },
});

const listed = (...ids: readonly string[]): Design['gear'] =>
  ids.map((id) => ({ id: node(id), name: id, firstDue: true }) as unknown as Gear);

const orderOf = (parts: Partial<FitOut>, gear: readonly string[], space: CargoSpace | null = null) =>
  workOutOrder({ design: designWith({ gear: listed(...gear) }), space, fitout: fitOut(parts), catalog, rules });

const leaf = (mover: string) =>
  body({ id: `${mover}/leaf`, origin: node(mover), mover, min: [62, -10, 0], max: [80, 120, 200] });

describe('the opening order of scenes made by hand', () => {
  const one = { rooms: [room('bay', [100, 200, 200], { pose: FACING_REAR })], gear: [stowed('bag', 'bay')] };

  it('takes at once what stands free', () => {
    const order = orderOf({ ...one, bodies: [gearAt('bag', 110, 0, 0)] }, ['bag']);
    expect(order.gear).toMatchObject([{ count: 0, found: true }]);
  });

  it('opens the door before it, by the hinge side, after its latch', () => {
    const latch = {
      id: 'door/latch',
      origin: node('door'),
      carcass: null,
      from: 'hardware' as const,
      item: 'latch-slam',
      name: 'latch',
      quantity: 1,
      lengthMm: null,
      at: null,
      mover: 'door',
    };
    const parts = { ...one, bodies: [gearAt('bag', 110, 0, 0), leaf('door')], movers: [door('door')] };
    expect(orderOf(parts, ['bag']).gear.map(acts)).toEqual([['open door', 'take bag']]);
    const [latched] = orderOf({ ...parts, hardware: [latch] }, ['bag']).gear;
    expect(latched && acts(latched)).toEqual(['undo door', 'open door', 'take bag']);
    expect(latched?.count).toBe(2);
  });

  it('says not found, and what was in the way, where a fixed panel closes the face', () => {
    const wall = body({ id: 'wall', name: 'blind panel', min: [62, -100, 0], max: [80, 300, 400] });
    const [reach] = orderOf({ ...one, bodies: [gearAt('bag', 110, 0, 0), wall] }, ['bag']).gear;
    expect(reach).toMatchObject({ found: false, count: null, stuck: { fixed: 'blind panel' } });
    expect(reach && sayReach(reach, (id) => id)).toBe('No straight way out was found. In the way: blind panel.');
  });

  it('lets a tilted thing be lifted over a lip, and no further than its room has air', () => {
    const lip = body({ id: 'lip', min: [90, -10, 0], max: [100, 120, 40] });
    const bodies = [gearAt('bag', 110, 0, 0), lip];
    expect(orderOf({ ...one, bodies }, ['bag']).gear).toMatchObject([{ count: 0, found: true }]);
    const shelf = body({ id: 'shelf', min: [90, -10, 120], max: [300, 120, 130] });
    expect(orderOf({ ...one, bodies: [...bodies, shelf] }, ['bag']).gear).toMatchObject([{ found: false }]);
  });

  it('closes what stands in the way of another: a drawer behind a door', () => {
    const parts = {
      bodies: [
        leaf('door'),
        body({ id: 'box', origin: node('box'), mover: 'box', min: [100, 0, 0], max: [400, 100, 100] }),
      ],
      movers: [door('door'), drawer('box')],
    };
    const { rows } = orderOf(parts, []);
    expect(rows).toMatchObject([
      { mover: 'door', other: 'box', at: ['stowed'], notAt: ['open'] },
      { mover: 'box', other: 'door', at: ['open'], notAt: ['stowed'] },
    ]);
    expect(rows.map((row) => sayOrderRow(row, (id) => id))).toEqual([
      'Before door moves, box must be stowed.',
      'Before box moves, door must be open.',
    ]);
  });

  it('knows nothing of a vehicle without a survey, and needs the hatch where there is one', () => {
    const parts = { ...one, bodies: [gearAt('bag', 110, 0, 0)] };
    const space = spaceOf(boxSurvey({ closures: [HATCH] }));
    expect(orderOf(parts, ['bag'], space).gear.map(acts)).toEqual([['open hatch', 'take bag']]);
    expect(orderOf({ bodies: [] }, [])).toEqual({ rows: [], gear: [] });
  });
});

describe('laws', () => {
  it('an item alone in its cabinet never takes more motions than among the others', () => {
    const design = demoDesign('quillmoor');
    const order = flow.openingOrder(design);
    for (const reach of order.gear.slice(0, 4)) {
      const alone = { ...design, gear: design.gear.filter(({ id }) => id === (reach.gear as NodeId)) };
      const [own] = flow.openingOrder(alone).gear;
      expect(own?.count ?? Infinity).toBeLessThanOrEqual(reach.count ?? Infinity);
    }
  });
});
