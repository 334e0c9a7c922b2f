import { type Survey, surveySchema, type Vehicle } from '../../design/index.ts';
import { CLASS_SIZES, type ClassSizes, halfWidthAt, LEVELS } from './class-sizes.ts';
import type { ClosureKind } from './plan.ts';
import { surveyPlan } from './survey-plan.ts';

/** Thickness and inner trim of a closure nobody has looked at yet: flat, in the plane of its hinge. */
const THICKNESS = 45;

const flat = (reach: number): readonly (readonly [number, number])[] => [
  [0, 0],
  [reach, 0],
];

const up = (sizes: ClassSizes): number => sizes.hingeAboveGround - sizes.floorAboveGround;

type Raw = Readonly<Record<string, unknown>>;

const acrossHinge = (x: number, half: number, z: number): Raw => ({ from: [x, -half, z], to: [x, half, z] });

const marksOf = (name: string): Raw => ({
  hingeFrom: `mark-${name}-hinge`,
  hingeTo: `mark-${name}-hinge`,
  edgeClosed: `mark-${name}-edge-closed`,
  edgeOpen: `mark-${name}-edge-open`,
});

const hatch = (sizes: ClassSizes): Raw => ({
  id: 'closure-1',
  name: 'hatch',
  kind: 'lift-hatch',
  hinge: acrossHinge(20, sizes.widthAtRoof / 2, up(sizes)),
  outward: 'rear',
  hangs: 'down',
  innerProfile: flat(up(sizes)),
  thicknessMm: THICKNESS,
  opensDeg: sizes.opensDeg,
  marks: marksOf('hatch'),
});

const CLOSURES: Readonly<Record<ClosureKind, (sizes: ClassSizes) => readonly Raw[]>> = {
  'lift-hatch': (sizes) => [hatch(sizes)],
  'hatch-glass': (sizes) => [
    hatch(sizes),
    {
      id: 'closure-2',
      name: 'glass',
      kind: 'hatch-glass',
      hinge: acrossHinge(10, sizes.widthAtRoof / 2, up(sizes) - 40),
      outward: 'rear',
      hangs: 'down',
      innerProfile: flat(up(sizes) / 2),
      thicknessMm: 6,
      opensDeg: 90,
      carriedBy: 'closure-1',
      marks: marksOf('glass'),
    },
  ],
  'barn-door': (sizes) =>
    ([1, -1] as const).map((sign, i) => ({
      id: `closure-${i + 1}`,
      name: sign > 0 ? 'left door' : 'right door',
      kind: 'barn-door',
      hinge: {
        from: [-10, (sign * sizes.openingAtMiddle) / 2, 0],
        to: [-10, (sign * sizes.openingAtMiddle) / 2, sizes.openingHeight],
      },
      outward: 'rear',
      hangs: sign > 0 ? 'right' : 'left',
      innerProfile: flat(sizes.openingAtMiddle / 2),
      thicknessMm: THICKNESS,
      opensDeg: 90,
    })),
  tailgate: (sizes) => [gate(sizes)],
  'cap-door': (sizes) => [
    gate(sizes),
    {
      id: 'closure-2',
      name: 'cap door',
      kind: 'cap-door',
      hinge: acrossHinge(20, sizes.openingAtMiddle / 2, up(sizes)),
      outward: 'rear',
      hangs: 'down',
      innerProfile: flat(up(sizes) - sizes.openingHeight / 2),
      thicknessMm: THICKNESS,
      opensDeg: sizes.opensDeg,
      marks: marksOf('cap-door'),
    },
  ],
  'side-door': (sizes) => [
    hatch(sizes),
    {
      id: 'closure-2',
      name: 'side door',
      kind: 'side-door',
      hinge: {
        from: [sizes.depth, -sizes.widthAtBelt / 2, 0],
        to: [sizes.depth, -sizes.widthAtBelt / 2, sizes.height],
      },
      outward: 'right',
      hangs: 'rearward',
      innerProfile: flat(sizes.depth / 2),
      thicknessMm: THICKNESS,
      opensDeg: 70,
    },
  ],
};

function gate(sizes: ClassSizes): Raw {
  return {
    id: 'closure-1',
    name: 'tailgate',
    kind: 'tailgate',
    hinge: acrossHinge(-10, sizes.openingAtSill / 2, -20),
    outward: 'rear',
    hangs: 'up',
    innerProfile: flat(sizes.openingHeight / 2),
    thicknessMm: THICKNESS,
    opensDeg: 90,
    marks: marksOf('gate'),
  };
}

/** Side view of a wheelhouse as a box with its upper corners cut. */
const wheelhouse = (sizes: ClassSizes, sign: 1 | -1, id: string): Raw => {
  const { length, inward, height } = sizes.wheelhouse;
  const [from, to] = [(sizes.depth - length) / 2, (sizes.depth + length) / 2];
  const cut = height / 3;
  return {
    id,
    name: sign > 0 ? 'wheelhouse, left' : 'wheelhouse, right',
    kind: 'wheelhouse',
    solid: {
      shape: 'side-prism',
      outline: [
        [from, 0],
        [to, 0],
        [to, height - cut],
        [to - cut, height],
        [from + cut, height],
        [from, height - cut],
      ],
      fromY: (sign * sizes.betweenWheelhouses) / 2,
      toY: sign * (sizes.betweenWheelhouses / 2 + inward),
    },
    startValues: true,
  };
};

/**
 * A whole survey of start values for a vehicle class: the marks of the plan, sections tied to them, wheelhouses,
 * closures, the opening; no readings. Everything in it is marked as a start value: never to be cut from. A section
 * point stops being one as soon as readings hold its mark.
 */
export const startSurvey = (vehicleClass: Vehicle['class'], closureKind: ClosureKind): Survey => {
  const sizes = CLASS_SIZES[vehicleClass];
  const plan = surveyPlan(closureKind, vehicleClass);
  const side = LEVELS.map(({ name, share }) => [halfWidthAt(sizes, name), share * sizes.height]);
  const aperture = [sizes.openingAtSill / 2, sizes.openingAtMiddle / 2, sizes.widthAtRoof / 2].map(
    (half, i): readonly [number, number] => [half, (sizes.openingHeight * i) / 2],
  );
  return surveySchema.parse({
    startValues: true,
    marks: plan.marks,
    stations: plan.stations.map((station, i) => ({
      id: `station-${i + 1}`,
      xMm: station.xMm,
      left: side,
      right: side,
      leftMarks: station.left,
      rightMarks: station.right,
      startValues: true,
    })),
    obstacles: [wheelhouse(sizes, 1, 'obstacle-1'), wheelhouse(sizes, -1, 'obstacle-2')],
    closures: CLOSURES[closureKind](sizes).map((closure) => ({ ...closure, startValues: true })),
    zones: [],
    aperture: [...aperture.toReversed(), ...aperture.map(([half, z]) => [-half, z])],
  });
};
