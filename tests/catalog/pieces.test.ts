import { describe, expect, test } from 'vitest';
import { type Device, HARDWARE_KINDS, houseRules, standardCatalog } from '../../src/catalog/index.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const gear = [...catalog.gear.values()];
const devices = [...catalog.devices.values()];
const hardware = [...catalog.hardware.values()];

const cubicMetres = (sizeMm: readonly [number, number, number]): number => (sizeMm[0] * sizeMm[1] * sizeMm[2]) / 1e9;

describe('gear', () => {
  test.each(gear)(
    '$id has a mass that fits its size and a spread that fits its mass',
    ({ massKg, sizeMm, massSigmaKg }) => {
      const density = massKg / cubicMetres(sizeMm);
      expect(density).toBeGreaterThan(20);
      expect(density).toBeLessThan(8000);
      expect(massSigmaKg).toBeGreaterThan(0);
      expect(massSigmaKg).toBeLessThanOrEqual(massKg * 0.35);
      expect(Math.max(...sizeMm)).toBeLessThan(2000);
    },
  );

  test('cylinders are round', () => {
    const round = gear.filter((kind) => kind.form === 'cylinder' && !kind.id.startsWith('extinguisher'));
    expect(round.length).toBeGreaterThanOrEqual(7);
    for (const { id, sizeMm } of round) expect([id, sizeMm[0]]).toEqual([id, sizeMm[1]]);
  });

  test('what can hurt is kept as the cautions say', () => {
    const lacking = (pattern: RegExp, ...needs: readonly string[]): readonly string[] =>
      gear
        .filter((kind) => pattern.test(kind.id) && !needs.every((need) => kind.needs.some((has) => has === need)))
        .map((kind) => kind.id);
    expect(lacking(/^generator/, 'outside-cabin', 'upright', 'vented')).toEqual([]);
    expect(lacking(/^oxygen/, 'vented', 'away-from-heat', 'clean')).toEqual([]);
    expect(lacking(/^breathing-set/, 'bracket', 'locked')).toEqual([]);
    expect(lacking(/^extinguisher/, 'upright', 'bracket')).toEqual([]);
    expect(lacking(/^(axe|entry-bar|irons|hook)/, 'edges-covered')).toEqual([]);
    expect(lacking(/^flares-30/, 'dry', 'away-from-heat')).toEqual([]);
    expect(lacking(/^(turnout|helmet|boots)/, 'vented', 'outside-cabin')).toEqual([]);
    expect(gear.filter((kind) => kind.id.startsWith('generator')).length).toBeGreaterThan(0);
  });

  test('every group is represented', () => {
    expect(new Set(gear.map((kind) => kind.group)).size).toBe(12);
  });

  test('one person’s kit comes to about 33 kg, as departments report (34 to 35)', () => {
    const kit = [
      'breathing-set-30',
      'turnout-bag',
      'helmet',
      'thermal-camera',
      'radio-portable',
      'hand-lamp',
      'axe-flat-6',
    ];
    // 11.6 + 12.5 + 1.7 + 1.25 + 0.65 + 1.6 + 3.7 = 33.0
    const sum = kit.reduce((mass, id) => mass + (catalog.gear.get(id)?.massKg ?? Number.NaN), 0);
    expect(sum).toBeCloseTo(33, 6);
  });
});

const holeOf = ({ cutout }: Device): readonly [number, number] | null => {
  if (cutout.shape === 'none') return null;
  return cutout.shape === 'round' ? [cutout.diameterMm, cutout.diameterMm] : [cutout.widthMm, cutout.heightMm];
};

