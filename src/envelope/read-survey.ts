import type { Problem, Vec2, Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { NodeId, Station, Survey } from '../design/index.ts';
import { type Covariance, judgeReadings, type Verdict } from './adjust/index.ts';
import { surveyNetwork } from './survey-network.ts';

/** How a section point is known: from adjusted marks, typed by hand, taken from a scan, or still a start value of the class. */
export type PointStanding = 'adjusted' | 'typed' | 'scan' | 'start';

/** A section point as used, in vehicle axes, with its covariance (mm², xx xy xz yy yz zz; without the vehicle's spread). */
export interface SectionPoint {
  /** [y, z]: y positive to the left. */
  readonly at: Vec2;
  readonly mark: NodeId | null;
  readonly standing: PointStanding;
  readonly covariance: Covariance;
}

export interface SurveyStation {
  readonly id: NodeId;
  readonly xMm: number;
  readonly left: readonly SectionPoint[];
  readonly right: readonly SectionPoint[];
}

/** A survey with its readings adjusted. */
export interface SurveyRead {
  /** The survey with adjusted numbers in place of typed ones wherever marks hold them. */
  readonly survey: Survey;
  readonly stations: readonly SurveyStation[];
  /** Null when there are no usable readings. */
  readonly verdict: Verdict | null;
  /** Marks whose three coordinates are held, with their adjusted place. */
  readonly points: ReadonlyMap<string, Vec3>;
  readonly problems: readonly Problem[];
}

const round = (sigma: number): Covariance => [sigma ** 2, 0, 0, sigma ** 2, 0, sigma ** 2];

interface Context {
  readonly survey: Survey;
  readonly verdict: Verdict | null;
  readonly points: ReadonlyMap<string, Vec3>;
  readonly startSigma: number;
  readonly scanSigma: number;
  readonly fixedDepth: ReadonlySet<string>;
}

/** A mark set up at a chosen depth has no variance of its own along x; it was set by hand like any taped coordinate. */
const markCovariance = ({ verdict, fixedDepth, survey }: Context, mark: string): Covariance => {
  const own = verdict?.adjustment.covarianceOf(mark) ?? round(survey.sigmaMm);
  return fixedDepth.has(mark) ? [survey.sigmaMm ** 2, 0, 0, own[3], own[4], own[5]] : own;
};

const pointsOf = (context: Context, station: Station, side: 'left' | 'right'): readonly SectionPoint[] => {
  const sign = side === 'left' ? 1 : -1;
  const typed = station[side];
  const given = side === 'left' ? station.leftMarks : station.rightMarks;
  const marks = given?.length === typed.length ? given : [];
  const { survey, points, startSigma, scanSigma } = context;
  return typed.map(([out, up], i): SectionPoint => {
    const mark = marks[i] ?? null;
    const held = mark === null ? undefined : points.get(mark);
    if (mark !== null && held)
      return { at: [held[1], held[2]], mark, standing: 'adjusted', covariance: markCovariance(context, mark) };
    const start = station.startValues ?? survey.startValues;
    const scanned = !start && station.source === 'scan';
    const own = scanned ? scanSigma : survey.sigmaMm;
    const covariance = round(start ? Math.max(startSigma, survey.sigmaMm) : own);
    return { at: [sign * out, up], mark, standing: start ? 'start' : scanned ? 'scan' : 'typed', covariance };
  });
};

/** The depth of a station: where its held marks are, unless they were set up at a chosen depth. */
const depthOf = ({ points, fixedDepth }: Context, station: Station): number => {
  const depths = [...(station.leftMarks ?? []), ...(station.rightMarks ?? [])].flatMap((mark) => {
    const held = mark === null ? undefined : points.get(mark);
    return mark !== null && held && !fixedDepth.has(mark) ? [held[0]] : [];
  });
  return depths.length === 0 ? station.xMm : depths.reduce((sum, x) => sum + x, 0) / depths.length;
};

const inStep = (survey: Survey): readonly Problem[] =>
  survey.stations.flatMap((station, i) =>
    (['left', 'right'] as const).flatMap((side): readonly Problem[] => {
      const marks = side === 'left' ? station.leftMarks : station.rightMarks;
      return marks === undefined || marks.length === 0 || marks.length === station[side].length
        ? []
        : [
            {
              at: `survey.stations[${i}].${side}Marks`,
              code: 'out-of-step',
              expected: `${station[side].length} marks or blanks, one a point`,
              got: String(marks.length),
            },
          ];
    }),
  );

const typedFrom = (points: readonly SectionPoint[], sign: 1 | -1): Station['left'] =>
  points.map(({ at }) => [sign * at[0], at[1]] as const);

type Angles = Survey['closures'][number];

const angleAt = (hinge: Vec3, a: Vec3, b: Vec3): number => {
  // A hatch turns about a line across the vehicle: the angle is seen along y.
  const [from, to] = [Math.atan2(a[2] - hinge[2], a[0] - hinge[0]), Math.atan2(b[2] - hinge[2], b[0] - hinge[0])];
  const turn = Math.abs(to - from);
  return (Math.min(turn, 2 * Math.PI - turn) * 180) / Math.PI;
};

const closureFrom = (closure: Angles, { points, survey }: Context): Angles => {
  const at = (mark: NodeId | null | undefined): Vec3 | null => (mark ? (points.get(mark) ?? null) : null);
  // A coordinate that a mark was given and not measured says nothing: a mark on the centre line keeps the hinge's ends.
  const end = (id: NodeId | null | undefined, typed: Vec3): Vec3 | null => {
    const [held, mark] = [at(id), survey.marks.find((own) => own.id === id)];
    if (!held || !mark) return null;
    const along = (axis: 0 | 1 | 2): number => (mark.fixed[axis] ? typed[axis] : held[axis]);
    return [along(0), along(1), along(2)];
  };
  const from = end(closure.marks?.hingeFrom, closure.hinge.from);
  const to = end(closure.marks?.hingeTo, closure.hinge.to);
  const [closed, open] = [at(closure.marks?.edgeClosed), at(closure.marks?.edgeOpen)];
  const hinge = from ?? to;
  return {
    ...closure,
    hinge: { from: from ?? closure.hinge.from, to: to ?? closure.hinge.to },
    opensDeg:
      hinge && closed && open && TURNS_ACROSS.has(closure.kind) ? angleAt(hinge, closed, open) : closure.opensDeg,
  };
};

/** Closures that turn about a line across the vehicle, so that their angle shows in the side view. */
const TURNS_ACROSS: ReadonlySet<string> = new Set(['lift-hatch', 'hatch-glass', 'tailgate', 'cap-door']);

const asRead = (context: Context, stations: readonly SurveyStation[]): Survey => {
  const { survey, points } = context;
  return points.size === 0
    ? survey
    : {
        ...survey,
        stations: survey.stations.map((station, i) => {
          const own = stations[i];
          if (!own) return station;
          return { ...station, xMm: own.xMm, left: typedFrom(own.left, 1), right: typedFrom(own.right, -1) };
        }),
        closures: survey.closures.map((closure) => (closure.marks ? closureFrom(closure, context) : closure)),
      };
};

/**
 * Adjusts the readings of a survey and lets the marks that they hold carry its stations and closures. Without readings
 * the survey comes back as it is. A mark that nothing holds leaves the typed value in place, with its standing.
 */
export const readSurvey = (survey: Survey, rules: HouseRules): SurveyRead => {
  const { network, problems } = surveyNetwork(survey, rules);
  const verdict = network.readings.length > 0 ? judgeReadings(network) : null;
  const loose = new Set(verdict?.adjustment.loose.map(({ mark }) => mark));
  const points = new Map([...(verdict?.adjustment.points ?? [])].filter(([mark]) => !loose.has(mark)));
  const context: Context = {
    survey,
    verdict,
    points,
    startSigma: rules.value('start-value-sigma'),
    scanSigma: rules.value('scan-sigma'),
    fixedDepth: new Set(survey.marks.filter((mark) => mark.fixed[0]).map((mark) => mark.id)),
  };
  const stations = survey.stations.map((station) => ({
    id: station.id,
    xMm: depthOf(context, station),
    left: pointsOf(context, station, 'left'),
    right: pointsOf(context, station, 'right'),
  }));
  return {
    survey: asRead(context, stations),
    stations,
    verdict,
    points,
    problems: [...problems, ...inStep(survey)],
  };
};
