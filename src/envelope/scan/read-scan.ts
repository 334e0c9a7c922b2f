import type { Result } from '../../base/index.ts';
import { latin } from './byte-text.ts';
import { readGlb } from './read-glb.ts';
import { readObj } from './read-obj.ts';
import { readPly } from './read-ply.ts';
import { cutStl, isBinaryStl, readStl } from './read-stl.ts';
import { fault, type ScanFormat, type ScanMesh } from './scan-mesh.ts';

const READERS: Readonly<Record<ScanFormat, (bytes: Uint8Array) => Result<ScanMesh>>> = {
  stl: readStl,
  ply: readPly,
  obj: readObj,
  glb: readGlb,
};

/** How much of the head tells the formats apart. */
const HEAD = 4096;
/** How much of an unknown file is shown, and what cannot be shown. */
const SHOWN = 12;
const UNSEEN = /[^\P{Cc}\s]/u;

/** What the file is by what it begins with, never by its name; null for none of ours. */
export const scanFormat = (bytes: Uint8Array): ScanFormat | null => {
  const head = latin(bytes, 0, HEAD);
  if (head.startsWith('glTF')) return 'glb';
  if (/^ply\r?\n/.test(head)) return 'ply';
  if (isBinaryStl(bytes)) return 'stl';
  if (/^\s*solid\b/.test(head) && /\bfacet\b/.test(head)) return 'stl';
  return /^\s*(?:#|v\s|vn\s|vt\s|o\s|g\s|mtllib\s|s\s)/m.test(head) && /^v\s/m.test(latin(bytes, 0, 16 * HEAD))
    ? 'obj'
    : null;
};

/** Reads a scan from the bytes of a GLB, PLY, STL or OBJ file, or says plainly why it is no mesh. */
export const readScan = (bytes: Uint8Array): Result<ScanMesh> => {
  if (bytes.length === 0) return fault('not-a-mesh', 'a file with something in it', '0 bytes');
  const format = scanFormat(bytes);
  if (format) return READERS[format](bytes);
  const head = latin(bytes, 0, SHOWN);
  // What is no text would be shown as nothing at all.
  const found = UNSEEN.test(head) ? `${bytes.length} bytes of another kind` : head;
  return cutStl(bytes) ?? fault('not-a-mesh', 'a GLB, PLY, STL or OBJ file', found);
};
