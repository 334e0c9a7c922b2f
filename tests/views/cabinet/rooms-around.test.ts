import { expect, test } from 'vitest';
import { type FaceRoom, faceOf } from '../../../src/views/editor/sheets/cabinet/face/face-model.ts';
import { roomLoads, roomsAround } from '../../../src/views/editor/sheets/cabinet/face/rooms-around.ts';
import { heldGear, massOf } from '../../../src/views/editor/sheets/cabinet/held-gear.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';

test('the load of every room of the demo is what is held in it, counted one by one', async () => {
  const flow = await wholeFlow();
  const design = demoDesign('harrow-fell');
  const fitOut = flow.fitOut(design);
  let rooms = 0;
  for (const carcass of design.cabinet.carcasses) {
    const face = faceOf(carcass, fitOut, {});
    const loads = roomLoads(design.gear, roomsAround(carcass, face.rooms));
    for (const room of face.rooms) {
      const held = heldGear(design, room.id);
      expect(loads.get(room.id)?.count ?? 0).toBe(held.length);
      expect(loads.get(room.id)?.massKg ?? 0).toBeCloseTo(massOf(held), 9);
      rooms += held.length > 0 ? 1 : 0;
    }
  }
  expect(rooms).toBeGreaterThan(5);
});

test('what lies inside a room belongs to it, what lies behind or elsewhere to none', () => {
  const design = demoDesign('harrow-fell');
  const [first, second] = design.cabinet.carcasses;
  if (!first || !second) throw new Error('the demo has two carcasses');
  const room: FaceRoom = {
    id: first.opening.id,
    name: '',
    kind: null,
    rect: { across: 0, up: 0, width: 1, height: 1 },
  };
  const around = roomsAround(first, [room]);
  expect(around.get(first.opening.id)).toBe(first.opening.id);
  expect(around.get(second.opening.id)).toBeUndefined();
  expect(new Set(around.values())).toEqual(new Set([first.opening.id]));
});
