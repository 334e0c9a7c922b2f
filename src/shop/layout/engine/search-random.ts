/** A repeatable source of numbers, kept as an object so that hot loops call a method and not a closure. */
export class SearchRandom {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  /** In [0, 1). Mulberry32 (public domain), as in base/random.ts. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 to below `count`. */
  below(count: number): number {
    return Math.floor(this.next() * count);
  }
}