describe('devices', () => {
  test.each(devices)('$id covers its own hole and does not radiate more than it draws', (device) => {
    const hole = holeOf(device);
    if (hole !== null) {
      expect(hole[0]).toBeLessThan(device.faceMm.width);
      expect(hole[1]).toBeLessThan(device.faceMm.height);
    }
    const { standby, run, transmit } = device.amps;
    expect(standby).toBeLessThanOrEqual(run);
    expect(run).toBeLessThanOrEqual(transmit);
    expect(device.radiatedW).toBeLessThanOrEqual(transmit * rules.value('supply-volts'));
    expect(device.transmitShare > 0).toBe(transmit > run);
    if (device.radiatedW > 0) expect(device.transmitShare).toBeGreaterThan(0);
  });

  test('what goes in from the front fits through its hole', () => {
    // These two are put in from behind: their thread, not their body, goes through.
    const fromBehind = ['switch-battery-master', 'light-goose'];
    for (const device of devices.filter((other) => !fromBehind.includes(other.id))) {
      const hole = holeOf(device);
      if (hole === null) continue;
      expect([device.id, device.behindMm.width <= hole[0]]).toEqual([device.id, true]);
      expect([device.id, device.behindMm.height <= hole[1]]).toEqual([device.id, true]);
    }
  });

  // Two 50 W radios at 20 % transmit: 2 · (0.2 · (11.5 · 13.8 − 50) + 0.8 · 0.7 · 13.8) = 2 · (21.74 + 7.73) = 58.9 W.
  test('two 50 W radios warm their bay by nearly 60 W', () => {
    const radio = catalog.devices.get('radio-50');
    const volts = rules.value('supply-volts');
    const share = radio?.transmitShare ?? Number.NaN;
    const transmitting = (radio?.amps.transmit ?? Number.NaN) * volts - (radio?.radiatedW ?? Number.NaN);
    const listening = (radio?.amps.run ?? Number.NaN) * volts;
    expect(2 * (share * transmitting + (1 - share) * listening)).toBeCloseTo(58.9, 1);
  });

  test('all kinds of device are there', () => {
    expect(new Set(devices.map((device) => device.kind)).size).toBe(13);
  });
});

describe('hardware', () => {
  test('all kinds of piece are there', () => {
    expect(new Set(hardware.map((piece) => piece.kind))).toEqual(new Set(HARDWARE_KINDS));
  });

  test.each(hardware)('$id is not denser than steel', ({ massKg, sizeMm }) => {
    if (sizeMm === null) return;
    expect(massKg / cubicMetres(sizeMm)).toBeLessThan(7_900);
    expect(massKg / cubicMetres(sizeMm)).toBeGreaterThan(3);
  });

  test.each([5, 6, 8, 10])('the M%d rivet nut agrees with the house rules', (size) => {
    const nut = catalog.hardware.get(`rivet-nut-steel-m${size}`);
    expect(nut?.ratedN).toBe(rules.value(`rivet-nut-steel-tension-m${size}`));
    expect(nut?.acrossN).toBe(rules.value(`rivet-nut-steel-shear-m${size}`));
  });

  test('bolts agree with the house rules, whatever their length', () => {
    const bolts = hardware.filter((piece) => piece.id.startsWith('bolt-m'));
    expect(bolts.length).toBeGreaterThanOrEqual(6);
    for (const bolt of bolts) {
      expect(bolt.ratedN).toBe(rules.value(`bolt-tension-m${bolt.threadMm}`));
      expect(bolt.acrossN).toBe(rules.value(`bolt-shear-m${bolt.threadMm}`));
    }
  });

  // 9 g on the heaviest set of the catalog: 15.5 · 9 · 9.80665 = 1368 N.
  test('a breathing-set bracket is rated for nine times the heaviest set', () => {
    const heaviest = Math.max(...gear.filter((kind) => kind.form === 'pack').map((kind) => kind.massKg));
    const load = heaviest * rules.value('hold-apparatus') * rules.value('standard-gravity');
    expect(load).toBeCloseTo(1368, 0);
    for (const id of ['cradle-pack-back', 'cradle-pack-floor'])
      expect(catalog.hardware.get(id)?.ratedN).toBeGreaterThanOrEqual(load);
  });

  test('a pull named for a gloved hand gives the room that the house rules ask for', () => {
    const gloved = hardware.filter((piece) => piece.kind === 'pull' && piece.name.includes('gloved'));
    expect(gloved.length).toBeGreaterThan(0);
    for (const { handRoomMm } of gloved) {
      expect(handRoomMm?.[0]).toBeGreaterThanOrEqual(rules.value('hand-glove-width'));
      expect(handRoomMm?.[1]).toBeGreaterThanOrEqual(rules.value('hand-glove-depth'));
    }
  });

  test.each([
    ['076', 18],
    ['12', 16],
    ['19', 14],
    ['30', 12],
    ['47', 10],
  ])('cable-%s is the wire of gauge %d', (id, gauge) => {
    expect(catalog.hardware.get(`cable-${id}`)?.conductorMm2).toBe(rules.value(`wire-area-${gauge}`));
  });

  test('every pull says how much room it gives a hand', () => {
    const pulls = hardware.filter((piece) => piece.kind === 'pull');
    expect(pulls.length).toBeGreaterThanOrEqual(4);
    expect(pulls.filter((pull) => pull.handRoomMm === undefined).map((pull) => pull.id)).toEqual([]);
  });
});
