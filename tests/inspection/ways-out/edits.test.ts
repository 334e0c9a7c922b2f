import { describe, expect, it } from 'vitest';
import {
  changeCarcass,
  changeFitting,
  type Design,
  findOpening,
  type NodeId,
  setPartSize,
} from '../../../src/design/index.ts';
import type { Finding, WayOut } from '../../../src/inspection/index.ts';
import { openStops } from '../../../src/inspection/index.ts';
import { sayWayMargin, sayWayOut } from '../../../src/says/index.ts';
import { HATCH } from '../../envelope/surveys.ts';
import {
  carcassAt,
  door,
  drawer,
  empty,
  fixed,
  lookedAt,
  post,
  type SmallScene,
  same,
  share,
  split,
} from './small-scenes.ts';

/** The wall and everything on it is measured by tape twice: half width √29 = 5.385 mm (see docs/checks.md). */
const DOUBT = Math.sqrt(29);
/** Gap that moving parts keep to anything. */
const GAP = 3;
/** Reveal around an inset front. */
const REVEAL = 2;
/** Sheet as measured. */
const SHEET = 17.7;

/** A way a step smaller, as a person would take back one step of it. */
const stepLess = (before: Design, { kind, facts, design }: WayOut): Design => {
  const id = String(facts.opening ?? '') as NodeId;
  const mm = Number(facts.mm);
  switch (kind) {
    case 'move-carcass': {
      const carcass = design.cabinet.carcasses.find(({ name }) => name === facts.carcass);
      const axis = facts.axis as 'x' | 'y' | 'z';
      const place = carcass?.place[axis];
      if (!carcass || place?.rule !== 'at') throw new Error('not at a place');
      const back = place.mm - Math.sign(mm);
      return changeCarcass(design, carcass.id, { place: { ...carcass.place, [axis]: { rule: 'at', mm: back } } });
    }
    case 'raise-row':
    case 'lower-row': {
      const parent = findOpening(design, id)?.around.at(-1);
      const content = parent?.content;
      if (!parent || content?.kind !== 'divided') throw new Error('not a row');
      const below = content.parts.findIndex(({ opening }) => opening.id === id) + 1;
      const size = content.parts[below]?.size;
      if (size?.rule !== 'fixed') throw new Error('not fixed');
      return setPartSize(design, parent.id, below, { rule: 'fixed', mm: size.mm + (kind === 'raise-row' ? -1 : 1) });
    }
    case 'shorten-slide':
      return changeFitting(design, id, (own) => {
        if ('slideLengthMm' in own) own.slideLengthMm = mm + 50;
      });
    case 'lower-stop':
      return changeFitting(design, id, (own) => {
        if (own.kind === 'door') own.opensDeg = Number(facts.deg) + 5;
      });
    default:
      // Hung on the other side or not: a step less is the design as it was.
      return before;
  }
};

interface Wanted {
  readonly rule: string;
  readonly kind: string;
  readonly facts: Record<string, unknown>;
  /** Value of the finding, and what the way brings it to. */
  readonly before: number;
  readonly after: number;
  /** What is said. */
  readonly says?: string;
  readonly margin?: string;
}

const expectWay = (scene: SmallScene, wanted: Wanted): Finding => {
  const { design, look, before, found } = lookedAt(scene);
  const finding = found.findings.find(({ rule }) => rule === wanted.rule);
  if (!finding) throw new Error(`no ${wanted.rule} among ${found.findings.map(({ rule }) => rule).join()}`);
  const way = finding.waysOut.find(
    ({ kind, facts }) => kind === wanted.kind && (wanted.facts.axis === undefined || facts.axis === wanted.facts.axis),
  );
  if (!way)
    throw new Error(`only ${finding.waysOut.map(({ kind, facts }) => `${kind} ${JSON.stringify(facts)}`).join()}`);
  expect(way.facts).toMatchObject(wanted.facts);
  expect(finding.value).toBeCloseTo(wanted.before, 2);
  expect(way.valueAfter).toBeCloseTo(wanted.after, 2);
  if (wanted.says !== undefined) expect(sayWayOut(way, 'mm', (id) => id)).toBe(wanted.says);
  if (wanted.margin !== undefined) expect(sayWayMargin(finding, way, 'mm')).toBe(wanted.margin);
  // It is gone, and no stop came for it.
  const after = look(way.design);
  expect(after.findings.filter((own) => same(own, finding) && own.severity !== 'note')).toEqual([]);
  expect(openStops(after).filter((stop) => !openStops(before).some((own) => same(own, stop)))).toEqual([]);
  // A step less leaves something to say.
  expect(look(stepLess(design, way)).findings.filter((own) => same(own, finding)).length).toBeGreaterThan(0);
  return finding;
};

