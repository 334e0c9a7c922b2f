import type { Carcass, Opening } from './cabinet.ts';
import type { Design } from './design.ts';
import type { Fitting } from './fittings/index.ts';
import type { NodeId } from './parts.ts';

/** An opening inside a fitting, with its place in that. */
interface CarriedOpening {
  readonly opening: Opening;
  readonly path: readonly PropertyKey[];
}

const carried = (fitting: Fitting): readonly CarriedOpening[] => [
  ...('inside' in fitting ? [{ opening: fitting.inside, path: ['inside'] }] : []),
  ...('second' in fitting && fitting.second ? [{ opening: fitting.second.inside, path: ['second', 'inside'] }] : []),
];

/** The openings that a fitting carries inside itself; empty for one that carries none. */
export const openingsInside = (fitting: Fitting): readonly Opening[] => carried(fitting).map(({ opening }) => opening);

/** The openings directly inside an opening. */
export const childOpenings = (opening: Opening): readonly Opening[] => {
  const { content } = opening;
  if (content.kind === 'divided') return content.parts.map((part) => part.opening);
  return content.kind === 'fitted' ? openingsInside(content.fitting) : [];
};

/** An opening and every opening inside it, each before what it holds. */
export const openingsFrom = (opening: Opening): readonly Opening[] => {
  const found: Opening[] = [];
  const waiting: Opening[] = [opening];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    found.push(next);
    waiting.push(...childOpenings(next).toReversed());
  }
  return found;
};

export interface FoundOpening {
  readonly carcass: Carcass;
  readonly opening: Opening;
  /** The openings around it, from the carcass's own down to its parent. */
  readonly around: readonly Opening[];
}

const trail = (from: Opening, id: NodeId, around: readonly Opening[]): FoundOpening['around'] | null => {
  if (from.id === id) return around;
  for (const child of childOpenings(from)) {
    const found = trail(child, id, [...around, from]);
    if (found) return found;
  }
  return null;
};

/** The opening with its surroundings, or null when the design has none of that id. */
export const findOpening = (design: Design, id: NodeId): FoundOpening | null => {
  for (const carcass of design.cabinet.carcasses) {
    const around = trail(carcass.opening, id, []);
    const opening = openingsFrom(carcass.opening).find((candidate) => candidate.id === id);
    if (around && opening) return { carcass, opening, around };
  }
  return null;
};

export const NODE_KINDS = [
  'seat',
  'case',
  'mark',
  'reading',
  'station',
  'obstacle',
  'antenna',
  'closure',
  'zone',
  'carcass',
  'anchor',
  'chamfer',
  'chase',
  'wheelhouse',
  'brace',
  'opening',
  'device',
  'gear',
  'mount',
  'stock',
  'question',
] as const;
export type NodeKind = (typeof NODE_KINDS)[number];

export interface DesignNode {
  readonly id: NodeId;
  readonly kind: NodeKind;
  readonly name: string;
  /** Its place in the document, as `pathText` writes it. */
  readonly path: readonly PropertyKey[];
}

const openingNodes = (opening: Opening, path: readonly PropertyKey[], into: DesignNode[]): void => {
  into.push({ id: opening.id, kind: 'opening', name: opening.name, path });
  const { content } = opening;
  if (content.kind === 'divided')
    for (const [i, part] of content.parts.entries())
      openingNodes(part.opening, [...path, 'content', 'parts', i, 'opening'], into);
  if (content.kind !== 'fitted') return;
  const within = [...path, 'content', 'fitting'];
  for (const { opening: inside, path: deeper } of carried(content.fitting))
    openingNodes(inside, [...within, ...deeper], into);
  if ('fan' in content.fitting && content.fitting.fan) {
    const { id, device } = content.fitting.fan;
    into.push({ id, kind: 'device', name: device, path: [...within, 'fan'] });
  }
  if ('rows' in content.fitting)
    content.fitting.rows.forEach((row, r) => {
      row.forEach((device, d) => {
        into.push({ id: device.id, kind: 'device', name: device.device, path: [...within, 'rows', r, d] });
      });
    });
};

/** Every node of the design that has an id, in the order of the document. */
export const designNodes = (design: Design): readonly DesignNode[] => {
  const nodes: DesignNode[] = [];
  const list = (
    kind: NodeKind,
    path: readonly PropertyKey[],
    items: readonly { readonly id: NodeId; readonly name?: string }[],
  ): void => {
    nodes.push(...items.map((item, i) => ({ id: item.id, kind, name: item.name ?? '', path: [...path, i] })));
  };
  list('seat', ['vehicle', 'seats'], design.vehicle.seats);
  list('case', ['vehicle', 'ownCases'], design.vehicle.ownCases);
  list('antenna', ['vehicle', 'antennas'], design.vehicle.antennas);
  list('mark', ['survey', 'marks'], design.survey.marks);
  list('reading', ['survey', 'readings'], design.survey.readings);
  list('station', ['survey', 'stations'], design.survey.stations);
  list('obstacle', ['survey', 'obstacles'], design.survey.obstacles);
  list('closure', ['survey', 'closures'], design.survey.closures);
  list('zone', ['survey', 'zones'], design.survey.zones);
  design.cabinet.carcasses.forEach((carcass, i) => {
    const path = ['cabinet', 'carcasses', i];
    nodes.push({ id: carcass.id, kind: 'carcass', name: carcass.name, path });
    list('anchor', [...path, 'anchors'], carcass.anchors);
    list('chamfer', [...path, 'chamfers'], carcass.chamfers);
    list('chase', [...path, 'chases'], carcass.chases);
    list('wheelhouse', [...path, 'wheelhouses'], carcass.wheelhouses);
    openingNodes(carcass.opening, [...path, 'opening'], nodes);
  });
  list('brace', ['cabinet', 'braces'], design.cabinet.braces);
  list('gear', ['gear'], design.gear);
  list('mount', ['mounts'], design.mounts);
  list('stock', ['stock'], design.stock);
  list('question', ['questions'], design.questions);
  return nodes;
};

/** A source of ids that the design does not use yet: `carcass-3` after `carcass-1` and `carcass-2`. */
export const freshIds = (design: Design): ((prefix: string) => NodeId) => {
  const highest = new Map<string, number>();
  for (const { id } of designNodes(design)) {
    const match = /^(.*)-(\d+)$/.exec(id);
    if (match?.[1] !== undefined) highest.set(match[1], Math.max(highest.get(match[1]) ?? 0, Number(match[2])));
  }
  return (prefix) => {
    const next = (highest.get(prefix) ?? 0) + 1;
    highest.set(prefix, next);
    return `${prefix}-${next}` as NodeId;
  };
};
