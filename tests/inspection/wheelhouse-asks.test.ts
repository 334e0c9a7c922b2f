import { describe, expect, it } from 'vitest';
import {
  addCarcass,
  addWheelhouses,
  changeCarcass,
  type Design,
  emptyDesign,
  freshCarcass,
} from '../../src/design/index.ts';
import { solveFitOut } from '../../src/fitout/index.ts';
import { askFor, shortOf, type WheelhouseAsk, type WheelhouseCut, wheelhouseAsks } from '../../src/inspection/index.ts';
import { sayWheelhouse } from '../../src/says/index.ts';
import { boxSurvey } from '../envelope/surveys.ts';
import { catalog, findingsOf, rules, spaceOf } from './fixture.ts';
import { inspector } from './solved.ts';

/** On the left from 400 to 1,000 forward of the sill, 150 in from the wall at 600, 250 high; its ends slope. */
const WHEEL = {
  id: 'wheel-left',
  name: 'Left wheelhouse',
  kind: 'wheelhouse',
  solid: {
    shape: 'side-prism',
    outline: [
      [400, 0],
      [1000, 0],
      [900, 250],
      [500, 250],
    ],
    fromY: 450,
    toY: 600,
  },
};

/** One empty carcass, its right rear low corner at 60 forward and 90 left: to 590, 10 from the wall. */
const designOf = (
  change: Partial<ReturnType<typeof freshCarcass>> = {},
  z = 0,
  sigmaMm = 2,
  obstacles: readonly unknown[] = [WHEEL],
): Design => {
  const empty: Design = { ...emptyDesign('Test', 'mm'), survey: boxSurvey({ obstacles, sigmaMm }) };
  const place = { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: 90 }, z: { rule: 'at', mm: z } } as const;
  const size = { width: 500, height: 600, depth: 1300 };
  return addCarcass(empty, { ...freshCarcass(empty), facing: 'rear', size, place, ...change });
};

const asksOf = (design: Design): readonly WheelhouseAsk[] => {
  const carcass = design.cabinet.carcasses[0];
  if (!carcass) throw new Error('no carcass');
  return wheelhouseAsks(
    { design, space: spaceOf(design.survey), fitout: solveFitOut(design, catalog, rules), rules },
    carcass.id,
  );
};

describe('what a wheelhouse of the survey asks of a carcass', () => {
  it('is where it comes into the carcass, with the gap and its half width all round', () => {
    const [ask, ...more] = asksOf(designOf());
    expect(more).toEqual([]);
    // 2 × √(2² of the survey + 2² of the vehicle + 1² of the build) = 6; with the gap of 6: 12 all round.
    expect(ask?.gap.value).toBe(6);
    expect(ask?.halfWidthMm).toBeCloseTo(6, 9);
    // From the face at 60: 400 − 60 − 12 and 1000 − 60 + 12. The outside at 590 to 450, and 12. 250 and 12.
    expect(ask?.cut).toEqual({ side: 'left', fromMm: 328, lengthMm: 624, inMm: 152, upMm: 262 });
  });

  it('is rounded away from the wheelhouse to whole millimetres', () => {
    // 2 × √(1 + 4 + 1) = 4.899; 10.899 all round: 329.1, 950.9, 150.9, 260.9.
    const [ask] = asksOf(designOf({}, 0, 1));
    expect(ask?.halfWidthMm).toBeCloseTo(2 * Math.sqrt(6), 9);
    expect(ask?.cut).toEqual({ side: 'left', fromMm: 329, lengthMm: 951 - 329, inMm: 151, upMm: 261 });
  });

  it('ends with the carcass, and only what is nearer than the gap counts of a sloped end', () => {
    // To 60 + 700 = 760 forward; it runs on, so that the cut-out does: 700 − 328.
    const short = asksOf(designOf({ size: { width: 500, height: 600, depth: 700 } }));
    expect(short[0]?.cut).toMatchObject({ fromMm: 328, lengthMm: 372 });
    // Up 200, less 12: the slope is there (200 − 12)/250 × 100 = 75.2 further in, at 475.2 and 924.8 forward.
    const raised = asksOf(designOf({}, 200));
    expect(raised[0]?.cut).toEqual({
      side: 'left',
      fromMm: Math.floor(475.2 - 60 - 12),
      lengthMm: Math.ceil(924.8 - 60 + 12) - Math.floor(475.2 - 60 - 12),
      inMm: 152,
      upMm: 62,
    });
  });

  it('is nothing where the carcass stands over it or beside it, or where there is none', () => {
    expect(asksOf(designOf({}, 250))).toEqual([]);
    expect(asksOf(designOf({}, 249))[0]?.cut.upMm).toBe(13);
    // It begins 450 left: 360 wide from 90 stands beside it, at 361 it comes 1 in, and 12 are kept.
    const wide = (width: number) => asksOf(designOf({ size: { width, height: 600, depth: 1300 } }));
    expect(wide(360)).toEqual([]);
    expect(wide(361)[0]?.cut.inMm).toBe(13);
    expect(asksOf(designOf({}, 0, 2, [{ ...WHEEL, kind: 'trim' }]))).toEqual([]);
  });

  it('is at the back of a carcass that looks across the vehicle', () => {
    const [ask] = asksOf(designOf({ facing: 'right', size: { width: 1300, height: 600, depth: 500 } }));
    // Its left is to the rear: from 60 again, and from the back at 590 in.
    expect(ask?.cut).toEqual({ side: 'back', fromMm: 328, lengthMm: 624, inMm: 152, upMm: 262 });
  });

  it('is nothing without a cargo space', () => {
    const design = designOf();
    const fitout = solveFitOut(design, catalog, rules);
    const id = design.cabinet.carcasses[0]?.id;
    expect(id && wheelhouseAsks({ design, space: null, fitout, rules }, id)).toEqual([]);
  });
});

