import { type Opening, openingsFrom } from '../../../../../design/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';

type Room = FitOut['rooms'][number];

/** Rooms that lie over each other in one fitting: the deck of a tray and its second level. */
export interface Storey {
  readonly name: string;
  readonly rooms: readonly Room[];
}

/** The rooms of an opening by the deck that they stand on, from the bottom up; one storey for everything else. */
export const storeysOf = ({ content }: Pick<Opening, 'content'>, rooms: readonly Room[]): readonly Storey[] => {
  const fitting = content.kind === 'fitted' ? content.fitting : null;
  if (!fitting || !('second' in fitting) || !fitting.second) return [{ name: 'all', rooms }];
  const above = new Set<string>(openingsFrom(fitting.second.inside).map(({ id }) => id));
  return [
    { name: 'deck', rooms: rooms.filter(({ opening }) => !above.has(opening)) },
    { name: 'second level', rooms: rooms.filter(({ opening }) => above.has(opening)) },
  ];
};
