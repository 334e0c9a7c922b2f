import { degrees, groupBy, type Polygon, type Vec2 } from '../../base/index.ts';
import { resolved } from './dimensions.ts';
import {
  type Arc,
  type Drawing,
  LAYER_NAMES,
  LAYERS,
  type LayerName,
  type Polyline,
  type Stroke,
  type Text,
} from './drawing.ts';
import { textWidth } from './text-width.ts';

/** Capital height of the drawing face over its font size (Barlow Condensed: 1400 of 2000 units). */
const CAPITAL = 0.7;
const FACE = "'Barlow Condensed','Arial Narrow','Liberation Sans Narrow','Helvetica Neue',sans-serif";

/** Written to a thousandth of a millimetre, without trailing zeros and without a negative zero. */
const figure = (value: number): string => {
  const written = value.toFixed(3).replace(/\.?0+$/, '');
  return written === '-0' ? '0' : written;
};

/** Characters that XML 1.0 cannot hold, escaped or not: controls, halves of surrogate pairs, two non-characters. */
const NOT_XML = /[^\P{Cc}\t\n\r\u0080-\u009f]|\p{Cs}|[\ufffe\uffff]/gu;

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text safe in an element or a quoted attribute. */
export const xmlText = (words: string): string =>
  words.replace(NOT_XML, '\ufffd').replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign);

type Place = (at: Vec2) => readonly [string, string];

const arcEnd = ({ at, radius }: Arc, angleRad: number): Vec2 => [
  at[0] + radius * Math.cos(angleRad),
  at[1] + radius * Math.sin(angleRad),
];

const arcPath = (arc: Arc, place: Place): string => {
  const span = (arc.toRad - arc.fromRad + 4 * Math.PI) % (2 * Math.PI);
  const r = figure(arc.radius);
  const [from, to] = [place(arcEnd(arc, arc.fromRad)), place(arcEnd(arc, arc.toRad))];
  return `M${from.join(' ')}A${r} ${r} 0 ${span > Math.PI ? 1 : 0} 0 ${to.join(' ')}`;
};

/** One edge of a polyline: straight, or an arc whose radius follows from the chord and the bulge. */
const edge = (from: Vec2, to: Vec2, bulge: number, place: Place): string => {
  if (bulge === 0) return `L${place(to).join(' ')}`;
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const r = figure((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)));
  // The paper's y runs down, so a turn to the left is drawn with sweep 0.
  return `A${r} ${r} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1} ${place(to).join(' ')}`;
};

const polylinePath = ({ corners, closed }: Polyline, place: Place): string => {
  const [first] = corners;
  if (!first) return '';
  const edges = corners.map((corner, i) => {
    const last = i === corners.length - 1;
    if (last && (!closed || corner.bulge === 0)) return '';
    const next = corners[i + 1] ?? first;
    return edge(corner.at, next.at, corner.bulge, place);
  });
  return `M${place(first.at).join(' ')}${edges.join('')}${closed ? 'Z' : ''}`;
};

const patchRing = (points: Polygon, place: Place): string => `M${points.map((at) => place(at).join(' ')).join('L')}Z`;

const ANCHOR = { left: 'start', middle: 'middle', right: 'end' } as const;

const textElement = (words: Text, place: Place): string => {
  const [x, y] = place(words.at);
  const anchor = words.align === 'left' ? '' : ` text-anchor="${ANCHOR[words.align]}"`;
  const turn = words.turnRad === 0 ? '' : ` transform="rotate(${figure(-degrees(words.turnRad))} ${x} ${y})"`;
  const weight = words.strong ? ' font-weight="600"' : '';
  const squeezed =
    words.within !== null && textWidth(words.text, words.height) > words.within
      ? ` textLength="${figure(words.within)}" lengthAdjust="spacingAndGlyphs"`
      : '';
  const size = figure(words.height / CAPITAL);
  return `<text x="${x}" y="${y}" font-size="${size}"${anchor}${turn}${weight}${squeezed}>${xmlText(words.text)}</text>`;
};

const element = (stroke: Stroke, place: Place): string => {
  switch (stroke.kind) {
    case 'line':
      return `<path d="M${place(stroke.from).join(' ')}L${place(stroke.to).join(' ')}"/>`;
    case 'polyline':
      return `<path d="${polylinePath(stroke, place)}"/>`;
    case 'circle': {
      const [x, y] = place(stroke.at);
      return `<circle cx="${x}" cy="${y}" r="${figure(stroke.radius)}"/>`;
    }
    case 'arc':
      return `<path d="${arcPath(stroke, place)}"/>`;
    case 'patch':
      return `<path d="${stroke.rings.map((points) => patchRing(points, place)).join('')}" fill-rule="evenodd"/>`;
    case 'text':
      return textElement(stroke, place);
  }
};

const layerGroup = (name: LayerName, strokes: readonly Stroke[], ink: string, place: Place): string => {
  const { penMm, dashMm } = LAYERS[name];
  const dash = dashMm === null ? '' : ` stroke-dasharray="${dashMm.join(' ')}"`;
  const isFilled = ({ kind }: Stroke): boolean => kind === 'text' || kind === 'patch';
  const lines = strokes.filter((stroke) => !isFilled(stroke)).map((stroke) => element(stroke, place));
  const words = strokes.filter(isFilled).map((stroke) => element(stroke, place));
  return [
    `<g data-layer="${name}">`,
    ...(lines.length > 0 ? [`<g stroke-width="${penMm}"${dash}>`, ...lines, '</g>'] : []),
    ...(words.length > 0 ? [`<g fill="${ink}" stroke="none">`, ...words, '</g>'] : []),
    '</g>',
  ].join('\n');
};

/**
 * The drawing as an SVG file: one ink on nothing, millimetres as units, one group a layer, text as text. `ink` is any
 * colour of CSS, black where paper is meant. The same drawing always gives the same bytes.
 */
export const drawingToSvg = (drawing: Drawing, { ink = '#000' }: { readonly ink?: string } = {}): string => {
  const [width, height] = drawing.size;
  const place: Place = ([x, y]) => [figure(x), figure(height - y)];
  const strokes = groupBy(resolved(drawing).shapes, ({ layer }) => layer);
  const colour = xmlText(ink);
  const groups = LAYER_NAMES.flatMap((name) => {
    const group = strokes.get(name);
    return group === undefined ? [] : [layerGroup(name, group, colour, place)];
  });
  const [w, h] = [figure(width), figure(height)];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" role="img">`,
    `<title>${xmlText(drawing.title)}</title>`,
    `<g fill="none" stroke="${colour}" stroke-linecap="round" stroke-linejoin="round" font-family="${FACE}" font-weight="500">`,
    ...groups,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
};
