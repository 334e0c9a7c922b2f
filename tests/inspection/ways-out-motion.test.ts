import { describe, expect, it } from 'vitest';
import { changeCarcass, changeSurveyItem, type Design, type NodeId } from '../../src/design/index.ts';
import { createFitOutSolver } from '../../src/fitout/index.ts';
import { type Finding, findWaysOut, inspect, openStops, type WayOut } from '../../src/inspection/index.ts';
import { sayAmount, sayWayMargin, sayWayOut } from '../../src/says/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { catalog, rules, spaceOf, vehicleWith } from './fixture.ts';
import { oneCarcass } from './solved.ts';

const flow = await wholeFlow();

/** The striker of the large demo so high that the tray of the right carcass runs into it or passes it too near. */
const withStriker = (above: number): Design => {
  const design = demoDesign('harrow-fell');
  const { bodies, movers } = flow.fitOut(design);
  const tray = movers.find(({ name }) => name === 'tray');
  const low = Math.min(
    ...bodies.filter(({ mover }) => mover === tray?.id).flatMap(({ shape }) => shape.vertices.map((at) => at[2])),
  );
  return changeSurveyItem(design, 'obstacles', 'obstacle-1' as NodeId, {
    solid: { shape: 'box', min: [-6, -80, 0], max: [34, 34, low + above] },
  });
};

const findingsFor = (design: Design, rule: string): readonly Finding[] =>
  flow.inspectionWithWaysOut(design).findings.filter((finding) => finding.rule === rule);

const same = (a: Finding, b: Finding): boolean => a.rule === b.rule && a.parts.join() === b.parts.join();

/** Every way that is offered clears its finding and makes no stop that was not there. */
const expectHonest = (design: Design, finding: Finding): void => {
  const stops = new Set(openStops(flow.inspection(design)).map(({ rule, parts }) => `${rule} ${parts.join()}`));
  for (const way of finding.waysOut) {
    const after = flow.inspection(way.design);
    const left = after.findings.find((own) => same(own, finding));
    expect(left?.severity ?? 'note').not.toBe('stop');
    if (finding.severity === 'caution') expect(left?.severity ?? 'note').toBe('note');
    expect(openStops(after).filter(({ rule, parts }) => !stops.has(`${rule} ${parts.join()}`))).toEqual([]);
  }
};

const kinds = ({ waysOut }: Finding): readonly string[] => waysOut.map(({ kind }) => kind);

const moved = (design: Design, way: WayOut, mm: number): Design => {
  const carcass = design.cabinet.carcasses.find(({ name }) => name === way.facts.carcass);
  const z = carcass?.place.z;
  if (!carcass || z?.rule !== 'at') throw new Error('no carcass that stands at a height');
  return changeCarcass(design, carcass.id, { place: { ...carcass.place, z: { rule: 'at', mm: z.mm + mm } } });
};

/** Each looks at up to a hundred copies of a demo. */
describe('ways out of what moves, is reached and is carried', { timeout: 240_000 }, () => {
  it('moves the carcass of a tray up over a striker, by no step more than it takes', () => {
    const design = withStriker(2);
    const [stop] = findingsFor(design, 'mover-travel');
    if (!stop) throw new Error('the tray is free');
    expect(stop.severity).toBe('stop');
    expectHonest(design, stop);
    const up = stop.waysOut.find(({ kind, facts }) => kind === 'move-carcass' && facts.axis === 'z');
    if (!up) throw new Error(`only ${kinds(stop).join()}`);
    const [mm, step] = [Number(up.facts.mm), 25.4 / 16];
    const left = (by: number): string =>
      flow.inspection(moved(design, up, by)).findings.find((own) => same(own, stop))?.severity ?? 'none';
    expect(left(mm)).toBe('none');
    // A step less, and there is still something to say.
    expect(left(mm - step)).not.toBe('none');
    expect(sayWayMargin(stop, up, 'mm')).toBe(
      `now ${sayAmount(stop.value, 'mm', 'mm')} of ${sayAmount(stop.limit, 'mm', 'mm')}, then the whole ${sayAmount(stop.limit, 'mm', 'mm')}`,
    );
  });

  it('holds a hatch at the degree that clears a low roof', () => {
    // Open by 90° the hatch lies 940 over a floor at 1,330: 2,270 under a roof at 2,300 less 50.
    const design: Design = { ...oneCarcass(-300), vehicle: vehicleWith({ floorAboveGroundMm: 1330 }) };
    const solve = createFitOutSolver(catalog);
    const look = (of: Design) =>
      inspect({ design: of, space: spaceOf(of.survey), fitout: solve(of, rules), catalog, rules });
    const low = findWaysOut(look(design), design, look).findings.find(({ rule }) => rule === 'low-roof');
    const way = low?.waysOut[0];
    if (!low || !way) throw new Error('no way under the roof');
    expect(way).toMatchObject({ kind: 'lower-stop', facts: { opening: 'hatch' } });
    expect(Number(way.facts.deg)).toBeLessThanOrEqual(Number(low.facts.keepsDeg));
    expect(Number(way.facts.deg)).toBeGreaterThan(Number(low.facts.keepsDeg) - 1);
    expect(sayWayOut(way, 'mm', () => 'hatch')).toMatch(/^Let hatch turn to \d+° only$/);
    expect(look(way.design).findings.filter(({ rule }) => rule === 'low-roof')).toEqual([]);
  });
});
