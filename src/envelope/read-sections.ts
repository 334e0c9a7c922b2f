import { bad, good, type Problem, type Result, ROUNDING_MM } from '../base/index.ts';
import type { Survey } from '../design/index.ts';
import { matchSides } from './match-sides.ts';
import type { Section } from './space.ts';
import { readStation, ringOf, type StationSides } from './station-ring.ts';

/** A solid needs a section at each end. */
const FEWEST_STATIONS = 2;

const orderProblems = (stations: Survey['stations']): readonly Problem[] => {
  const problems: Problem[] = [];
  if (stations.length < FEWEST_STATIONS)
    problems.push({
      at: 'survey.stations',
      code: 'too-few-stations',
      expected: `at least ${FEWEST_STATIONS} stations`,
      got: String(stations.length),
    });
  stations.forEach((station, i) => {
    const before = stations[i - 1];
    if (before && station.xMm - before.xMm <= ROUNDING_MM)
      problems.push({
        at: `survey.stations[${i}].xMm`,
        code: 'out-of-order',
        expected: `more than ${before.xMm} mm, the station before`,
        got: `${station.xMm} mm`,
      });
  });
  return problems;
};

/**
 * The sections of a survey, rear to front, all with the same number of corners and so that corner i of one belongs to
 * corner i of the next. Every fault of every station is given with its place.
 */
export const readSections = (survey: Survey): Result<readonly Section[]> => {
  const problems: Problem[] = [...orderProblems(survey.stations)];
  const sides: StationSides[] = [];
  survey.stations.forEach((station, i) => {
    const read = readStation(station, `survey.stations[${i}]`);
    if (read.ok) sides.push(read.value);
    else problems.push(...read.error);
  });
  if (problems.length > 0) return bad(problems);
  const matched = matchSides(sides);
  return good(
    survey.stations.flatMap((station, i) => {
      const own = matched[i];
      return own ? [{ station: station.id, x: station.xMm, ring: ringOf(own) }] : [];
    }),
  );
};
