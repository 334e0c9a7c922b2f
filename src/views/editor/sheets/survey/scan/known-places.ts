import type { Vec3 } from '../../../../../base/index.ts';
import type { SurveyRead } from '../../../../../envelope/index.ts';
import { sayMark } from '../../../../../says/index.ts';

/** A place of the vehicle whose coordinates are known, by which a scan can be set. */
export interface KnownPlace {
  readonly key: string;
  readonly label: string;
  readonly at: Vec3;
}

/** Marks that readings hold, then the floor and roof corners of the sections. */
export const knownPlaces = ({ survey, points, stations }: SurveyRead): readonly KnownPlace[] => [
  ...survey.marks.flatMap(({ id }): readonly KnownPlace[] => {
    const at = points.get(id);
    return at ? [{ key: id, label: sayMark(survey, id), at }] : [];
  }),
  ...stations.flatMap((station, i) =>
    (['left', 'right'] as const).flatMap((side) =>
      (['floor', 'roof'] as const).flatMap((level): readonly KnownPlace[] => {
        const point = station[side].at(level === 'floor' ? 0 : -1);
        return point
          ? [
              {
                key: `${station.id} ${side} ${level}`,
                label: `station ${i + 1}, ${level} ${side}`,
                at: [station.xMm, point.at[0], point.at[1]],
              },
            ]
          : [];
      }),
    ),
  ),
];
