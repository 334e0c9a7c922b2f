import { describe, expect, it } from 'vitest';
import { HOME, type Vec3 } from '../../../src/base/index.ts';
import { anchorsSchema, type Design, designSchema, emptyDesign } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { findWaysOut, inspect } from '../../../src/inspection/index.ts';
import { boxSurvey } from '../../envelope/surveys.ts';
import { carcass, designOf, fitted } from '../../fitout/designs.ts';
import {
  anchor,
  catalog,
  findingsOf,
  fitOut,
  inspectScene,
  linesOf,
  mass,
  node,
  panel,
  rules,
  spaceOf,
} from '../fixture.ts';
import { drawer, held, holdTo, solvedScene, storage, stowed } from '../scenes/hold.ts';

describe('anchor-hold', () => {
  it('220 kg at 10 g tear M8 bolts through 0.8 mm of floor: 5.39 of 3.46 kN', () => {
    // 220 · 10 · 9.80665 / 4 = 5393.7 N each; 2.5 · 270 · 8 · 0.8 / 1.25 = 3456 N; 1.5607
    const [stop] = findingsOf(
      inspectScene({ survey: null, fitout: held(), design: holdTo('ambulance') }),
      'anchor-hold',
    );
    expect(stop).toMatchObject({ severity: 'stop', unit: 'share', limit: 1, facts: { link: 'sheet-bearing', g: 10 } });
    expect(stop?.value).toBeCloseTo(1.5607, 3);
  });

  it('the same on the road, 0.8 g forward, holds', () => {
    const inspection = inspectScene({ survey: null, fitout: held(), design: holdTo('road') });
    expect(findingsOf(inspection, 'anchor-hold')).toEqual([]);
    // 5393.7 · 0.8 / 10 = 431.5 of 3456: 0.1248
    const worst = Math.max(
      ...inspection.measured.filter(({ rule }) => rule === 'anchor-hold').map(({ value }) => value),
    );
    expect(worst).toBeCloseTo(0.1248, 3);
  });

  it('a bonded plate of 5 mm bears with the skin', () => {
    // plate 2.5 · 235 · 8 · 5 / 1.25 = 18,800 beside 3,456; bond (5394 − 3456) of 80 · 80 · 2 = 12,800
    const inspection = inspectScene({ survey: null, fitout: held({ plateBonded: true }), design: holdTo('ambulance') });
    expect(findingsOf(inspection, 'anchor-hold')).toEqual([]);
  });

  it('a steel rivet nut M8 gives way in shear: (5.39 / 4.4)² with a pull of 7.26 kN to the side', () => {
    // To the side the far anchors stand 500 from the edge, the near ones 100: 21575 · 350 · 500 / (2 (500² + 100²)) = 7261 N.
    // (7261 / 25000)² + (5394 / 4400)² = 0.0844 + 1.5027 = 1.5870, in a floor of 2 mm that holds by itself.
    const inspection = inspectScene({
      survey: null,
      fitout: held({ insert: 'rivet-nut-steel-m8', plate: null }),
      design: { ...holdTo('ambulance'), houseRules: [{ rule: 'floor-skin-thickness', value: 2, who: 'A', why: 'b' }] },
    });
    const [stop] = findingsOf(inspection, 'anchor-hold');
    expect(stop).toMatchObject({ severity: 'stop', facts: { link: 'insert' } });
    expect(stop?.value).toBeCloseTo(1.587, 3);
  });

  it('says what else it needs: an insert without a rating across, a sheet that is no plywood', () => {
    const insert = held({ insert: 'wood-insert-m8' });
    expect(linesOf(inspectScene({ survey: null, fitout: insert }), 'hold-unknown')).toEqual([
      'caution carcass-1+wood-insert-m8 0',
    ]);
    const sheet = { ...held(), panels: [panel('carcass-1/bottom', 600, 1000, { material: 'hdpe-12' })] };
    expect(linesOf(inspectScene({ survey: null, fitout: sheet }), 'hold-unknown')).toEqual([
      'caution carcass-1+hdpe-12 0',
    ]);
  });

  it('anchors on one spot do not hold', () => {
    const { anchors = [], ...rest } = held();
    const one = { ...rest, anchors: anchors.slice(0, 1) };
    const scene = inspectScene({ survey: null, fitout: { ...one, masses: [mass('load', 10, [500, 30, 350])] } });
    expect(findingsOf(scene, 'anchor-hold')[0]).toMatchObject({ severity: 'stop', facts: { link: 'loose' } });
  });

  it('a carcass that stands on another loads its anchors too', () => {
    const base = held({}, 60);
    const top = {
      id: node('carcass-2'),
      name: 'top',
      pose: { ...HOME, at: [0, -300, 700] as Vec3 },
      size: [1000, 600, 100] as Vec3,
      massKg: 0,
    };
    const stacked = {
      ...base,
      carcasses: [...(base.carcasses ?? []), top],
      masses: [...(base.masses ?? []), mass('upper', 60, [500, 0, 350], { kind: 'gear', carcass: node('carcass-2') })],
    };
    const worst = (fitout: Partial<FitOut>): number =>
      Math.max(
        ...inspectScene({ survey: null, fitout })
          .measured.filter(({ rule }) => rule === 'anchor-hold')
          .map(({ value }) => value),
      );
    expect(worst(stacked)).toBeCloseTo(2 * worst(base), 6);
  });
});

