import { useCallback, useMemo, useRef } from 'react';
import { boxMiddle, formatMass, HOME, placed, type Vec3 } from '../../../../base/index.ts';
import { shapeBox } from '../../../../bodies/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import { projected } from '../camera/view.ts';
import type { Stage } from '../stage.ts';
import styles from './labels.module.css';
import { spreadLabels } from './spread.ts';
import { useDrawn } from './use-drawn.ts';

interface Label {
  readonly id: string;
  readonly text: string;
  /** What it points at, stowed, and the mover that carries it. */
  readonly point: Vec3;
  readonly mover: string | null;
  readonly chosen: boolean;
  /** Nobody sees it while its mover is stowed. */
  readonly shutAway: boolean;
}

/** From the point up and to the right, as one would pencil it. */
const OFFSET = [26, -34] as const;
const LINE_PX = 16;
/** Out by less than this share, a drawer still hides what is in it. */
const PEEK = 0.12;

type Editor = Parameters<Parameters<typeof useEditorParts>[0]>[0];

/** Names of what is selected and of first-due gear, each where it stands. */
const labelsOf = ({ fitOut, selection, gear, units }: LabelSources, space: CargoSpace | null): readonly Label[] => {
  const shut = new Set(fitOut.rooms.filter((room) => room.keeps === 'closed').map((room) => room.opening as string));
  const closed = new Set(fitOut.gear.filter((item) => shut.has(item.opening)).map((item) => item.gear as string));
  const names = new Map(gear.map((item) => [item.id as string, item]));
  const ofBodies = fitOut.bodies.flatMap((body): readonly Label[] => {
    if (body.kind === 'panel' || body.kind === 'plug-room' || body.kind === 'hardware') return [];
    const item = names.get(body.origin);
    const chosen = selection.includes(body.id) || selection.includes(body.origin);
    if (!chosen && !item?.firstDue) return [];
    const text = item ? `${item.name}, ${formatMass(item.massKg, units)}` : body.name;
    return [
      {
        id: body.id,
        text,
        point: boxMiddle(shapeBox(body.shape)),
        mover: body.mover,
        chosen,
        shutAway: closed.has(`${body.origin}`),
      },
    ];
  });
  const ofVehicle = (space?.bodies ?? []).flatMap((body): readonly Label[] =>
    selection.includes(body.id) || selection.includes(body.origin)
      ? [
          {
            id: body.id,
            text: body.name,
            point: boxMiddle(shapeBox(body.shape)),
            mover: body.closure,
            chosen: true,
            shutAway: false,
          },
        ]
      : [],
  );
  return [...ofBodies, ...ofVehicle];
};

interface LabelSources {
  readonly fitOut: Editor['fitOut'];
  readonly selection: Editor['selection'];
  readonly gear: Editor['history']['design']['gear'];
  readonly units: Editor['history']['design']['units'];
}

const SHIFTED = (group: Element, name: string, value: number): void => group.setAttribute(name, value.toFixed(1));

const placeLabels = (svg: SVGSVGElement, stage: Stage, labels: readonly Label[]): void => {
  const view = stage.view();
  const shares = stage.glide.shown();
  const shown = labels.flatMap((label) => {
    const group = svg.querySelector<SVGGElement>(`[data-label="${CSS.escape(label.id)}"]`);
    const pose = (label.mover !== null && stage.poses().get(label.mover)) || HOME;
    const at = projected(view, placed(pose, label.point));
    const hidden = label.shutAway && !label.chosen && (shares[label.mover ?? ''] ?? 0) < PEEK;
    const outside = hidden || !at || at[0] < 0 || at[1] < 0 || at[0] > view.width || at[1] > view.height;
    if (group) group.style.display = outside ? 'none' : '';
    return group && at && !outside ? [{ group, at }] : [];
  });
  const wanted = shown.map(({ group, at }) => {
    const width = group.querySelector('text')?.getComputedTextLength() ?? 0;
    const room = Math.min(OFFSET[0], view.width - at[0] - width - 8);
    return { x: at[0] + room, y: Math.max(4, at[1] + OFFSET[1] - LINE_PX), width, height: LINE_PX };
  });
  spreadLabels(wanted).forEach((spot, i) => {
    const entry = shown[i];
    const [line, dot, text] = [...(entry?.group.children ?? [])];
    if (!entry || !line || !dot || !text) return;
    SHIFTED(line, 'x1', entry.at[0]);
    SHIFTED(line, 'y1', entry.at[1]);
    SHIFTED(line, 'x2', spot.x - 3);
    SHIFTED(line, 'y2', spot.y + LINE_PX - 4);
    SHIFTED(dot, 'cx', entry.at[0]);
    SHIFTED(dot, 'cy', entry.at[1]);
    SHIFTED(text, 'x', spot.x);
    SHIFTED(text, 'y', spot.y + LINE_PX - 4);
  });
};

interface LabelsProps {
  readonly stage: Stage;
  readonly space: CargoSpace | null;
}

/** Pencilled names over the scene, with a leader to what they name. */
export const Labels = ({ stage, space }: LabelsProps) => {
  const svg = useRef<SVGSVGElement>(null);
  const sources = useEditorParts((editor) => ({
    fitOut: bayFitOut(editor.fitOut),
    selection: editor.selection,
    gear: editor.history.design.gear,
    units: editor.history.design.units,
  }));
  const labels = useMemo(() => labelsOf(sources, space), [sources, space]);
  const place = useCallback((element: SVGSVGElement) => placeLabels(element, stage, labels), [stage, labels]);
  useDrawn(stage, svg, place);
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
