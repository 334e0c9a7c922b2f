import { describe, expect, it } from 'vitest';
import { houseRules, type Material, standardCatalog } from '../../src/catalog/index.ts';
import { type FitOut, type Panel, solveFitOut } from '../../src/fitout/index.ts';
import reference from '../reference/drawer-box.json' with { type: 'json' };
import { carcass, designOf, divided, empty, fitted, fixed, openingOf, panelOf, share, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;

const drawer = (rest: Plain = {}): Plain => ({
  kind: 'drawer',
  boxMaterial: 'birch-ply-12',
  bottomMaterial: 'birch-ply-6',
  inside: empty('opening-2'),
  ...rest,
});

/** Sheet 17.7 on both sides; back 6.4 in a groove 12 from the rear. */
const around = (width: number, height: number, depth: number): Plain => ({
  size: { width: width + 2 * 17.7, height: height + 2 * 17.7, depth: depth + 6.4 + 12 },
});

describe('drawer boxes against the reference', () => {
  for (const { openingMm, slide, box, expect: parts } of reference.cases) {
    it(`${openingMm.width} × ${openingMm.height} × ${openingMm.depth}`, () => {
      const standard = standardCatalog();
      const materials = new Map<string, Material>(standard.materials);
      const sheet = (id: string, thicknessMm: number): void => {
        const like = materials.get('birch-ply-12');
        if (like) materials.set(id, { ...like, id, thicknessMm });
      };
      sheet('box-sheet', box.sideThicknessMm);
      sheet('bottom-sheet', box.bottomThicknessMm);
      const catalog = { ...standard, materials };
      const fitting = drawer({
        boxMaterial: 'box-sheet',
        bottomMaterial: 'bottom-sheet',
        boxHeightMm: box.heightMm,
        slide: slide.sideSpaceMm > 13 ? 'slide-100' : 'slide-45',
        slideLengthMm: slide.lengthMm,
      });
      const design = designOf([
        carcass(fitted('opening-1', fitting), around(openingMm.width, openingMm.height, openingMm.depth)),
      ]);
      const fitOut = solveFitOut(design, catalog, houseRules(catalog, []));
      expect(fitOut.problems).toEqual([]);
      const near = (got: number, want: number): void =>
        expect(Math.abs(got - want)).toBeLessThanOrEqual(reference.tolerance);
      const part = (role: string): Panel => panelOf(fitOut, `opening-1/${role}`);
      near(part('box-side-left').length, parts.sideLengthMm);
      near(part('box-side-right').length, parts.sideLengthMm);
      near(part('box-side-left').width, box.heightMm);
      near(part('box-front').length, parts.frontLengthMm);
      near(part('box-back').length, parts.backLengthMm);
      near(part('box-bottom').width, parts.bottomWidthMm);
      near(part('box-bottom').length, parts.bottomLengthMm);
      // Outside width over both sides: front length + 2 × (side − rabbet).
      near(part('box-front').length + 2 * (box.sideThicknessMm - box.rabbetDepthMm), parts.outsideWidthMm);
      const grooves = part('box-side-left').cuts.filter(({ kind }) => kind === 'groove');
      expect(grooves.map((cut) => 'depth' in cut && cut.depth)).toEqual([box.bottomGrooveDepthMm]);
    });
  }
});

/** 864.6 × 664.6 × 581.6 clear: 900 − 2 × 17.7, 700 − 2 × 17.7, 600 − 12 − 6.4. */
const one = (rest: Plain = {}, gear: readonly Plain[] = []): FitOut =>
  solved([carcass(fitted('opening-1', drawer(rest)))], { gear });

const weight = (massKg: number): Plain => ({
  id: 'gear-1',
  name: 'Weights',
  sizeMm: [200, 200, 100],
  massKg,
  massFrom: 'measured',
  place: { opening: 'opening-2', level: 0, at: [10, 10, 0] },
});

describe('a drawer', () => {
  it('takes the longest slide that the depth allows behind an inset front', () => {
    const fitOut = one();
    expect(fitOut.problems).toEqual([]);
    // 581.6 deep − 17.7 front − 20 behind = 543.9: the 500 fits, the 550 does not.
    expect(panelOf(fitOut, 'opening-1/box-side-left').length).toBeCloseTo(500, 9);
    // An overlay front stands before the face: 581.6 − 20 = 561.6 takes the 550.
    expect(panelOf(one({ front: 'overlay' }), 'opening-1/box-side-left').length).toBeCloseTo(550, 9);
  });

  it('opens by its slide: travel = length × extension, straight out of the face', () => {
    const fitOut = one({ slide: 'slide-45-part', slideLengthMm: 400 });
    const mover = fitOut.movers[0];
    // Facing right: deep runs along +y, so out of the face is −y; 400 × 0.75 = 300.
    expect(mover?.motion).toEqual({ kind: 'slide', direction: [0, -1, 0], travel: 300 });
    expect(mover?.rests.map(({ share }) => share)).toEqual([0, 0.5, 1]);
  });

  it('stands in its opening with the allowances of the house rules', () => {
    const fitOut = one({ slide: 'slide-45' });
    const box = panelOf(fitOut, 'opening-1/box-front');
    // 864.6 − 2 × 12.9 = 838.8 outside, less 2 × 12 sides, plus 2 × 6 in the rabbets = 826.8.
    expect(box.length).toBeCloseTo(826.8, 9);
    // 664.6 − 12 above − 6 below = 646.6.
    expect(box.width).toBeCloseTo(646.6, 9);
    const front = panelOf(fitOut, 'opening-1/front');
    // Reveal of 2 all round: 864.6 − 4 and 664.6 − 4.
    expect([front.length, front.width].map((side) => Math.round(side * 10) / 10)).toEqual([860.6, 660.6]);
    const inside = openingOf(fitOut, 'opening-2');
    // 838.8 − 24 across; 500 − 24 deep; 646.6 − 12 up to the groove − 6.4 bottom = 628.2 up.
    expect(inside.size.map((side) => Math.round(side * 10) / 10)).toEqual([814.8, 476, 628.2]);
    expect(inside.mover).toBe('opening-1/drawer');
  });

  it('chooses a slide by the load that it may carry in a vehicle', () => {
    // Box 826 × 500 × 646.6: sides 2 × 1326 × 646.6 × 12 at 692 kg/m³ = 14.2, front 6.6, bottom 1.8: 22.6 kg.
    const item = (massKg: number): string | undefined =>
      one({}, [weight(massKg)]).hardware.find(({ from }) => from === 'slide')?.item;
    // Allowed: 68 × 0.5 × 500/838.8 = 20.3; 100 × 0.5 × 500/826 = 30.3; 227 × 0.5 × 500/826 = 68.7 kg.
    expect(item(1)).toBe('slide-100');
    expect(item(30)).toBe('slide-227');
  });

  it('drills the holes of the slide into the box sides and into the panels beside it, on their inner faces', () => {
    const fitOut = one({ slide: 'slide-45', slideLengthMm: 500 });
    const holes = (id: string) => panelOf(fitOut, id).cuts.filter((cut) => cut.kind === 'hole');
    // Holes at 37, 133, 229, 325, 421 lie on a member of 500; 517 and 613 do not.
    expect(holes('opening-1/box-side-left')).toHaveLength(5);
    expect(holes('carcass-1/side-left')).toHaveLength(5);
    const [first] = holes('carcass-1/side-left');
    // Up: 17.7 bottom + 6 below + 22.5; from the front edge: 17.7 front + 37 (width runs back to front: 600 − 54.7).
    expect(first?.kind === 'hole' && first.at.map((mm) => Math.round(mm * 10) / 10)).toEqual([46.2, 545.3]);
    expect(first?.kind === 'hole' && first.face).toBe('a');
    const screws = fitOut.hardware.find(({ item }) => item === 'wood-screw-4x16');
    // 5 holes × (carcass + box) × two sides.
    expect(screws?.quantity).toBe(20);
  });

  it('stays inside its opening at rest, but for a pull', () => {
    const fitOut = one({ latch: 'latch-paddle' });
    for (const body of fitOut.bodies.filter(({ origin }) => origin === 'opening-1')) {
      const { min, max } = bodyBox(body as never);
      expect(Math.min(min[0] - 17.7, min[1], min[2] - 17.7)).toBeGreaterThanOrEqual(-1e-9);
      expect(Math.max(max[0] - 882.3, max[1] - 581.6, max[2] - 682.3)).toBeLessThanOrEqual(1e-9);
    }
    const pull = one({ pull: 'pull-bar-160' }).bodies.find(({ id }) => id === 'opening-1/pull');
    // The bar pull stands 45 out of the face.
    expect(pull && bodyBox(pull as never).min[1]).toBeCloseTo(-45, 9);
  });

  it('says what it needs in an opening that is too small, and shows all the same', () => {
    const low = solved([carcass(fitted('opening-1', drawer({ slide: 'slide-45' })), around(400, 60, 300))]);
    const [problem] = low.problems;
    // Lowest box: 12 groove + 6.4 bottom + 40 inside = 58.4; + 12 above + 6 below = 76.4.
    expect(problem).toMatchObject({ code: 'too-small', at: 'opening-1', axis: 'up' });
    expect(problem?.needMm).toBeCloseTo(76.4, 9);
    expect(problem?.haveMm).toBeCloseTo(60, 9);
    expect(low.panels.some(({ id }) => id === 'opening-1/box-front')).toBe(true);
    // Deep: 17.7 + 250 + 20 = 287.7 fits into 300, not into 280.
    const short = solved([carcass(fitted('opening-1', drawer({ slide: 'slide-45' })), around(400, 200, 280))]);
    expect(short.problems).toMatchObject([{ code: 'too-small', axis: 'deep' }]);
    expect(short.problems[0]?.needMm).toBeCloseTo(287.7, 9);
  });

  it('names what the catalog does not have', () => {
    const fitOut = one({ slide: 'slide-none', latch: 'latch-none', boxMaterial: 'paper', slideLengthMm: 333 });
    // Of stand-in sheet 18 mm at 700 kg/m³ the box weighs 26.7 kg; 100 × 0.5 × 333/826 = 20.2 would not carry it.
    expect(fitOut.problems.map(({ code, because }) => [code, because[0]])).toEqual([
      ['unknown-material', 'paper'],
      ['unknown-hardware', 'slide-none'],
      ['unknown-hardware', 'slide-227 of 333 mm'],
      ['unknown-hardware', 'latch-none'],
    ]);
    expect(fitOut.movers).toHaveLength(1);
  });

  it('locks where it is asked to, on slides that do', () => {
    // Of 45, 68 and 100 kg only the 100 comes with locks; 20.3 kg of box and gear are within 30.3 allowed.
    const locked = one({ slideLocks: 'both' });
    expect(locked.problems).toEqual([]);
    expect(locked.hardware.find(({ from }) => from === 'slide')?.item).toBe('slide-100-lock');
    expect(one({ slideLocks: 'out', slide: 'slide-100' }).problems).toMatchObject([
      { code: 'bad-joint', at: 'opening-1', because: [expect.stringMatching(/does not lock out$/)] },
    ]);
    expect(one({ slideLocks: 'none', slide: 'slide-100' }).problems).toEqual([]);
  });

  it('is built with butted corners and a bottom screwed on from below where that is chosen', () => {
    const fitOut = one({ slide: 'slide-45', slideLengthMm: 500, boxJoint: 'butt', bottomJoint: 'below' });
    expect(fitOut.problems).toEqual([]);
    const size = (role: string) => {
      const { length, width } = panelOf(fitOut, `opening-1/${role}`);
      return [length, width].map((side) => Math.round(side * 10) / 10);
    };
    // 864.6 − 2 × 12.9 = 838.8 outside; between the sides 838.8 − 24; 646.6 high less 6.4 of bottom.
    expect(size('box-front')).toEqual([814.8, 640.2]);
    expect(size('box-side-left')).toEqual([500, 640.2]);
    // The bottom is as large as the box: along the depth, which is its grain.
    expect(size('box-bottom')).toEqual([500, 838.8]);
    expect(panelOf(fitOut, 'opening-1/box-side-left').cuts.filter(({ kind }) => kind === 'groove')).toEqual([]);
    // Clear inside up to the same edge: 646.6 − 6.4.
    expect(openingOf(fitOut, 'opening-2').size.map((side) => Math.round(side * 10) / 10)).toEqual([814.8, 476, 640.2]);
    // Round the bottom: 838.8 takes 2 + ⌈758.8 / 150⌉ − 1 = 7 screws, 500 takes 2 + ⌈420 / 150⌉ − 1 = 4, twice each.
    expect(fitOut.hardware.find(({ id }) => id === 'opening-1/bottom-screws')?.quantity).toBe(22);
  });

  it('is divided inside, with dividers that stand in its box and move with it', () => {
    const fitOut = one({
      slide: 'slide-45',
      slideLengthMm: 500,
      inside: divided('opening-2', 'columns', [
        [fixed(200), empty('opening-3')],
        [share(), empty('opening-4')],
      ]),
    });
    expect(fitOut.problems).toEqual([]);
    const divider = panelOf(fitOut, 'opening-2/divider-1');
    expect(divider.mover).toBe('opening-1/drawer');
    // 12 of box sheet between 200 and the rest of 814.8.
    expect(openingOf(fitOut, 'opening-4').size[0]).toBeCloseTo(814.8 - 200 - 12, 9);
  });

  it('cannot lay its front over the face where a panel stands before it', () => {
    const behind = solved([
      carcass(
        divided('opening-0', 'layers', [
          [fixed(150), empty('opening-9')],
          [share(), fitted('opening-1', drawer({ front: 'overlay' }))],
        ]),
      ),
    ]);
    expect(behind.problems).toMatchObject([{ code: 'bad-joint', at: 'opening-1' }]);
  });
});
