/** Scales that a draughtsman would choose, as the number after "1 : ". */
const SCALES: readonly number[] = [1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 40, 50];

/** CSS pixels are 1/96 inch. */
export const PX_PER_MM_FULL = 96 / 25.4;

/** The largest of the usual scales at which a face fits into the room for it, in pixels a millimetre. */
export const trueScale = (
  face: { readonly width: number; readonly height: number },
  roomPx: { readonly width: number; readonly height: number },
): { readonly pxPerMm: number; readonly oneTo: number } => {
  const fits = (oneTo: number): boolean =>
    (face.width / oneTo) * PX_PER_MM_FULL <= roomPx.width && (face.height / oneTo) * PX_PER_MM_FULL <= roomPx.height;
  const oneTo = SCALES.find(fits) ?? SCALES.at(-1) ?? 1;
  return { pxPerMm: PX_PER_MM_FULL / oneTo, oneTo };
};
