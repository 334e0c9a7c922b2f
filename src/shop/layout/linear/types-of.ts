import type { Piece, Problem } from '../engine/problem.ts';
import type { Frame, Lie } from './pricing.ts';
import { onRaster, type Raster } from './raster.ts';

/** Interchangeable pieces: one of them, and the numbers of all. */
export interface PieceType {
  readonly piece: Piece;
  readonly numbers: readonly number[];
}

export const typesOf = ({ pieces }: Problem): readonly PieceType[] => {
  const found = new Map<number, { piece: Piece; numbers: number[] }>();
  pieces.forEach((piece, number) => {
    const known = found.get(piece.type);
    if (known === undefined) found.set(piece.type, { piece, numbers: [number] });
    else known.numbers.push(number);
  });
  return [...found.values()];
};

/** Every kind of sheet in both directions of its first cuts, with the ways in which pieces lie in its strips. */
export const framesOf = ({ sheets, limits }: Problem, types: readonly PieceType[], raster: Raster): readonly Frame[] =>
  sheets.flatMap((sheet, kind) =>
    (['rip', 'crosscut'] as const)
      .filter((first) => limits === null || limits.first === null || limits.first === first)
      .map((first): Frame => {
        const rips = first === 'rip';
        const along = onRaster(rips ? sheet.length : sheet.width, raster);
        const across = onRaster(rips ? sheet.width : sheet.length, raster);
        const lies = types.flatMap(({ piece }, type): readonly Lie[] => {
          const length = onRaster(piece.length, raster);
          const width = onRaster(piece.width, raster);
          const lie = (turned: boolean): Lie =>
            turned === rips
              ? { type, turned, along: width, across: length }
              : { type, turned, along: length, across: width };
          return [...(piece.straight ? [lie(false)] : []), ...(piece.turned ? [lie(true)] : [])];
        });
        const fitting = lies.filter(
          (lie) => lie.along <= along && lie.across <= across && lie.along > 0 && lie.across > 0,
        );
        return { kind, first, along, across, lies: fitting.sort((a, b) => a.across - b.across || a.along - b.along) };
      }),
  );
