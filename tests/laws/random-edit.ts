import {
  addGear,
  askQuestion,
  changeCarcass,
  changeDocument,
  changeGear,
  clearOpening,
  type Design,
  divideOpening,
  fitOpening,
  type NodeId,
  openingsFrom,
  placeGear,
  removeCarcass,
  removeGear,
  setHouseRule,
  setPartSize,
} from '../../src/design/index.ts';

/** One edit with the node that it is about; null where the numbers choose nothing that can be done. */
export const editBy = (
  design: Design,
  which: number,
  where: number,
): { readonly after: Design; readonly about: readonly string[] } | null => {
  const openings = design.cabinet.carcasses.flatMap(({ opening }) => openingsFrom(opening));
  const opening = openings[where % Math.max(1, openings.length)];
  const box = design.cabinet.carcasses[where % Math.max(1, design.cabinet.carcasses.length)];
  const gear = design.gear[where % Math.max(1, design.gear.length)];
  const on = <T extends { readonly id: NodeId }>(
    node: T | undefined,
    edit: (node: T) => Design,
  ): { readonly after: Design; readonly about: readonly string[] } | null =>
    node ? { after: edit(node), about: [node.id] } : null;
  const edits = [
    () => on(gear, ({ id }) => changeGear(design, id, { massKg: where + 0.25 })),
    () => on(gear, ({ id }) => changeGear(design, id, { name: `gear named ${where}` })),
    () => on(gear, ({ id }) => placeGear(design, id, null)),
    () => on(gear, ({ id }) => removeGear(design, id)),
    () => on(box, ({ id }) => changeCarcass(design, id, { name: `carcass named ${where}` })),
    () => on(box, ({ id, size }) => changeCarcass(design, id, { size: { ...size, depth: 300 + where } })),
    () => on(box, ({ id }) => removeCarcass(design, id)),
    () => on(opening, ({ id }) => divideOpening(design, id, 'columns', 2 + (where % 3))),
    () => on(opening, ({ id }) => fitOpening(design, id, where % 2 === 0 ? 'drawer' : 'slide-out')),
    () => on(opening, ({ id }) => clearOpening(design, id)),
    () => {
      if (opening?.content.kind !== 'divided') return null;
      const after = setPartSize(design, opening.id, 0, { rule: 'fixed', mm: 41.5 + where });
      return { after, about: [opening.content.parts[0]?.opening.id ?? ''] };
    },
    () => ({ after: changeDocument(design, { notes: `note ${where}` }), about: [''] }),
    () => ({
      after: setHouseRule(design, { rule: 'moving-gap', value: where, who: 'R. Vane', why: 'test' }),
      about: [''],
    }),
    () => {
      const { design: after, id } = askQuestion(design, { text: `ok ${where}?`, about: null });
      return { after, about: [id] };
    },
    () => {
      const [item] = design.gear;
      if (!item) return null;
      const { design: after, ids } = addGear(design, [{ ...item, place: null }]);
      return { after, about: ids };
    },
  ];
  return edits[which % edits.length]?.() ?? null;
};
