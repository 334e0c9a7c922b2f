import { boxAround, boxCorners, placed, type Vec2, type Vec3 } from '../../base/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { type CarriedCarcass, type CarryPose, carryPoseOf } from '../../inspection/index.ts';
import { carrySteps, sayCarried, sayMountOff, sayTakenOut } from '../../says/index.ts';
import type { Drawing, Shape } from '../drawing/drawing.ts';
import { line, ring, text } from '../drawing/shapes.ts';
import { type PaperPiece, paperPages } from '../paper/index.ts';
import { namesOf, type PapersInput, paperHead } from './paper.ts';

const CAUTION =
  'A way that was found in a drawing, not a lifting plan: two people at least, sill and bumper covered, hatch held open; go by what you see.';

const PICTURE_MM = 52;
const NUMBER_MM = 2;
/** Ground drawn before and behind what is carried, mm of the vehicle. */
const AROUND_MM = 120;

const HEAD_COLUMNS = [
  { title: 'step', share: 6, align: 'right' },
  { title: 'what is done', share: 84 },
  { title: 'done', share: 10 },
] as const;

/** The outline of a box seen from the vehicle's right, the rear to the left: its corners that lie outermost. */
const outlineOf = (corners: readonly Vec3[]): readonly Vec2[] => {
  const points = corners.map(([x, , z]): Vec2 => [x, z]).toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (from: readonly Vec2[]): Vec2[] => {
    const kept: Vec2[] = [];
    for (const c of from) {
      for (;;) {
        const [a, b] = [kept.at(-2), kept.at(-1)];
        if (!a || !b || (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0) break;
        kept.pop();
      }
      kept.push(c);
    }
    return kept.slice(0, -1);
  };
  return [...half(points), ...half(points.toReversed())];
};

/** The carcass at each waypoint of its way in, numbered, seen from the vehicle's right over floor and sill. */
const wayPicture = (own: CarriedCarcass, fitout: FitOut): readonly PaperPiece[] => {
  const carcass = fitout.carcasses.find(({ id }) => id === own.carcass);
  if (!carcass || !own.path) return [];
  const corners = boxCorners({ min: [0, 0, 0], max: carcass.size }).map((corner) => placed(carcass.pose, corner));
  const at = (pose: CarryPose): readonly Vec3[] =>
    corners.map((corner) => placed(carryPoseOf(pose, own.middle), corner));
  const stands = own.path.poses.toReversed().map((pose) => outlineOf(at(pose)));
  const box = boxAround(stands.flat().map(([x, z]): Vec3 => [x, 0, z]));
  const [from, to] = [box.min[0] - AROUND_MM, box.max[0] + AROUND_MM];
  const [low, high] = [Math.min(0, box.min[2]) - AROUND_MM, box.max[2] + AROUND_MM];
  const shapes = ([left, top]: Vec2, width: number): readonly Shape[] => {
    const scale = Math.min(width / (to - from), PICTURE_MM / (high - low));
    const on = ([x, z]: Vec2): Vec2 => [left + (x - from) * scale, top - PICTURE_MM + (z - low) * scale];
    return [
      line('frame', on([0, 0]), on([to, 0])),
      line('frame', on([0, 0]), on([0, low])),
      text(on([to, low + AROUND_MM * 0.2]), 'floor of the vehicle, rear to the left', {
        height: NUMBER_MM,
        align: 'right',
      }),
      ...stands.map((outline) => ring('rule', outline.map(on))),
      // Several stand nearly alike: numbers go one below the other where they would lie on each other.
      ...stands.map((outline, i) => {
        const middle = outline.reduce<Vec2>((sum, [x, z]) => [sum[0] + x, sum[1] + z], [0, 0]);
        const [x, y] = on([middle[0] / outline.length, middle[1] / outline.length]);
        return text([x, y - (i - (stands.length - 1) / 2) * NUMBER_MM * 2], i === 0 ? 'outside' : String(i), {
          height: NUMBER_MM,
          align: 'middle',
        });
      }),
    ];
  };
  return [{ kind: 'picture', height: PICTURE_MM, shapes }];
};

/** How each carcass is carried in, in which order and by which steps, with room to tick; how it comes out again; mounts. */
export const carryInPaper = ({ design, fitout, carry }: PapersInput): readonly Drawing[] => {
  if (!carry || carry.carcasses.length + carry.mounts.length === 0) return [];
  const names = namesOf({ design, fitout });
  const { units } = design;
  const stepTable = (steps: readonly { readonly words: string }[]): readonly PaperPiece[] =>
    steps.length === 0
      ? []
      : [
          {
            kind: 'table',
            columns: HEAD_COLUMNS,
            rows: steps.map(({ words }, i) => [String(i + 1), words, { tick: true }]),
          },
        ];
  const pieces: readonly PaperPiece[] = [
    ...carry.carcasses.flatMap((own, i): readonly PaperPiece[] => [
      { kind: 'heading', words: `${i + 1}. ${names(own.carcass)}` },
      { kind: 'words', words: sayCarried(own, carry.wantedMm, units, names) },
      {
        kind: 'words',
        words: `Empty, with what is screwed to it: ${Math.round(own.massKg)} kg. Gear out, drawers in and latched.`,
      },
      ...wayPicture(own, fitout),
      ...stepTable(own.path ? carrySteps(own.path, 'in', units) : []),
      { kind: 'words', words: sayTakenOut(own, names) },
    ]),
    ...(carry.mounts.length === 0 ? [] : [{ kind: 'heading', words: 'Mounts, taken off' } as const]),
    ...carry.mounts.flatMap((own): readonly PaperPiece[] => [
      { kind: 'words', words: sayMountOff(own, units, names), strong: true },
      ...stepTable(own.path ? carrySteps(own.path, 'out', units) : []),
    ]),
  ];
  return paperPages(paperHead(design, 'Carrying in', CAUTION), pieces);
};
