import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import { firstMet, type Triangle } from '../../../src/bodies/index.ts';
import { type Design, freshWallAnchor } from '../../../src/design/index.ts';
import { sayFinding } from '../../../src/says/index.ts';
import { boxSurvey, HATCH, surveyOf } from '../../envelope/surveys.ts';
import { findingsOf, node } from '../fixture.ts';
import { bracketDesign, inspectBracket } from '../scenes/bracket.ts';

const told = (design: Design) => findingsOf(inspectBracket(design), 'bracket-reach');

describe('bracket-reach: an angle that bridges 25 to 60', () => {
  it('is clear of both limits by the half width: nothing', () => {
    // 25 + 6 and 60 − 6.
    for (const gap of [31, 45, 54]) expect(told(bracketDesign(gap))).toEqual([]);
  });

  it('is within the half width of a limit, on either side of it: caution', () => {
    for (const gap of [54.5, 60, 66]) {
      const [finding, ...more] = told(bracketDesign(gap));
      expect(more).toEqual([]);
      expect(finding).toMatchObject({ severity: 'caution', limit: 60, unit: 'mm', source: 'shop judgement' });
      expect(finding?.value).toBeCloseTo(gap, 9);
      expect(finding?.uncertainty).toBeCloseTo(6, 9);
    }
    for (const gap of [30.5, 25, 19])
      expect(told(bracketDesign(gap))).toMatchObject([{ severity: 'caution', limit: 25 }]);
  });

  it('is out of reach or in the way by more than the half width: stop, with the line from panel to wall', () => {
    const [far] = told(bracketDesign(66.5));
    expect(far).toMatchObject({ severity: 'stop', limit: 60 });
    // The bolt is 80 from the back: 60 + 700 − 80 forward; the side at 600 − 66.5.
    expect(far?.at?.[0]).toEqual([680, 533.5, 300]);
    expect(far?.at?.[1][1]).toBeCloseTo(600, 9);
    expect(told(bracketDesign(18.5))).toMatchObject([{ severity: 'stop', limit: 25 }]);
    expect(told(bracketDesign(0))).toMatchObject([{ severity: 'stop', value: 0, limit: 25 }]);
  });

  it('reaches to what stands before the wall, a wheelhouse say', () => {
    const solid = { shape: 'box', min: [500, 570, 0], max: [900, 600, 350] };
    const wheel = { id: 'wheel', name: 'Wheelhouse', kind: 'wheelhouse', solid };
    const survey = boxSurvey({ sigmaMm: 2, closures: [HATCH], obstacles: [wheel] });
    // 75 to the wall, 45 to the wheelhouse at 570.
    expect(told(bracketDesign(75))).toMatchObject([{ severity: 'stop' }]);
    expect(told(bracketDesign(75, 'bracket-angle-60', survey))).toEqual([]);
  });

  it('meets a wall that leans where it is, at the height of the bolt', () => {
    // From 600 at the floor to 540 at 600 up: 570 at 300 up, and the side at 533: 37.
    const left = [
      [600, 0],
      [540, 600],
      [540, 900],
    ] as const;
    const leaning = surveyOf(
      [0, 1500].map((xMm) => ({ xMm, left })),
      { sigmaMm: 2, closures: [HATCH] },
    );
    expect(told(bracketDesign(67, 'bracket-angle-60', leaning))).toEqual([]);
    const [near] = told(bracketDesign(50, 'bracket-angle-60', leaning));
    // 570 − 550.
    expect(near).toMatchObject({ severity: 'caution', limit: 25 });
    expect(near?.value).toBeCloseTo(20, 6);
  });

  it('finds no wall in the opening of the hatch', () => {
    // The back of a carcass that looks forward is to the rear, where the hatch is.
    const base = freshWallAnchor(node('anchor-9'), 300);
    const design = bracketDesign(100, 'bracket-angle-60', undefined, {
      facing: 'front',
      anchors: [{ ...base, side: 'back', bracket: 'bracket-angle-60' }],
    });
    expect(told(design)).toMatchObject([{ severity: 'stop', facts: { wall: 'none' } }]);
    expect(told(design).map((finding) => sayFinding(finding, 'mm', (id) => id).title)).toEqual([
      'Angle bracket 60 × 60 × 40 × 4 mm, steel at anchor-9 has no wall of the vehicle before it',
    ]);
  });

  it('bridges no more than its length where its record does not say', () => {
    // A bumper of 20: any gap under 20 less 6 is filled, none over.
    expect(told(bracketDesign(14, 'rubber-bumper-20'))).toEqual([]);
    expect(told(bracketDesign(20, 'rubber-bumper-20'))).toMatchObject([{ severity: 'caution', limit: 20 }]);
    expect(told(bracketDesign(27, 'rubber-bumper-20'))).toMatchObject([{ severity: 'stop', limit: 20 }]);
  });
});

describe('the first triangle that a ray meets', () => {
  const square = (x: number): readonly Triangle[] => [
    [
      [x, 0, 0],
      [x, 10, 0],
      [x, 10, 10],
    ],
    [
      [x, 0, 0],
      [x, 10, 10],
      [x, 0, 10],
    ],
  ];
  const way: Vec3 = [1, 0, 0];

  it('is the nearest before it, on an edge that two share too, and none behind or beside it', () => {
    const both = [...square(30), ...square(20), ...square(-5)];
    expect(firstMet(both, [0, 3, 4], way)).toEqual({ distance: 20, at: [20, 3, 4] });
    expect(firstMet(both, [0, 5, 5], way)?.distance).toBe(20);
    expect(firstMet(both, [25, 3, 4], way)?.distance).toBe(5);
    expect(firstMet(both, [31, 3, 4], way)).toBeNull();
    expect(firstMet(both, [0, 11, 4], way)).toBeNull();
  });
});
