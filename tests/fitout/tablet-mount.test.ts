import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/fitout/index.ts';
import { armReach } from '../../src/views/arm-reach.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

const mount = (rest: Readonly<Record<string, unknown>> = {}) =>
  solved([
    carcass(
      fitted('opening-1', {
        kind: 'tablet-mount',
        arm: 'arm-tablet-swing',
        tablet: 'tablet-dock',
        side: 'left',
        swingDeg: 90,
        turnDeg: 90,
        ...rest,
      }),
    ),
  ]);
const boxOf = (fitOut: ReturnType<typeof mount>, id: string) =>
  bodyBox(fitOut.bodies.find((body) => body.id === id) as Body);

describe('a tablet mount', () => {
  it('is stowed with the screen flat in the face, its middle at the end of the arm behind it', () => {
    const fitOut = mount();
    expect(fitOut.problems).toEqual([]);
    const [screen, arm] = ['screen', 'arm'].map((role) => boxOf(fitOut, `opening-1/${role}`));
    // The arm begins a reveal of 2 from the side: 17.7 + 2, and is 420 long and 90 deep behind a screen of 60.
    expect(arm?.min[0]).toBeCloseTo(19.7, 9);
    expect(arm?.max[0]).toBeCloseTo(439.7, 9);
    expect([arm?.min[1], arm?.max[1]]).toEqual([60, 150]);
    // The screen is 300 wide about 439.7.
    expect(screen?.min[0]).toBeCloseTo(289.7, 9);
    expect(screen?.max[1]).toBe(60);
  });

  it('swings about a line before the face, and the screen turns back on the arm about a line behind it', () => {
    const fitOut = mount();
    const [swing, turn] = fitOut.movers;
    expect(swing?.motion).toMatchObject({ kind: 'turn', axis: [0, 0, -1] });
    if (swing?.motion.kind !== 'turn' || turn?.motion.kind !== 'turn') throw new Error('no turn');
    // Half the gap of moving parts before the face.
    expect(swing.motion.point.slice(0, 2)).toEqual([expect.closeTo(19.7, 9), -1.5]);
    expect(turn.motion.point.slice(0, 2)).toEqual([expect.closeTo(439.7, 9), 60]);
    expect(turn.motion.axis).toEqual([0, 0, 1]);
    expect(turn.carriedBy).toBe(swing.id);
    // √(420² + 61.5²)
    const reach = armReach(fitOut, 'opening-1');
    expect(reach?.radiusMm).toBeCloseTo(424.479, 3);
    // At the height of the screen, half way up 17.7 to 682.3.
    expect(reach?.centre[2]).toBeCloseTo(350, 9);
    expect(armReach(fitOut, 'opening-9')).toBeNull();
  });

  it('mirrors to the right side', () => {
    const fitOut = mount({ side: 'right' });
    // 882.3 − 2
    expect(boxOf(fitOut, 'opening-1/arm').max[0]).toBeCloseTo(880.3, 9);
    expect(fitOut.movers[0]?.motion).toMatchObject({ axis: [0, 0, 1] });
  });

  it('is bolted four times through its side, weighs arm and screen, and draws what the screen does', () => {
    const fitOut = mount();
    const holes = panelOf(fitOut, 'carcass-1/side-left').cuts.filter((cut) => cut.kind === 'hole');
    expect(holes.map((cut) => cut.kind === 'hole' && cut.diameter)).toEqual([6.6, 6.6, 6.6, 6.6]);
    // 1.9 kg arm, 2.4 kg tablet in its dock.
    const own = fitOut.masses.filter(({ origin }) => origin === 'opening-1');
    expect(own.reduce((sum, { massKg }) => sum + massKg, 0)).toBeCloseTo(4.3, 9);
    expect(fitOut.devices.map(({ device, mover }) => [device, mover])).toEqual([
      ['tablet-dock', 'opening-1/screen-turn'],
    ]);
  });

  it('asks for the sweep of whatever reaches furthest from its line', () => {
    // The screen that turns: 420 + √(150² + 60²) = 581.555, past √((420 + 150)² + 61.5²) = 573.308; 2 of reveal, 3 of gap.
    // Deep: 60 of screen, 150 of its half width turned back, 3 of gap; up: 230 and two reveals.
    const least = mount().openings[0]?.least;
    expect(least?.[0]).toBeCloseTo(586.555, 3);
    expect(least?.slice(1)).toEqual([213, 234]);
  });

  it('says which arm or screen the catalog does not have', () => {
    expect(mount({ tablet: 'screen-x' }).problems).toMatchObject([{ code: 'unknown-device' }]);
    expect(mount({ arm: 'arm-x' }).problems).toMatchObject([{ code: 'unknown-hardware' }]);
  });
});
