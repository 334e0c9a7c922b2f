import { degrees, type Problem, type Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import { type Design, readsAngle } from '../design/index.ts';
import { networkProblems } from './network-problems.ts';
import { readSurvey, type SurveyRead, type SurveyStation } from './read-survey.ts';
import type { CargoSpace } from './space.ts';
import { type SurveyFact, surveyFacts } from './survey-facts.ts';
import { type VehicleFact, vehicleFacts } from './vehicle-facts.ts';

/** One reading of the report. Angles are in degrees, in the same fields; `unit` says which. */
export interface ReportedReading {
  readonly id: string;
  readonly readMm: number;
  readonly adjustedMm: number;
  readonly residualMm: number;
  readonly redundancy: number;
  readonly w: number;
  /** `named`: likely wrong; `doubt`: one of several of which one is wrong; false: neither. */
  readonly suspect: 'named' | 'doubt' | false;
  readonly unit: 'mm' | 'deg';
}

export interface ReportedFloor {
  /** From the rearmost section to the foremost. */
  readonly depthMm: number;
  /** Width between the floor edges of each section, rear to front. */
  readonly widthsMm: readonly number[];
  /** Floor edges, [x, y, z], right then left, rear to front. */
  readonly points: readonly Vec3[];
  /** Rise of the middle of the floor from the rearmost section to the foremost, degrees; positive forward and up. */
  readonly slopeDeg: number;
  /** Rise to the left across the floor, the greatest of the sections, degrees. */
  readonly rollDeg: number;
}

export interface SurveyReport {
  readonly readings: readonly ReportedReading[];
  readonly redundancy: number;
  readonly consistent: boolean;
  readonly floor: ReportedFloor | null;
  readonly freeVolumeM3: number | null;
  readonly marks: readonly { readonly id: string; readonly at: Vec3; readonly sigmaMm: Vec3 }[];
  readonly facts: readonly SurveyFact[];
  readonly vehicle: readonly VehicleFact[];
  readonly problems: readonly Problem[];
}

const MM3_A_M3 = 1_000_000_000;

const floorOf = (stations: readonly SurveyStation[]): ReportedFloor | null => {
  const edges = stations.flatMap(({ xMm, left, right }) => {
    const [l, r] = [left[0]?.at, right[0]?.at];
    return l && r ? [{ xMm, l, r }] : [];
  });
  const [rear, front] = [edges[0], edges.at(-1)];
  if (!rear || !front || front.xMm <= rear.xMm) return null;
  const middle = ({ l, r }: typeof rear): number => (l[1] + r[1]) / 2;
  const rolls = edges.map(({ l, r }) => degrees(Math.atan2(l[1] - r[1], l[0] - r[0])));
  return {
    depthMm: front.xMm - rear.xMm,
    widthsMm: edges.map(({ l, r }) => l[0] - r[0]),
    points: edges.flatMap(({ xMm, l, r }): readonly Vec3[] => [
      [xMm, r[0], r[1]],
      [xMm, l[0], l[1]],
    ]),
    slopeDeg: degrees(Math.atan2(middle(front) - middle(rear), front.xMm - rear.xMm)),
    rollDeg: rolls.reduce((most, roll) => (Math.abs(roll) > Math.abs(most) ? roll : most), 0),
  };
};

const readingsOf = (design: Design, { verdict }: SurveyRead): readonly ReportedReading[] => {
  const kinds = new Map<string, boolean>(design.survey.readings.map(({ id, kind }) => [id, readsAngle(kind)]));
  const named = new Set(verdict?.suspects.map(({ id }) => id));
  const doubt = new Set(verdict?.undecided);
  return (verdict?.adjustment.readings ?? []).map(({ id, read, adjusted, residual, redundancy, w }) => {
    const angle = kinds.get(id) ?? false;
    const shown = (value: number): number => (angle ? degrees(value) : value);
    return {
      id,
      readMm: shown(read),
      adjustedMm: shown(adjusted),
      residualMm: shown(residual),
      redundancy,
      w,
      suspect: named.has(id) ? 'named' : doubt.has(id) ? 'doubt' : false,
      unit: angle ? 'deg' : 'mm',
    };
  });
};

/**
 * What the survey comes to, as plain data: readings with their residuals, the floor, the free volume, what is in doubt
 * and what holds a release. `space` is the cargo space of the same survey, or null where it does not make one.
 */
export const surveyReport = (design: Design, rules: HouseRules, space: CargoSpace | null): SurveyReport => {
  const { survey } = design;
  const read = readSurvey(survey, rules);
  const { verdict } = read;
  return {
    readings: readingsOf(design, read),
    redundancy: verdict?.adjustment.redundancy ?? 0,
    consistent: verdict?.consistent ?? true,
    floor: floorOf(read.stations),
    freeVolumeM3: space ? space.freeVolumeMm3 / MM3_A_M3 : null,
    marks: [...read.points].map(([id, at]) => {
      const covariance = verdict?.adjustment.covarianceOf(id) ?? [0, 0, 0, 0, 0, 0];
      return { id, at, sigmaMm: [Math.sqrt(covariance[0]), Math.sqrt(covariance[3]), Math.sqrt(covariance[5])] };
    }),
    facts: surveyFacts(survey, rules, read),
    vehicle: vehicleFacts(design.vehicle, rules),
    problems: networkProblems(survey, rules),
  };
};
