import type { Design } from '../design.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import type { Mark, Reading } from '../survey.ts';
import { itemOf } from './change.ts';

const withMarks = (design: Design, marks: readonly Mark[]): Design => ({
  ...design,
  survey: { ...design.survey, marks },
});
const withReadings = (design: Design, readings: readonly Reading[]): Design => ({
  ...design,
  survey: { ...design.survey, readings },
});

/** Adds marks; one without an id gets a fresh one. Throws on an id that the design already uses for a mark. */
export const addMarks = (
  design: Design,
  marks: readonly (Omit<Mark, 'id'> & { readonly id?: NodeId })[],
): { readonly design: Design; readonly ids: readonly NodeId[] } => {
  const newId = freshIds(design);
  const taken = new Set<string>(design.survey.marks.map((mark) => mark.id));
  const added = marks.map((mark): Mark => ({ ...mark, id: mark.id ?? newId('mark') }));
  const twice = added.find((mark) => taken.has(mark.id));
  if (twice) throw new RangeError(`addMarks: the id ${twice.id} is taken`);
  return { design: withMarks(design, [...design.survey.marks, ...added]), ids: added.map((mark) => mark.id) };
};

export const changeMark = (design: Design, id: NodeId, change: Partial<Omit<Mark, 'id'>>): Design => {
  itemOf(design.survey.marks, id, 'mark');
  return withMarks(
    design,
    design.survey.marks.map((mark) => (mark.id === id ? { ...mark, ...change } : mark)),
  );
};

const without = (marks: readonly (NodeId | null)[] | undefined, id: NodeId): (NodeId | null)[] | undefined =>
  marks?.map((mark) => (mark === id ? null : mark));

/** Takes a mark out, with every reading that touches it; section points that followed it keep their typed place. */
export const removeMark = (design: Design, id: NodeId): Design => {
  itemOf(design.survey.marks, id, 'mark');
  const { survey } = design;
  return {
    ...design,
    survey: {
      ...survey,
      marks: survey.marks.filter((mark) => mark.id !== id),
      readings: survey.readings.filter(({ from, to, at }) => from !== id && to !== id && at !== id),
      stations: survey.stations.map((station) => {
        const { leftMarks, rightMarks, ...rest } = station;
        const [left, right] = [without(leftMarks, id), without(rightMarks, id)];
        return { ...rest, ...(left ? { leftMarks: left } : {}), ...(right ? { rightMarks: right } : {}) };
      }),
      closures: survey.closures.map((closure) => {
        if (!closure.marks) return closure;
        const kept = (mark: NodeId | null): NodeId | null => (mark === id ? null : mark);
        const { hingeFrom, hingeTo, edgeClosed, edgeOpen } = closure.marks;
        return {
          ...closure,
          marks: {
            hingeFrom: kept(hingeFrom),
            hingeTo: kept(hingeTo),
            edgeClosed: kept(edgeClosed),
            edgeOpen: kept(edgeOpen),
          },
        };
      }),
    },
  };
};

/** Adds readings in the order given and gives their new ids. */
export const addReadings = (
  design: Design,
  readings: readonly Omit<Reading, 'id'>[],
): { readonly design: Design; readonly ids: readonly NodeId[] } => {
  const newId = freshIds(design);
  const added = readings.map((reading): Reading => ({ ...reading, id: newId('reading') }));
  return {
    design: withReadings(design, [...design.survey.readings, ...added]),
    ids: added.map((reading) => reading.id),
  };
};

export const changeReading = (design: Design, id: NodeId, change: Partial<Omit<Reading, 'id'>>): Design => {
  itemOf(design.survey.readings, id, 'reading');
  return withReadings(
    design,
    design.survey.readings.map((reading) => (reading.id === id ? { ...reading, ...change } : reading)),
  );
};

/** Puts a reading aside; it stays listed with who did it and why. `null` takes it back in. */
export const leaveOutReading = (design: Design, id: NodeId, leftOut: Reading['leftOut']): Design =>
  changeReading(design, id, { leftOut });

export const removeReading = (design: Design, id: NodeId): Design => {
  itemOf(design.survey.readings, id, 'reading');
  return withReadings(
    design,
    design.survey.readings.filter((reading) => reading.id !== id),
  );
};

/** Ties the points of a station to marks: one entry a point, null for a typed one. Throws when the counts differ. */
export const tieStation = (
  design: Design,
  id: NodeId,
  left: readonly (NodeId | null)[],
  right: readonly (NodeId | null)[],
): Design => {
  const station = itemOf(design.survey.stations, id, 'station');
  if (left.length !== station.left.length || right.length !== station.right.length)
    throw new RangeError(`tieStation: ${left.length} and ${right.length} marks for the points of ${id}`);
  const stations = design.survey.stations.map((own) =>
    own.id === id ? { ...own, leftMarks: [...left], rightMarks: [...right] } : own,
  );
  return { ...design, survey: { ...design.survey, stations } };
};
