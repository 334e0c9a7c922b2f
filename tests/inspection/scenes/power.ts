import { catalog, inspectScene, node, openingOf, panel, vehicleWith } from '../fixture.ts';
import { FACING_REAR } from './access.ts';
import { pieceOf } from './sliders.ts';

export const device = (id: string, record: string, opening: string | null = 'opening-1') => ({
  id,
  origin: node(id),
  device: record,
  at: [0, 0, 0] as const,
  opening: opening === null ? null : node(opening),
  mover: null,
});

export const power = (parts: Record<string, unknown>) => ({ vehicle: vehicleWith({ power: parts }) });

/** So many devices of one record, each in an opening of its own, so that none shares its loom. */
export const apart = (count: number, record: string) =>
  Array.from({ length: count }, (_, i) => device(`d-${i}`, record, `opening-${i}`));

const radio = catalog.devices.get('radio-50');
if (!radio) throw new Error('no radio-50');

/** One thing that draws so much, with no record of the catalog. */
export const winchScene = (amps: number) =>
  inspectScene({
    survey: null,
    from: {
      ...catalog,
      devices: new Map(catalog.devices).set('winch', {
        ...radio,
        id: 'winch',
        name: 'Winch',
        amps: { standby: 0, run: amps, transmit: 0 },
      }),
    },
    fitout: { devices: [device('w', 'winch')] },
  });

/** Radios of 50 W behind an aluminium plate inside a carcass, with vents; only the plate stands in free air. */
export const hotBayScene = (
  hardware: readonly string[],
  { radios = 2, run = 0.45, transmit = 12, wide = 500, high = 200 } = {},
) =>
  inspectScene({
    survey: null,
    from: {
      ...catalog,
      devices: new Map(catalog.devices).set('radio-x', {
        ...radio,
        id: 'radio-x',
        amps: { standby: 0, run, transmit },
      }),
    },
    fitout: {
      devices: Array.from({ length: radios }, (_, i) => device(`d-${i}`, 'radio-x')),
      openings: [openingOf('opening-1', [wide, 300, high], { from: [200, 18, 200] })],
      carcasses: [
        {
          id: node('carcass-1'),
          name: 'bay',
          pose: { turn: FACING_REAR, at: [0, 450, 0] },
          size: [900, 700, 700],
          massKg: 0,
        },
      ],
      panels: [
        panel('opening-1/plate', wide, high, { origin: node('opening-1'), role: 'plate', material: 'aluminium-32' }),
      ],
      hardware: hardware.map((item) => pieceOf('vent', item, { id: 'vent', origin: node('opening-1'), mover: null })),
    },
  });
