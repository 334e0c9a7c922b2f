// @vitest-environment happy-dom
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Shape } from '../../../src/shop/drawing/drawing.ts';
import { circle, line, rectangle, roundedRectangle, text } from '../../../src/shop/drawing/shapes.ts';
import { drawingToSvg, xmlText } from '../../../src/shop/drawing/svg.ts';

const drawing = (shapes: readonly Shape[], title = 'A1'): Drawing => ({ title, size: [297, 210], scale: 1, shapes });

describe('SVG', () => {
  it('is in millimetres, y down, one ink', () => {
    const svg = drawingToSvg(drawing([line('outline', [10, 20], [30, 20])]));
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
    // 210 − 20 = 190 from the top.
    expect(svg).toContain('d="M10 190L30 190"');
    expect(svg).toContain('stroke="#000"');
    expect(svg).not.toMatch(/fill="(?!none|#000)/);
  });

  it('draws arcs with the radius that follows from the bulge, turning left', () => {
    const svg = drawingToSvg(drawing([roundedRectangle('inner-cut', [0, 0], [20, 10], 3)]));
    expect(svg.match(/A3 3 0 0 0 /g)).toHaveLength(4);
  });

  it('draws a closed ring once round', () => {
    const svg = drawingToSvg(drawing([rectangle('outline', [0, 0], [20, 10])]));
    expect(svg).toContain('d="M0 210L20 210L20 200L0 200Z"');
  });

  it('groups by layer in a set order, whatever the order of the shapes', () => {
    const shapes = [text([1, 1], 'x'), circle('drill', [5, 5], 2), rectangle('outline', [0, 0], [9, 9])];
    const layers = (list: readonly Shape[]): readonly string[] =>
      [...drawingToSvg(drawing(list)).matchAll(/data-layer="([^"]*)"/g)].map(([, name]) => name ?? '');
    expect(layers(shapes)).toEqual(['outline', 'drill', 'text']);
    expect(layers([...shapes].reverse())).toEqual(['outline', 'drill', 'text']);
  });

  it('gives the same bytes again', () => {
    const shapes = [rectangle('outline', [0.1 + 0.2, 0], [9, 9]), text([1, 1], 'mark')];
    expect(drawingToSvg(drawing(shapes))).toBe(drawingToSvg(drawing([...shapes])));
  });

  it('takes another ink, escaped too', () => {
    expect(drawingToSvg(drawing([]), { ink: 'currentColor' })).toContain('stroke="currentColor"');
    expect(drawingToSvg(drawing([]), { ink: '"><script>' })).not.toContain('<script>');
  });

  it('shows any name as itself and runs nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (name) => {
        const svg = drawingToSvg(drawing([text([1, 1], name)], name));
        const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
        expect(parsed.getElementsByTagName('text')).toHaveLength(1);
        expect(parsed.getElementsByTagName('script')).toHaveLength(0);
        expect(xmlText(name)).not.toMatch(/[<>"']/);
      }),
      { seed: 577_215, numRuns: 200 },
    );
    expect(xmlText('a\u0000b\ud800c\ufffe<&>"\'')).toBe('a\ufffdb\ufffdc\ufffd&lt;&amp;&gt;&quot;&#39;');
  });
});
