export interface Welded {
  readonly positions: Float64Array;
  /** The point of each corner. */
  readonly corners: Uint32Array;
}

/** Two large odd numbers spread the bits of a coordinate over the table (Fibonacci hashing). */
const SPREAD = [0x9e3779b1, 0x85ebca6b, 0xc2b2ae35] as const;

/**
 * Makes one point of corners whose three single-precision coordinates are the same bits, as a file without shared
 * points writes them. `corners` holds x, y, z one after another.
 */
export const weldCorners = (corners: Float32Array): Welded => {
  const count = corners.length / 3;
  // Adding zero turns −0 into 0, which is the same place.
  for (let i = 0; i < corners.length; i++) corners[i] = (corners[i] ?? 0) + 0;
  const bits = new Int32Array(corners.buffer, corners.byteOffset, corners.length);
  let size = 1;
  while (size < 2 * count) size *= 2;
  const table = new Int32Array(size).fill(-1);
  const firstCorner = new Uint32Array(count);
  const pointOf = new Uint32Array(count);
  let points = 0;
  for (let corner = 0; corner < count; corner++) {
    const x = bits[3 * corner] ?? 0;
    const y = bits[3 * corner + 1] ?? 0;
    const z = bits[3 * corner + 2] ?? 0;
    let hash = Math.imul(x, SPREAD[0]) ^ Math.imul(y, SPREAD[1]) ^ Math.imul(z, SPREAD[2]);
    hash ^= hash >>> 15;
    let slot = hash & (size - 1);
    for (;;) {
      const known = table[slot] ?? -1;
      if (known < 0) {
        table[slot] = points;
        firstCorner[points] = corner;
        pointOf[corner] = points++;
        break;
      }
      const first = 3 * (firstCorner[known] ?? 0);
      if (bits[first] === x && bits[first + 1] === y && bits[first + 2] === z) {
        pointOf[corner] = known;
        break;
      }
      slot = (slot + 1) & (size - 1);
    }
  }
  const positions = new Float64Array(3 * points);
  for (let point = 0; point < points; point++)
    for (let axis = 0; axis < 3; axis++)
      positions[3 * point + axis] = corners[3 * (firstCorner[point] ?? 0) + axis] ?? 0;
  return { positions, corners: pointOf };
};
