import type { Box } from '../../base/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { BACKWARD, RIGHT, TO_FACE, UP, UPWARD, withSpan } from '../axes.ts';
import type { Board } from '../board.ts';
import type { TrayBoards, TrayJob } from './tray-boards.ts';

/** A second deck between the sides of a tray, with a lip of its own in front and behind. */
export interface SecondLevel {
  readonly deck: Board;
  readonly boards: readonly Board[];
  /** Clear room between the decks, and above the second one. */
  readonly below: Box;
  readonly above: Box;
}

/** The second deck of a tray: housed in its sides, as deep as the tray, its upper face `upMm` above the first. */
export const secondLevel = (
  { second }: Pick<FittingByKind['slide-out'], 'second'>,
  tray: TrayBoards,
  job: TrayJob,
): SecondLevel | null => {
  if (!second) return null;
  const { deckSheet, lipSheet, lipHeight } = job;
  const top = tray.inside.min[UP] + second.upMm;
  const deck: Board = {
    ...tray.deck,
    id: `${job.opening}/second-deck`,
    role: 'second-deck',
    name: `${job.name} second deck`,
    box: withSpan(tray.deck.box, UP, top - deckSheet.thicknessMm, top),
    along: BACKWARD,
    face: UPWARD,
    seat: 'dado',
  };
  const [x0, x1] = [tray.inside.min[0], tray.inside.max[0]];
  const lip = (role: string, from: number, to: number): Board => ({
    ...tray.deck,
    id: `${job.opening}/${role}`,
    role,
    name: `${job.name} ${role.replaceAll('-', ' ')}`,
    material: lipSheet,
    box: { min: [x0, from, top], max: [x1, to, top + lipHeight] },
    along: RIGHT,
    face: TO_FACE,
  });
  const thick = lipHeight > 0 ? lipSheet.thicknessMm : 0;
  const { min, max } = job.box;
  const ends =
    lipHeight > 0
      ? [lip('second-lip-front', min[1], min[1] + thick), lip('second-lip-back', max[1] - thick, max[1])]
      : [];
  return {
    deck,
    boards: [deck, ...ends],
    below: withSpan(tray.inside, UP, tray.inside.min[UP], top - deckSheet.thicknessMm),
    above: withSpan(tray.inside, UP, top, tray.inside.max[UP]),
  };
};
