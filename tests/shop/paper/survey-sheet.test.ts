import { describe, expect, it } from 'vitest';
import { CLOSURE_KINDS, VEHICLE_CLASSES } from '../../../src/design/index.ts';
import { type PlanFigure, surveyPlan } from '../../../src/envelope/index.ts';
import { drawingToSvg, surveySheet } from '../../../src/shop/index.ts';
import { openPdfWriter } from '../../../src/views/cli/open-pdf-writer.ts';
import { pdfText } from './poppler.ts';

/** The kinds that a survey may begin with; a lone tailgate is the sixth. */
const KINDS = CLOSURE_KINDS.map((kind) => [kind] as const);

const sheets = (kind: (typeof CLOSURE_KINDS)[number]) =>
  VEHICLE_CLASSES.map((vehicle) => ({ plan: surveyPlan(kind, vehicle), vehicle }));

/** Middle and half size of the least room that a figure's number takes. */
const roomOf = (label: PlanFigure['labels'][number], letter: number) => ({
  at: label.at,
  half: [label.text.length * 0.3 * letter, letter / 2] as const,
});

describe('the drawings of the plan', () => {
  it.each(KINDS)('%s: each reading is drawn once with its number, and no two numbers lie on each other', (kind) => {
    for (const { plan, vehicle } of sheets(kind)) {
      const drawn = plan.figures.flatMap(({ labels }) => labels.flatMap(({ step }) => step ?? []));
      const asked = plan.steps.flatMap(({ reading, number }) => (reading === null ? [] : [number]));
      expect(drawn.toSorted((a, b) => a - b)).toEqual(asked);
      for (const { id, labels, letter } of plan.figures)
        labels.forEach((label, i) => {
          const a = roomOf(label, letter);
          for (const other of labels.slice(i + 1)) {
            const b = roomOf(other, letter);
            const apart = [0, 1].some(
              (axis) => Math.abs((a.at[axis] ?? 0) - (b.at[axis] ?? 0)) >= (a.half[axis] ?? 0) + (b.half[axis] ?? 0),
            );
            expect(apart, `${kind} ${vehicle} ${id}: ${label.text} and ${other.text}`).toBe(true);
          }
        });
    }
  });

  it('a line stops short of every number, so that no paper needs a fill', () => {
    for (const { plan } of sheets('lift-hatch'))
      for (const { id, lines, labels, letter } of plan.figures)
        for (const { from, to } of lines.filter(({ role }) => role === 'reading'))
          for (const label of labels) {
            const room = roomOf(label, letter);
            const covered = [0.02, 0.25, 0.5, 0.75, 0.98].filter((share) =>
              [0, 1].every(
                (axis) =>
                  Math.abs((from[axis] ?? 0) + ((to[axis] ?? 0) - (from[axis] ?? 0)) * share - (room.at[axis] ?? 0)) <
                  (room.half[axis] ?? 0),
              ),
            );
            if (covered.length > 0) expect.fail(`${id}: a line runs through ${label.text}`);
          }
  });
});

describe('the blank survey sheet', () => {
  it.each(KINDS)('%s: fits A4 and Letter upright, everything on the page, drawn in black alone', (kind) => {
    for (const { plan } of sheets(kind))
      for (const [units, wide, high] of [
        ['mm', 210, 297],
        ['in', 215.9, 279.4],
      ] as const) {
        const pages = surveySheet({ plan, units });
        expect(pages.length).toBeLessThanOrEqual(13);
        for (const page of pages) {
          expect(page.size).toEqual([wide, high]);
          const points = page.shapes.flatMap((shape) =>
            shape.kind === 'line'
              ? [shape.from, shape.to]
              : shape.kind === 'text' || shape.kind === 'circle'
                ? [shape.at]
                : [],
          );
          expect(points.filter(([x, y]) => Math.min(x, y, wide - x, high - y) < 5)).toEqual([]);
          expect(drawingToSvg(page)).not.toMatch(/#(?!000)[0-9a-f]{3,6}/i);
        }
      }
  });

  it('says every step of the plan, as an independent reader of the file finds it', () => {
    const plan = surveyPlan('cap-door', 'pickup-cap');
    const pages = surveySheet({ plan, units: 'in' });
    const words = pdfText(openPdfWriter()(pages, { title: 'survey sheet', subject: '' })).replace(/\s+/g, ' ');
    for (const { name, group, number } of plan.steps.filter((step) => step.group !== 'labels'))
      expect(words, `${group} ${number}`).toContain(name.split(',')[0]);
    expect(words).toContain('Gross vehicle rating');
    expect(words).toContain('reading, in or °');
  });
});
