import { formatLengthUnit, type LengthUnits } from '../../../base/index.ts';
import { type Design, findOpening } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import { nameOfPart } from '../../../says/index.ts';
import { openCabinetFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';

type Room = FitOut['openings'][number];

const sizeWords = ([across, deep, up]: Room['size'], units: LengthUnits): string =>
  [across, up, deep].map((mm) => formatLengthUnit(mm, units)).join(' × ');

/** What an opening holds, as it is written in the file: the kind of its fitting, how it is divided, or that it is empty. */
export const heldBy = (design: Design, id: Room['id']): string => {
  const content = findOpening(design, id)?.opening.content ?? { kind: 'empty' };
  if (content.kind === 'fitted') return content.fitting.kind;
  return content.kind === 'divided' ? `${content.parts.length} ${content.along}` : 'empty';
};

/** `openings DESIGN`: every opening of the cabinet with its id, its inside size and what is in it. */
export const openings = (path: string): Outcome => {
  const design = readDesignFile(path);
  const fitOut = openCabinetFlow().fitOut(design);
  const names = nameOfPart(design, fitOut);
  const rooms = fitOut.openings.map((room) => ({
    id: room.id,
    name: names(room.id),
    carcass: room.carcass,
    inside: room.parent,
    holds: heldBy(design, room.id),
    size: { width: room.size[0], height: room.size[2], depth: room.size[1] },
    least: { width: room.least[0], height: room.least[2], depth: room.least[1] },
  }));
  return {
    lines: [
      `${design.title}: ${rooms.length} openings, each width × height × depth inside`,
      ...fitOut.openings.flatMap((room, i) => {
        const first = room.depth === 0 ? ['', names(room.carcass)] : [];
        const { name, holds } = rooms[i] ?? { name: '', holds: '' };
        return [
          ...first,
          `${'  '.repeat(room.depth + 1)}${room.id}  ${name}: ${holds}, ${sizeWords(room.size, design.units)}`,
        ];
      }),
    ],
    json: { openings: rooms },
    exitCode: 0,
  };
};
