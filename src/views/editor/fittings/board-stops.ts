/** More stops than this the design refuses. */
const MOST_STOPS = 12;

/** Angles typed with commas or spaces between them, rising and each once; null where one is no angle from 1 to 180. */
export const readStops = (text: string): readonly number[] | null => {
  const words = text.split(/[\s,;°]+/).filter((word) => word !== '');
  const stops = [...new Set(words.map(Number))].sort((a, b) => a - b);
  const good = stops.length > 0 && stops.length <= MOST_STOPS && stops.every((deg) => deg >= 1 && deg <= 180);
  return good ? stops : null;
};
