import type { Carcass, Division, FittingKind, NodeId, Opening } from '../../../../../design/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';

type Solved = FitOut['openings'][number];

/** A rectangle of the open face: across from the left, up from the bottom, millimetres. */
export interface Rect {
  readonly across: number;
  readonly up: number;
  readonly width: number;
  readonly height: number;
}

/** An opening that is seen at the face and not divided further there. */
export interface FaceRoom {
  readonly id: NodeId;
  readonly name: string;
  readonly kind: FittingKind | null;
  readonly rect: Rect;
}

/** The line between two rooms of a divided opening. Sizes and places run along the division. */
export interface FaceDivider {
  readonly parent: NodeId;
  /** The room before it; rows count from the top. */
  readonly index: number;
  readonly along: 'columns' | 'rows';
  /** What stands between the two rooms. */
  readonly rect: Rect;
  readonly firstMm: number;
  readonly secondMm: number;
}

/** An opening divided in depth, of which the face shows one layer. */
export interface FaceLayers {
  readonly parent: NodeId;
  readonly names: readonly string[];
  readonly shown: number;
  readonly rect: Rect;
}

export interface Face {
  readonly width: number;
  readonly height: number;
  readonly rooms: readonly FaceRoom[];
  readonly dividers: readonly FaceDivider[];
  readonly layers: readonly FaceLayers[];
}

export const faceRect = (solved: Pick<Solved, 'from' | 'size'>): Rect => ({
  across: solved.from[0],
  up: solved.from[2],
  width: solved.size[0],
  height: solved.size[2],
});

/** The strip between two neighbouring rooms. */
const between = (first: Solved, second: Solved, along: 'columns' | 'rows'): Rect => {
  const [a, b] = [faceRect(first), faceRect(second)];
  if (along === 'columns')
    return { across: a.across + a.width, up: a.up, width: b.across - a.across - a.width, height: a.height };
  return { across: a.across, up: b.up + b.height, width: a.width, height: a.up - b.up - b.height };
};

const lengthAlong = (solved: Solved, along: Division): number =>
  solved.size[along === 'columns' ? 0 : along === 'rows' ? 2 : 1];

interface Gathered {
  readonly rooms: FaceRoom[];
  readonly dividers: FaceDivider[];
  readonly layers: FaceLayers[];
}

/**
 * The open face of a carcass as it is drawn: the rooms seen at the face, the dividers between them, and the openings
 * divided in depth with the layer that is shown (`layerOf`, the front one where nothing is chosen). Openings that the
 * fit-out could not solve are left out.
 */
export const faceOf = (carcass: Carcass, fitOut: FitOut, layerOf: Readonly<Record<string, number>>): Face => {
  const solved = new Map(fitOut.openings.map((opening) => [opening.id as string, opening]));
  const into: Gathered = { rooms: [], dividers: [], layers: [] };
  const visit = (opening: Opening): void => {
    const here = solved.get(opening.id);
    if (!here) return;
    const { content } = opening;
    if (content.kind !== 'divided') {
      const kind = content.kind === 'fitted' ? content.fitting.kind : null;
      into.rooms.push({ id: opening.id, name: opening.name, kind, rect: faceRect(here) });
      return;
    }
    const { along, parts } = content;
    if (along === 'layers') {
      const shown = Math.min(layerOf[opening.id] ?? 0, parts.length - 1);
      const names = parts.map((part, i) => part.opening.name || (i === 0 ? 'front' : `layer ${i + 1}`));
      into.layers.push({ parent: opening.id, names, shown, rect: faceRect(here) });
      const front = parts[shown];
      if (front) visit(front.opening);
      return;
    }
    parts.forEach((part, index) => {
      const next = parts[index + 1];
      const [a, b] = [solved.get(part.opening.id), next && solved.get(next.opening.id)];
      if (a && b)
        into.dividers.push({
          parent: opening.id,
          index,
          along,
          rect: between(a, b, along),
          firstMm: lengthAlong(a, along),
          secondMm: lengthAlong(b, along),
        });
      visit(part.opening);
    });
  };
  visit(carcass.opening);
  return { width: carcass.size.width, height: carcass.size.height, ...into };
};
