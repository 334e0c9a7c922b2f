import type { ReviewGear } from '../review-copy/review-data.ts';

/** Names of a hundred words have no room on a card that hangs in a vehicle. */
const MOST_SIGNS = 120;
const MOST_OF_A_WAY = 480;

const cutTo = (words: string, most: number): string => {
  const signs = Array.from(words);
  return signs.length > most ? `${signs.slice(0, most - 1).join('')}…` : words;
};

export const shortName = (name: string): string => cutTo(name, MOST_SIGNS);

/** A sentence with such names in it. */
export const shortWay = (way: string): string => cutTo(way, MOST_OF_A_WAY);

/** A star before what is first due: it is told apart in black and white. */
export const gearWords = ({ name, firstDue }: Pick<ReviewGear, 'name' | 'firstDue'>): string =>
  `${firstDue ? '★ ' : ''}${shortName(name)}`;

export const STAR_WORDS = '★ first due';
