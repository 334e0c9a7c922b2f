import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/fitout/index.ts';
import { carcass, fitted, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;

/** Clear 864.6 × 581.6 × 664.6 (across × deep × up) at [17.7, 0, 17.7]. */
const held = (rest: Plain = {}, gear: readonly Plain[] = []) =>
  solved(
    [
      carcass(
        fitted('opening-1', { kind: 'apparatus-bracket', bracket: 'cradle-pack-plate', mounting: 'back', ...rest }),
      ),
    ],
    { gear },
  );

/** 350 long, 240 wide, 630 high as it stands. */
const set = (massKg: number, stance = 'upright'): Plain => ({
  id: 'gear-1',
  name: 'Set',
  sizeMm: [350, 240, 630],
  massKg,
  massFrom: 'measured',
  place: { opening: 'opening-1', level: 0, at: [0, 0, 0], stance },
});

describe('an apparatus bracket', () => {
  it('stands on the back in the middle, and leaves the room before it', () => {
    const fitOut = held();
    expect(fitOut.problems).toEqual([]);
    // Length 220 deep, width 120 across, height 400.
    const { min, max } = bodyBox(fitOut.bodies.find(({ id }) => id === 'opening-1/bracket') as Body);
    expect([min[0], max[0]]).toEqual([450 - 60, 450 + 60]);
    expect(min[1]).toBeCloseTo(581.6 - 220, 9);
    // (664.6 − 400) / 2 above and below.
    expect(min[2]).toBeCloseTo(17.7 + 132.3, 9);
    expect(fitOut.rooms[0]?.size[1]).toBeCloseTo(361.6, 9);
    // On the floor it stands there.
    const floor = held({ mounting: 'floor' }).bodies.find(({ id }) => id === 'opening-1/bracket') as Body;
    expect(bodyBox(floor).min[2]).toBeCloseTo(17.7, 9);
    expect(fitOut.openings[0]?.least).toEqual([120, 260, 400]);
  });

  it('has a strap and a positive lock, which weigh and are bought', () => {
    const fitOut = held({ strap: 'strap-quick-50', lock: 'lock-pack-lever' });
    const kg = (role: string) => fitOut.masses.find(({ id }) => id === `opening-1/${role}`)?.massKg;
    expect([kg('bracket'), kg('strap'), kg('lock')]).toEqual([2.6, 0.4, 0.3]);
    // Bolted at four corners.
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/bracket-bolts')?.quantity).toBe(4);
    expect(held({ lock: 'no-lock' }).problems).toMatchObject([{ code: 'unknown-hardware', because: ['no-lock'] }]);
  });

  it('asks for the next larger cylinder where it is to go on, as the set lies', () => {
    const least = (rest: Plain, gear: Plain) => held(rest, [gear]).openings[0]?.least;
    // 240 + 3 across, 350 + 3 + 220 of bracket deep, 630 + 15 up.
    expect(least({}, set(11.6))).toEqual([243, 573, 645]);
    // The set of 13.5 kg is the next above 11.6: 350 × 260 × 640.
    expect(least({ nextSizeUp: true }, set(11.6))).toEqual([263, 573, 655]);
    // The one after it, 15.5 kg, is 360 × 285 × 650; on its back 650 lies deep and 360 stands up, under the 400 of the bracket.
    expect(least({ nextSizeUp: true }, set(13.5, 'on-back'))).toEqual([288, 873, 400]);
    // Nothing is larger than the largest.
    expect(least({ nextSizeUp: true }, set(16))).toEqual([243, 573, 645]);
    expect(held({ nextSizeUp: true }, [set(11.6)]).rooms[0]?.growth).toEqual([20, 0, 10]);
  });
});
