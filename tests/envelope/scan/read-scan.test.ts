import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../src/base/index.ts';
import { checkScan, guessScanUnit, readScan, type ScanMesh, scaledScan } from '../../../src/envelope/index.ts';
import { readNumber } from '../../../src/envelope/scan/byte-text.ts';
import { asGlb, asObj, asPly, asPlyText, asStl, asStlText, boxMesh, type Plain } from './meshes.ts';

const box = boxMesh([0, -600, 0], [1500, 600, 900], 3);

const meshOf = (bytes: Uint8Array): ScanMesh => {
  const read = readScan(bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const codeOf = (bytes: Uint8Array): string => {
  const read = readScan(bytes);
  return read.ok ? 'read' : (read.error[0]?.code ?? '');
};
const text = (words: string): Uint8Array => new TextEncoder().encode(words);

describe('readScan', () => {
  it.each([
    ['STL text', asStlText],
    ['STL binary', asStl],
    ['OBJ', asObj],
    ['PLY text', asPlyText],
    ['PLY little-endian', (mesh: Plain) => asPly(mesh, true)],
    ['PLY big-endian', (mesh: Plain) => asPly(mesh, false)],
  ])('%s: the same closed box', (_, write) => {
    const check = checkScan(meshOf(write(box)));
    // 6 faces of 3 × 3 squares are 108 triangles; Euler: points = 2 + edges − faces = 2 + 162 − 108 = 56.
    expect(check).toMatchObject({
      triangles: 108,
      points: 56,
      closed: true,
      insideOut: false,
      size: [1500, 1200, 900],
    });
  });

  it('GLB: placements of nodes are applied', () => {
    const mesh = meshOf(asGlb(box));
    expect(checkScan(mesh)).toMatchObject({ triangles: 108, closed: true, size: [3000, 2400, 1800] });
    // The corner (0, −600, 0) doubled and lifted by ten along its y: −1200 + 10.
    expect(mesh.positions.filter((_, i) => i % 3 === 1).reduce((least, y) => Math.min(least, y), Infinity)).toBe(-1190);
  });

  it('says of a binary file that breaks off how long it should be, and never shows what cannot be read', () => {
    const stl = new Uint8Array(84 + 50 * 20);
    new DataView(stl.buffer).setUint32(80, 91_904, true);
    // 84 + 50 · 91,904 = 4,595,284; 84 + 50 · 20 = 1084.
    const cut = readScan(stl);
    expect(cut.ok ? [] : cut.error).toMatchObject([
      { code: 'cut-short', expected: '4595284 bytes for 91904 triangles', got: '1084 bytes' },
    ]);
    const other = readScan(Uint8Array.of(0xff, 0xd8, 0, 1, 2, 3));
    expect(other.ok ? [] : other.error).toMatchObject([{ code: 'not-a-mesh', got: '6 bytes of another kind' }]);
  });

  it('says plainly what is no mesh', () => {
    expect(codeOf(new Uint8Array())).toBe('not-a-mesh');
    expect(codeOf(text('width,height\n1200,900\n'))).toBe('not-a-mesh');
    expect(codeOf(text('%PDF-1.7 something'))).toBe('not-a-mesh');
    expect(codeOf(text('v 0 0 0\nv 1 0 0\nv 0 1 0\n'))).toBe('no-triangles');
    expect(codeOf(text('v 0 0 0\nv 1 0 0\nf 1 2 3\n'))).toBe('bad-index');
    expect(codeOf(text('v 0 0 0\nv 1 0 here\nv 0 1 0\nf 1 2 3\n'))).toBe('not-a-number');
    expect(codeOf(text('v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2\n'))).toBe('bad-face');
    expect(codeOf(asPly(box, true).subarray(0, 1000))).toMatch(/cut-short|not-a-number/);
    expect(codeOf(asGlb(box).subarray(0, 400))).toBe('cut-short');
    expect(codeOf(asGlb(box, { extensionsRequired: ['KHR_draco_mesh_compression'] }))).toBe('compressed');
    expect(codeOf(text('ply\nformat ascii 1.0\nelement vertex -3\nend_header\n'))).toBe('not-a-mesh');
  });

  it('refuses more than two million triangles before reading them', () => {
    const bytes = text('ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nelement face 2000001\nend_header\n');
    expect(codeOf(bytes)).toBe('too-many');
  });

  it('no file of chance crashes it', () => {
    const random = seededRandom(11);
    const sound = [asStl(box), asObj(box), asPly(box, true), asGlb(box), asPlyText(box), asStlText(box)];
    for (let i = 0; i < 300; i++) {
      const bytes = Uint8Array.from(sound[i % sound.length] ?? []);
      for (let k = 0; k < 8; k++)
        bytes[Math.floor(random() * Math.min(600, bytes.length))] = Math.floor(random() * 256);
      const read = readScan(bytes.subarray(0, Math.floor(bytes.length * (0.3 + 0.7 * random()))));
      if (!read.ok) expect(read.error[0]?.code).toMatch(/^[a-z-]+$/);
    }
  });
});

describe('readNumber', () => {
  it('reads as the language does, to the last bit', () => {
    const random = seededRandom(4);
    for (let i = 0; i < 3000; i++) {
      const value = (random() - 0.5) * 10 ** Math.floor(random() * 12 - 5);
      const written = [String(value), value.toFixed(4), value.toExponential(6), value.toPrecision(7)][i % 4] ?? '';
      expect(readNumber({ bytes: text(`${written} `), at: 0 })).toBe(Number(written));
    }
    expect(readNumber({ bytes: text('-'), at: 0 })).toBeNaN();
    expect(readNumber({ bytes: text('1.2.3'), at: 0 })).toBeNaN();
  });
});

describe('checkScan', () => {
  it('counts holes, flipped and flat triangles, and knows inside out', () => {
    const open = { ...box, triangles: box.triangles.slice(1) };
    // One triangle less leaves its three edges open.
    expect(checkScan(meshOf(asObj(open)))).toMatchObject({ openEdges: 3, closed: false });
    const [a = 0, b = 0, c = 0] = box.triangles[0] ?? [];
    const flipped = { ...box, triangles: [[a, c, b] as const, ...box.triangles.slice(1)] };
    expect(checkScan(meshOf(asObj(flipped)))).toMatchObject({ flippedEdges: 3, openEdges: 0, closed: false });
    const flat = { ...box, triangles: [...box.triangles, [a, a, b] as const] };
    expect(checkScan(meshOf(asObj(flat))).flatTriangles).toBe(1);
    const turned = { ...box, triangles: box.triangles.map(([p, q, r]) => [p, r, q] as const) };
    expect(checkScan(meshOf(asObj(turned)))).toMatchObject({ closed: true, insideOut: true });
  });

  it('guesses the unit from the size of the cargo space', () => {
    const longest = 1500;
    for (const [unit, mm] of [
      ['mm', 1],
      ['cm', 10],
      ['in', 25.4],
      ['ft', 304.8],
      ['m', 1000],
    ] as const) {
      const own = scaledScan(meshOf(asObj(box)), 1.15 / mm);
      expect(guessScanUnit(checkScan(own), longest)).toBe(unit);
    }
  });
});
