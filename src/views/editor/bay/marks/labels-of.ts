import { boxMiddle, formatMass, type Vec3 } from '../../../../base/index.ts';
import { shapeBox } from '../../../../bodies/index.ts';
import type { Design } from '../../../../design/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';

/** A name over the scene with a leader to what it names. */
export interface Label {
  readonly id: string;
  /** The node that it comes from. */
  readonly origin: string;
  readonly text: string;
  /** What it points at, stowed, and the mover that carries it. */
  readonly point: Vec3;
  readonly mover: string | null;
  readonly chosen: boolean;
}

export interface LabelSources {
  readonly fitOut: FitOut;
  readonly space: CargoSpace | null;
  readonly selection: readonly string[];
  readonly design: Pick<Design, 'gear' | 'units'>;
}

/** Names of what is selected and of first-due gear, each where it stands. */
export const labelsOf = ({ fitOut, space, selection, design }: LabelSources): readonly Label[] => {
  const gear = new Map(design.gear.map((item) => [item.id as string, item]));
  const isChosen = (body: { readonly id: string; readonly origin: string }): boolean =>
    selection.includes(body.id) || selection.includes(body.origin);
  const cabinet = fitOut.bodies.flatMap((body): readonly Label[] => {
    if (body.kind === 'panel' || body.kind === 'plug-room' || body.kind === 'hardware') return [];
    const item = gear.get(body.origin);
    const chosen = isChosen(body);
    if (!chosen && !item?.firstDue) return [];
    const { id, origin, mover, shape } = body;
    const text = item ? `${item.name}, ${formatMass(item.massKg, design.units)}` : body.name;
    return [{ id, origin, text, point: boxMiddle(shapeBox(shape)), mover, chosen }];
  });
  const vehicle = (space?.bodies ?? []).filter(isChosen).map(({ id, origin, name, shape, closure }) => {
    return { id, origin, text: name, point: boxMiddle(shapeBox(shape)), mover: closure, chosen: true };
  });
  // A device has a face and a body; one name is enough.
  const all = [...cabinet, ...vehicle];
  return all.filter((label, i) => all.findIndex((other) => other.origin === label.origin) === i);
};
