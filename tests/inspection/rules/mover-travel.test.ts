import { describe, expect, it } from 'vitest';
import { changeSurveyItem, type Design, type NodeId } from '../../../src/design/index.ts';
import { sayFinding } from '../../../src/says/index.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';

const flow = await wholeFlow();
/** The striker made as high as given: the tray of the right carcass runs out over it. */
const withStriker = (high: number): Design => {
  const design = demoDesign('harrow-fell');
  return changeSurveyItem(design, 'obstacles', 'obstacle-1' as NodeId, {
    solid: { shape: 'box', min: [-6, -80, 0], max: [34, 34, high] },
  });
};
const travels = (design: Design) => flow.inspection(design).findings.filter(({ rule }) => rule === 'mover-travel');
/** Height of the lowest part that rides on the tray. */
const underside = (): number => {
  const { bodies, movers } = flow.fitOut(demoDesign('harrow-fell'));
  const tray = movers.find(({ name }) => name === 'tray');
  const riding = bodies.filter(({ mover }) => mover !== null && mover === tray?.id);
  return Math.min(...riding.flatMap(({ shape }) => shape.vertices.map((vertex) => vertex[2])));
};

describe('mover-travel', () => {
  it('says nothing where every mover reaches its full travel with room to spare', () => {
    expect(travels(demoDesign('harrow-fell'))).toEqual([]);
  });

  it('stops a tray at the very millimetre where its front lip reaches a striker that is too high', () => {
    const [finding] = travels(withStriker(underside() + 2));
    expect(finding).toMatchObject({
      severity: 'stop',
      unit: 'mm',
      parts: [expect.stringMatching(/^opening-/), 'obstacle-1'],
    });
    const { bodies, movers } = flow.fitOut(demoDesign('harrow-fell'));
    const tray = movers.find(({ name }) => name === 'tray');
    // What rides lowest begins at this depth; it meets the striker's inner face at x = 34 after that much less 34.
    const lowest = bodies.filter(
      ({ mover, shape }) => mover === tray?.id && shape.vertices.some((v) => v[2] < underside() + 2),
    );
    const nearest = Math.min(...lowest.flatMap(({ shape }) => shape.vertices.map((vertex) => vertex[0])));
    expect(finding?.value).toBeCloseTo(nearest - 34, 1);
  });

  it('cautions where it passes closer than moving parts should, and says where', () => {
    const [finding] = travels(withStriker(underside() - 1));
    expect(finding).toMatchObject({ severity: 'caution', parts: [expect.stringMatching(/^opening-/), 'obstacle-1'] });
    expect(finding?.value).toBeCloseTo(1, 1);
    if (finding) expect(sayFinding(finding, 'mm', (id) => id).title).toMatch(/coming out, passes 1 mm from striker/);
  });

  it('offers a shorter slide that stops before the striker, tried and clear', () => {
    const design = withStriker(underside() + 2);
    const blocked = flow.inspectionWithWaysOut(design).findings.find(({ rule }) => rule === 'mover-travel');
    for (const way of blocked?.waysOut ?? [])
      expect(travels(way.design).filter(({ severity }) => severity === 'stop')).toEqual([]);
  });
});
