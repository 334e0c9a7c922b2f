/** Adds a shelf in the middle of the tallest room between the floor, the shelves and the top; whole millimetres. */
export const withShelf = (shelvesUpMm: readonly number[], roomUpMm: number): readonly number[] => {
  const edges = [0, ...shelvesUpMm.toSorted((a, b) => a - b), roomUpMm];
  let [low, high] = [0, 0];
  edges.slice(1).forEach((edge, i) => {
    const below = edges[i] ?? 0;
    if (edge - below > high - low) [low, high] = [below, edge];
  });
  return [...shelvesUpMm, Math.round((low + high) / 2)].toSorted((a, b) => a - b);
};
