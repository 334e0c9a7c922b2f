import { describe, expect, it } from 'vitest';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { body, findingsOf, inspectScene, linesOf, vehicleWith } from '../fixture.ts';
import {
  antennaScene,
  drawerTopScene,
  glassScene,
  openBoardScene,
  openHatchScene,
  plateScene,
  pullScene,
  REAR_VIEW,
} from '../scenes/heights.ts';

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
  it('head-clear: hinge 900 over a floor at 800, turned by a right angle, is 1700 of 1900', () => {
    const [low] = findingsOf(openHatchScene(800), 'head-clear');
    expect(low).toMatchObject({ severity: 'caution', parts: ['hatch'], limit: 1900 });
    expect(low?.value).toBeCloseTo(1700, 6);
    expect(findingsOf(openHatchScene(1010), 'head-clear')).toEqual([]);
  });

  it('pull-height: over a floor at 900 its edge is 1800 of 1750', () => {
    const [high] = findingsOf(openHatchScene(900), 'pull-height');
    expect(high).toMatchObject({ severity: 'caution', parts: ['hatch'], limit: 1750 });
    expect(high?.value).toBeCloseTo(1800, 6);
    expect(findingsOf(openHatchScene(800), 'pull-height')).toEqual([]);
  });

  it('neither is judged without the height of the floor', () => {
    const blind = inspectScene({ survey: boxSurvey({ closures: [HATCH] }), design: { vehicle: vehicleWith({}) } });
    for (const rule of ['head-clear', 'pull-height'] as const) expect(findingsOf(blind, rule)).toEqual([]);
  });
});

describe('pull-height', () => {
  it('counts the pulls of the cabinet as well', () => {
    expect(linesOf(pullScene(960), 'pull-height')).toEqual(['caution opening-1/pull 1760']);
    expect(linesOf(pullScene(940), 'pull-height')).toEqual([]);
  });
});

describe('see-in', () => {
  it('a box whose edge is 310 over a floor at 800 cannot be looked into; its front does not count', () => {
    expect(linesOf(drawerTopScene(310, true), 'see-in')).toEqual(['note opening-1 1110']);
    expect(findingsOf(drawerTopScene(310, true), 'see-in')[0]?.limit).toBe(1100);
    expect(linesOf(drawerTopScene(290, true), 'see-in')).toEqual([]);
    expect(linesOf(drawerTopScene(310, false), 'see-in')).toEqual([]);
  });
});

describe('write-height', () => {
  it('folded flat at 100 over a floor at 800 it is too low to write on; at 250 it is right; at 360 too high', () => {
    const flat = Math.PI / 2;
    // the board 12 thick lies with its middle 6 beside the hinge: 894 or 906
    const [low] = findingsOf(openBoardScene(100, flat), 'write-height');
    expect(low).toMatchObject({ severity: 'caution', limit: 950, facts: { lies: 'flat' } });
    expect(Math.abs((low?.value ?? 0) - 900)).toBeLessThanOrEqual(6.001);
    expect(findingsOf(openBoardScene(250, flat), 'write-height')).toEqual([]);
    expect(findingsOf(openBoardScene(360, flat), 'write-height')[0]?.limit).toBe(1150);
  });

  it('upright its middle is what counts', () => {
    // turned right round it hangs below its hinge: 800 + 360 − 200 = 960; from 600: 1200; from 900: 1500
    expect(findingsOf(openBoardScene(360, Math.PI), 'write-height')).toEqual([]);
    expect(findingsOf(openBoardScene(900, Math.PI), 'write-height')[0]).toMatchObject({
      limit: 1450,
      value: expect.closeTo(1500, 6),
      facts: { lies: 'upright' },
    });
  });
});

describe('mirror-view', () => {
  it('a box before three quarters of the glass covers three quarters of it', () => {
    // 24 columns of lines; the box takes 18 of them
    const [lost] = findingsOf(glassScene(0.75), 'mirror-view');
    expect(lost).toMatchObject({ severity: 'caution', limit: 0.5, parts: ['carcass-1'] });
    expect(lost?.value).toBeCloseTo(18 / 24, 9);
    expect(findingsOf(glassScene(0.45), 'mirror-view')).toEqual([]);
  });

  it('half way to the mirror half the width does the same', () => {
    const half = inspectScene({
      survey: null,
      design: { vehicle: vehicleWith({ floorAboveGroundMm: 800, rearView: REAR_VIEW }) },
      fitout: { bodies: [body({ id: 'side', min: [1500, -250, 590], max: [1501, 125, 810] })] },
    });
    expect(findingsOf(half, 'mirror-view')[0]?.value).toBeCloseTo(18 / 24, 9);
  });

  it('is not judged until mirror and glass have been measured', () => {
    expect(findingsOf(glassScene(1, {}), 'mirror-view')).toEqual([]);
  });
});

describe('rf-distance', () => {
  it('50 W want 900; 800 forward of the sill is too near, 15 W want 300', () => {
    expect(findingsOf(antennaScene(50, [800, 0, 1000]), 'rf-distance')[0]).toMatchObject({
      severity: 'caution',
      parts: ['antenna-1'],
      value: 800,
      limit: 900,
    });
    expect(findingsOf(antennaScene(15, [800, 0, 1000]), 'rf-distance')).toEqual([]);
    expect(findingsOf(antennaScene(50, [900, 0, 1000]), 'rf-distance')).toEqual([]);
  });

  it('above a tall person in a helmet the height counts as well', () => {
    // 1870 + 30 + 60 − 800 = 1160 above the floor; an antenna at 1460 is 300 above: √(400² + 300²) = 500
    expect(findingsOf(antennaScene(50, [400, 0, 1460]), 'rf-distance')[0]?.value).toBeCloseTo(500, 9);
  });

  it('beyond the table nothing is made up', () => {
    expect(findingsOf(antennaScene(200, [2000, 0, 1000]), 'rf-distance')[0]).toMatchObject({
      limit: 0,
      facts: { watts: 200 },
    });
  });
});
