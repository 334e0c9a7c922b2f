import type { ClassSizes } from './class-sizes.ts';
import type { ClosureKind, PlanMark } from './plan.ts';
import {
  barnMarks,
  capDoorMarks,
  gateMarks,
  glassMarks,
  hatchMarks,
  markId,
  SIDES,
  type Side,
  sideDoorMarks,
  wallMark,
} from './plan-marks.ts';
import { curveStep, noteStep, type RawStep, readStep } from './plan-steps.ts';

interface ClosurePlan {
  readonly marks: (sizes: ClassSizes) => readonly PlanMark[];
  readonly steps: () => readonly RawStep[];
}

/** What turns about a line across the vehicle: hinge, edge closed, edge open, and the angle between them. */
const turningSteps = (name: string, called: string): readonly RawStep[] => {
  const figure = `side-${name}`;
  const sill = markId('rear', 'centre');
  const front = markId('middle', 'centre');
  const [hinge, closed, open] = [markId(name, 'hinge'), markId(name, 'edge', 'closed'), markId(name, 'edge', 'open')];
  const place = (mark: typeof hinge, what: string, why: string): readonly RawStep[] => [
    readStep('closure', 'along', [sill, mark], [`${what}: how far ahead of the sill`, why], { figure }),
    readStep('closure', 'height', [sill, mark], [`${what}: height above the floor`, why], { figure }),
    readStep('closure', 'distance', [sill, mark], [`sill to ${what}, straight`, 'checks the two before'], {
      figure,
      check: true,
    }),
    readStep(
      'closure',
      'distance',
      [front, mark],
      [`string at the middle section to ${what}, straight`, 'tells which of the three is wrong'],
      { figure, check: true },
    ),
  ];
  return [
    ...place(hinge, `${called} hinge`, 'the whole swing turns about it'),
    ...place(closed, `${called} lower edge, closed`, 'where the inner trim ends'),
    readStep('closure', 'distance', [hinge, closed], [`${called}: hinge to edge, closed`, 'the length that swings'], {
      figure,
    }),
    readStep(
      'closure',
      'height',
      [sill, open],
      [`${called} edge, fully open: height above the floor`, 'where a head meets it'],
      { figure },
    ),
    readStep(
      'closure',
      'along',
      [sill, open],
      [`${called} edge, fully open: behind the sill`, 'how far it reaches out'],
      { figure },
    ),
    readStep(
      'closure',
      'distance',
      [sill, open],
      [`sill to ${called} edge, fully open, straight`, 'checks reach and height'],
      { figure, check: true },
    ),
    readStep(
      'closure',
      'height',
      [closed, hinge],
      [`${called}: hinge above its closed edge`, 'checks height and length'],
      { figure, check: true },
    ),
    readStep(
      'closure',
      'level',
      [hinge, open],
      [`${called}: level on it, fully open, less that of the floor`, 'checks reach and height'],
      { figure, check: true },
    ),
    readStep('closure', 'distance', [hinge, open], [`${called}: hinge to edge, open`, 'must be as long as closed'], {
      figure,
      check: true,
    }),
    readStep('closure', 'angle', [closed, open], [`${called}: angle from closed to open`, 'checks both edges'], {
      at: hinge,
      figure,
      check: true,
    }),
  ];
};

const trimNote = (called: string): RawStep =>
  curveStep(
    'closure',
    'closure',
    [`${called} inner trim, closed, at five places; thickness`, 'the true depth limit behind a closed hatch'],
    ['away from the hinge', 'comes in by'],
  );

const strutNote = noteStep('closure', 'obstacle', [
  'struts: both ball points closed, both sides; diameter',
  'a strut sweeps through the corner of a carcass',
]);
const groundNote = noteStep('closure', 'closure', [
  'lowest edge above ground, fully open',
  'checks hinge, length and angle at once',
]);

const hatch: ClosurePlan = {
  marks: hatchMarks,
  steps: () => [...turningSteps('hatch', 'hatch'), trimNote('hatch'), strutNote, groundNote],
};