/** A drawer over a row 80 high: the underside of its front stands at 17.7 + 80 + 17.7 + 2 = 117.4. */
const UNDERSIDE = SHEET + 80 + SHEET + REVEAL;
const overRow = (top: number): SmallScene => ({
  carcasses: [
    carcassAt(
      'c',
      [60, -300, 0],
      split('o', 'rows', [
        [share, drawer('d')],
        [fixed(80), empty('e')],
      ]),
    ),
  ],
  obstacles: [post([-200, -50, 0], [-150, 50, top])],
});

describe('edits that a fabricator would try', () => {
  it('raises the row over a post, with the gap and what is not known of it', () => {
    // 130 + 3 + 5.385 − 117.4 = 20.985, up to 21. The front at 60 meets the post at −150 after 210 of 400.
    const finding = expectWay(overRow(130), {
      rule: 'mover-travel',
      kind: 'raise-row',
      facts: { opening: 'd', mm: Math.ceil(130 + GAP + DOUBT - UNDERSIDE) },
      before: 60 + 150,
      after: 400,
      says: 'Raise d by 21 mm',
      margin: 'now 210 mm of 400 mm, then the whole 400 mm',
    });
    expect(finding.severity).toBe('stop');
  });

  it('raises the row or the carcass over what it passes too near', () => {
    // 117.4 − 116 = 1.4; 3 + 5.385 − 1.4 = 6.985, up to 7: 8.4.
    for (const kind of ['raise-row', 'move-carcass'])
      expectWay(overRow(116), {
        rule: 'mover-travel',
        kind,
        facts: { mm: 7 },
        before: UNDERSIDE - 116,
        after: UNDERSIDE - 116 + 7,
        margin: 'now 1.4 mm, then 8.4 mm; limit 3 mm',
      });
  });

  /** Under a beam whose underside is at 470: the top of the front is at `z` + 400 − 17.7 − 2. */
  const under = (z: number, opening: ReturnType<typeof drawer>): SmallScene => ({
    carcasses: [carcassAt('c', [60, -300, z], opening)],
    obstacles: [post([-200, -50, 470], [-150, 50, 900])],
  });

  it('lowers the carcass under a beam', () => {
    // 480.3 − 470 + 3 + 5.385 = 18.685, up to 19.
    expectWay(under(100, drawer('d')), {
      rule: 'mover-travel',
      kind: 'move-carcass',
      facts: { axis: 'z', mm: -Math.ceil(500 - SHEET - REVEAL - 470 + GAP + DOUBT) },
      before: 210,
      after: 400,
      says: 'Move c 19 mm down',
    });
  });

  it('lowers the row under a beam', () => {
    // An empty row over it takes what it gives: 200 + 17.7 + ... the drawer's top meets the beam by 10.3 all the same.
    const rows = split('o', 'rows', [
      [share, empty('e')],
      [fixed(150), drawer('d')],
      [fixed(100), empty('f')],
    ]);
    // Top of the front: 250 + 17.7 + 100 + 17.7 + 150 − 2 = 533.4; 533.4 − 520 + 8.385 = 21.785, up to 22.
    expectWay(
      { carcasses: [carcassAt('c', [60, -300, 250], rows)], obstacles: [post([-200, -50, 520], [-150, 50, 900])] },
      {
        rule: 'mover-travel',
        kind: 'lower-row',
        facts: { opening: 'd', mm: Math.ceil(250 + 2 * SHEET + 250 - REVEAL - 520 + GAP + DOUBT) },
        before: 210,
        after: 400,
        says: 'Lower d by 22 mm',
      },
    );
  });

  it('moves the carcass across off a post that sticks in at a side', () => {
    // Left edge of the front: 300 − 17.7 − 2 = 280.3; 280.3 − 270 + 8.385 = 18.685, up to 19.
    expectWay(
      { carcasses: [carcassAt('c', [60, -300, 0], drawer('d'))], obstacles: [post([-200, 270, 0], [-150, 400, 400])] },
      {
        rule: 'mover-travel',
        kind: 'move-carcass',
        facts: { axis: 'y', mm: -Math.ceil(300 - SHEET - REVEAL - 270 + GAP + DOUBT) },
        before: 210,
        after: 400,
        says: 'Move c 19 mm to the right',
      },
    );
  });

  const straightOn: SmallScene = {
    carcasses: [carcassAt('c', [60, -300, 0], drawer('d'))],
    obstacles: [post([-320, -50, 0], [-300, 50, 400])],
  };

  it('puts a shorter slide under a drawer that comes out too far', () => {
    // 60 + 300 = 360 to the post: 350 is the longest slide short of it, with 10 > 8.385 to spare.
    expectWay(straightOn, {
      rule: 'mover-travel',
      kind: 'shorten-slide',
      facts: { opening: 'd', mm: 350 },
      before: 360,
      after: 350,
      margin: 'now 360 mm of 400 mm, then the whole 350 mm',
    });
  });

  it('moves its carcass back by what the travel is short', () => {
    // 400 − 360 + 3 + 5.385 = 48.385, up to 49.
    expectWay(straightOn, {
      rule: 'mover-travel',
      kind: 'move-carcass',
      facts: { axis: 'x', mm: Math.ceil(400 - 360 + GAP + DOUBT) },
      before: 360,
      after: 400,
      says: 'Move c 49 mm forward',
    });
  });

  const besideDoor: SmallScene = {
    carcasses: [carcassAt('c', [60, -300, 0], door('d'))],
    obstacles: [post([-500, 300, 0], [-460, 330, 300])],
  };

  it('hangs a leaf on the other side', () => {
    const finding = expectWay(besideDoor, {
      rule: 'mover-travel',
      kind: 'other-hinge',
      facts: { opening: 'd', side: 'right' },
      before: lookedAt(besideDoor).before.findings.find(({ rule }) => rule === 'mover-travel')?.value ?? 0,
      after: 110,
    });
    expect(finding.unit).toBe('deg');
  });

  it('stops a leaf sooner, at the last five degrees before what it meets', () => {
    expectWay(besideDoor, {
      rule: 'mover-travel',
      kind: 'lower-stop',
      facts: { opening: 'd', deg: 90 },
      before: lookedAt(besideDoor).before.findings.find(({ rule }) => rule === 'mover-travel')?.value ?? 0,
      after: 90,
    });
  });

  it('hangs one of two leaves in each other’s way on its other side', () => {
    expectWay(
      {
        carcasses: [
          carcassAt(
            'c',
            [60, -300, 0],
            split('o', 'columns', [
              [share, door('d', { hung: 'right' })],
              [share, door('d2')],
            ]),
          ),
        ],
      },
      { rule: 'mover-pairs', kind: 'other-hinge', facts: { opening: 'd', side: 'left' }, before: 0, after: 0 },
    );
  });

  /**
   * A ridge on the hatch, 100 under its hinge and 120 in: √(100² + 120²) = 156.2 from the hinge at (−20, 900). The upper
   * edge of the carcass at (60, 760) is 80 and 140 off: √(80² + 140²) = 161.2, so the ridge passes it by 5.04.
   */
  const ridge = Math.hypot(100, 120);
  const underRidge: SmallScene = {
    carcasses: [carcassAt('c', [60, -300, 0], empty('e'), { size: { width: 600, height: 760, depth: 500 } })],
    closures: [
      {
        ...HATCH,
        innerProfile: [
          [0, 0],
          [100, 120],
          [110, 0],
          [900, 0],
        ],
      },
    ],
  };
  const HATCH_GAP = 15;

  it('moves the carcass off the swing of a hatch', () => {
    // √(176.59² − 140²) − 80 = 27.6, up to 28.
    const mm = Math.ceil(Math.sqrt((ridge + HATCH_GAP + DOUBT) ** 2 - 140 ** 2) - 80);
    expectWay(underRidge, {
      rule: 'closure-swing',
      kind: 'move-carcass',
      facts: { axis: 'x', mm },
      before: Math.hypot(80, 140) - ridge,
      after: HATCH_GAP,
      margin: 'now 5 mm, then at least 15 mm; limit 15 mm',
    });
  });

  it('makes the carcass lower under the swing of a hatch', () => {
    // √(176.59² − 80²) − 140 = 17.4, up to 18.
    const mm = Math.ceil(Math.sqrt((ridge + HATCH_GAP + DOUBT) ** 2 - 80 ** 2) - 140);
    expectWay(underRidge, {
      rule: 'closure-swing',
      kind: 'shrink-carcass',
      facts: { size: 'height', mm },
      before: Math.hypot(80, 140) - ridge,
      after: HATCH_GAP,
    });
  });

  /** A door whose latch, 77.2 from the side, stands beside a post that is proud of the face and ends at 10.5. */
  const proud: SmallScene = {
    carcasses: [carcassAt('c', [260, 0, 0], door('d', { latch: 'latch-slam', opensDeg: 85 }))],
    obstacles: [post([60, -50, 0], [240, 10.5, 400])],
  };

  it('makes room for a glove by the other hinge side', () => {
    expectWay(proud, {
      rule: 'hand-room',
      kind: 'other-hinge',
      facts: { opening: 'd', side: 'right' },
      // The post ends 260 − 240 = 20 before the face.
      before: 20,
      after: 75,
    });
  });

  it('makes room for a glove by moving off what stands proud', () => {
    const finding = expectWay(proud, {
      rule: 'hand-room',
      kind: 'move-carcass',
      facts: { axis: 'y' },
      before: 20,
      after: 75,
    });
    // The hand is 135 wide about the grip; the post ends at 10.5.
    const grip = finding.at?.[0][1] ?? Number.NaN;
    const way = finding.waysOut.find(({ kind, facts }) => kind === 'move-carcass' && facts.axis === 'y');
    expect(Number(way?.facts.mm)).toBe(Math.ceil(10.5 - (grip - 135 / 2)));
  });

  it('draws a device out over what stands before its plate', () => {
    const plate = {
      id: 'p',
      name: 'p',
      content: {
        kind: 'fitted',
        fitting: {
          kind: 'faceplate',
          material: 'aluminium-32',
          rows: [[{ id: 'radio', device: 'radio-50' }]],
        },
      },
    };
    // Its face is 62 high in the middle of 400, from 169: 200 − 169 = 31. It comes out by its own depth.
    const finding = expectWay(
      {
        carcasses: [
          carcassAt('c', [430, -300, 0], plate),
          carcassAt('c2', [60, -300, 0], empty('e'), { size: { width: 600, height: 200, depth: 350 } }),
        ],
      },
      { rule: 'device-out', kind: 'move-carcass', facts: { axis: 'z', mm: 31 }, before: 0, after: 208.18 },
    );
    expect(finding.limit).toBeCloseTo(208.18, 6);
  });

  it('stows first-due gear where fewer motions reach it', () => {
    const gear = [
      {
        id: 'g',
        name: 'Axe',
        kind: null,
        sizeMm: [100, 100, 50],
        massKg: 2,
        massFrom: 'measured',
        massSigmaKg: 0,
        needs: [],
        firstDue: true,
        user: '',
        note: '',
        place: { opening: 'd-in', level: 0, at: [20, 20, 0], stance: 'upright', turnDeg: 0 },
      },
    ];
    expectWay(
      {
        carcasses: [
          carcassAt(
            'c',
            [60, -300, 0],
            split('o', 'rows', [
              [share, door('e')],
              [fixed(150), drawer('d', { latch: 'latch-slam' })],
            ]),
          ),
        ],
        closures: [HATCH],
        rest: { gear },
      },
      // Hatch, latch and drawer are three motions, hatch and door without a latch are two; the limit is two.
      { rule: 'first-due', kind: 'move-gear-elsewhere', facts: { opening: 'e-in' }, before: 3, after: 2 },
    );
  });
});
