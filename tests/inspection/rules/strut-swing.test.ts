import { describe, expect, it } from 'vitest';
import { placed, seededRandom, turnAbout } from '../../../src/base/index.ts';
import { boxShape, capsuleShape, gapBetween } from '../../../src/bodies/index.ts';
import { vehicleBodyAt } from '../../../src/envelope/index.ts';
import { strutNearest } from '../../../src/inspection/rules/strut-swing.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { body, findingsOf, inspectScene, linesOf, node, spaceOf } from '../fixture.ts';

/** Ball points 200 under the hinge line at 900 and 500 under it, in the plane of the hatch. */
const STRUT = {
  id: 'strut',
  name: 'strut, left',
  kind: 'strut',
  movesWith: 'hatch',
  solid: { shape: 'capsule', from: [10, 560, 400], to: [10, 560, 700], radiusMm: 10 },
};

const survey = boxSurvey({ closures: [HATCH], obstacles: [STRUT] });
const space = spaceOf(survey);
const strut = space.bodies.find(({ id }) => id === 'strut');
const hatch = space.closures[0];
if (!strut || !hatch) throw new Error('the survey has lost its strut');

describe('a strut', () => {
  it('keeps its end on the body and goes with the closure at the other', () => {
    const pose = turnAbout(hatch.point, hatch.axis, hatch.opensRad);
    const open = vehicleBodyAt(strut, pose);
    expect(open.vertices).toContainEqual([10, 560, 400]);
    expect(open.vertices).toContainEqual(placed(pose, [10, 560, 700]));
    expect(open.radius).toBe(10);
  });

  it('sweeps into a box that stands clear of it where the hatch is shut', () => {
    // Open by 90° the upper end lies 200 behind the hinge line at its height: the strut leans out rearward, away from
    // the cabinet, over the sill.
    const over = (top: number) =>
      inspectScene({
        survey,
        fitout: { bodies: [body({ id: 'lip', origin: node('lip'), min: [-140, 540, 300], max: [-110, 580, top] })] },
      });
    const met = findingsOf(over(700), 'closure-swing').find(({ parts }) => parts[1] === 'strut');
    expect(met).toMatchObject({ severity: 'stop', facts: { what: 'meets', piece: 'strut, left' } });
    expect(linesOf(over(320), 'closure-swing').filter((line) => line.includes('strut'))).toEqual([]);
  });

  it('comes as near as the nearest of 3,000 samples, and never nearer, seed 9', () => {
    const random = seededRandom(9);
    let near = 0;
    for (let i = 0; i < 40; i++) {
      const [x, z] = [-250 + 300 * random(), 300 + 600 * random()];
      const box = boxShape({ min: [x, 540, z], max: [x + 20, 590, z + 40] });
      const found = strutNearest(strut, hatch, box, 60);
      let least = Infinity;
      for (let k = 0; k <= 3_000; k++) {
        const [, goes] = [
          null,
          placed(turnAbout(hatch.point, hatch.axis, (hatch.opensRad * k) / 3_000), [10, 560, 700]),
        ];
        least = Math.min(least, gapBetween(capsuleShape([10, 560, 400], goes, 10), box).distance);
      }
      if (found) near += 1;
      if (found) expect(Math.abs(found.gap - least)).toBeLessThan(0.2);
      else expect(least).toBeGreaterThan(60 - 0.2);
    }
    expect(near).toBeGreaterThan(10);
  });
});
