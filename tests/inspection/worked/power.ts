import type { Device } from '../../../src/catalog/index.ts';
import { fuseFor } from '../../../src/inspection/power/index.ts';
import { catalog, inspectScene, rules } from '../fixture.ts';
import { apart, hotBayScene, power, winchScene } from '../scenes/power.ts';
import { example, worked } from './example.ts';

const radio = (id: string): Device => {
  const record = catalog.devices.get(id);
  if (!record) throw new Error(`no device ${id}`);
  return record;
};
const R50 = radio('radio-50');
const VENT = catalog.hardware.get('vent-louvre-60');

/** So many radios of 50 W, each by itself, in a vehicle with some figures of its power. */
const radios = (count: number, figures: Record<string, unknown>) =>
  inspectScene({ survey: null, design: power(figures), fitout: { devices: apart(count, R50.id) } });

/** Batteries, wires and heat. */
export const POWER = [
  example(
    'battery-hours',
    [
      worked({
        given: { radios: 40, ah: 10 },
        run: (own) => radios(own.radios, { batteryAh: own.ah }),
        words: '40 radios of 0.05 A standby: 40 · 0.05 = 2 A; a battery of 10 Ah: 10 · 0.5 / 2 = 2.5 of 4 h: caution',
        expects: { severity: 'caution', value: '2.5', limit: '4', facts: { standbyA: '2' } },
      }),
    ],
    { house: ['battery-use-share'], looked: { standby: R50.amps.standby } },
  ),
  example(
    'alternator',
    [
      worked({
        given: { radios: 40, spare: 50 },
        run: (own) => radios(own.radios, { alternatorSpareA: own.spare }),
        words:
          '40 radios that send with 11.5 A for 0.2 of the time and listen with 0.7 A: 40 · (0.2 · 11.5 + (1 − 0.2) · 0.7) = 114.4 of 50 A to spare: caution',
        expects: { severity: 'caution', value: '114.4', limit: '50' },
      }),
    ],
    {
      looked: { sends: R50.amps.transmit, share: R50.transmitShare, listens: R50.amps.run },
      formula: [1],
    },
  ),
  example(
    'wire-fuse',
    [
      worked({
        given: { amps: 90 },
        run: ({ amps }) => winchScene(amps),
        words: 'a winch of 90 A wants a fuse of 1.25 · 90 = 112.5; the thickest wire carries 60: 90 of 60 A: caution',
        expects: { severity: 'caution', value: '90', limit: '60' },
      }),
      worked({
        given: { amps: 30 },
        run: ({ amps }) => winchScene(amps),
        words: '30 A: 1.25 · 30 = 37.5, a fuse of 40 on a wire for 45: nothing',
        expects: { severity: 'nothing' },
      }),
    ],
    {
      house: ['fuse-factor', 'wire-amps-12'],
      looked: { fuse: fuseFor(30, rules.value('fuse-factor'), rules.value('wire-amps-12')) ?? Number.NaN },
    },
  ),
  example(
    'wire-drop',
    [
      worked({
        given: { loop: 10, radios: 1 },
        run: (own) => radios(own.radios, { feedLoopM: own.loop }),
        words:
          '1 radio of 11.5 A, 10 m out and back in the thickest wire, 4.7 mm²: 0.0172 · 11.5 · 10 / 4.7 / 12 = 3.5 % of 3 %: caution',
        expects: { severity: 'caution', value: '3.5 %', limit: '3 %', facts: { mostA: '11.5' } },
      }),
    ],
    { house: ['copper-resistivity', 'wire-area-10', 'parked-volts'] },
  ),
  example(
    'bay-heat',
    [
      worked({
        given: { radios: 2, run: 0.45, transmit: 12, wide: 500, high: 200 },
        run: (own) => hotBayScene([], own),
        words:
          '2 radios of 50 W that send with 12 A for 0.2 of the time and listen with 0.45 A, 13.8 V: 2 · (0.2 · (13.8 · 12 − 50) + (1 − 0.2) · 13.8 · 0.45) = 56.2 W; a plate of 500 × 200 aluminium: 12 · 500 · 200 / 1,000² = 1.2 W/K; 56.2 / 1.2 = 46.8 of 10 K: caution, with 3.1 · 56.2 / 10 = 17.4 m³/h',
        expects: { severity: 'caution', value: '46.8', limit: '10', facts: { watts: '56.2', fanM3h: '17.4' } },
      }),
      worked({
        given: { radios: 2, run: 0.45, transmit: 12, wide: 500, high: 200 },
        run: (own) => hotBayScene(['vent-louvre-60'], own),
        words:
          'one vent of 6,000 mm², half of it low: 50 / 10 · 6,000 / 2 / 6,000 = 2.5 W/K more; 56.2 / (1.2 + 2.5) = 15.2 K: caution',
        expects: { severity: 'caution', value: '15.2', facts: { freeMm2: '6,000' } },
      }),
      worked({
        given: { radios: 2, run: 0.45, transmit: 12, wide: 500, high: 200 },
        run: (own) => hotBayScene(['vent-louvre-60', 'vent-louvre-60'], own),
        words: 'two: 56.2 / (1.2 + 2 · 2.5) = 9.1 K: nothing',
        expects: { severity: 'nothing' },
      }),
    ],
    {
      house: ['supply-volts', 'heat-loss-aluminium', 'fan-air', 'vent-area-per-50w'],
      looked: { radiated: R50.radiatedW, share: R50.transmitShare, vent: VENT?.freeMm2 ?? Number.NaN },
      formula: [2, 1, 1000, 50],
    },
  ),
  example('power-unknown', [
    worked({
      given: { radios: 1 },
      run: (own) => radios(own.radios, {}),
      words: '1 radio, nothing entered, 0 of 3 figures: a note that names battery, alternator and feed',
      expects: { severity: 'note', value: '0', limit: '3', told: { missing: 'battery alternator feed' } },
    }),
  ]),
];
