import { describe, expect, it } from 'vitest';
import { type Design, designSchema, emptyDesign } from '../../../src/design/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { sayFinding } from '../../../src/says/index.ts';
import { body, catalog, findingsOf, inspectScene, linesOf, rules } from '../fixture.ts';
import { mountScene, SPEAKER, SWITCHES } from '../scenes/mounts.ts';
import { hatched } from '../scenes/vehicle.ts';

describe('mount-off', () => {
  // Open by 90° the trim lies at 900, 300 along it is the speaker: it hangs down to 900 − 85 = 815 and looks down.
  it('says how far a speaker comes off its open hatch before something is in its way', () => {
    const inspection = mountScene({}, { low: 700, high: 765 });
    expect(linesOf(inspection, 'mount-off')).toEqual(['caution mount-1+post 50']); // 815 − 765
    const [finding] = findingsOf(inspection, 'mount-off');
    expect(finding?.limit).toBe(85);
    expect(finding && sayFinding(finding, 'mm', (id) => id).title).toBe('Speaker does not come off: post is before it');
  });

  it('is content where it is free soon enough, or looks another way', () => {
    expect(linesOf(mountScene({}, { low: 600, high: 725 }), 'mount-off')).toEqual([]); // 815 − 725 = 90
    expect(linesOf(mountScene({ offMm: 50 }, { low: 700, high: 764 }), 'mount-off')).toEqual([]);
    expect(linesOf(mountScene({ looks: 'left' }, { low: 700, high: 765 }), 'mount-off')).toEqual([]);
    expect(linesOf(mountScene({}), 'mount-off')).toEqual([]);
  });
});

describe('mount-height', () => {
  it('wants a switch in reach of a raised hand, closures open', () => {
    // On the trim of the vehicle, 1,000 up over a floor at 800.
    expect(linesOf(mountScene({ ...SWITCHES, on: null, at: [100, 0, 1000] }), 'mount-height')).toEqual([
      'caution mount-1 1800',
    ]);
    // On the open hatch: its face, 15 thick from the trim at −20, hangs with its middle 7.5 under 900: 1692.5.
    expect(linesOf(mountScene({ ...SWITCHES, at: [-12.5, 0, 600] }), 'mount-height')).toEqual([]);
    // A light is not worked by hand.
    expect(linesOf(mountScene({ device: 'light-strip-500', on: null, at: [100, 0, 1000] }), 'mount-height')).toEqual(
      [],
    );
  });
});

describe('a mount counts where it hangs', () => {
  it('swings with its closure and is checked on the way', () => {
    // Closed it looks into the bay; on its way up and out it meets what stands 40 before it.
    const design = designSchema.parse({ ...emptyDesign('T', 'mm'), survey: hatched, mounts: [SPEAKER] }) as Design;
    const fitout = solveFitOut(design, catalog, rules);
    const box = body({ id: 'box', min: [105, -60, 500], max: [300, 60, 640] });
    const swing = inspectScene({
      survey: hatched,
      design: { mounts: design.mounts },
      fitout: { ...fitout, bodies: [...fitout.bodies, box] },
    });
    expect(linesOf(swing, 'closure-swing')).toEqual([]);
    const near = inspectScene({
      survey: hatched,
      design: { mounts: design.mounts },
      fitout: {
        ...fitout,
        bodies: [...fitout.bodies, body({ id: 'shelf', min: [40, -60, 440], max: [300, 60, 530] })],
      },
    });
    // The lower edge of the speaker, 535 up, swings over a shelf 5 under it: it dips before it comes out.
    expect(findingsOf(near, 'closure-swing').length).toBe(1);
  });
});
