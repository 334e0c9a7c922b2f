import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import { houseRules } from '../../../src/catalog/index.ts';
import type { Design } from '../../../src/design/index.ts';
import type { FitOut } from '../../../src/fitout/index.ts';
import { heldCarcasses, holdGroups } from '../../../src/inspection/hold/index.ts';
import type { Inspection } from '../../../src/inspection/index.ts';
import { sayFinding } from '../../../src/says/index.ts';
import { catalog, designWith, findingsOf, fitOut, inspectScene, mass } from '../fixture.ts';
import { bar, bracedPair, FORWARD, IDS, KG, PAIR } from '../scenes/braces.ts';

const look = (fitout: Partial<FitOut>, design = FORWARD): Inspection => inspectScene({ survey: null, fitout, design });
const groupsOf = (parts: Partial<FitOut>, design = FORWARD) => {
  const made = designWith(design);
  const job = {
    design: made,
    space: null,
    fitout: fitOut(parts),
    catalog,
    rules: houseRules(catalog, made.houseRules),
  };
  return holdGroups(job, heldCarcasses(job));
};

const G = 9.80665;
/** An M8 in 0.8 mm of floor: 2.5 · 270 · 8 · 0.8 / 1.25. */
const SKIN_N = 3456;

describe('145 and 100 kg side by side, thrown forward at 10 g', () => {
  it('alone the heavier tears its bolts out: 3,555 of 3,456 N', () => {
    const [stop, ...more] = findingsOf(look(bracedPair(KG, [])), 'anchor-hold');
    expect(stop).toMatchObject({ severity: 'stop', parts: ['carcass-1'] });
    expect(stop?.value).toBeCloseTo((145 * 10 * G) / 4 / SKIN_N, 6);
    expect(more).toEqual([]);
  });

  it('as one group its worst bolt sees 3,269 N: the heavier side pulls the group round', () => {
    const [group] = groupsOf(bracedPair(KG, PAIR));
    expect(group?.kg).toBe(245);
    // CG at y = 100 · 620 / 245 = 253.06, anchors about 310: 24,026 N · 56.94 = 1,368,000 N mm.
    const push = 245 * 10 * G;
    const turn = push * (310 - (100 * 620) / 245);
    // Σ r²: 8 · 450² + 4 (510² + 110²) = 2,708,800.
    const polar = 8 * 450 ** 2 + 4 * (510 ** 2 + 110 ** 2);
    const worst = Math.hypot(push / 8 + (turn * 510) / polar, (turn * 450) / polar);
    expect(worst).toBeCloseTo(3268.9, 0);
    expect(group?.centre[1]).toBeCloseTo(253.061, 3);
    expect(group?.worst).toMatchObject({ link: 'sheet-bearing', thrown: { way: 'forward', g: 10 } });
    expect(group?.worst?.use).toBeCloseTo(worst / SKIN_N, 6);
  });

  it('what the braces pass is what keeps the first carcass in balance', () => {
    // Weak panels of the top make the bolts of the brace govern: bearing of 0.11 · 0.92 · 695 · 8 · 17.7 / 1.3, made a hundredth of that.
    const weak: Partial<Design> = {
      ...FORWARD,
      houseRules: [
        ...(FORWARD.houseRules ?? []),
        { rule: 'bolt-ply-bearing-coefficient', value: 0.0011, who: 'A', why: 'b' },
      ],
    };
    const parts = bracedPair(KG, PAIR);
    // The panels that the anchors bear in are left strong: a hundred times as thick.
    const anchors = (parts.anchors ?? []).map((anchor) => ({ ...anchor, gripMm: 1770 }));
    const [group] = groupsOf({ ...parts, anchors }, weak);
    expect(group?.worst?.link).toBe('brace-panel-bearing');
    const push = 245 * 10 * G;
    const turn = push * (310 - (100 * 620) / 245);
    const polar = 8 * 450 ** 2 + 4 * (510 ** 2 + 110 ** 2);
    const omega = turn / polar;
    // Forward on the first carcass: its load, less push / 8 on each of its anchors and what turning adds at 510 and 110.
    const pass = 145 * 10 * G - push / 2 - 2 * omega * (510 + 110);
    expect(pass).toBeCloseTo(1580.2, 0);
    // About an upright line through the middle of its brace bolts, (500, 248): load at 248 to the side, anchors at y = ±200.
    const near = push / 8 + omega * 110;
    const far = push / 8 + omega * 510;
    const aboutUp = 145 * 10 * G * 248 - 2 * far * (248 + 200) - 2 * near * (248 - 200) + 4 * omega * 450 * 450 * -1;
    // Bolts at (±300, ±20) of the first carcass: Σ r² = 361,600. The brace pushes back with the opposite.
    const spin = Math.abs(aboutUp) / 361_600;
    const shear = Math.hypot(pass / 4 + spin * 20, spin * 300);
    const bearing = (0.0011 * 0.92 * 695 * 8 * 17.7) / 1.3;
    expect(group?.worst?.use).toBeCloseTo(shear / bearing, 2);
  });

  it('is a caution that names what it hangs on, beside the sum of the carcass alone', () => {
    const [caution] = findingsOf(look(bracedPair(KG, PAIR)), 'anchor-hold');
    expect(caution).toMatchObject({
      severity: 'caution',
      parts: ['carcass-1', 'brace-1', 'brace-2'],
      facts: { group: 'holds', groupCount: 2, groupKg: 245, link: 'sheet-bearing' },
    });
    // The value stays that of the carcass alone.
    expect(caution?.value).toBeCloseTo(1.0286, 3);
    expect(caution?.facts.groupUse).toBeCloseTo(0.9459, 3);
    if (!caution) throw new Error('nothing found');
    const words = sayFinding(caution, 'mm', (id) => id);
    expect(words.title).toBe(
      'Carcass-1 hangs on brace-1 and brace-2: alone, the bolt tears through the sheet of the vehicle',
    );
    expect(words.detail).toContain('2 carcasses of 245 kg as one rigid body use 94.6 % thrown forward at 10 g');
    // The margin of the strip stays that of the carcass alone.
    expect(look(bracedPair(KG, PAIR)).measured).toEqual(look(bracedPair(KG, [])).measured);
  });
});