describe('a cut-out beside what is asked', () => {
  const design = designOf();
  const [ask] = asksOf(design);
  if (!ask) throw new Error('nothing asked');
  const cutTo = (cut: WheelhouseCut): Design => {
    const id = design.cabinet.carcasses[0]?.id;
    if (!id) throw new Error('no carcass');
    return addWheelhouses(design, id, [cut]).design;
  };
  const inspect = inspector(design.survey);

  it('keeps exactly the gap and its half width when it is taken from the survey', () => {
    const taken = inspect(cutTo(ask.cut));
    expect(findingsOf(taken, 'body-obstacle')).toEqual([]);
    const margin = taken.measured.find(({ rule }) => rule === 'body-obstacle');
    expect(margin).toMatchObject({ limit: 6 });
    expect(margin?.value).toBeCloseTo(12, 9);
    expect(margin?.uncertainty).toBeCloseTo(6, 9);
  });

  it('is a finding when it is smaller: caution within the half width, stop under the gap', () => {
    // 5 less: 7 left, 6 asked, known to ± 6. 7 less: 5 left. 20 less: 8 in.
    const lessBy = (mm: number) => findingsOf(inspect(cutTo({ ...ask.cut, inMm: ask.cut.inMm - mm })), 'body-obstacle');
    expect(lessBy(5)).toMatchObject([{ severity: 'caution', limit: 6 }]);
    expect(lessBy(5)[0]?.value).toBeCloseTo(7, 9);
    expect(lessBy(20)).toMatchObject([{ severity: 'stop' }]);
    expect(lessBy(20)[0]?.value).toBeCloseTo(-8, 9);
    expect(lessBy(0)).toEqual([]);
  });

  it('is matched with the wheelhouse that it shares most of its length with', () => {
    expect(askFor({ ...ask.cut, fromMm: 900, lengthMm: 100 }, [ask])).toBe(ask);
    expect(askFor({ ...ask.cut, fromMm: 952, lengthMm: 100 }, [ask])).toBeNull();
    expect(askFor({ ...ask.cut, side: 'right' }, [ask])).toBeNull();
    const further = { ...ask, cut: { ...ask.cut, fromMm: 900, lengthMm: 300 } };
    // 52 shared with the first, 100 with the second.
    expect(askFor({ ...ask.cut, fromMm: 900, lengthMm: 100 }, [ask, further])).toBe(further);
  });

  it('says how much it is short on each side, and what is asked', () => {
    const typed = { ...ask.cut, fromMm: 350, lengthMm: 590, inMm: 140, upMm: 300 };
    // 350 − 328; 952 − 940; 152 − 140; high enough.
    expect(shortOf(typed, ask)).toEqual({ before: 22, behind: 12, in: 12, up: 0 });
    const said = sayWheelhouse(typed, ask, 'mm');
    expect(said.typed).toBe(
      'The cut-out is 22 mm short at its near end, 12 mm short at its far end and 12 mm short inward.',
    );
    expect(said.asks.inMm).toBe('survey asks 152 mm');
    expect(said.why).toBe(
      'Asked: 6 mm clear of Left wheelhouse, and 6 mm more for what survey, vehicle and build may be off.',
    );
    expect(sayWheelhouse(ask.cut, ask, 'mm')).toMatchObject({ short: false });
  });

  it('leaves the design that it was given alone', () => {
    const whole = cutTo(ask.cut);
    expect(whole.cabinet.carcasses[0]?.wheelhouses).toMatchObject([{ id: 'wheelhouse-1', ...ask.cut }]);
    expect(design.cabinet.carcasses[0]?.wheelhouses).toEqual([]);
    const id = whole.cabinet.carcasses[0]?.id;
    expect(id && changeCarcass(whole, id, { wheelhouses: [] }).cabinet.carcasses[0]?.wheelhouses).toEqual([]);
  });
});
