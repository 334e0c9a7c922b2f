import { describe, expect, it } from 'vitest';
import { type Design, designSchema, emptyDesign } from '../../../src/design/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { setAgainst } from '../../../src/views/editor/sheets/cabinet/mounts/set-against.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { carcass, empty } from '../../fitout/designs.ts';
import { catalog, rules, spaceOf } from '../../inspection/fixture.ts';

const survey = boxSurvey({ closures: [HATCH] });
const space = spaceOf(survey);
const against = (mount: object, carcasses: readonly object[] = []) => {
  const design = designSchema.parse({
    ...emptyDesign('Test', 'mm'),
    survey,
    cabinet: { carcasses },
    mounts: [{ id: 'mount-1', name: '', device: 'speaker-hatch', on: null, at: [400, 0, 600], ...mount }],
  }) as Design;
  return setAgainst(design, 'mount-1', solveFitOut(design, catalog, rules), space);
};

describe('a mount set against what carries it', () => {
  it('touches the trim of its closure, its bracket first', () => {
    // The trim lies at −20: 85 of speaker and plug, half of them 42.5.
    expect(against({ on: 'hatch', at: [-40, 0, 600] })?.[0]).toBeCloseTo(22.5, 1);
    // 40 of bracket between.
    expect(against({ on: 'hatch', bracket: 'bracket-angle-60' })?.[0]).toBeCloseTo(62.5, 1);
  });

  it('touches the side of the vehicle, or the outside of its carcass', () => {
    // The box room is 1,200 wide: 600 − 42.5 from the middle.
    const left = against({ looks: 'right' });
    expect(left?.[1]).toBeCloseTo(space.bounds.max[1] - 42.5, 1);
    const box = carcass(empty('opening-1'), { facing: 'rear' });
    // The carcass is 900 wide from y = 0: on its left side 450 … counted from its low corner, 900 + 42.5.
    const on = against({ on: 'carcass-1', looks: 'left', at: [300, 1200, 300] }, [box]);
    expect(on?.[1]).toBeCloseTo(942.5, 1);
  });

  it('says nothing where it would meet nothing', () => {
    expect(against({ on: 'hatch', looks: 'rear', at: [400, 0, 600] })).toBeNull();
  });
});