describe('a group that does not hold', () => {
  const only = (fitout: Partial<FitOut>) => {
    const [finding] = findingsOf(look(fitout), 'anchor-hold');
    return [finding?.severity, finding?.parts, finding?.facts.group, finding?.facts.groupLink];
  };

  it('stays a stop: one bar turns about its own line', () => {
    expect(only(bracedPair(KG, [bar('brace-1', 500)]))).toEqual(['stop', ['carcass-1'], 'gives way', 'brace-turn']);
  });

  it('stays a stop: flat bars bend over the gap', () => {
    const flat = PAIR.map((each) => ({ ...each, item: 'brace-bar-30' }));
    expect(only(bracedPair(KG, flat))).toEqual(['stop', ['carcass-1'], 'gives way', 'brace-bar']);
  });

  it('stays a stop: together they are too heavy', () => {
    const heavy = look(bracedPair({ 'carcass-1': 150, 'carcass-2': 150 }, PAIR));
    expect(findingsOf(heavy, 'anchor-hold').map(({ severity }) => severity)).toEqual(['stop', 'stop']);
  });

  it('stays a stop: nobody says how strong the bar is, or how well the masses are known', () => {
    const unknown = PAIR.map((each) => ({ ...each, item: 'brace-alu-40' }));
    expect(only(bracedPair(KG, unknown)).slice(0, 3)).toEqual(['stop', ['carcass-1'], 'gives way']);
    const parts = bracedPair(KG, PAIR);
    // 2 · 12 kg more on the heavier: (169 + 100) 10 g on eight bolts and further to its side is over 3,456 N.
    const vague = (parts.masses ?? []).map((each) => ({ ...each, sigmaKg: 12 }));
    expect(only({ ...parts, masses: vague }).slice(0, 3)).toEqual(['stop', ['carcass-1'], 'gives way']);
  });

  it('stays a stop: a brace with a problem holds nothing', () => {
    const loose = PAIR.map((each) => ({ ...each, sound: false }));
    expect(findingsOf(look(bracedPair(KG, loose)), 'anchor-hold')).toEqual(
      findingsOf(look(bracedPair(KG, [])), 'anchor-hold'),
    );
  });
});

describe('laws of braced groups', () => {
  it('two alike pass nothing: the group uses what each alone uses', () => {
    const alike = { 'carcass-1': 120, 'carcass-2': 120 };
    const [group] = groupsOf(bracedPair(alike, [bar('brace-1', 500)]));
    expect(group?.worst?.use).toBeCloseTo((120 * 10 * G) / 4 / SKIN_N, 6);
  });

  it('weighs the sum of its carcasses and braces', () => {
    const parts = bracedPair(KG, PAIR);
    const masses = [...(parts.masses ?? []), mass('brace-1', 2, [200, 310, 700], { carcass: null, kind: 'gear' })];
    const [group] = groupsOf({ ...parts, masses });
    expect(group?.kg).toBeCloseTo(247, 9);
    // (245 · 350 + 2 · 700) / 247
    expect(group?.centre[2]).toBeCloseTo((245 * 350 + 1400) / 247, 6);
    expect(look({ ...parts, masses }).findings.filter(({ rule }) => rule === 'anchor-hold')[0]?.value).toBeCloseTo(
      1.0286,
      3,
    );
  });

  it('does not depend on the order of carcasses, braces or anchors', () => {
    const turned = bracedPair(KG, [...PAIR].reverse(), [...IDS].reverse());
    const other = { ...turned, anchors: [...(turned.anchors ?? [])].reverse() };
    const figures = (parts: Partial<FitOut>, design?: Partial<Design>) =>
      groupsOf(parts, design).map(({ kg, centre, worst, uncertainty }) => ({ kg, centre, worst, uncertainty }));
    expect(figures(other)).toEqual(figures(bracedPair(KG, PAIR)));
    const all: Partial<Design> = { holdTo: ['ambulance'] };
    expect(figures(other, all)).toEqual(figures(bracedPair(KG, PAIR), all));
  });

  it('is the same whichever of its carcasses a brace is said to begin at', () => {
    const [group] = groupsOf(bracedPair(KG, PAIR), { holdTo: ['ambulance'] });
    const [mirrored] = groupsOf(
      bracedPair(
        KG,
        PAIR.map((each) => ({ ...each, carcasses: [each.carcasses[1], each.carcasses[0]], along: [0, -1, 0] as Vec3 })),
      ),
      { holdTo: ['ambulance'] },
    );
    expect(mirrored?.worst?.use).toBeCloseTo(group?.worst?.use ?? Number.NaN, 9);
  });

  it('ties nothing that stands on another carcass or on another level', () => {
    const parts = bracedPair(KG, PAIR);
    const raised = (parts.carcasses ?? []).map((each, i) =>
      i === 0 ? each : { ...each, pose: { ...each.pose, at: [0, 920, 50] as Vec3 } },
    );
    expect(groupsOf({ ...parts, carcasses: raised })).toEqual([]);
    expect(groupsOf(bracedPair(KG, []))).toEqual([]);
  });
});