describe('where anchors are', () => {
  it('none at all is a stop, three are a caution', () => {
    const { anchors = [], ...rest } = held();
    expect(linesOf(inspectScene({ survey: null, fitout: rest }), 'anchor-count')).toEqual(['stop carcass-1 0']);
    const three = { ...rest, anchors: anchors.slice(0, 3) };
    expect(linesOf(inspectScene({ survey: null, fitout: three }), 'anchor-count')).toEqual(['caution carcass-1 3']);
  });

  it('too near to an edge is a caution, beside the panel a stop', () => {
    const one = (edgeMm: number) => ({ ...held(), anchors: [anchor('anchor-1', [50, 0, 0], { edgeMm })] });
    expect(linesOf(inspectScene({ survey: null, fitout: one(25) }), 'anchor-edge')).toEqual([
      'caution carcass-1+anchor-1 25',
    ]);
    expect(linesOf(inspectScene({ survey: null, fitout: one(-2) }), 'anchor-edge')).toEqual([
      'stop carcass-1+anchor-1 -2',
    ]);
    expect(linesOf(inspectScene({ survey: null, fitout: one(30) }), 'anchor-edge')).toEqual([]);
  });

  it('not where the survey says no hole', () => {
    const zone = {
      id: 'zone-1',
      name: 'tank',
      rule: 'no-hole',
      solid: { shape: 'box', min: [900, 100, -60], max: [1200, 400, 0] },
    };
    const survey = boxSurvey({ zones: [zone] });
    expect(linesOf(inspectScene({ survey, fitout: held() }), 'anchor-no-hole')).toEqual([
      'stop carcass-1+anchor-4+zone-1 1',
    ]);
  });
});

describe('latch-hold and back-stop', () => {
  it('a drawer of 40 kg without a latch, thrown open at 9 g', () => {
    const scene = solvedScene(drawer({ latch: null }), { design: { ...stowed(25), holdTo: ['crew-area'] } });
    const [stop] = findingsOf(scene, 'latch-hold');
    expect(stop).toMatchObject({ severity: 'stop', limit: 0, unit: 'N', facts: { way: 'rear', g: 9 } });
    expect(stop?.value).toBeCloseTo(Number(stop?.facts.kg) * 9 * 9.80665, 6);
  });

  it('a latch is held against its rating in the way it opens', () => {
    const scene = (latch: string) =>
      solvedScene(drawer({ latch }), { design: { ...stowed(25), holdTo: ['crew-area'] } });
    expect(findingsOf(scene('latch-compression-220'), 'latch-hold')[0]).toMatchObject({ severity: 'stop', limit: 220 });
    expect(findingsOf(scene('latch-two-point-bar'), 'latch-hold')).toEqual([]);
  });

  it('forward, the back panel or a pair of stops takes it', () => {
    const scene = (backStop: string | null) =>
      solvedScene(drawer({ latch: 'latch-two-point-bar', backStop }), {
        design: { ...stowed(30), holdTo: ['crew-area'] },
      });
    const [bare] = findingsOf(scene(null), 'back-stop');
    expect(bare).toMatchObject({ severity: 'stop', facts: { way: 'forward', stops: 0 } });
    // Back 6.4 mm: 29 · 0.67 · 6.4² / 6 = 132.6 N; box 200 high in a room of 664.6: 2 π m / (1 − 2 · c / 3 R).
    const radius = (700 - 2 * 17.7) / 2;
    const patch = Number(bare?.limit);
    expect(patch).toBeGreaterThan((2 * Math.PI * 29 * 0.67 * 6.4 ** 2) / 6);
    expect(radius).toBeCloseTo(332.3, 9);
    expect(findingsOf(scene('stop-angle-18'), 'back-stop')).toEqual([]);
  });

  it('a carcass without a back has nothing to run into', () => {
    const joints = { corner: 'dado', dadoDepthMm: 6, back: { kind: 'none' } };
    const scene = solvedScene(drawer({}), { carcass: { joints }, design: stowed(5) });
    expect(findingsOf(scene, 'back-stop')[0]).toMatchObject({ severity: 'stop', limit: 0 });
  });
});

