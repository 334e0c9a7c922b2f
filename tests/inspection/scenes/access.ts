import type { Vec3 } from '../../../src/base/index.ts';
import type { Design, Gear } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { body, inspectScene, node, openingOf, room } from '../fixture.ts';
import { moving, sliding } from './vehicle.ts';

/** Across to the viewer's right, deep forward, up: what looks to the rear. */
export const FACING_REAR = [
  [0, -1, 0],
  [1, 0, 0],
  [0, 0, 1],
] as const;

/** A bag 100 long, wide and high that stands in a bay 200 high whose face lies at 100, behind a blind panel. */
export const blindBayScene = (panelTop: number, bagHigh = 100, bayHigh = 200) => {
  const bag = {
    id: node('bag'),
    name: 'bag',
    firstDue: false,
    place: null,
    massKg: 1,
    sizeMm: [100, 100, bagHigh],
    needs: [],
  };
  return inspectScene({
    survey: null,
    design: { gear: [bag as unknown as Gear] as Design['gear'] },
    fitout: {
      bodies: [
        body({ id: 'bag', origin: node('bag'), kind: 'gear', min: [110, 0, 0], max: [210, 100, bagHigh] }),
        body({ id: 'wall', name: 'blind panel', min: [62, -100, 0], max: [80, 300, panelTop] }),
      ],
      rooms: [room('bay', [100, 200, bayHigh], { pose: { turn: FACING_REAR, at: [100, 100, 0] } })],
      gear: [
        { gear: node('bag'), opening: node('bay'), level: 0, from: [0, 10, 0], size: [100, 100, bagHigh], body: 'bag' },
      ],
    },
  });
};

/** A leaf from 62 to 80 forward and up to `hingeY`, hung there and so long, before a drawer 100 wide from `drawerY` on. */
export const leafScene = (hingeY: number, turnsDeg: number, drawerY: number, long = hingeY + 10) => {
  const leaf = body({
    id: 'leaf',
    origin: node('door'),
    mover: 'door',
    min: [62, hingeY - long, 0],
    max: [80, hingeY, 200],
  });
  const box = body({
    id: 'box',
    origin: node('box'),
    mover: 'box',
    min: [100, drawerY, 0],
    max: [400, drawerY + 100, 100],
  });
  const travelRad = (turnsDeg / 180) * Math.PI;
  const door = moving('door', { kind: 'turn', point: [80, hingeY, 0], axis: [0, 0, -1], travelRad });
  return inspectScene({ survey: null, fitout: { bodies: [leaf, box], movers: [door, sliding('box')] } });
};

/** The front of a mover with a latch in its middle. */
export const frontAt = (x: number) =>
  body({ id: 'front', origin: node('box'), mover: 'box', min: [x, 0, 0], max: [x + 20, 300, 300] });
export const latchAt = (x: number): FitOut['hardware'][number] => ({
  id: 'box/latch',
  origin: node('box'),
  carcass: null,
  from: 'hardware',
  item: 'latch-slam',
  name: 'latch',
  quantity: 1,
  lengthMm: null,
  at: [x, 150, 150],
  mover: 'box',
});
const postTo = (x: number, y = 100) =>
  body({ id: 'post', carcass: node('carcass-2'), min: [x - 20, y, 0], max: [x, y + 100, 400] });

/** A latch of a drawer in a front, and a post before it up to an x, which may begin some way to the left of the latch. */
export const latchScene = (postX: number, frontX = 80, aside = -50) =>
  inspectScene({
    survey: null,
    fitout: {
      bodies: [frontAt(frontX), postTo(postX, 150 + aside)],
      movers: [sliding('box')],
      hardware: [latchAt(frontX)],
    },
  });

/** A device so deep behind a plate at an x, and a post before it up to another. */
export const deviceScene = (postX: number, plateX = 100, deep = 150) => {
  const size: Vec3 = [300, 400, 300];
  return inspectScene({
    survey: null,
    fitout: {
      carcasses: [
        { id: node('carcass-1'), name: 'c', pose: { turn: FACING_REAR, at: [plateX, 300, 0] }, size, massKg: 1 },
      ],
      openings: [openingOf('bay', size)],
      devices: [
        {
          id: 'radio/device',
          origin: node('radio'),
          device: 'radio-50',
          at: [plateX + 50, 150, 150],
          opening: node('bay'),
          mover: null,
        },
      ],
      bodies: [
        body({
          id: 'radio/body',
          origin: node('radio'),
          kind: 'device',
          min: [plateX, 100, 100],
          max: [plateX + deep, 200, 200],
        }),
        postTo(postX),
      ],
    },
  });
};
