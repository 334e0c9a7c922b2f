import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acceptFinding,
  addStock,
  changeDocument,
  changeStock,
  clearOpening,
  type Design,
  divideOpening,
  duplicateCarcass,
  FITTING_KINDS,
  fitOpening,
  openingsFrom,
  printDesign,
  readDesign,
  removeCarcass,
  removeStock,
  setPartSize,
} from '../../src/design/index.ts';
import { historyOf, redone, stepped, undone } from '../../src/views/editor/state/history.ts';
import { randomDesign } from './arbitrary.ts';

const SEED = 20310314;

/** An edit chosen by two random numbers; it picks its node among those that the design has. */
const editBy = (design: Design, which: number, where: number): Design => {
  const openings = design.cabinet.carcasses.flatMap((carcass) => openingsFrom(carcass.opening));
  const opening = openings[where % Math.max(1, openings.length)];
  const carcass = design.cabinet.carcasses[where % Math.max(1, design.cabinet.carcasses.length)];
  const kind = FITTING_KINDS[where % FITTING_KINDS.length] ?? 'drawer';
  const edits: readonly (() => Design)[] = [
    () => changeDocument(design, { title: `title ${where}` }),
    () => (opening ? divideOpening(design, opening.id, 'rows', 2 + (where % 3)) : design),
    () => (opening ? fitOpening(design, opening.id, kind) : design),
    () => (opening ? clearOpening(design, opening.id) : design),
    () =>
      opening?.content.kind === 'divided'
        ? setPartSize(design, opening.id, 0, { rule: 'fixed', mm: 50 + where })
        : design,
    () => (carcass ? duplicateCarcass(design, carcass.id).design : design),
    () => (carcass ? removeCarcass(design, carcass.id) : design),
    () =>
      acceptFinding(design, { rule: 'rear-axle', parts: [`case-${where}`], who: 'R. Vane', why: 'weighed', on: '' }),
    () =>
      addStock(design, [
        {
          material: 'birch-ply-18',
          name: `rack ${where}`,
          lengthMm: 100 + where,
          widthMm: 200,
          quantity: where % 5,
          price: null,
          offcut: where % 2 === 0,
        },
      ]).design,
    () => (design.stock[0] ? changeStock(design, design.stock[0].id, { quantity: where }) : design),
    () => (design.stock[0] ? removeStock(design, design.stock[0].id) : design),
  ];
  return edits[which % edits.length]?.() ?? design;
};

describe('laws of the design room, on random designs', () => {
  it('parse(print(design)) = design, and printing again gives the same bytes', () => {
    fc.assert(
      fc.property(randomDesign(fc), (design) => {
        const text = printDesign(design);
        const read = readDesign(text);
        expect(read).toEqual({ ok: true, value: design });
        if (read.ok) expect(printDesign(read.value)).toBe(text);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it('every edit leaves a sound document and does not touch the one it was given', () => {
    fc.assert(
      fc.property(randomDesign(fc), fc.nat(1000), fc.nat(1000), (design, which, where) => {
        const before = printDesign(design);
        const edited = editBy(design, which, where);
        expect(printDesign(design)).toBe(before);
        expect(readDesign(printDesign(edited)).ok).toBe(true);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('undoing a run of edits gives back the identical document, and redoing it the edited one', () => {
    fc.assert(
      fc.property(
        randomDesign(fc),
        fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { minLength: 1, maxLength: 8 }),
        (design, picks) => {
          let history = historyOf(design);
          for (const [which, where] of picks) history = stepped(history, editBy(history.design, which, where), 'edit');
          const edited = history.design;
          const steps = history.past.length;
          for (let i = 0; i < steps; i++) history = undone(history);
          expect(history.design).toBe(design);
          for (let i = 0; i < steps; i++) history = redone(history);
          expect(history.design).toBe(edited);
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });
});