describe('gear-hold', () => {
  it('a net of 800 N and 10 kg at 9 g: 882.6 N', () => {
    const scene = solvedScene(storage('net-small'), { design: { ...stowed(10), holdTo: ['crew-area'] } });
    expect(linesOf(scene, 'gear-hold')).toEqual(['stop opening-2 882.6']);
    expect(
      linesOf(solvedScene(storage('net-large'), { design: { ...stowed(10), holdTo: ['crew-area'] } }), 'gear-hold'),
    ).toEqual([]);
  });

  it('nothing, or only a lip', () => {
    expect(linesOf(solvedScene(storage(null), { design: stowed(4) }), 'gear-hold')).toEqual([
      'stop opening-2+gear-1 4',
    ]);
    expect(linesOf(solvedScene(storage(null, 40), { design: stowed(4) }), 'gear-hold')).toEqual([
      'caution opening-2+gear-1 4',
    ]);
    expect(linesOf(solvedScene(storage(null), { design: stowed(1) }), 'gear-hold')).toEqual([]);
  });

  it('a bracket of 1500 N holds a pack of 16 kg at 9 g, whatever the design is held to, and not one of 18', () => {
    const bracket = fitted('opening-2', { kind: 'apparatus-bracket', bracket: 'cradle-pack-floor', mounting: 'floor' });
    // 16 · 9 · 9.80665 = 1412; 18: 1589
    const scene = (kg: number) => solvedScene(bracket, { design: { ...stowed(kg), holdTo: ['road'] } });
    expect(linesOf(scene(16), 'gear-hold')).toEqual([]);
    expect(linesOf(scene(18), 'gear-hold')).toEqual(['stop opening-2 1588.68']);
  });

  it('gear that wants a bracket is named where it has none', () => {
    const [first] = stowed(4).gear;
    const scene = solvedScene(storage('net-large'), { design: { gear: [{ ...first, needs: ['bracket'] }] } });
    expect(linesOf(scene, 'gear-needs-bracket')).toEqual(['caution gear-1+opening-2 0']);
  });
});

describe('seat-back-load', () => {
  const seat = {
    id: 'obstacle-1',
    name: 'seat back',
    kind: 'seat-back',
    solid: { shape: 'box', min: [1300, -500, 0], max: [1400, 500, 600] },
  };

  it('names what nothing holds forward: 60 of 36 kg', () => {
    const { anchors: _none, ...loose } = held({}, 60);
    const survey = boxSurvey({ obstacles: [seat] });
    expect(linesOf(inspectScene({ survey, fitout: loose }), 'seat-back-load')).toEqual([
      'stop obstacle-1+carcass-1 60',
    ]);
    expect(linesOf(inspectScene({ survey, fitout: held({}, 60) }), 'seat-back-load')).toEqual([]);
  });
});

describe('ways out', () => {
  it('more or stronger anchors are tried, and what is offered holds', () => {
    const anchors = anchorsSchema.parse(
      (['left', 'right'] as const).flatMap((left, i) =>
        (['face', 'back'] as const).map((face, j) => ({
          id: `anchor-${2 * i + j + 1}`,
          on: 'floor',
          across: { from: left, mm: 80 },
          deep: { from: face, mm: 80 },
          bolt: 'bolt-m8x40',
          washer: 'washer-m8-30',
          plate: 'backing-plate-80',
        })),
      ),
    );
    const design = designOf(
      [
        carcass(
          fitted('opening-2', { kind: 'open-storage', shelfMaterial: 'birch-ply-12', restraint: 'strap-quick-50' }),
          {
            facing: 'rear',
            anchors,
            place: { x: { rule: 'at', mm: 20 }, y: { rule: 'at', mm: -450 }, z: { rule: 'at', mm: 0 } },
          },
        ),
      ],
      { ...stowed(130, 'opening-2', [300, 150, 0]), survey: boxSurvey(), holdTo: ['crew-area'] },
    );
    const space = spaceOf(design.survey);
    const look = (copy: Design) =>
      inspect({ design: copy, space, fitout: solveFitOut(copy, catalog, rules), catalog, rules });
    const inspection = findWaysOut(look(design), design, look);
    const [stop] = findingsOf(inspection, 'anchor-hold');
    expect(stop?.severity).toBe('stop');
    expect(stop?.waysOut.map(({ facts }) => facts.how)).toEqual(['bond', 'bolt', 'bolt']);
    for (const way of stop?.waysOut ?? []) {
      expect(findingsOf(look(way.design), 'anchor-hold').filter(({ severity }) => severity === 'stop')).toEqual([]);
      expect(way.valueAfter).toBeLessThanOrEqual(1);
    }
  });
});

describe('files without a word about anchors', () => {
  it('are read as holding nothing down, held to the usual sets', () => {
    const design = designSchema.parse(emptyDesign('Old', 'mm'));
    expect(design.holdTo).toEqual(['crew-area', 'ambulance']);
    expect(fitOut().anchors).toEqual([]);
  });
});
