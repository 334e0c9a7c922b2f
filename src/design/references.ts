import { type Problem, pathText } from '../base/index.ts';
import type { Design } from './design.ts';
import { designNodes, type NodeKind } from './nodes.ts';

/** Ids used twice, and names of nodes that the design does not hold. */
export const referenceProblems = (design: Design): readonly Problem[] => {
  const problems: Problem[] = [];
  const kinds = new Map<string, NodeKind>();
  for (const node of designNodes(design)) {
    if (kinds.has(node.id)) problems.push({ at: pathText([...node.path, 'id']), code: 'duplicate-id', got: node.id });
    kinds.set(node.id, node.kind);
  }
  const need = (id: string | null, kind: NodeKind, path: readonly PropertyKey[]): void => {
    if (id !== null && kinds.get(id) !== kind)
      problems.push({ at: pathText(path), code: 'no-such-node', expected: `the id of one ${kind}`, got: id });
  };
  design.vehicle.ownCases.forEach((own, i) => {
    own.seats.forEach((seat, k) => {
      need(seat, 'seat', ['vehicle', 'ownCases', i, 'seats', k]);
    });
  });
  design.survey.readings.forEach((reading, i) => {
    for (const end of ['from', 'to', 'at'] as const) need(reading[end], 'mark', ['survey', 'readings', i, end]);
  });
  design.survey.stations.forEach((station, i) => {
    for (const side of ['leftMarks', 'rightMarks'] as const)
      station[side]?.forEach((mark, k) => {
        need(mark, 'mark', ['survey', 'stations', i, side, k]);
      });
  });
  design.survey.obstacles.forEach((obstacle, i) => {
    need(obstacle.movesWith, 'closure', ['survey', 'obstacles', i, 'movesWith']);
  });
  design.survey.closures.forEach((closure, i) => {
    need(closure.carriedBy, 'closure', ['survey', 'closures', i, 'carriedBy']);
    for (const [role, mark] of Object.entries(closure.marks ?? {}))
      need(mark, 'mark', ['survey', 'closures', i, 'marks', role]);
  });
  design.cabinet.carcasses.forEach((carcass, i) => {
    for (const axis of ['x', 'y', 'z'] as const) {
      const place = carcass.place[axis];
      if (place.rule === 'beside')
        need(place.carcass, 'carcass', ['cabinet', 'carcasses', i, 'place', axis, 'carcass']);
    }
  });
  design.cabinet.braces.forEach((brace, i) => {
    for (const end of ['from', 'to'] as const)
      need(brace[end].carcass, 'carcass', ['cabinet', 'braces', i, end, 'carcass']);
  });
  design.gear.forEach((gear, i) => {
    if (gear.place) need(gear.place.opening, 'opening', ['gear', i, 'place', 'opening']);
  });
  design.mounts.forEach((mount, i) => {
    if (mount.on === null || kinds.get(mount.on) !== 'carcass') need(mount.on, 'closure', ['mounts', i, 'on']);
  });
  return problems;
};
