import type { Vec3 } from '../../../src/base/index.ts';
import type { Design, Gear } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { anchor, catalog, inspectScene, node, openingOf, panel } from '../fixture.ts';
import { held } from '../scenes/hold.ts';
import { lidScene } from '../scenes/lid.ts';
import { pieceOf, sliderScene } from '../scenes/sliders.ts';
import { example, worked } from './example.ts';

const material = (id: string) => {
  const record = catalog.materials.get(id);
  if (!record) throw new Error(`no material ${id}`);
  return record;
};
const [PLY_6, PLY_12] = [material('birch-ply-6'), material('birch-ply-12')];
const WEAK_6 = Math.min(PLY_6.bendingStrengthMPa?.along ?? Number.NaN, PLY_6.bendingStrengthMPa?.across ?? Number.NaN);
const SLIDE = catalog.slides.get('slide-100-lock')?.ratingKg ?? Number.NaN;
const PLATE = catalog.hardware.get('backing-plate-80')?.sizeMm ?? [0, 0, 0];
const hardware = (id: string) => catalog.hardware.get(id)?.ratedN ?? Number.NaN;

const gearOf = (kg: number, level: number): { readonly design: Partial<Design>; readonly gear: FitOut['gear'] } => {
  const item = { id: 'gear-1', name: 'bag', massKg: kg, firstDue: false, place: null, needs: [], sizeMm: [1, 1, 1] };
  return {
    design: { gear: [item as unknown as Gear] },
    gear: [{ gear: node('gear-1'), opening: node('opening-1'), level, from: [0, 0, 0], size: [1, 1, 1], body: '' }],
  };
};

/** One board with its own mass, and gear on it. */
const boardScene = (role: 'shelf' | 'box-bottom', size: Vec3, of: string, ownKg: number, kg: number) => {
  const [long, wide, thickness] = size;
  const { design, gear } = gearOf(kg, 1);
  const board = panel(`opening-1/${role}-1`, long, wide, {
    role,
    origin: node('opening-1'),
    material: of,
    thickness,
    massKg: ownKg,
  });
  return inspectScene({ survey: null, design, fitout: { panels: [board], gear } });
};

/** A tray on its slides. */
const trayOn = (kg: number, long: number, wide: number) =>
  sliderScene({
    kg,
    size: [500, wide, 100],
    hardware: [pieceOf('slides', 'slide-100-lock', { from: 'slide', lengthMm: long })],
  });

/** A tray in a carcass 600 wide, held by two anchors so far behind its face and two further in. */
const tippingScene = (kg: number, travel: number, near: number, far: number) => {
  const { carcasses = [], panels = [] } = held();
  return sliderScene({
    kg,
    travel,
    size: [700, 500, 200],
    rest: {
      carcasses,
      panels,
      anchors: [near, far].flatMap((x) =>
        [-200, 200].map((y) => anchor(`anchor-${x}-${y}`, [x, y, 0], { gripMm: 17.7 })),
      ),
    },
  });
};

/** A drawer box so high that runs into a back of 6.4 mm in an opening so high. */
const thrownForward = (kg: number, boxHigh: number, openingHigh: number) =>
  sliderScene({
    kg,
    size: [500, 500, boxHigh],
    hardware: [pieceOf('latch', 'latch-two-point-bar')],
    rest: {
      panels: [
        panel('carcass-1/back', 600, openingHigh, { role: 'back', material: PLY_6.id, thickness: PLY_6.thicknessMm }),
      ],
      openings: [openingOf('box', [600, 550, openingHigh])],
    },
  });

