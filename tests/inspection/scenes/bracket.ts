import { addCarcass, type Design, emptyDesign, freshCarcass, freshWallAnchor } from '../../../src/design/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { node } from '../fixture.ts';
import { inspector } from '../solved.ts';

/**
 * One carcass 500 wide whose left side stands so far from the wall at 600 left, with one bracket in that side, 300 up.
 * The survey is known to 2, so that with 2 of the vehicle and 1 of the build a gap is known to ± 2 × 3 = 6.
 */
export const bracketDesign = (
  gapMm: number,
  bracket = 'bracket-angle-60',
  survey = boxSurvey({ sigmaMm: 2, closures: [HATCH] }),
  change: Partial<ReturnType<typeof freshCarcass>> = {},
): Design => {
  const empty: Design = { ...emptyDesign('Test', 'mm'), survey };
  const place = { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: 100 - gapMm }, z: { rule: 'at', mm: 0 } } as const;
  return addCarcass(empty, {
    ...freshCarcass(empty),
    facing: 'rear',
    size: { width: 500, height: 600, depth: 700 },
    anchors: [{ ...freshWallAnchor(node('anchor-9'), 300), bracket }],
    place,
    ...change,
  });
};

export const inspectBracket = (design: Design) => inspector(design.survey)(design);
