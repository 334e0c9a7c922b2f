import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { carcass, designOf, empty, fitted } from '../../fitout/designs.ts';
import { body, findingsOf, inspectScene, linesOf, node, panel, room, vehicleWith } from '../fixture.ts';

/** Across to the viewer's right, deep forward, up: a carcass that looks to the rear. */
const FACING_REAR = {
  turn: [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  at: [60, 500, 0],
} as const;

const vehicle = (more: Record<string, unknown> = {}) => vehicleWith({ floorAboveGroundMm: 800, ...more });

/** One radio in an upright plate, its middle at a place of the vehicle. */
const plate = (at: Vec3): Partial<FitOut> => ({
  carcasses: [{ id: node('carcass-1'), name: '', pose: FACING_REAR, size: [1000, 500, 600], massKg: 20 }],
  panels: [
    panel('opening-1/plate', 400, 200, {
      role: 'plate',
      origin: node('opening-1'),
      // Face a looks to the rear.
      pose: {
        turn: [
          [0, -1, 0],
          [0, 0, 1],
          [-1, 0, 0],
        ],
        at,
      },
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
});

const plateScene = (at: Vec3) => inspectScene({ survey: null, design: { vehicle: vehicle() }, fitout: plate(at) });

describe('control-height', () => {
  it('300 over a floor at 800 is 1100, 50 below what hands and eyes want', () => {
    const [low] = findingsOf(plateScene([300, 0, 300]), 'control-height');
    expect(low).toMatchObject({ severity: 'caution', parts: ['opening-1'], value: 1100, limit: 1150 });
    expect(findingsOf(plateScene([300, 0, 700]), 'control-height')[0]).toMatchObject({ value: 1500, limit: 1450 });
    expect(findingsOf(plateScene([300, 0, 500]), 'control-height')).toEqual([]);
  });
});

describe('reading-angle', () => {
  it('an upright plate 600 before the eye of a tall user is read at atan(486 / 600)', () => {
    // the eye stands 300 behind the sill, 1756 + 30 − 800 = 986 above the floor; the plate at 300 and 500
    const [slant] = findingsOf(plateScene([300, 0, 500]), 'reading-angle');
    expect(slant?.limit).toBe(35);
    expect(slant?.value).toBeCloseTo((Math.atan(486 / 600) * 180) / Math.PI, 6);
  });

  it('further in the same plate is read well', () => {
    // 900 away: atan(486 / 900) = 28°
    expect(findingsOf(plateScene([600, 0, 500]), 'reading-angle')).toEqual([]);
  });
});

describe('the open hatch', () => {
  const hatch = (floorAboveGroundMm: number) =>
    inspectScene({
      survey: boxSurvey({ closures: [HATCH] }),
      design: { vehicle: vehicle({ floorAboveGroundMm }) },
    });

  it('head-clear: hinge 900 over a floor at 800, turned by a right angle, is 1700 of 1900', () => {
    const [low] = findingsOf(hatch(800), 'head-clear');
    expect(low).toMatchObject({ severity: 'caution', parts: ['hatch'], limit: 1900 });
    expect(low?.value).toBeCloseTo(1700, 6);
    expect(findingsOf(hatch(1010), 'head-clear')).toEqual([]);
  });

  it('pull-height: over a floor at 900 its edge is 1800 of 1750', () => {
    const [high] = findingsOf(hatch(900), 'pull-height');
    expect(high).toMatchObject({ severity: 'caution', parts: ['hatch'], limit: 1750 });
    expect(high?.value).toBeCloseTo(1800, 6);
    expect(findingsOf(hatch(800), 'pull-height')).toEqual([]);
  });

  it('neither is judged without the height of the floor', () => {
    const blind = inspectScene({ survey: boxSurvey({ closures: [HATCH] }), design: { vehicle: vehicleWith({}) } });
    for (const rule of ['head-clear', 'pull-height'] as const) expect(findingsOf(blind, rule)).toEqual([]);
  });
});

describe('pull-height', () => {
  it('counts the pulls of the cabinet as well', () => {
    const pull = (z: number): FitOut['hardware'][number] => ({
      id: 'opening-1/pull',
      origin: node('opening-1'),
      carcass: node('carcass-1'),
      from: 'hardware',
      item: 'pull-bar-160',
      name: 'Bar pull',
      quantity: 1,
      lengthMm: null,
      at: [60, 0, z],
      mover: null,
    });
    const at = (z: number) =>
      linesOf(
        inspectScene({ survey: null, design: { vehicle: vehicle() }, fitout: { hardware: [pull(z)] } }),
        'pull-height',
      );
    expect(at(960)).toEqual(['caution opening-1/pull 1760']);
    expect(at(940)).toEqual([]);
  });
});

describe('see-in', () => {
  const drawer = (top: number, gear: boolean) =>
    inspectScene({
      survey: null,
      design: { vehicle: vehicle() },
      fitout: {
        movers: [
          {
            id: 'opening-1/drawer',
            origin: node('opening-1'),
            name: 'drawer',
            motion: { kind: 'slide', direction: [-1, 0, 0], travel: 400 },
            carriedBy: null,
            rests: [],
          },
        ],
        panels: [
          panel('side', 500, 200, { role: 'box-side', mover: 'opening-1/drawer' }),
          panel('front', 500, 300, { role: 'front', mover: 'opening-1/drawer' }),
        ],
        bodies: [
          body({ id: 'side', mover: 'opening-1/drawer', min: [60, 0, 110], max: [560, 12, top] }),
          body({ id: 'front', mover: 'opening-1/drawer', min: [42, 0, 100], max: [60, 300, top + 90] }),
        ],
        rooms: [room('opening-1', [400, 400, 200], { mover: 'opening-1/drawer' })],
        gear: gear
          ? [{ gear: node('gear-1'), opening: node('opening-1'), level: 0, from: [0, 0, 0], size: [9, 9, 9], body: '' }]
          : [],
      },
    });

  it('a box whose edge is 310 over a floor at 800 cannot be looked into; its front does not count', () => {
    expect(linesOf(drawer(310, true), 'see-in')).toEqual(['note opening-1 1110']);
    expect(findingsOf(drawer(310, true), 'see-in')[0]?.limit).toBe(1100);
    expect(linesOf(drawer(290, true), 'see-in')).toEqual([]);
    expect(linesOf(drawer(310, false), 'see-in')).toEqual([]);
  });
});

describe('write-height', () => {
  /** A board hung along its lower edge that folds down to lie flat, or along its upper edge: see its hinge. */
  const board = (hingeZ: number, travelRad: number) => {
    const made = designOf([
      carcass(
        fitted('opening-1', { kind: 'board', material: 'birch-ply-12', stopsDeg: [90], inside: empty('opening-2') }),
      ),
    ]);
    return inspectScene({
      survey: null,
      design: { ...made, vehicle: vehicle() },
      fitout: {
        movers: [
          {
            id: 'opening-1/board',
            origin: node('opening-1'),
            name: 'board',
            motion: { kind: 'turn', point: [60, 0, hingeZ], axis: [0, -1, 0], travelRad },
            carriedBy: null,
            rests: [],
          },
        ],
        panels: [
          panel('leaf', 500, 400, {
            role: 'front',
            origin: node('opening-1'),
            mover: 'opening-1/board',
            pose: {
              turn: [
                [0, -1, 0],
                [0, 0, 1],
                [-1, 0, 0],
              ],
              at: [60, 250, hingeZ],
            },
          }),
        ],
        bodies: [body({ id: 'leaf', mover: 'opening-1/board', min: [60, -250, hingeZ], max: [72, 250, hingeZ + 400] })],
      },
    });
  };

  it('folded flat at 100 over a floor at 800 it is too low to write on; at 250 it is right; at 360 too high', () => {
    const flat = Math.PI / 2;
    // the board 12 thick lies with its middle 6 beside the hinge: 894 or 906
    const [low] = findingsOf(board(100, flat), 'write-height');
    expect(low).toMatchObject({ severity: 'caution', limit: 950, facts: { lies: 'flat' } });
    expect(Math.abs((low?.value ?? 0) - 900)).toBeLessThanOrEqual(6.001);
    expect(findingsOf(board(250, flat), 'write-height')).toEqual([]);
    expect(findingsOf(board(360, flat), 'write-height')[0]?.limit).toBe(1150);
  });

  it('upright its middle is what counts', () => {
    // turned right round it hangs below its hinge: 800 + 360 − 200 = 960; from 600: 1200; from 900: 1500
    expect(findingsOf(board(360, Math.PI), 'write-height')).toEqual([]);
    expect(findingsOf(board(900, Math.PI), 'write-height')[0]).toMatchObject({
      limit: 1450,
      value: expect.closeTo(1500, 6),
      facts: { lies: 'upright' },
    });
  });
});

describe('mirror-view', () => {
  const VIEW = { mirror: [3000, 0, 700], glassForwardMm: 0, glassLowMm: 500, glassHighMm: 900, glassWidthMm: 1000 };
  /** A box right before the glass, from its left edge so far across, over its whole height. */
  const covered = (share: number, more: Record<string, unknown> = { rearView: VIEW }) =>
    inspectScene({
      survey: null,
      design: { vehicle: vehicle(more) },
      fitout: { bodies: [body({ id: 'side', min: [1, -500, 400], max: [2, -500 + 1000 * share, 1000] })] },
    });

  it('a box before three quarters of the glass covers three quarters of it', () => {
    // 24 columns of lines; the box takes 18 of them
    const [lost] = findingsOf(covered(0.75), 'mirror-view');
    expect(lost).toMatchObject({ severity: 'caution', limit: 0.5, parts: ['carcass-1'] });
    expect(lost?.value).toBeCloseTo(18 / 24, 9);
    expect(findingsOf(covered(0.45), 'mirror-view')).toEqual([]);
  });

  it('half way to the mirror half the width does the same', () => {
    const half = inspectScene({
      survey: null,
      design: { vehicle: vehicle({ rearView: VIEW }) },
      fitout: { bodies: [body({ id: 'side', min: [1500, -250, 590], max: [1501, 125, 810] })] },
    });
    expect(findingsOf(half, 'mirror-view')[0]?.value).toBeCloseTo(18 / 24, 9);
  });

  it('is not judged until mirror and glass have been measured', () => {
    expect(findingsOf(covered(1, {}), 'mirror-view')).toEqual([]);
  });
});

describe('rf-distance', () => {
  const antenna = (watts: number, at: Vec3) =>
    inspectScene({
      survey: null,
      design: { vehicle: vehicle({ antennas: [{ id: 'antenna-1', name: 'roof', at, watts }] }) },
    });

  it('50 W want 900; 800 forward of the sill is too near, 15 W want 300', () => {
    expect(findingsOf(antenna(50, [800, 0, 1000]), 'rf-distance')[0]).toMatchObject({
      severity: 'caution',
      parts: ['antenna-1'],
      value: 800,
      limit: 900,
    });
    expect(findingsOf(antenna(15, [800, 0, 1000]), 'rf-distance')).toEqual([]);
    expect(findingsOf(antenna(50, [900, 0, 1000]), 'rf-distance')).toEqual([]);
  });

  it('above a tall person in a helmet the height counts as well', () => {
    // 1870 + 30 + 60 − 800 = 1160 above the floor; an antenna at 1460 is 300 above: √(400² + 300²) = 500
    expect(findingsOf(antenna(50, [400, 0, 1460]), 'rf-distance')[0]?.value).toBeCloseTo(500, 9);
  });

  it('beyond the table nothing is made up', () => {
    expect(findingsOf(antenna(200, [2000, 0, 1000]), 'rf-distance')[0]).toMatchObject({
      limit: 0,
      facts: { watts: 200 },
    });
  });
});
