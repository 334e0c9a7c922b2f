import PDFDocument from 'pdfkit';
import { degrees, groupBy, type Vec2 } from '../../base/index.ts';
import { resolved } from '../drawing/dimensions.ts';
import { type Drawing, LAYER_NAMES, LAYERS, type LayerName, type Stroke, type Text } from '../drawing/drawing.ts';
import { textWidth } from '../drawing/text-width.ts';
import { arcCurves, bulgeCurves, type Curve } from './arc-curves.ts';

/** The files of the type face for paper, which only the views can read. */
export interface PaperFaces {
  readonly regular: Uint8Array;
  readonly strong: Uint8Array;
}

const POINTS_PER_MM = 72 / 25.4;
/** Capital height of the paper face over its font size (DejaVu Sans Condensed: 1493 of 2048 units). */
const CAPITAL = 1493 / 2048;
const FULL_TURN = 2 * Math.PI;

/** Files of the same design are the same bytes, so they all carry one moment, which nobody takes for a real one. */
const NO_MOMENT = new Date(946_684_800_000);

/** Gathers the pieces of the file as they are finished. */
class Gathering extends PDFDocument {
  // Not set here: the constructor of the document already hands over the first pieces.
  declare private pieces: Uint8Array[] | undefined;

  override push(piece: Uint8Array | null): boolean {
    this.pieces ??= [];
    if (piece !== null) this.pieces.push(piece);
    return true;
  }

  bytes(): Uint8Array {
    const pieces = this.pieces ?? [];
    const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const piece of pieces) {
      all.set(piece, at);
      at += piece.length;
    }
    return all;
  }
}

/** From mm on the drawing, y up, to points on the page, y down. */
type Place = (at: Vec2) => Vec2;

const UNPRINTABLE = /\p{Cc}/gu;
const HALF_PAIRS = /\p{Cs}/gu;

/** Text in the width that the layout reckoned with: the paper face runs wider than the drawing face and is squeezed. */
const writeText = (doc: Gathering, words: Text, place: Place): void => {
  const shown = words.text.replace(UNPRINTABLE, ' ').replace(HALF_PAIRS, '\ufffd');
  if (shown.trim() === '') return;
  const reckoned = textWidth(words.text, words.height);
  const room = (words.within === null ? reckoned : Math.min(reckoned, words.within)) * POINTS_PER_MM;
  doc.font(words.strong ? 'strong' : 'regular').fontSize((words.height / CAPITAL) * POINTS_PER_MM);
  const natural = doc.widthOfString(shown);
  const width = Math.min(natural, room);
  const [x, y] = place(words.at);
  const start = x - (words.align === 'left' ? 0 : words.align === 'middle' ? width / 2 : width);
  if (words.turnRad !== 0) doc.save().rotate(-degrees(words.turnRad), { origin: [x, y] });
  const horizontalScaling = natural > 0 ? (100 * width) / natural : 100;
  doc.text(shown, start, y, { lineBreak: false, baseline: 'alphabetic', horizontalScaling });
  if (words.turnRad !== 0) doc.restore();
};

const curveTo = (doc: Gathering, curves: readonly Curve[], place: Place): void => {
  for (const [first, second, end] of curves) doc.bezierCurveTo(...place(first), ...place(second), ...place(end));
};

const arc = (doc: Gathering, at: Vec2, radius: number, fromRad: number, spanRad: number, place: Place): void => {
  doc.moveTo(...place([at[0] + radius * Math.cos(fromRad), at[1] + radius * Math.sin(fromRad)]));
  curveTo(doc, arcCurves(at, radius, fromRad, spanRad), place);
};

const ringPath = (doc: Gathering, points: readonly Vec2[], place: Place): void => {
  points.forEach((at, i) => {
    if (i === 0) doc.moveTo(...place(at));
    else doc.lineTo(...place(at));
  });
  doc.closePath();
};

type Polyline = Extract<Stroke, { kind: 'polyline' }>;

