import {
  type Carcass,
  type Design,
  designNodes,
  findOpening,
  type Gear,
  type NodeId,
  type Opening,
} from '../../../../design/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';

/** What the sheet is about: the carcass of the face map, and what is selected in it. */
export interface Chosen {
  readonly carcass: Carcass | null;
  /** The opening that is selected, or that holds what is selected. */
  readonly opening: Opening | null;
  readonly gear: Gear | null;
  /** A device of a faceplate, by its node. */
  readonly device: NodeId | null;
}

/** The node of the design behind an id: the id itself, or the node that a part comes from. */
export const nodeBehind = (design: Design, fitOut: FitOut, id: string): NodeId | null => {
  const nodes = designNodes(design);
  const known = (wanted: string): NodeId | null => nodes.find((node) => node.id === wanted)?.id ?? null;
  const part = [...fitOut.panels, ...fitOut.bodies, ...fitOut.movers, ...fitOut.devices].find((one) => one.id === id);
  return known(id) ?? (part ? known(part.origin) : null);
};

const openingAround = (design: Design, node: NodeId): Opening | null => {
  const direct = findOpening(design, node);
  if (direct) return direct.opening;
  const gear = design.gear.find((item) => item.id === node);
  if (gear?.place) return findOpening(design, gear.place.opening)?.opening ?? null;
  for (const { kind, path } of designNodes(design).filter((entry) => entry.id === node))
    if (kind === 'device') return openingAt(design, path);
  return null;
};

/** The opening whose fitting holds the device at a path of the document. */
const openingAt = (design: Design, path: readonly PropertyKey[]): Opening | null => {
  const end = path.lastIndexOf('content');
  let value: unknown = design;
  for (const key of path.slice(0, end)) value = (value as Record<PropertyKey, unknown>)[key];
  const id = (value as { readonly id?: NodeId }).id;
  return id ? (findOpening(design, id)?.opening ?? null) : null;
};

/** What a carcass has that is no opening: its anchors, the corners cut off, and the holes through it. */
const piecesOf = ({ anchors, chamfers, chases, wheelhouses }: Carcass): readonly { readonly id: NodeId }[] => [
  ...anchors,
  ...chamfers,
  ...chases,
  ...wheelhouses,
];

/** What a selection means for this sheet; `shown` is the carcass of the face map. */
export const chosenOf = (
  design: Design,
  fitOut: FitOut,
  selection: readonly string[],
  shown: string | null,
): Chosen => {
  const { carcasses } = design.cabinet;
  const last = selection.at(-1);
  const node = last === undefined ? null : nodeBehind(design, fitOut, last);
  const opening = node ? openingAround(design, node) : null;
  const holder = opening && findOpening(design, opening.id)?.carcass;
  const direct = carcasses.find((each) => each.id === node || piecesOf(each).some(({ id }) => id === node));
  const carcass = direct ?? holder ?? carcasses.find((one) => one.id === shown) ?? carcasses[0] ?? null;
  const gear = design.gear.find((item) => item.id === node) ?? null;
  const isDevice = node !== null && !gear && !direct && opening !== null && opening.id !== node;
  return { carcass, opening, gear, device: isDevice ? node : null };
};
