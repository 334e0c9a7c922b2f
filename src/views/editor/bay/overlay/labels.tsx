import { useCallback, useMemo, useRef } from 'react';
import { HOME, placed, type Vec2 } from '../../../../base/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import { useEditorParts, useEditorStore } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import { projected } from '../camera/view.ts';
import { type Label, labelsOf } from '../marks/labels-of.ts';
import type { BayTools } from '../pointer/bay-tools.ts';
import { sameValue } from '../same-value.ts';
import styles from './labels.module.css';
import { spreadLabels } from './spread.ts';
import { useDrawn } from './use-drawn.ts';

/** From the point up and to the right, as one would pencil it. */
const OFFSET = [26, -34] as const;
const LINE_PX = 16;
const EDGE_PX = 8;

/** True when what a label names is what one sees at its place; what is selected is named even behind something. */
type Sight = (label: Label, at: Vec2) => boolean;

/** Asks the scene what one sees there. */
const sightThrough =
  (tools: BayTools): Sight =>
  (label, at) => {
    if (label.chosen) return true;
    const hit = tools.pick(at);
    return hit !== null && (hit.what.id === label.id || hit.what.origin === label.origin);
  };

/**
 * Sight with a memory: while a hand drags something, what was seen stays seen and what was hidden stays hidden; looking
 * again with every picture would cost more than drawing it.
 */
const rememberedSight = (see: Sight, isDragging: () => boolean): Sight => {
  const seen = new Map<string, boolean>();
  return (label, at) => {
    const known = isDragging() ? seen.get(label.id) : undefined;
    const now = known ?? see(label, at);
    seen.set(label.id, now);
    return now;
  };
};

/** Where the point of a label lies in the picture, or null when it is not to be seen. */
const pointOf = (label: Label, { stage }: BayTools, see: Sight): Vec2 | null => {
  const view = stage.view();
  const pose = (label.mover !== null && stage.poses().get(label.mover)) || HOME;
  const at = projected(view, placed(pose, label.point));
  const inside = at && at[0] >= 0 && at[1] >= 0 && at[0] <= view.width && at[1] <= view.height;
  return inside && see(label, at) ? at : null;
};

/** Widths by text: measuring one makes the page lay itself out. */
const widths = new Map<string, number>();

const widthOf = (text: SVGTextElement | null): number => {
  if (!text) return 0;
  const words = text.textContent;
  const wide = widths.get(words) ?? text.getComputedTextLength();
  // Before its first layout a text measures nothing; that is not worth keeping.
  if (wide > 0) widths.set(words, wide);
  return wide;
};

const put = (element: Element, places: Readonly<Record<string, number>>): void => {
  for (const [name, value] of Object.entries(places)) element.setAttribute(name, value.toFixed(1));
};

const placeLabels = (svg: SVGSVGElement, tools: BayTools, labels: readonly Label[], see: Sight): void => {
  const { width } = tools.stage.view();
  const groups = [...svg.querySelectorAll<SVGGElement>('[data-label]')];
  const shown = labels.flatMap((label) => {
    const group = groups.find((candidate) => candidate.dataset.label === label.id);
    const at = pointOf(label, tools, see);
    if (group) group.style.display = at ? '' : 'none';
    return group && at ? [{ group, at }] : [];
  });
  const wanted = shown.map(({ group, at }) => {
    const wide = widthOf(group.querySelector('text'));
    const room = Math.min(OFFSET[0], width - at[0] - wide - EDGE_PX);
    return { x: at[0] + room, y: Math.max(EDGE_PX, at[1] + OFFSET[1] - LINE_PX), width: wide, height: LINE_PX };
  });
  spreadLabels(wanted).forEach((spot, i) => {
    const entry = shown[i];
    const [line, dot, text] = entry ? [...entry.group.children] : [];
    if (!entry || !line || !dot || !text) return;
    const foot = spot.y + LINE_PX - 4;
    put(line, { x1: entry.at[0], y1: entry.at[1], x2: spot.x - 3, y2: foot });
    put(dot, { cx: entry.at[0], cy: entry.at[1] });
    put(text, { x: spot.x, y: foot });
  });
};

interface LabelsProps {
  readonly tools: BayTools;
  readonly space: CargoSpace | null;
}

/** Pencilled names over the scene, with a leader to what they name. */
export const Labels = ({ tools, space }: LabelsProps) => {
  const svg = useRef<SVGSVGElement>(null);
  const { fitOut, selection, gear, units, carried } = useEditorParts((editor) => ({
    fitOut: bayFitOut(editor.fitOut),
    selection: editor.selection,
    gear: editor.history.design.gear,
    units: editor.history.design.units,
    carried: editor.carrying !== null,
  }));
  const found = useMemo(
    // What is carried goes without its gear, and nothing else stands where it is named.
    () => (carried ? [] : labelsOf({ fitOut, space, selection, design: { gear, units } })),
    [fitOut, space, selection, gear, units, carried],
  );
  // Most edits leave every label where it was; what they point at is looked for again with the next picture.
  const kept = useRef(found);
  if (!sameValue(kept.current, found)) kept.current = found;
  const labels = kept.current;
  const editor = useEditorStore();
  const see = useMemo(
    () => rememberedSight(sightThrough(tools), () => editor.getState().gesture !== null),
    [tools, editor],
  );
  const place = useCallback((element: SVGSVGElement) => placeLabels(element, tools, labels, see), [tools, labels, see]);
  useDrawn(tools.stage, svg, place);
  return (
    <svg ref={svg} className={styles.labels} aria-hidden="true">
      {labels.map((label) => (
        <g key={label.id} data-label={label.id} data-chosen={label.chosen}>
          <line />
          <circle r={2.6} />
          <text>{label.text}</text>
        </g>
      ))}
    </svg>
  );
};
