import { type LengthUnits, type Polygon, sameLength, type Vec2 } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { Dimension, Shape } from './drawing.ts';
import { hatching } from './hatch.ts';
import { type Recess, recessesOf } from './panel-notes.ts';
import { sizeText } from './paper-words.ts';
import { line, onSheet, TEXT_MM, text } from './shapes.ts';

/** One profile that is cut into a part, shown once however often it comes. */
export interface RecessSection {
  readonly label: string;
  readonly recess: Recess;
  /** Across the recess. */
  readonly width: number;
  /** From the recess to the nearer edge it runs along; 0 where it is open to that edge. */
  readonly toEdge: number;
}

/** Runs along y: the profile is seen by looking along the width. */
export const runsUp = ({ from, to }: Recess): boolean => to[1] - from[1] > to[0] - from[0];

const profileOf = (recess: Recess, panel: Panel): { readonly width: number; readonly toEdge: number } => {
  const axis = runsUp(recess) ? 0 : 1;
  const far = (axis === 0 ? panel.length : panel.width) - recess.to[axis];
  return { width: recess.to[axis] - recess.from[axis], toEdge: Math.max(0, Math.min(recess.from[axis], far)) };
};

const EDGE_SHOWN = 25;
const BODY_SHOWN = 15;

/** Profiles that look the same on paper: same kind, face, width and depth, and as far from an edge if one is shown. */
const sameSection = (a: RecessSection, b: Omit<RecessSection, 'label'>): boolean =>
  a.recess.kind === b.recess.kind &&
  a.recess.face === b.recess.face &&
  sameLength(a.recess.depth, b.recess.depth) &&
  sameLength(a.width, b.width) &&
  (sameLength(a.toEdge, b.toEdge) || (a.toEdge > EDGE_SHOWN && b.toEdge > EDGE_SHOWN));

/** The distinct profiles of a part, and which of them each recess has. */
export const recessSections = (
  panel: Panel,
): { readonly sections: readonly RecessSection[]; readonly sectionOf: (recess: Recess) => string } => {
  const sections: RecessSection[] = [];
  const labels = new Map<Recess, string>();
  for (const recess of recessesOf(panel)) {
    const found = { recess, ...profileOf(recess, panel) };
    const known = sections.find((section) => sameSection(section, found));
    const section = known ?? { ...found, label: `S${sections.length + 1}` };
    if (!known) sections.push(section);
    labels.set(recess, section.label);
  }
  return { sections, sectionOf: (recess) => labels.get(recess) ?? '' };
};

/** Paper width of one section picture; room for its dimensions included. */
export const SECTION_WIDTH = 76;
const DIMENSION_STEP = 6;
/** From the cut end of the profile to the line that its depth stands on: the figure stands between them. */
const BESIDE_CUT = 5;
/** Paper that is not the profile: a margin at the left, two dimension lines at the right. */
const BESIDE_PROFILE = 8 + BESIDE_CUT + 2 * DIMENSION_STEP + 1;

/** The cut profile, the shown face up, the nearer edge at the left; it breaks off where the panel goes on. */
const profileRing = (
  { recess, width, toEdge }: RecessSection,
  thickness: number,
): { ring: Polygon; edgeShown: boolean } => {
  const edgeShown = toEdge <= EDGE_SHOWN;
  const start = edgeShown ? toEdge : BODY_SHOWN;
  const end = start + width;
  const floor = thickness - recess.depth;
  const ring: Vec2[] = [
    [0, 0],
    [end + BODY_SHOWN, 0],
    [end + BODY_SHOWN, thickness],
    [end, thickness],
    [end, floor],
    [start, floor],
    ...(start > 0
      ? ([
          [start, thickness],
          [0, thickness],
        ] as const)
      : []),
  ];
  return { ring, edgeShown };
};

/** The profile's edges; where the panel goes on beyond the picture there is no line. */
const profileLines = (ring: Polygon, edgeShown: boolean, move: (at: Vec2) => Vec2): readonly Shape[] => {
  const right = Math.max(...ring.map(([x]) => x));
  return ring.flatMap((a, i): readonly Shape[] => {
    const b = ring[(i + 1) % ring.length] ?? a;
    const goesOn = (a[0] === right && b[0] === right) || (!edgeShown && a[0] === 0 && b[0] === 0);
    return goesOn ? [] : [line('outline', move(a), move(b))];
  });
};

const dimension = (axis: Dimension['axis'], from: Vec2, to: Vec2, lineAt: number, label: string): Dimension => ({
  kind: 'dimension',
  layer: 'dimension',
  axis,
  from,
  to,
  lineAt,
  label,
  textHeight: TEXT_MM.note,
});

const HATCH_MM = 2;

/** Scale and paper height of the picture of a section: true size where it fits, half size where it does not. */
export const sectionExtent = (
  section: RecessSection,
  thickness: number,
): { readonly scale: number; readonly height: number } => {
  const start = section.toEdge <= EDGE_SHOWN ? section.toEdge : BODY_SHOWN;
  const share = (SECTION_WIDTH - BESIDE_PROFILE) / (start + section.width + BODY_SHOWN);
  const scale = share >= 1 ? 1 : share >= 0.5 ? 0.5 : 0.2;
  return { scale, height: thickness * scale + 2 * DIMENSION_STEP + 6 };
};

/** The picture of one profile, hanging from its upper left corner. */
export const sectionShapes = (section: RecessSection, panel: Panel, at: Vec2, units: LengthUnits): readonly Shape[] => {
  const { recess, width, toEdge, label } = section;
  const { scale, height } = sectionExtent(section, panel.thickness);
  const { ring, edgeShown } = profileRing(section, panel.thickness);
  const move = onSheet(scale, [at[0] + 8, at[1] - height + 4]);
  const start = edgeShown ? toEdge : BODY_SHOWN;
  const end = start + width;
  const top = move([0, panel.thickness])[1];
  const right = move([end + BODY_SHOWN, 0])[0];
  const floor = panel.thickness - recess.depth;
  const words = `${label}  ${recess.kind}, face ${recess.face} up, ${scale === 1 ? '1:1' : `1:${1 / scale}`}`;
  const size = (mm: number): string => sizeText(mm, units);
  return [
    text([at[0] + 0.8, at[1] - 3], words, { height: TEXT_MM.note, strong: true }),
    ...hatching(ring.map(move), HATCH_MM),
    ...profileLines(ring, edgeShown, move),
    dimension(
      'across',
      move([start, panel.thickness]),
      move([end, panel.thickness]),
      top + DIMENSION_STEP - 1,
      size(width),
    ),
    ...(edgeShown && toEdge > 0
      ? [dimension('across', move([0, 0]), move([start, 0]), move([0, 0])[1] - DIMENSION_STEP + 1, size(toEdge))]
      : []),
    dimension(
      'up',
      move([end + BODY_SHOWN, floor]),
      move([end + BODY_SHOWN, panel.thickness]),
      right + BESIDE_CUT,
      size(recess.depth),
    ),
    dimension(
      'up',
      move([end + BODY_SHOWN, 0]),
      move([end + BODY_SHOWN, panel.thickness]),
      right + BESIDE_CUT + 2 * DIMENSION_STEP,
      size(panel.thickness),
    ),
  ];
};
