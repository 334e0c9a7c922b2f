import { describe, expect, test } from 'vitest';
import type { LengthUnits } from '../../src/base/index.ts';
import { gearListSchema } from '../../src/design/index.ts';
import { type Inspection, RULE_IDS } from '../../src/inspection/index.ts';
import { sayFinding, sayRule } from '../../src/says/index.ts';
import { boxSurvey, HATCH } from '../envelope/surveys.ts';
import {
  type BodyRow,
  body,
  findingsOf,
  inspectScene,
  mass,
  node,
  panel,
  room,
  vehicleWith,
} from '../inspection/fixture.ts';

const NAMES: Readonly<Record<string, string>> = {
  'carcass-1': 'left carcass',
  'carcass-2': 'right carcass',
  'opening-1': 'drawer 2',
  'gear-1': 'rope bag',
  hatch: 'Hatch',
};
const names = (id: string): string => NAMES[id] ?? id;

const said = (inspection: Inspection, rule: string, units: LengthUnits = 'mm', index = 0) => {
  const finding = findingsOf(inspection, rule)[index];
  if (!finding) throw new Error(`no finding of ${rule}`);
  return sayFinding(finding, units, names);
};

const boxes = (...rows: readonly BodyRow[]) =>
  inspectScene({ survey: boxSurvey({ closures: [HATCH] }), fitout: { bodies: rows.map(body) } });
const block = (max: BodyRow['max'], min: BodyRow['min'] = [300, -400, 0]): BodyRow => ({
  id: 'p1',
  name: 'left side',
  min,
  max,
});

describe('fit', () => {
  test('into the trim, touching it, near it, too near to tell', () => {
    expect(said(boxes(block([900, 610, 600])), 'body-in-space')).toEqual({
      title: 'Left carcass reaches 10 mm out of the cargo space',
      detail: 'Furthest in the way is left side; 6 mm is wanted. The gap is known to ± 5.4 mm.',
      valueText: '−10 mm',
      limitText: 'of 6 mm',
    });
    expect(said(boxes(block([900, 610, 600])), 'body-in-space', 'in')).toMatchObject({
      title: 'Left carcass reaches 3/8 in out of the cargo space',
      valueText: '−3/8 in',
      limitText: 'of 1/4 in',
    });
    expect(said(boxes(block([900, 600, 600])), 'body-in-space').title).toBe('Left carcass touches the trim');
    expect(said(boxes(block([900, 599.99, 600])), 'body-in-space').title).toBe('Left carcass all but touches the trim');
    expect(said(boxes(block([900, 592, 600])), 'body-in-space')).toMatchObject({
      title: 'Left carcass comes within 8 mm of the trim',
      detail:
        'Nearest is left side; 6 mm is wanted. The gap is known to ± 5.4 mm, too little to tell: measure here again.',
    });
  });

  test('obstacles and zones by their names', () => {
    const solid = { shape: 'box', min: [895, -300, 100], max: [950, 300, 500] };
    const survey = boxSurvey({
      obstacles: [{ id: 'striker', name: 'striker', kind: 'striker', solid }],
      zones: [{ id: 'zone-1', name: 'the left curtain airbag', rule: 'nothing-stands', solid }],
    });
    const inspection = inspectScene({ survey, fitout: { bodies: [body(block([900, 400, 600]))] } });
    expect(said(inspection, 'body-obstacle').title).toBe('Left carcass stands 5 mm into striker');
    expect(said(inspection, 'body-zone')).toMatchObject({
      title: 'Left carcass stands 5 mm into the left curtain airbag',
      detail:
        'Nothing may stand here; 50 mm is wanted unless the vehicle builder gives another figure. The gap is known to ± 5.4 mm.',
    });
  });

  test('a hatch that does not close', () => {
    expect(said(boxes(block([900, 400, 500], [-30, -400, 0])), 'hatch-closed', 'in').title).toBe(
      'Hatch does not close: its trim meets left carcass 3/8 in early',
    );
    expect(said(boxes(block([900, 400, 500], [-11, -400, 0])), 'hatch-closed').title).toBe(
      'Hatch, closed, comes within 9 mm of left carcass',
    );
  });

  test('two things in one place, parts that rub, carcasses side by side', () => {
    const plain = (...rows: readonly BodyRow[]) => inspectScene({ survey: null, fitout: { bodies: rows.map(body) } });
    const bag: BodyRow = { id: 'gear-1', kind: 'gear', name: 'rope bag', min: [0, 0, 0], max: [100, 100, 100] };
    const other = block([300, 100, 100], [88, 0, 0]);
    expect(said(plain(bag, other), 'body-body')).toEqual({
      title: 'Rope bag stands 12 mm into p1',
      detail: 'Rope bag and left side would be in the same place.',
      valueText: '−12 mm',
      limitText: '',
    });
    const plugs: BodyRow = {
      id: 'plugs',
      origin: node('radio'),
      kind: 'plug-room',
      min: [90, 0, 0],
      max: [200, 50, 50],
    };
    expect(said(plain(bag, plugs), 'body-body').title).toBe(
      'Rope bag stands 10 mm into the room for the plugs of radio',
    );
    expect(said(plain(plugs, block([300, 50, 50], [190, 0, 0])), 'body-body').title).toBe(
      'P1 stands 10 mm into the room for the plugs of radio',
    );
    expect(
      said(
        plain(block([100, 100, 100], [0, 0, 0]), { ...other, id: 'box', mover: 'm', min: [102, 0, 0] }),
        'moving-gap',
      ).title,
    ).toBe('Box runs 2 mm from p1');
    expect(
      said(
        plain(block([100, 100, 100], [0, 0, 0]), { ...other, id: 'p2', carcass: node('carcass-2'), min: [101, 0, 0] }),
        'carcass-gap',
      ).title,
    ).toBe('Left carcass and right carcass stand 1 mm apart');
  });
});

