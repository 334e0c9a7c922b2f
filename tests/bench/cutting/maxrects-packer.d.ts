// What the bench uses of the packer.
declare module 'maxrects-packer' {
  export interface Rect {
    width: number;
    height: number;
    x: number;
    y: number;
    /** Lies turned: its sides then stand as they were given, in this version. */
    rot?: boolean;
  }
  export class MaxRectsPacker {
    constructor(
      width: number,
      height: number,
      padding: number,
      options: { smart: boolean; pot: boolean; square: boolean; allowRotation: boolean; border: number; logic: number },
    );
    readonly bins: readonly { readonly rects: readonly Rect[] }[];
    addArray(rects: Rect[]): void;
  }
}