/** Latches, stops, slides, shelves and springs. */
export const SLIDES = [
  example(
    'latch-hold',
    [
      worked({
        given: { kg: 30 },
        run: ({ kg }) => sliderScene({ kg, hardware: [pieceOf('latch', 'latch-compression-220')] }),
        words: 'a drawer of 30 kg that opens to the rear, thrown at 9 g: 30 · 9 · 9.80665 = 2,648 of 220 N: stop',
        expects: { severity: 'stop', value: '2,648', limit: '220', told: { way: 'rear' } },
      }),
      worked({
        given: { kg: 1.2 },
        run: ({ kg }) => sliderScene({ kg }),
        words: '1.2 kg, over 1, without a latch: 1.2 · 9 · 9.80665 = 105.9 of 0: stop',
        expects: { severity: 'stop', value: '105.9', limit: '0' },
      }),
    ],
    {
      house: ['hold-crew-long', 'standard-gravity', 'latch-needed-mass'],
      looked: { latch: hardware('latch-compression-220') },
    },
  ),
  example(
    'back-stop',
    [
      worked({
        given: { kg: 30, box: 200, opening: 400 },
        run: ({ kg, box, opening }) => thrownForward(kg, box, opening),
        words:
          'a drawer of 30 kg thrown forward at 9 g: 30 · 9 · 9.80665 = 2,648 N; its box 200 high runs into a back of 6.4 mm, 29 MPa, in an opening 400 high: m = 29 · 0.67 · 6.4² / 6 = 132.6 N, c = 200 / 2 = 100, R = 400 / 2 = 200: 2 π · 132.6 / (1 − 2 · 100 / (3 · 200)) = 1,250 N: stop',
        expects: { severity: 'stop', value: '2,648', limit: '1,250', told: { way: 'forward' } },
      }),
    ],
    {
      house: ['hold-crew-long', 'standard-gravity', 'bending-shock-share'],
      looked: { back: PLY_6.thicknessMm, strength: WEAK_6 },
      formula: [6, 2, 1, 3],
    },
  ),
  example(
    'slide-load',
    [
      worked({
        given: { kg: 40, long: 500, wide: 826 },
        run: ({ kg, long, wide }) => trayOn(kg, long, wide),
        words:
          '40 kg on slides of 100 kg, 500 long, under a tray 826 wide: 100 · 0.5 · 500 / 826 = 30.3 allowed; 40 of 30.3: caution',
        expects: { severity: 'caution', value: '40', limit: '30.3' },
      }),
      worked({
        given: { kg: 120, long: 500, wide: 826 },
        run: ({ kg, long, wide }) => trayOn(kg, long, wide),
        words: '120 kg, over the rating of 100 itself: stop',
        expects: { severity: 'stop', value: '120', facts: { ratingKg: '100' } },
      }),
    ],
    { house: ['slide-vehicle-factor'], looked: { rating: SLIDE } },
  ),
  example(
    'tray-leg',
    [
      worked({
        given: { kg: 75, middle: 250, travel: 500 },
        run: ({ kg, middle, travel }) => sliderScene({ kg, middle, travel }),
        words:
          'a tray of 75 kg with its middle 250 behind the front, 500 out, 1,000 N on its edge: 75 of 70: caution; each slide takes (75 · 9.80665 · (500 − 250) + 1,000 · 500) / 2 / 1,000 = 342 N m',
        expects: { severity: 'caution', value: '75', limit: '70', facts: { rootNm: '342', outMm: '500' } },
      }),
      worked({
        given: { kg: 25, travel: 850 },
        run: ({ kg, travel }) => sliderScene({ kg, travel }),
        words: '25 kg, over 20, 850 out: 850 of 800: caution',
        expects: { severity: 'caution', value: '850', limit: '800' },
      }),
    ],
    { house: ['standard-gravity', 'slide-out-lean', 'slide-out-lock-mass'], formula: [2, 1000] },
  ),
  example(
    'tray-tip',
    [
      worked({
        given: { kg: 150, travel: 700, near: 30, far: 50 },
        run: ({ kg, travel, near, far }) => tippingScene(kg, travel, near, far),
        words:
          'a tray of 150 kg and nothing else, 700 long, 700 out, 1,000 N on its edge: M = 150 · 9.80665 · (700 − 700 / 2) + 1,000 · 700 = 1,214,849 N mm; two anchors 30 and two 50 behind the face, of which the further ones pull 1,214,849 · 50 / (2 (30² + 50²)) = 8,933 N; the plate below, 80 × 80 × 5, with a nut of 1.6 · 8 = 12.8 holds 2 π · 235 · 5² / 4 / (1 − 12.8 / (3 · 80 / 2)) / 1.25 = 8,264: 8,933 / 8,264 = 1.08 of 1: stop',
        expects: { severity: 'stop', value: '1.08', limit: '1', facts: { pullN: '8,933' } },
      }),
      worked({
        given: { kg: 150, travel: 700, near: 80, far: 920 },
        run: ({ kg, travel, near, far }) => tippingScene(kg, travel, near, far),
        words:
          'anchors 80 and 920 behind the face: 1,214,849 · 920 / (2 (80² + 920²)) = 655 N, 655 / 8,264 = 0.08: nothing',
        expects: { severity: 'nothing', value: '0.08', limit: '1' },
      }),
    ],
    {
      house: ['standard-gravity', 'slide-out-lean', 'plate-yield', 'anchor-partial-factor'],
      looked: { thread: catalog.hardware.get('bolt-m8x40')?.threadMm ?? Number.NaN, wide: PLATE[0], thick: PLATE[2] },
      formula: [2, 3, 4, 1, 1.6],
    },
  ),
  example(
    'shelf-sag',
    [
      worked({
        given: { long: 800, deep: 400, own: 2, kg: 25 },
        run: ({ long, deep, own, kg }) => boardScene('shelf', [long, deep, PLY_12.thicknessMm], PLY_12.id, own, kg),
        words:
          'a shelf 800 × 400 × 12 of 2 kg, E 10,700, under 25 kg: 5 · (25 + 2) · 9.80665 · 800³ / (384 · 10,700 · 400 · 12³ / 12) · 1.8 = 5.16 with creep, of 1.7 · 800 / 1,000 = 1.36: caution',
        expects: { severity: 'caution', value: '5.16', limit: '1.36' },
      }),
      worked({
        given: { long: 800, deep: 400, own: 2, kg: 120 },
        run: ({ long, deep, own, kg }) => boardScene('shelf', [long, deep, PLY_12.thicknessMm], PLY_12.id, own, kg),
        words:
          'under 120 kg, 2 of its own, thrown at 3 g: 3 · (120 + 2) · 9.80665 · 800 / 8 / (400 · 12² / 6) = 37.4 of 43 · 0.67 = 28.8 MPa: stop',
        expects: { severity: 'stop', value: '37.4', limit: '28.8' },
      }),
    ],
    {
      house: ['standard-gravity', 'shelf-sag-aim', 'hold-road-shock', 'bending-shock-share'],
      looked: {
        thick: PLY_12.thicknessMm,
        young: PLY_12.youngMPa.along,
        creep: PLY_12.creepFactor,
        strength: PLY_12.bendingStrengthMPa?.along ?? Number.NaN,
      },
      formula: [5, 384, 12, 1000, 8, 6],
    },
  ),
  example(
    'drawer-bottom-sag',
    [
      worked({
        given: { long: 500, own: 1, kg: 60 },
        run: ({ long, own, kg }) => boardScene('box-bottom', [long, long, PLY_6.thicknessMm], PLY_6.id, own, kg),
        words:
          'a square bottom of 500, 6.4 thick, 1 kg, E 4,800, under 60 kg: 0.0443 · (60 + 1) · 9.80665 / 500² · 500⁴ / (4,800 · 6.4³) · 1.8 = 9.5 of 4: caution',
        expects: { severity: 'caution', value: '9.5', limit: '4' },
      }),
    ],
    {
      house: ['standard-gravity'],
      looked: {
        thick: PLY_6.thicknessMm,
        young: Math.min(PLY_6.youngMPa.along, PLY_6.youngMPa.across),
        creep: PLY_6.creepFactor,
      },
      formula: [0.0443],
    },
  ),
  example(
    'gas-spring',
    [
      worked({
        given: { kg: 8, middle: 300, arm: 100, forward: 180, below: 210 },
        run: lidScene,
        words:
          'a lid of 8 kg with its middle 300 from the hinge, open level; two springs of 200 N hold it 100 from the hinge, their feet 180 forward of the hinge and 210 below: √((180 + 100)² + 210²) = 350, their full length, at a lever of 100 · 210 / 350 = 60; at −20 °C (2 · 200 · 0.86 · 60 − 8 · 9.80665 · 300) / 1,000 = −2.9 N m of 0: it falls: caution',
        expects: { severity: 'caution', value: '−2.9', limit: '0', told: { day: 'cold' } },
      }),
      worked({
        given: { kg: 6, middle: 300, arm: 100, forward: 180, below: 210 },
        run: lidScene,
        words: '6 kg: (2 · 200 · 0.86 · 60 − 6 · 9.80665 · 300) / 1,000 = 2.99 N m to spare: nothing',
        expects: { severity: 'nothing' },
      }),
    ],
    {
      house: ['standard-gravity', 'gas-spring-cold', 'gas-spring-cold-factor'],
      looked: {
        force: hardware('gas-spring-200'),
        full: catalog.hardware.get('gas-spring-200')?.sizeMm?.[0] ?? Number.NaN,
      },
      formula: [2, 1000],
    },
  ),
];
