/** A label that wants to stand at a place; sizes in pixels. */
export interface WantedPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Room kept between two labels. */
const APART_PX = 3;

const overlap = (a: WantedPlace, b: WantedPlace): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Moves labels up until none covers another; the lowest keep their places. In the order given. */
export const spreadLabels = (wanted: readonly WantedPlace[]): readonly WantedPlace[] => {
  const order = wanted
    .map((place, index) => ({ place, index }))
    .toSorted((a, b) => b.place.y - a.place.y || a.index - b.index);
  const done: { readonly place: WantedPlace; readonly index: number }[] = [];
  for (const { place, index } of order) {
    let moved = place;
    for (;;) {
      const hit = done.find((other) => overlap(moved, other.place));
      if (!hit) break;
      moved = { ...moved, y: hit.place.y - moved.height - APART_PX };
    }
    done.push({ place: moved, index });
  }
  return done.toSorted((a, b) => a.index - b.index).map(({ place }) => place);
};