describe('gear', () => {
  const stowed = (across: number) =>
    inspectScene({
      survey: null,
      design: {
        gear: gearListSchema.parse([
          { id: 'gear-1', name: 'rope bag', sizeMm: [1, 1, 1], massKg: 1, massFrom: 'measured', firstDue: true },
        ]),
      },
      fitout: {
        rooms: [room('opening-1', [400, 600, 300])],
        gear: [
          {
            gear: node('gear-1'),
            opening: node('opening-1'),
            level: 0,
            from: [0, 50, 0],
            size: [across, 100, 100],
            body: 'b',
          },
        ],
      },
    });
  test('out of its opening, tight in it, without one', () => {
    expect(said(stowed(432), 'gear-in-room', 'in')).toEqual({
      title: 'Rope bag sticks 1 1/4 in out of drawer 2',
      detail: 'It does not fit sideways where it stands.',
      valueText: '−1 1/4 in',
      limitText: 'inside',
    });
    expect(said(stowed(396), 'gear-in-room').title).toBe('Rope bag has 2 mm to spare in drawer 2');
    expect(said(stowed(300), 'gear-unplaced')).toEqual({
      title: 'Rope bag has no place yet',
      detail: 'It is wanted in the first minute: give it a place near the hatch.',
      valueText: 'no place',
      limitText: '',
    });
  });
});