const withGlass: ClosurePlan = {
  marks: (sizes) => [...hatchMarks(sizes), ...glassMarks(sizes)],
  steps: () => [...hatch.steps(), ...turningSteps('glass', 'glass'), trimNote('glass')],
};

const gate: ClosurePlan = {
  marks: gateMarks,
  steps: () => [...turningSteps('gate', 'tailgate'), trimNote('tailgate')],
};

const gateAndCap: ClosurePlan = {
  marks: (sizes) => [...gateMarks(sizes), ...capDoorMarks(sizes)],
  steps: () => [...gate.steps(), ...turningSteps('cap-door', 'cap door'), trimNote('cap door'), strutNote, groundNote],
};

const doorSteps = (
  hinge: ReturnType<typeof markId>,
  edge: ReturnType<typeof markId>,
  called: string,
): readonly RawStep[] => {
  const figure = `plan-${called.replaceAll(' ', '-')}`;
  const [sill, middle, far] = [markId('rear', 'centre'), markId('middle', 'centre'), markId('front', 'centre')];
  return [hinge, edge]
    .flatMap((mark, i) => {
      const what = `${called} ${i === 0 ? 'hinge' : 'free edge, closed'}`;
      return [
        readStep('closure', 'along', [sill, mark], [`${what}: how far ahead of the sill`, 'places the swing'], {
          figure,
        }),
        readStep('closure', 'offset', [mark, null], [`${what}: centre line to it`, 'places the swing'], { figure }),
        readStep('closure', 'height', [sill, mark], [`${what}: height of the mark`, 'keeps the checks honest'], {
          figure,
        }),
        readStep('closure', 'distance', [sill, mark], [`sill to ${what}, straight`, 'checks the three before'], {
          figure,
          check: true,
        }),
        readStep(
          'closure',
          'distance',
          [wallMark('rear', 'floor', 'left'), mark],
          [`rear floor edge left to ${what}, straight`, 'checks the side'],
          { figure, check: true },
        ),
        readStep(
          'closure',
          'distance',
          [far, mark],
          [`string at the front section to ${what}, straight`, 'braces the two others'],
          { figure, check: true },
        ),
        readStep(
          'closure',
          'distance',
          [middle, mark],
          [`string at the middle section to ${what}, straight`, 'tells which of them is wrong'],
          { figure, check: true },
        ),
      ];
    })
    .concat(
      readStep('closure', 'distance', [hinge, edge], [`${called}: hinge to free edge`, 'the length that swings'], {
        figure,
        check: true,
      }),
      noteStep(
        'closure',
        'closure',
        [`${called}: opening angle and its stops`, 'some doors hold at two angles'],
        'angle-gauge',
      ),
      trimNote(called),
    );
};

const barn: ClosurePlan = {
  marks: barnMarks,
  steps: () => [
    ...SIDES.flatMap((side: Side) =>
      doorSteps(markId('door', side, 'hinge'), markId('door', side, 'edge'), `${side} door`),
    ),
    readStep(
      'closure',
      'across',
      [markId('door', 'right', 'hinge'), markId('door', 'left', 'hinge')],
      ['width between the hinges', 'left and right must make the full width'],
      { figure: 'plan-left-door', instrument: 'stick', check: true },
    ),
  ],
};

const sideDoor: ClosurePlan = {
  marks: (sizes) => [...hatchMarks(sizes), ...sideDoorMarks(sizes)],
  steps: () => [...hatch.steps(), ...doorSteps(markId('side-door', 'hinge'), markId('side-door', 'edge'), 'side door')],
};

/** What each kind of closure adds to the plan; a glass comes with its hatch, a cap door with its tailgate. */
export const CLOSURE_PLANS: Readonly<Record<ClosureKind, ClosurePlan>> = {
  'lift-hatch': hatch,
  'hatch-glass': withGlass,
  'barn-door': barn,
  tailgate: gate,
  'cap-door': gateAndCap,
  'side-door': sideDoor,
};
