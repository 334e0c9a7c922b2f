import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import type { CarryIn, CarryLeg, CarryPose } from '../../../src/inspection/index.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { cutOfSkin } from '../../../src/shop/papers/carry-ground.ts';
import { papersOf } from '../../../src/shop/papers/index.ts';
import { shopWork } from '../../../src/shop/shop-work.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';
import { emptyInspection } from '../fixture.ts';
import { faces, pdfText } from '../paper/poppler.ts';

const flow = await wholeFlow();
const HOME: CarryPose = { shift: [0, 0, 0], pitchRad: 0, rollRad: 0, yawRad: 0 };

const pagesOf = (name: string, carry: CarryIn | null) => {
  const design = demoDesign(name);
  const space = flow.space(design);
  const [fitout, catalog, rules] = [flow.fitOut(design), flow.catalog, flow.rules(design)];
  if (!space.ok) throw new Error('no cargo space');
  const work = shopWork({ design, fitout, catalog, rules, space: space.value, inspection: emptyInspection, carry });
  return (
    papersOf(work)
      .find((each) => each.name === 'carry-in')
      ?.pages() ?? []
  );
};
const textOf = (pages: ReturnType<typeof pagesOf>): string =>
  pdfText(drawingsToPdf(pages, { title: 'Carrying in', subject: '' }, faces)).replace(/\s+/g, ' ');

describe('the paper of carrying in', () => {
  const design = demoDesign('quillmoor');
  const found = flow.carryIn(design);
  const [own] = found?.carcasses ?? [];
  if (!found || !own?.path) throw new Error('no way for the cabinet of the small demo');

  it('draws what the bay plays: a picture for each step from three sides, with what is least and where', () => {
    const text = textOf(pagesOf('quillmoor', found));
    // Two steps, so each sight twice.
    for (const sight of ['from the right', 'from above', 'from behind, looking in'])
      expect(text.split(sight).length - 1, sight).toBe(2);
    expect(text).toContain('1. Slide it 1198 mm forward. Held level and square to the vehicle.');
    expect(text).toMatch(/Least gap 13\.7 mm ± \d\.\d mm, to striker\./);
    expect(text).toMatch(/Begin behind the vehicle, its underside 28 mm above the floor/);
    for (const word of ['sill', 'bumper', 'roof', 'opening']) expect(text, word).toContain(word);
  });

  it('says how it is turned, which way, and where it is held aside', () => {
    // Held 200 to the left, nose down 15° and its front swung 10° to the right; then straight into its place.
    const tilted: CarryPose = { shift: [-900, 200, 60], pitchRad: radians(15), rollRad: 0, yawRad: radians(-10) };
    const behind: CarryPose = { ...HOME, shift: [-1200, 200, 60] };
    const near: CarryLeg = {
      leastGap: 4,
      nearest: 'striker',
      uncertainty: 2,
      at: [
        [0, 0, 20],
        [0, 0, 16],
      ],
    };
    const far: CarryLeg = { leastGap: Infinity, nearest: '', uncertainty: 0, at: null };
    const path = { poses: [HOME, tilted, behind], leastGap: 4, nearest: 'striker', uncertainty: 2, legs: [near, far] };
    const pages = pagesOf('quillmoor', { ...found, carcasses: [{ ...own, path, alone: null }] });
    const text = textOf(pages);
    expect(text).toContain('its middle 200 mm to the left of the middle of the vehicle');
    expect(text).toContain('1. Tilt its front edge down 15°, swing its front edge to the right 10°, slide it 300 mm');
    expect(text).toContain('Held 15° front edge down, 10° front edge swung to the right. Nothing near on this step.');
    // Legs are kept outwards: the one between place and tilt is the last step in.
    expect(text).toMatch(/2\. .*Held level and square to the vehicle\. Least gap 4 mm ± 2 mm, to striker\./);
  });

  it('uses black lines alone, all within the page', () => {
    for (const page of pagesOf('harrow-fell', flow.carryIn(demoDesign('harrow-fell'))))
      for (const shape of page.shapes) {
        const points = shape.kind === 'line' ? [shape.from, shape.to] : shape.kind === 'text' ? [shape.at] : [];
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(page.size[0]);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(page.size[1]);
        }
      }
  });

  it('cuts the skin where a plane passes: round a box through its middle, 2 · (800 + 500) = 2600', () => {
    const { vertices, faces: rings } = boxShape({ min: [0, -400, 0], max: [600, 400, 500] });
    const triangles = rings.flatMap((face) => face.slice(2).flatMap((c, i) => [face[0] ?? 0, face[i + 1] ?? 0, c]));
    const cut = cutOfSkin({ positions: vertices.flat(), triangles }, 0, 300);
    const length = cut.reduce((sum, [a, b]) => sum + Math.hypot(b[1] - a[1], b[2] - a[2]), 0);
    expect(length).toBeCloseTo(2600, 9);
    expect(cutOfSkin({ positions: vertices.flat(), triangles }, 0, 700)).toEqual([]);
  });
});
