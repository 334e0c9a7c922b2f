import { describe, expect, it } from 'vitest';
import { emptyDesign, type Vehicle } from '../../src/design/index.ts';
import { vehicleFacts } from '../../src/envelope/index.ts';
import { rules } from './random-survey.ts';

const whole: Vehicle = {
  ...emptyDesign('Marrow Hill', 'mm').vehicle,
  ratings: { grossKg: 2900, frontAxleKg: 1480, rearAxleKg: 1600 },
  wheelbaseMm: 2970,
  trackMm: 1675,
  slip: { frontKg: 1095, rearKg: 1015, leftKg: 1050, rightKg: 1060, note: '' },
  fuel: { tankLitres: 72, atSlipShare: 1, kgPerLitre: 0.745, at: [1400, 0, -150] },
  seats: [
    {
      id: 'seat-1' as Vehicle['seats'][number]['id'],
      name: 'driver',
      at: [2240, 370, 300],
      occupant: 'driver',
      occupantKg: null,
    },
  ],
};
const codes = (change: Partial<Vehicle>): readonly string[] =>
  vehicleFacts({ ...whole, ...change }, rules).map(({ code }) => code);
const slip = (change: Partial<NonNullable<Vehicle['slip']>>): Partial<Vehicle> => ({
  slip: { frontKg: 1095, rearKg: 1015, leftKg: null, rightKg: null, note: '', ...change },
});

describe('vehicleFacts', () => {
  it('has nothing to say of figures that agree', () => {
    expect(codes({})).toEqual([]);
  });

  it('axles that together carry less than the gross rating, or one that carries more', () => {
    // 1480 + 1400 = 2880 < 2900.
    expect(codes({ ratings: { ...whole.ratings, rearAxleKg: 1400 } })).toEqual(['axles-below-gross']);
    expect(codes({ ratings: { ...whole.ratings, rearAxleKg: 3000 } })).toEqual(['axle-above-gross']);
  });

  it('a slip above the ratings, empty, with one side, or with sides that do not make the axles', () => {
    // 1500 + 1500 = 3000 over 2900, and 1500 over the front axle's 1480.
    expect(codes(slip({ frontKg: 1500, rearKg: 1500 }))).toEqual(['slip-above-gross', 'slip-above-front-axle']);
    expect(codes(slip({ rearKg: 0 }))).toEqual(['slip-without-weight']);
    expect(codes(slip({ leftKg: 1050 }))).toEqual(['slip-one-side-only']);
    // 1050 + 1081 = 2131 against 2110: 21 kg, over the 20 of the house rule; 1080 makes just 20.
    expect(codes(slip({ leftKg: 1050, rightKg: 1081 }))).toEqual(['slip-sides-disagree']);
    expect(codes(slip({ leftKg: 1050, rightKg: 1080 }))).toEqual([]);
  });

  it('fuel and occupants that nobody has written down are notes, not stops', () => {
    const facts = vehicleFacts({ ...whole, fuel: null, seats: [] }, rules);
    expect(facts.map(({ code, severity }) => `${code} ${severity}`)).toEqual([
      'fuel-unknown note',
      'occupants-unknown note',
    ]);
  });

  it('a track wider than the wheelbase is long', () => {
    expect(codes({ trackMm: 2970 })).toEqual(['track-above-wheelbase']);
  });
});
