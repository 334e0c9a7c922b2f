import type { Design } from '../design.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import type { Closure, Obstacle, Station, Survey, Zone } from '../survey.ts';
import type { Vehicle } from '../vehicle.ts';
import { itemOf } from './change.ts';

export const changeVehicle = (design: Design, change: Partial<Vehicle>): Design => ({
  ...design,
  vehicle: { ...design.vehicle, ...change },
});

export const changeSurvey = (design: Design, change: Partial<Survey>): Design => ({
  ...design,
  survey: { ...design.survey, ...change },
});

/** The lists of a survey whose items have ids. */
interface SurveyLists {
  readonly stations: Station;
  readonly obstacles: Obstacle;
  readonly closures: Closure;
  readonly zones: Zone;
}
export type SurveyList = keyof SurveyLists;

const PREFIX: Readonly<Record<SurveyList, string>> = {
  stations: 'station',
  obstacles: 'obstacle',
  closures: 'closure',
  zones: 'zone',
};

const byDepth = (a: Station, b: Station): number => a.xMm - b.xMm;

const withList = <L extends SurveyList>(design: Design, list: L, items: readonly SurveyLists[L][]): Design => {
  const survey = { ...design.survey, [list]: items } as Survey;
  return { ...design, survey: { ...survey, stations: survey.stations.toSorted(byDepth) } };
};

/** Adds an item and gives its new id with the design. */
export const addSurveyItem = <L extends SurveyList>(
  design: Design,
  list: L,
  item: Omit<SurveyLists[L], 'id'>,
): { readonly design: Design; readonly id: NodeId } => {
  const id = freshIds(design)(PREFIX[list]);
  const items = design.survey[list] as readonly SurveyLists[L][];
  return { design: withList(design, list, [...items, { ...item, id } as SurveyLists[L]]), id };
};

export const changeSurveyItem = <L extends SurveyList>(
  design: Design,
  list: L,
  id: NodeId,
  change: Partial<Omit<SurveyLists[L], 'id'>>,
): Design => {
  const items = design.survey[list] as readonly SurveyLists[L][];
  itemOf(items, id, PREFIX[list]);
  return withList(
    design,
    list,
    items.map((item) => (item.id === id ? { ...item, ...change } : item)),
  );
};

/** Takes an item out. Obstacles and closures that moved with a removed closure stay, standing still. */
export const removeSurveyItem = (design: Design, list: SurveyList, id: NodeId): Design => {
  const items: readonly { readonly id: NodeId }[] = design.survey[list];
  itemOf(items, id, PREFIX[list]);
  const { survey } = design;
  const kept = { ...survey, [list]: items.filter((item) => item.id !== id) } as Survey;
  return {
    ...design,
    survey: {
      ...kept,
      obstacles: kept.obstacles.map((item) => (item.movesWith === id ? { ...item, movesWith: null } : item)),
      closures: kept.closures.map((item) => (item.carriedBy === id ? { ...item, carriedBy: null } : item)),
    },
    mounts: design.mounts.map((mount) => (mount.on === id ? { ...mount, on: null } : mount)),
  };
};
