import { type Design, designSchema, emptyDesign } from '../../../src/design/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { body, catalog, inspectScene, rules, vehicleWith } from '../fixture.ts';

// The trim of the hatch lies at −20 and the speaker is 85 deep with its plug: its back touches the trim.
export const SPEAKER = { id: 'mount-1', name: 'speaker', device: 'speaker-hatch', on: 'hatch', at: [22.5, 0, 600] };

/** A speaker on the hatch, changed as given, and perhaps a post behind the sill between two heights. */
export const mountScene = (
  mount: object,
  post: { readonly low: number; readonly high: number } | null = null,
  { floorAboveGroundMm = 800, hingeUp = 900 } = {},
) => {
  const hinge = { from: [-20, -550, hingeUp], to: [-20, 550, hingeUp] };
  const survey = boxSurvey({ closures: [{ ...HATCH, hinge }] });
  const design = designSchema.parse({
    ...emptyDesign('Test', 'mm'),
    survey,
    mounts: [{ ...SPEAKER, ...mount }],
  }) as Design;
  const fitout = solveFitOut(design, catalog, rules);
  const posts = post ? [body({ id: 'post', min: [-420, -60, post.low], max: [-240, 60, post.high] })] : [];
  return inspectScene({
    survey,
    design: { mounts: design.mounts, vehicle: vehicleWith({ floorAboveGroundMm }) },
    fitout: { ...fitout, bodies: [...fitout.bodies, ...posts] },
  });
};

export const SWITCHES = { device: 'switch-panel-6', name: 'lip switches', letIn: true };
