import { spawnSync } from 'node:child_process';
import DxfParser from 'dxf-parser';
import { NEEDS, provide } from '../../needs.mjs';

/** What a reader finds, in the unit of the file: area of every closed outline, holes, extents, unit. */
export interface Found {
  /** $INSUNITS of the header: 4 millimetres, 1 inches. */
  readonly unit: number;
  readonly layers: readonly string[];
  readonly outlines: readonly {
    readonly layer: string;
    readonly area: number;
    readonly extent: readonly number[];
    /** Corners; where a corner is rounded, the ends of its arc. */
    readonly points: readonly (readonly number[])[];
  }[];
  readonly circles: readonly { readonly layer: string; readonly at: readonly number[]; readonly radius: number }[];
  /** Straight lines, and polylines that are open, by their points. */
  readonly lines: readonly { readonly layer: string; readonly points: readonly (readonly number[])[] }[];
  readonly others: number;
}

interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
}

/** Shoelace, and for each arc the segment between it and its chord. */
const areaOf = (vertices: readonly Vertex[]): number =>
  vertices.reduce((sum, a, i) => {
    const b = vertices[(i + 1) % vertices.length] ?? a;
    const bulge = a.bulge ?? 0;
    const angle = 4 * Math.atan(bulge);
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const radius = bulge === 0 ? 0 : (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
    return sum + (a.x * b.y - b.x * a.y) / 2 + (radius * radius * (angle - Math.sin(angle))) / 2;
  }, 0);

/** The first reader: dxf-parser. */
export const byParser = (text: string): Found => {
  const read = new DxfParser().parseSync(text);
  if (!read) throw new Error('dxf-parser reads nothing');
  // Its types do not tell its entities apart by their kind.
  const entities = read.entities as unknown as readonly {
    type: string;
    layer: string;
    shape?: boolean;
    vertices?: readonly Vertex[];
    center?: Vertex;
    radius?: number;
  }[];
  const outlines = entities.filter(({ type, shape }) => type === 'LWPOLYLINE' && shape === true);
  const circles = entities.filter(({ type }) => type === 'CIRCLE');
  const lines = entities.filter(({ type, shape }) => type === 'LINE' || (type === 'LWPOLYLINE' && shape !== true));
  return {
    unit: Number(read.header.$INSUNITS),
    layers: Object.keys(read.tables.layer.layers)
      .filter((name) => name !== '0')
      .sort(),
    outlines: outlines.map(({ layer, vertices = [] }) => {
      const [xs, ys] = [vertices.map(({ x }) => x), vertices.map(({ y }) => y)];
      return {
        layer,
        area: areaOf(vertices),
        points: vertices.map(({ x, y }) => [x, y]),
        extent: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
      };
    }),
    circles: circles.map(({ layer, center, radius }) => ({
      layer,
      at: [center?.x ?? Number.NaN, center?.y ?? Number.NaN],
      radius: radius ?? Number.NaN,
    })),
    lines: lines.map(({ layer, vertices = [] }) => ({ layer, points: vertices.map(({ x, y }) => [x, y]) })),
    others: entities.length - outlines.length - circles.length - lines.length,
  };
};

const SCRIPT = `
import io, json, math, sys
import ezdxf
def area(p):
    total = 0.0
    n = len(p)
    for i in range(n):
        x, y, bulge = p[i]; u, v, _ = p[(i + 1) % n]
        total += (x * v - u * y) / 2
        if bulge:
            angle = 4 * math.atan(bulge)
            r = math.hypot(u - x, v - y) / (2 * math.sin(abs(angle) / 2))
            total += r * r * (angle - math.sin(angle)) / 2
    return total
answers = []
for text in json.load(sys.stdin):
    doc = ezdxf.read(io.StringIO(text))
    if doc.audit().has_errors: raise SystemExit('the audit finds errors')
    outlines, circles, lines, others = [], [], [], 0
    for e in doc.modelspace():
        if e.dxftype() == 'LWPOLYLINE' and e.closed:
            p = [tuple(q) for q in e.get_points('xyb')]
            xs = [q[0] for q in p]; ys = [q[1] for q in p]
            outlines.append(dict(layer=e.dxf.layer, area=area(p), points=[[q[0], q[1]] for q in p], extent=[min(xs), min(ys), max(xs), max(ys)]))
        elif e.dxftype() == 'CIRCLE':
            circles.append(dict(layer=e.dxf.layer, at=[e.dxf.center.x, e.dxf.center.y], radius=e.dxf.radius))
        elif e.dxftype() == 'LINE':
            lines.append(dict(layer=e.dxf.layer, points=[[e.dxf.start.x, e.dxf.start.y], [e.dxf.end.x, e.dxf.end.y]]))
        elif e.dxftype() == 'LWPOLYLINE':
            lines.append(dict(layer=e.dxf.layer, points=[[q[0], q[1]] for q in e.get_points('xy')]))
        else: others += 1
    layers = sorted(l.dxf.name for l in doc.layers if l.dxf.name not in ('0', 'Defpoints'))
    answers.append(dict(unit=doc.header['$INSUNITS'], layers=layers, outlines=outlines, circles=circles, lines=lines, others=others))
json.dump(answers, sys.stdout)
`;

/** The second reader: ezdxf, all files in one run. */
export const byEzdxf = (texts: readonly string[]): readonly Found[] => {
  const python = provide(NEEDS.ezdxf);
  if (python === null) throw new Error('the second reader of DXF is not here');
  const { status, stdout, stderr } = spawnSync(python, ['-c', SCRIPT], {
    input: JSON.stringify(texts),
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  if (status !== 0) throw new Error(`ezdxf: ${stderr}`);
  return JSON.parse(stdout) as readonly Found[];
};
