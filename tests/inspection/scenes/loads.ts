import { inspectScene, mass, vehicleWith } from '../fixture.ts';

/** Wheelbase 3,000, sill 900 behind the rear axle, floor 750 above ground; front 1,200 and rear 1,000 as received. */
export const FIGURES = {
  ratings: { grossKg: 3000, frontAxleKg: 1500, rearAxleKg: 1700 },
  wheelbaseMm: 3000,
  trackMm: 1600,
  sillBehindRearAxleMm: 900,
  floorAboveGroundMm: 750,
  cgHeightAsReceivedMm: 700,
  slip: { frontKg: 1200, rearKg: 1000 },
  seats: [
    { id: 'seat-1', name: 'Driver', at: [2400, 400, 300], occupant: 'driver', occupantKg: 100 },
    { id: 'seat-2', name: 'Crew', at: [2400, -400, 300], occupant: 'crew', occupantKg: null },
  ],
};

/** That vehicle, changed as given, with so much gear at a place. */
export const loadScene = (
  kg: number,
  vehicle: Record<string, unknown> = {},
  at: readonly [number, number, number] = [300, 0, 300],
) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicleWith({ ...FIGURES, ...vehicle }) },
    fitout: { masses: kg > 0 ? [mass('load', kg, at, { kind: 'gear' })] : [] },
  });

/** A cabinet and half a ton of gear in a vehicle of which only the gross rating may be known. */
export const addedScene = (kg: number, grossKg: number | null, vehicle: Record<string, unknown> = {}) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicleWith({ ratings: { grossKg, frontAxleKg: null, rearAxleKg: null }, ...vehicle }) },
    fitout: { masses: [mass('side', kg, [0, 0, 0]), mass('bag', 500, [0, 0, 0], { kind: 'gear' })] },
  });

/** A cabinet of 100 kg and 185 kg of gear over the rear axle of 1,200 and 1,000 kg, and what the scale says after the build. */
export const weighedScene = (
  frontKg: number,
  rearKg: number,
  id = 'fitted',
  {
    slip = { frontKg: 1200, rearKg: 1000 },
    cabinetKg = 100,
    bagKg = 120,
    kitKg = 65,
    bagSigmaKg = 8,
    kitSigmaKg = 6,
  } = {},
) =>
  inspectScene({
    survey: null,
    design: {
      vehicle: vehicleWith({
        wheelbaseMm: 3000,
        sillBehindRearAxleMm: 900,
        slip,
        built: { case: id, frontKg, rearKg },
      }),
    },
    fitout: {
      masses: [
        mass('side', cabinetKg, [900, 0, 0]),
        mass('bag', bagKg, [900, 0, 0], { kind: 'gear', sigmaKg: bagSigmaKg }),
        mass('kit', kitKg, [900, 0, 0], { kind: 'gear', sigmaKg: kitSigmaKg }),
      ],
    },
  });
