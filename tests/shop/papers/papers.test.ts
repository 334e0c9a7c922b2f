import { describe, expect, it } from 'vitest';
import type { HardwareUse } from '../../../src/fitout/index.ts';
import type { Finding, Inspection } from '../../../src/inspection/index.ts';
import { RULE_IDS } from '../../../src/inspection/index.ts';
import { releaseRevision } from '../../../src/revision/index.ts';
import { sayRule } from '../../../src/says/index.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { moneyText, papersOf } from '../../../src/shop/papers/index.ts';
import { shopWork } from '../../../src/shop/shop-work.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';
import { catalog, design, emptyInspection, fitOutOf, node, panel, rules, twoColumns } from '../fixture.ts';
import { faces, pdfPicture, pdfText } from '../paper/poppler.ts';

const textOf = (name: string, input: Parameters<typeof shopWork>[0]): string => {
  const paper = papersOf(shopWork(input)).find((each) => each.name === name);
  if (!paper) throw new Error(`no paper ${name}`);
  return pdfText(drawingsToPdf(paper.pages(), { title: name, subject: '' }, faces)).replace(/\s+/g, ' ');
};

const plain = { design: design(), catalog, rules, space: null, inspection: emptyInspection };

const use = (id: string, changes: Partial<HardwareUse>): HardwareUse => ({
  id,
  origin: node('carcass-1'),
  carcass: node('carcass-1'),
  from: 'hardware',
  item: 'screw-4x40',
  name: 'Screw 4 × 40',
  quantity: 41,
  lengthMm: null,
  at: null,
  mover: null,
  ...changes,
});

const finding: Finding = {
  rule: 'body-in-space',
  severity: 'stop',
  parts: ['side-left'],
  value: 2.5,
  limit: 6,
  unit: 'mm',
  uncertainty: 3,
  at: null,
  source: 'shop judgement',
  status: 'shop habit',
  margin: 'gap',
  facts: {},
  waysOut: [],
  accepted: { who: 'R. Mapp', why: 'trim is cut back there', on: '2031-05-02' },
};

describe('papers', () => {
  it('the cut list has both sizes, bands, hand, work and a sum for each board', () => {
    const text = textOf('cut-list', { ...plain, fitout: twoColumns() });
    // The long edge of a side has a band of 1 mm: 600 less 1 to cut.
    expect(text).toMatch(/A1 1 side, left 700 × 599 700 × 600 ↔ L L1 band-1 left dado 2, groove 1, drill 6/);
    // 876.6 × 599 twice, 700 × 599 twice, 676.6 × 581.6 and 422 × 560 in ply 18: 2.52 m².
    expect(text).toContain('6 parts, 2.52 m² to cut');
    expect(text).toContain('Birch plywood 6.5 mm, measured 6.4 mm thick');
  });

  it('the pick list fetches spares and says the length of a slide', () => {
    const hardware = [
      use('a', {}),
      use('b', { from: 'slide', item: 'slide-45', name: 'Side slide', quantity: 1, lengthMm: 400 }),
    ];
    const text = textOf('hardware', { ...plain, fitout: fitOutOf([panel('a')], { hardware }) });
    // 5 % of 41 is 2.05: three spare.
    expect(text).toMatch(/44 3 screw Screw 4 × 40/);
    expect(text).toMatch(/1 pair slide Side slide 400/);
  });

  it('the price on paper has every line and the total', () => {
    const work = shopWork({ ...plain, fitout: twoColumns() });
    const text = textOf('price', { ...plain, fitout: twoColumns() });
    expect(text).toContain(`Total ${moneyText(work.price.total)}`);
    for (const { amount } of work.price.lines) expect(text).toContain(moneyText(amount));
    for (const { from } of work.price.lines) expect(text).toContain(from.split(' ')[0]);
  });

  it('the inspection sheet has the finding with value, limit, source and who lets it stand, and every check', () => {
    const inspection: Inspection = {
      ...emptyInspection,
      findings: [finding],
      consulted: { 'part-too-small': ['min-strip'] },
    };
    const text = textOf('inspection', { ...plain, fitout: twoColumns(), inspection });
    for (const words of [
      'STOP',
      '2.5 mm ± 3 mm',
      'shop judgement (shop habit)',
      'Marks: A1',
      'ACCEPTED by R. Mapp on 2031-05-02: trim is cut back there',
      'nobody has approved exactly this design',
      'nothing is certified or approved',
    ])
      expect(text).toContain(words);
    // Words of a wide cell are broken into lines, so the first of each is looked for.
    for (const rule of RULE_IDS) expect(text).toContain(sayRule(rule).split(' ').slice(0, 2).join(' '));
  });

  it('the sheets for installing and weighing say what is due and leave room to write', () => {
    const installation = textOf('installation', { ...plain, fitout: twoColumns() });
    for (const words of ['Before any hole', 'no anchor', 'airbags', 'torque', 'Installed by'])
      expect(installation).toContain(words);
    const weigh = textOf('weigh-record', { ...plain, fitout: twoColumns() });
    for (const words of ['Scale, its number', 'Fuel in the tank', 'front axle', 'Nothing is predicted'])
      expect(weigh).toContain(words);
  });

  it('carry letter and hash once the design is released', async () => {
    const flow = await wholeFlow();
    const demo = releaseRevision(demoDesign('quillmoor'), { who: 'R. Mapp', why: 'first cut', on: '2031-04-05' });
    const fitout = flow.fitOut(demo);
    const input = {
      design: demo,
      fitout,
      catalog: flow.catalog,
      rules: flow.rules(demo),
      space: null,
      inspection: flow.inspection(demo),
    };
    for (const name of ['cut-list', 'price', 'weigh-record'])
      expect(textOf(name, input)).toMatch(/rev A · [0-9a-f]{4} [0-9a-f]{4} · not approved/);
    const installation = textOf('installation', input);
    for (const { bolt } of fitout.anchors)
      expect(installation).toContain(flow.catalog.hardware.get(bolt)?.name.split(',')[0]);
  });

  it('measure true on paper: the rule under the head is as long as the page less its margins', () => {
    const [page] = papersOf(shopWork({ ...plain, fitout: twoColumns() }))[0]?.pages() ?? [];
    if (!page) throw new Error('no page');
    const dots = 600;
    const { width, height, grey } = pdfPicture(drawingsToPdf([page], { title: 'x', subject: '' }, faces), 1, dots);
    const mm = (n: number): number => (n * 25.4) / dots;
    expect(Math.abs(mm(width) - 297)).toBeLessThan(0.1);
    expect(Math.abs(mm(height) - 210)).toBeLessThan(0.1);
    // 12 mm of margin and 9 mm of head: the rule lies 21 mm under the upper edge.
    const row = Math.round((21 / 25.4) * dots);
    const dark = Array.from({ length: width }, (_, x) => x).filter((x) => (grey[row * width + x] ?? 255) < 128);
    // A pen of 0.5 mm with round ends: 297 − 2 · 12 + 0.5.
    expect(Math.abs(mm(dark.length) - 273.5)).toBeLessThan(0.1);
  });
});