const polylinePath = (doc: Gathering, { corners, closed }: Polyline, place: Place): void => {
  const [first] = corners;
  if (!first) return;
  doc.moveTo(...place(first.at));
  corners.forEach((corner, i) => {
    const next = corners[i + 1] ?? (closed ? first : null);
    if (next === null) return;
    if (corner.bulge !== 0) curveTo(doc, bulgeCurves(corner.at, next.at, corner.bulge), place);
    else if (next !== first) doc.lineTo(...place(next.at));
  });
  if (closed) doc.closePath();
};

const writeStroke = (doc: Gathering, stroke: Stroke, place: Place): void => {
  switch (stroke.kind) {
    case 'line':
      doc
        .moveTo(...place(stroke.from))
        .lineTo(...place(stroke.to))
        .stroke();
      return;
    case 'polyline':
      polylinePath(doc, stroke, place);
      doc.stroke();
      return;
    case 'circle':
      arc(doc, stroke.at, stroke.radius, 0, FULL_TURN, place);
      doc.closePath().stroke();
      return;
    case 'arc': {
      const span = (stroke.toRad - stroke.fromRad + 2 * FULL_TURN) % FULL_TURN;
      arc(doc, stroke.at, stroke.radius, stroke.fromRad, span, place);
      doc.stroke();
      return;
    }
    case 'patch':
      for (const points of stroke.rings) ringPath(doc, points, place);
      doc.fill('even-odd');
      return;
    case 'text':
      writeText(doc, stroke, place);
  }
};

const setPen = (doc: Gathering, name: LayerName): void => {
  const { penMm, dashMm } = LAYERS[name];
  doc.lineWidth(penMm * POINTS_PER_MM);
  const [length, space] = dashMm ?? [];
  if (length === undefined || space === undefined) doc.undash();
  else doc.dash(length * POINTS_PER_MM, { space: space * POINTS_PER_MM });
};

const writePage = (doc: Gathering, drawing: Drawing): void => {
  const [width, height] = drawing.size;
  doc.addPage({ size: [width * POINTS_PER_MM, height * POINTS_PER_MM], margin: 0 });
  doc.lineCap('round').lineJoin('round');
  const place: Place = ([x, y]) => [x * POINTS_PER_MM, (height - y) * POINTS_PER_MM];
  const byLayer = groupBy(resolved(drawing).shapes, ({ layer }) => layer);
  for (const name of LAYER_NAMES) {
    const strokes = byLayer.get(name);
    if (strokes === undefined) continue;
    setPen(doc, name);
    for (const stroke of strokes) writeStroke(doc, stroke, place);
  }
};

export interface PdfAbout {
  readonly title: string;
  /** Design and revision, for whoever finds the file alone. */
  readonly subject: string;
}

/** Pages as a file; whoever can read the type face makes one. */
export type PdfWriter = (pages: readonly Drawing[], about: PdfAbout) => Uint8Array;

/**
 * The pages as one PDF file: millimetres of the drawing are millimetres on paper, black on nothing, the face embedded
 * as far as its letters are used, and the print dialog asked not to scale. The same pages give the same bytes.
 * Throws where there is no page.
 */
export const drawingsToPdf = (pages: readonly Drawing[], about: PdfAbout, faces: PaperFaces): Uint8Array => {
  if (pages.length === 0) throw new Error(`a PDF needs a page: ${about.title}`);
  const doc = new Gathering({
    font: null,
    autoFirstPage: false,
    pdfVersion: '1.7',
    info: {
      Title: about.title,
      Subject: about.subject,
      Creator: 'Hatchwright',
      Producer: 'Hatchwright',
      CreationDate: NO_MOMENT,
      ModDate: NO_MOMENT,
    },
  });
  doc._root.data.ViewerPreferences = doc.ref({ PrintScaling: 'None' });
  doc.registerFont('regular', faces.regular).registerFont('strong', faces.strong);
  for (const page of pages) writePage(doc, page);
  doc.end();
  return doc.bytes();
};
