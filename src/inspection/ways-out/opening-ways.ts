import {
  type Carcass,
  changeCarcass,
  changeFitting,
  type Design,
  type DividedPart,
  type Division,
  findOpening,
  type NodeId,
  type Opening,
  openingsFrom,
  setPartSize,
} from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import { type Candidate, roundedUp, type WayFinder } from './candidate.ts';

type Axis = 'across' | 'deep' | 'up';

const ALONG: Readonly<Record<Division, Axis>> = { columns: 'across', layers: 'deep', rows: 'up' };
const SIZE: Readonly<Record<Axis, keyof Carcass['size']>> = { across: 'width', deep: 'depth', up: 'height' };

const axisOf = (finding: Finding): Axis | null => {
  const { axis } = finding.facts;
  return axis === 'across' || axis === 'deep' || axis === 'up' ? axis : null;
};

interface PlacedPart {
  readonly parent: Opening;
  readonly index: number;
  readonly part: DividedPart;
  readonly parts: readonly DividedPart[];
}

/** The part of a divided opening around `id` that decides its size on the axis, the nearest first. */
const partsAlong = (design: Design, id: NodeId, axis: Axis): readonly PlacedPart[] => {
  const found = findOpening(design, id);
  if (!found) return [];
  const chain = [...found.around, found.opening];
  return found.around
    .flatMap((parent, i): readonly PlacedPart[] => {
      const { content } = parent;
      if (content.kind !== 'divided' || ALONG[content.along] !== axis) return [];
      const index = content.parts.findIndex((part) => part.opening.id === chain[i + 1]?.id);
      const part = content.parts[index];
      return part ? [{ parent, index, part, parts: content.parts }] : [];
    })
    .toReversed();
};

const openingId = (design: Design, id: string | undefined): NodeId | null =>
  design.cabinet.carcasses.flatMap((carcass) => openingsFrom(carcass.opening)).find((own) => own.id === id)?.id ?? null;

/** The row or column given `haveMm` and what it lacks as a fixed size, where a neighbour with a share can give it. */
const grownPart = (design: Design, own: PlacedPart, haveMm: number, mm: number): readonly Candidate[] => {
  const giver = own.parts.some((part, i) => i !== own.index && part.size.rule === 'share');
  if (!giver) return [];
  const size = { rule: 'fixed', mm: (own.part.size.rule === 'fixed' ? own.part.size.mm : haveMm) + mm } as const;
  return [
    {
      kind: 'grow-opening',
      facts: { opening: own.part.opening.id, mm },
      design: setPartSize(design, own.parent.id, own.index, size),
      change: mm,
      group: null,
    },
  ];
};

const grownCarcass = (design: Design, id: NodeId, axis: Axis, mm: number): readonly Candidate[] => {
  const carcass = findOpening(design, id)?.carcass;
  if (!carcass) return [];
  const size = SIZE[axis];
  return [
    {
      kind: 'grow-carcass',
      facts: { carcass: carcass.name, size, mm },
      design: changeCarcass(design, carcass.id, { size: { ...carcass.size, [size]: carcass.size[size] + mm } }),
      change: mm,
      group: null,
    },
  ];
};

const grown = (design: Design, id: NodeId, axis: Axis, haveMm: number, mm: number): readonly Candidate[] => [
  ...partsAlong(design, id, axis).flatMap((own) => grownPart(design, own, haveMm, mm)),
  ...grownCarcass(design, id, axis, mm),
];

/** A slide, a slide length or a box height that the user has set, given back to the solver to choose. */
const freedChoice = (design: Design, id: NodeId): readonly Candidate[] => {
  const content = findOpening(design, id)?.opening.content;
  if (content?.kind !== 'fitted' || !('slide' in content.fitting)) return [];
  const { fitting } = content;
  const boxHeight = 'boxHeightMm' in fitting && fitting.boxHeightMm !== null;
  if (fitting.slide === null && fitting.slideLengthMm === null && !boxHeight) return [];
  const freed = changeFitting(design, id, (draft) => {
    if (!('slide' in draft)) return;
    draft.slide = null;
    draft.slideLengthMm = null;
    if ('boxHeightMm' in draft) draft.boxHeightMm = null;
  });
  return [{ kind: 'let-slide-be-chosen', facts: { opening: id }, design: freed, change: 0, group: null }];
};

/** Of fixed rows or columns that want more than there is, the largest ones in turn given what the others leave. */
const sharedPart = (design: Design, id: NodeId, axis: Axis): readonly Candidate[] => {
  const content = findOpening(design, id)?.opening.content;
  if (content?.kind !== 'divided' || ALONG[content.along] !== axis) return [];
  return content.parts
    .flatMap(({ size, opening }, index) => (size.rule === 'fixed' ? [{ mm: size.mm, opening, index }] : []))
    .toSorted((a, b) => b.mm - a.mm || a.index - b.index)
    .map(({ opening, index }, change) => ({
      kind: 'share-part',
      facts: { opening: opening.id },
      design: setPartSize(design, id, index, { rule: 'share', weight: 1 }),
      change,
      group: 'share-part',
    }));
};

/** What may let a part of the cabinet be solved: its own choices given up, its row or column or its carcass made larger. */
export const solvingWays: WayFinder = (finding, design) => {
  const id = openingId(design, finding.parts[0]);
  if (id === null) return [];
  const axis = axisOf(finding);
  if (axis === null || finding.facts.sized !== 'yes') return freedChoice(design, id);
  const mm = roundedUp(finding.limit - finding.value, design.units);
  return [
    ...freedChoice(design, id),
    ...sharedPart(design, id, axis),
    ...(mm > 0 ? grown(design, id, axis, finding.value, mm) : []),
  ];
};

/** The opening of gear that does not fit, made larger by what is lacking. */
export const largerRoomWays: WayFinder = (finding, design) => {
  const id = openingId(design, finding.parts[1]);
  const axis = axisOf(finding);
  const { openingMm } = finding.facts;
  if (id === null || axis === null || typeof openingMm !== 'number') return [];
  return grown(design, id, axis, openingMm, roundedUp(finding.limit - finding.value, design.units));
};

/** Heights by which a room is raised so that what lies in it can be lifted out, mm. */
const RAISED = [12, 25, 50, 100];

/** The room of gear made higher, so that it is lifted over what is before it. */
export const higherRoomWays: WayFinder = (finding, design) => {
  const id = openingId(design, finding.parts[1]);
  if (id === null) return [];
  return RAISED.flatMap((mm) =>
    partsAlong(design, id, 'up').flatMap((own) => {
      if (own.part.size.rule !== 'fixed') return [];
      return grownPart(design, own, own.part.size.mm, roundedUp(mm, design.units));
    }),
  ).map((candidate) => ({ ...candidate, group: `higher ${id}` }));
};
