import type { Vec3 } from '../../../src/base/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { carcass, designOf, empty, fitted } from '../../fitout/designs.ts';
import { body, inspectScene, node, panel, room, vehicleWith } from '../fixture.ts';
import { FACING_REAR } from './access.ts';

/** The vehicle of these scenes: its floor so high above ground. */
const FLOOR = 800;
const vehicle = (floorAboveGroundMm: number, more: Record<string, unknown> = {}) =>
  vehicleWith({ floorAboveGroundMm, ...more });

/** A panel whose face a looks to the rear: its length across, its width up. */
const UPRIGHT = [
  [0, -1, 0],
  [0, 0, 1],
  [-1, 0, 0],
] as const;

/** One radio in an upright plate that looks to the rear, its middle at a place of the vehicle. */
export const plateScene = (at: Vec3, floor = FLOOR) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicle(floor) },
    fitout: {
      carcasses: [
        {
          id: node('carcass-1'),
          name: '',
          pose: { turn: FACING_REAR, at: [60, 500, 0] },
          size: [1000, 500, 600],
          massKg: 20,
        },
      ],
      panels: [
        panel('opening-1/plate', 400, 200, {
          role: 'plate',
          origin: node('opening-1'),
          pose: { turn: UPRIGHT, at },
        }),
      ],
      devices: [
        {
          id: 'device-1',
          origin: node('device-1'),
          device: 'radio-50',
          at,
          opening: node('opening-1'),
          mover: null,
        },
      ],
    },
  });

/** The hatch, its hinge so high over a floor so high. */
export const openHatchScene = (floor: number, hingeUp = 900) => {
  const hinge = { from: [-20, -550, hingeUp], to: [-20, 550, hingeUp] };
  return inspectScene({
    survey: boxSurvey({ closures: [{ ...HATCH, hinge }] }),
    design: { vehicle: vehicle(floor) },
  });
};

/** A pull of the cabinet so high above the floor. */
export const pullScene = (up: number, floor = FLOOR) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicle(floor) },
    fitout: {
      hardware: [
        {
          id: 'opening-1/pull',
          origin: node('opening-1'),
          carcass: node('carcass-1'),
          from: 'hardware',
          item: 'pull-bar-160',
          name: 'Bar pull',
          quantity: 1,
          lengthMm: null,
          at: [60, 0, up],
          mover: null,
        },
      ],
    },
  });

/** A drawer whose box reaches up to a height above the floor, and its front 90 higher. */
export const drawerTopScene = (top: number, gear: boolean, floor = FLOOR) => {
  const mover = 'opening-1/drawer';
  return inspectScene({
    survey: null,
    design: { vehicle: vehicle(floor) },
    fitout: {
      movers: [
        {
          id: mover,
          origin: node('opening-1'),
          name: 'drawer',
          motion: { kind: 'slide', direction: [-1, 0, 0], travel: 400 },
          carriedBy: null,
          rests: [],
        },
      ],
      panels: [
        panel('side', 500, 200, { role: 'box-side', mover }),
        panel('front', 500, 300, { role: 'front', mover }),
      ],
      bodies: [
        body({ id: 'side', mover, min: [60, 0, 110], max: [560, 12, top] }),
        body({ id: 'front', mover, min: [42, 0, 100], max: [60, 300, top + 90] }),
      ],
      rooms: [room('opening-1', [400, 400, 200], { mover })],
      gear: gear
        ? [{ gear: node('gear-1'), opening: node('opening-1'), level: 0, from: [0, 0, 0], size: [9, 9, 9], body: '' }]
        : [],
    },
  });
};

/** A board hung along its lower edge at a height above the floor, which turns outward and down. */
export const openBoardScene = (hingeUp: number, travelRad: number, { floor = FLOOR, thick = 12, high = 400 } = {}) => {
  const made = designOf([
    carcass(
      fitted('opening-1', { kind: 'board', material: 'birch-ply-12', stopsDeg: [90], inside: empty('opening-2') }),
    ),
  ]);
  const mover = 'opening-1/board';
  return inspectScene({
    survey: null,
    design: { ...made, vehicle: vehicle(floor) },
    fitout: {
      movers: [
        {
          id: mover,
          origin: node('opening-1'),
          name: 'board',
          motion: { kind: 'turn', point: [60, 0, hingeUp], axis: [0, -1, 0], travelRad },
          carriedBy: null,
          rests: [],
        },
      ],
      panels: [
        panel('leaf', 500, high, {
          role: 'front',
          origin: node('opening-1'),
          mover,
          pose: { turn: UPRIGHT, at: [60, 250, hingeUp] },
        }),
      ],
      bodies: [body({ id: 'leaf', mover, min: [60, -250, hingeUp], max: [60 + thick, 250, hingeUp + high] })],
    },
  });
};

/** A mirror 3 m before the rear glass, which is 1000 wide and stands from 500 to 900. */
export const REAR_VIEW = {
  mirror: [3000, 0, 700],
  glassForwardMm: 0,
  glassLowMm: 500,
  glassHighMm: 900,
  glassWidthMm: 1000,
};

/** A box right before the glass, from its left edge so far across, over its whole height. */
export const glassScene = (share: number, more: Record<string, unknown> = { rearView: REAR_VIEW }, wide = 1000) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicle(FLOOR, more) },
    fitout: { bodies: [body({ id: 'side', min: [1, -wide / 2, 400], max: [2, -wide / 2 + wide * share, 1000] })] },
  });

/** An antenna of a radio at a place of the vehicle. */
export const antennaScene = (watts: number, at: Vec3, floor = FLOOR) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicle(floor, { antennas: [{ id: 'antenna-1', name: 'roof', at, watts }] }) },
  });
