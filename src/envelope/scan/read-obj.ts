import type { Result } from '../../base/index.ts';
import { nextLine, readNumber, readWord, type TextReader, toNext } from './byte-text.ts';
import { type GrowList, growList } from './grow-list.ts';
import { fault, MOST_TRIANGLES, type ScanMesh, soundMesh, tooMany } from './scan-mesh.ts';

/** Corners of a face, `7`, `7/3`, `7/3/2` or `7//2`, numbered from 1, or backwards from the last point. */
const readFace = (reader: TextReader, points: number, into: GrowList): boolean => {
  let hub = -1;
  let before = -1;
  let corners = 0;
  for (let word = readWord(reader, true); word !== ''; word = readWord(reader, true)) {
    const number = Number.parseInt(word, 10);
    if (!Number.isInteger(number) || number === 0) return false;
    const index = number > 0 ? number - 1 : points + number;
    if (index < 0) return false;
    if (corners === 0) hub = index;
    else if (corners > 1) {
      into.push(hub);
      into.push(before);
      into.push(index);
    }
    before = index;
    corners++;
  }
  return corners > 2;
};

/** Reads points and faces of an OBJ file; faces with more corners are split into fans, everything else is passed by. */
export const readObj = (bytes: Uint8Array): Result<ScanMesh> => {
  const reader: TextReader = { bytes, at: 0 };
  const positions = growList();
  const triangles = growList();
  while (toNext(reader, false)) {
    const word = readWord(reader);
    if (word === 'v') for (let axis = 0; axis < 3; axis++) positions.push(readNumber(reader, true));
    else if (word === 'f' && !readFace(reader, positions.length() / 3, triangles))
      return fault('bad-face', 'three or more point numbers', `face after ${triangles.length() / 3} triangles`);
    if (triangles.length() > 3 * MOST_TRIANGLES) return tooMany(triangles.length() / 3);
    nextLine(reader);
  }
  return soundMesh('obj', positions.floats(), triangles.indices());
};
