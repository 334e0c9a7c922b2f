import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/base/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import { sayFinding } from '../../src/says/index.ts';
import { body, findingsOf, inspectScene, linesOf, node } from './fixture.ts';
import { moving } from './scenes/vehicle.ts';

type Motion = FitOut['movers'][number]['motion'];

const slide = (direction: Vec3, travel: number): Motion => ({ kind: 'slide', direction, travel });
const turn = (axis: Vec3, deg: number): Motion => ({
  kind: 'turn',
  point: [100, 0, 0],
  axis,
  travelRad: (deg * Math.PI) / 180,
});

const withMover = (motion: Motion, bodies = true) =>
  inspectScene({
    fitout: {
      movers: [moving('box', motion)],
      bodies: bodies
        ? [body({ id: 'box/body', origin: node('box'), mover: 'box', min: [100, 0, 0], max: [300, 100, 100] })]
        : [],
    },
  });

const said = (motion: Motion): readonly string[] =>
  findingsOf(withMover(motion), 'mover-travel').map((finding) => sayFinding(finding, 'mm', (id) => id).title);

describe('movers that only a hurt file has', () => {
  it('says in words what is wrong with each, and stops', () => {
    expect(said(slide([0, 0, 0], 400))).toEqual(['Box cannot be judged: its direction or axis has no length']);
    expect(said(turn([0, 0, 0], 90))).toEqual(['Box cannot be judged: its direction or axis has no length']);
    expect(said(turn([0, 0, 1], 400))).toEqual(['Box cannot be judged: it turns more than once round']);
    expect(said(slide([-1, 0, 0], Number.NaN))).toEqual(['Box cannot be judged: how far it goes is not a number']);
    expect(said(slide([-1, 0, 0], Number.POSITIVE_INFINITY))).toEqual([
      'Box cannot be judged: how far it goes is not a number',
    ]);
    expect(linesOf(withMover(turn([0, 0, 1], 400)), 'mover-travel')).toEqual(['stop box 0']);
  });

  it('turns once round and no further without a word', () => {
    expect(said(turn([0, 0, 1], 360))).toEqual([]);
  });

  it('has nothing to say of a mover without bodies', () => {
    expect(linesOf(withMover(slide([-1, 0, 0], 400), false), 'mover-travel')).toEqual([]);
  });

  it('judges two hundred movers that stand in each other without a hang', () => {
    const ids = Array.from({ length: 200 }, (_, i) => `box-${i}`);
    const began = performance.now();
    const inspection = inspectScene({
      fitout: {
        movers: ids.map((id, i) => moving(id, i % 2 === 0 ? slide([-1, 0, 0], 400) : turn([0, 0, 1], 90))),
        // Each overlaps the next by a third: the worst that a file can ask for.
        bodies: ids.map((id, i) =>
          body({ id: `${id}/body`, origin: node(id), mover: id, min: [100, 20 * i, 0], max: [300, 20 * i + 30, 100] }),
        ),
      },
    });
    expect(inspection.checked).toMatchObject({ movers: 200, moverPairs: 19_900 });
    expect(findingsOf(inspection, 'body-body').length).toBeGreaterThan(100);
    expect(performance.now() - began).toBeLessThan(60_000);
  }, 90_000);
});
