import { describe, expect, it } from 'vitest';
import {
  after,
  distance,
  inverse,
  type Pose,
  placed,
  seededRandom,
  shift,
  subtract,
  turnAbout,
  unit,
  type Vec3,
} from '../../../src/base/index.ts';
import {
  compareScan,
  pickScan,
  readScan,
  type ScanMesh,
  type Section,
  surfaceSamples,
} from '../../../src/envelope/index.ts';
import { asPly, boxMesh, movedMesh, type Plain } from './meshes.ts';

const meshOf = (mesh: Plain): ScanMesh => {
  const read = readScan(asPly(mesh, true));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const box = boxMesh([0, -600, 0], [1500, 600, 900], 5);
const room = meshOf(box);

const sectionAt = (x: number, i: number, half = 600): Section => ({
  station: `station-${i}` as Section['station'],
  x,
  ring: [
    [-half, 0],
    [-half, 900],
    [half, 900],
    [half, 0],
  ],
});

describe('compareScan', () => {
  const pose: Pose = after(shift([350, -120, 40]), turnAbout([100, 200, 0], [0.2, 0.5, 1], 1.1));
  const scan = meshOf(movedMesh(box, inverse(pose)));
  const vehicles: readonly Vec3[] = [
    [0, 600, 0],
    [1500, -600, 0],
    [0, -600, 900],
  ];
  const pairs = vehicles.map((vehicle) => ({ vehicle, scan: placed(inverse(pose), vehicle) }));
  const options = { tapeSigma: 2, markSigma: 4, reach: 80 };

  it('lays a perfect scan on its sections and finds no difference', () => {
    const compared = compareScan(scan, pairs, [sectionAt(300, 1), sectionAt(900, 2)], options);
    if (!compared.ok) throw new Error('refused');
    expect(Math.max(...compared.value.marksOff)).toBeLessThan(0.05);
    expect(compared.value.rmsMm).toBeLessThan(0.05);
    expect(compared.value.fitted).toBe(1);
    expect(compared.value.stations.map(({ lines }) => lines.length > 0)).toEqual([true, true]);
  });

  it('keeps to the marks where the scan shows nothing of the sections', () => {
    const compared = compareScan(scan, pairs, [sectionAt(5000, 1)], options);
    if (!compared.ok) throw new Error('refused');
    expect(Math.max(...compared.value.marksOff)).toBeLessThan(0.05);
    expect(compared.value.stations[0]?.lines).toEqual([]);
  });

  it('refuses as its marks are refused', () => {
    const refused = compareScan(scan, pairs.slice(1), [sectionAt(300, 1)], options);
    expect(refused.ok ? '' : refused.error[0]?.code).toBe('too-few-marks');
  });
});

describe('pickScan', () => {
  it('meets the wall of a box where the line does, from within and from outside', () => {
    // From 200, 0, 450 along y: the wall y = 600 looks outward, so away from the eye.
    expect(pickScan(room, [200, 0, 450], [0, 1, 0], 'any')).toEqual([200, 600, 450]);
    expect(pickScan(room, [200, 0, 450], [0, 1, 0], 'away')).toEqual([200, 600, 450]);
    expect(pickScan(room, [200, 0, 450], [0, 1, 0], 'towards')).toBeNull();
    expect(pickScan(room, [200, 2000, 450], [0, -1, 0], 'towards')).toEqual([200, 600, 450]);
    expect(pickScan(room, [200, 2000, 450], [0, -1, 0], 'away')).toEqual([200, -600, 450]);
    expect(pickScan(room, [200, 2000, 450], [0, 1, 0], 'any')).toBeNull();
  });

  it('meets from anywhere within the box the place on its surface that it was aimed at', () => {
    const random = seededRandom(11);
    const within = (low: number, high: number): number => low + (high - low) * random();
    for (let i = 0; i < 200; i++) {
      const eye: Vec3 = [within(100, 1400), within(-500, 500), within(100, 800)];
      const aim: Vec3 = [within(0, 1500), 600, within(0, 900)];
      const met = pickScan(room, eye, unit(subtract(aim, eye)), 'any');
      expect(met && distance(met, aim)).toBeLessThan(1e-6);
    }
  });
});

describe('surfaceSamples', () => {
  const samples = surfaceSamples(room, 6000);
  const at = (i: number): Vec3 => [samples.at[3 * i] ?? 0, samples.at[3 * i + 1] ?? 0, samples.at[3 * i + 2] ?? 0];
  const count = samples.at.length / 3;

  it('gives each face its share by area, and each place the way its face looks', () => {
    expect(Math.abs(count - 6000)).toBeLessThanOrEqual(1);
    let [roof, wrong] = [0, 0];
    for (let i = 0; i < count; i++) {
      const [x, y, z] = at(i);
      const normal = [samples.normal[3 * i] ?? 0, samples.normal[3 * i + 1] ?? 0, samples.normal[3 * i + 2] ?? 0];
      if (Math.abs(z - 900) < 1e-3) roof++;
      // Outward: each coordinate of the normal points from the middle to the face that the place lies on.
      const reach = [(x - 750) / 750, y / 600, (z - 450) / 450];
      const face = reach.findIndex((share) => Math.abs(Math.abs(share) - 1) < 1e-6);
      if (face < 0 || Math.abs((normal[face] ?? 0) - Math.sign(reach[face] ?? 0)) > 1e-6) wrong++;
    }
    // Roof 1500 × 1200 of 2 (1500 × 1200 + 1500 × 900 + 1200 × 900) = 1.8 of 8.46 m², so 1276.6 of 6000.
    expect(Math.abs(roof - 1276.6)).toBeLessThan(6);
    expect(wrong).toBe(0);
  });

  it('is the same for the same mesh', () => {
    expect(surfaceSamples(room, 6000)).toEqual(samples);
  });
});