describe('loads', () => {
  const vehicle = (kg: number, z = 300, y = 0) =>
    inspectScene({
      survey: null,
      design: {
        vehicle: vehicleWith({
          ratings: { grossKg: 2700, frontAxleKg: 1500, rearAxleKg: 1500 },
          wheelbaseMm: 3000,
          trackMm: 1600,
          sillBehindRearAxleMm: 900,
          floorAboveGroundMm: 750,
          cgHeightAsReceivedMm: 700,
          slip: { frontKg: 1200, rearKg: 1000 },
          seats: [{ id: 'seat-1', name: 'Driver', at: [2400, 0, 300], occupant: 'driver', occupantKg: 100 }],
        }),
      },
      fitout: { masses: [mass('load', kg, [300, y, z], { kind: 'gear', sigmaKg: 2 })] },
    });
  test('over a rating, and what is left of what is wanted free', () => {
    // 1,000 + 1.2 × 400 + 50 = 1,530 of 1,500 on the rear axle; 66.1 lb are 30 kg. 2 √(5² + (1.2 · 2)²) = 11.1 kg.
    expect(said(vehicle(400), 'rear-axle', 'in')).toEqual({
      title: 'Rear axle: 66.1 lb over its rating',
      detail: '3373 lb of 3307 lb with the driver aboard. Over as well: full crew. Known to ± 24.5 lb.',
      valueText: '66.1 lb over',
      limitText: 'of 3307 lb',
    });
    // 2,200 + 360 + 100 = 2,660 of 2,700; a tenth of the payload of 500 is wanted.
    expect(said(vehicle(360), 'payload')).toEqual({
      title: 'Whole vehicle: 40.0 kg left under its rating',
      detail: '2660 kg of 2700 kg with the driver aboard. 50.0 kg is wanted free. Known to ± 14.7 kg.',
      valueText: '40.0 kg left',
      limitText: 'of 50.0 kg wanted',
    });
  });
  test('balance and stability in words', () => {
    expect(said(vehicle(400, 300, -300), 'side-to-side')).toEqual({
      title: 'The right side is heavy by 5.8 %',
      detail:
        'With cabinet and gear, nobody aboard. Move heavy gear across, or a carcass. Left and right were not weighed: the vehicle counts as even.',
      valueText: '5.8 %',
      limitText: 'of 4 %',
    });
    expect(said(vehicle(700), 'front-unload').title).toBe('The front axle loses 11.7 % of its load');
    expect(said(vehicle(700), 'front-share').title).toBe('Only 36.6 % of the weight is on the front axle');
    expect(said(vehicle(400, 1000), 'stability').title).toBe('Static stability factor 0.92');
    expect(said(vehicle(400, 1000), 'stability-loss').detail).toMatch(
      /^1\.14 as received, 0\.92 with .*Stow heavy gear lower\.$/,
    );
  });
  test('figures that nobody has brought', () => {
    const empty = inspectScene({ survey: null });
    const titles = findingsOf(empty, 'figures-missing').map((finding) => sayFinding(finding, 'mm', names).title);
    expect(titles).toContain('Needs the weigh slip: front and rear axle as received');
    expect(titles).toContain('Needs the wheelbase');
    expect(said(empty, 'figures-missing')).toMatchObject({
      title: 'Needs the height of the centre of gravity as received',
      detail: 'Not checked without it: static stability factor.',
      valueText: 'unknown',
      limitText: '',
    });
  });
  test('disclosure defers to the rule that holds', () => {
    const inspection = inspectScene({ survey: null, fitout: { masses: [mass('side', 100, [0, 0, 0])] } });
    expect(said(inspection, 'disclosure', 'in')).toEqual({
      title: 'Added mass may have to be disclosed',
      detail:
        'The cabinet adds 254 lb, gear not counted. Rules in the United States ask for a load label above 100 lb before the first sale. Say once whether the vehicle is new and untitled or in service, and whose rules count.',
      valueText: '254 lb',
      limitText: 'over 100 lb',
    });
  });
});

describe('making and survey', () => {
  test('parts, solving, survey', () => {
    const inspection = inspectScene({
      survey: boxSurvey({ startValues: true }),
      fitout: {
        panels: [panel('p1', 30, 200, { name: 'drawer 2 lip' }), panel('p2', 4000, 300, { name: 'long shelf' })],
        problems: [
          {
            code: 'too-small',
            at: node('opening-1'),
            axis: 'across',
            needMm: 320,
            haveMm: 280,
            because: ['slide', 'box'],
          },
          {
            code: 'unknown-material',
            at: node('carcass-1'),
            axis: null,
            needMm: null,
            haveMm: null,
            because: ['oak-18'],
          },
        ],
      },
    });
    expect(said(inspection, 'part-too-small').title).toBe('Drawer 2 lip is too small to hold at the saw');
    expect(said(inspection, 'part-too-big').title).toBe('Long shelf does not come out of any stock sheet');
    expect(said(inspection, 'cabinet-solves')).toMatchObject({
      title: 'Drawer 2 is too small: needs 320 mm wide, has 280 mm',
      detail: 'What asks for it: slide, box.',
    });
    expect(said(inspection, 'cabinet-solves', 'mm', 1)).toMatchObject({
      title: 'Left carcass asks for a material that the catalog does not have: oak-18',
      valueText: '',
      limitText: '',
    });
    expect(said(inspection, 'start-values').detail).toMatch(/before anything is cut/);
    expect(said(inspectScene({ survey: null }), 'space-missing').title).toMatch(
      /nothing is checked against the vehicle/,
    );
  });
});

describe('all rules', () => {
  test('each says what it checks', () => {
    for (const rule of RULE_IDS) expect(sayRule(rule)).not.toBe('');
    expect(new Set(RULE_IDS.map(sayRule)).size).toBe(RULE_IDS.length);
  });
  test('a rule of a newer program is said plainly', () => {
    const [finding] = findingsOf(boxes(block([900, 610, 600])), 'body-in-space');
    if (!finding) throw new Error('no finding');
    expect(sayFinding({ ...finding, rule: 'belt-anchor' }, 'mm', names).title).toBe('belt anchor, left carcass');
  });
});
