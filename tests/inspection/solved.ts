import { addCarcass, type Design, emptyDesign, freshCarcass, type Survey } from '../../src/design/index.ts';
import { createFitOutSolver } from '../../src/fitout/index.ts';
import { type Inspection, inspect } from '../../src/inspection/index.ts';
import { boxSurvey, HATCH } from '../envelope/surveys.ts';
import { catalog, rules, spaceOf } from './fixture.ts';

/** A design with one empty carcass 600 wide, 500 high and 700 deep, in the box room behind a hatch. */
export const oneCarcass = (y: number, units: Design['units'] = 'mm'): Design => {
  const empty: Design = { ...emptyDesign('Test', units), survey: boxSurvey({ closures: [HATCH] }) };
  const carcass = freshCarcass(empty);
  return addCarcass(empty, {
    ...carcass,
    place: { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: y }, z: { rule: 'at', mm: 0 } },
  });
};

/** Solves and inspects designs of one survey, the way a caller of the inspection does. */
export const inspector = (survey: Survey): ((design: Design) => Inspection) => {
  const space = spaceOf(survey);
  const solve = createFitOutSolver(catalog);
  return (design) => inspect({ design, space, fitout: solve(design, rules), catalog, rules });
};
