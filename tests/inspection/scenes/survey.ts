import type { Design, Survey } from '../../../src/design/index.ts';
import { boxSurvey, HATCH, surveyOf, wall } from '../../envelope/surveys.ts';
import { body, fitOut, inspectScene, vehicleWith } from '../fixture.ts';

interface Row {
  readonly value: number;
  readonly sigma?: number;
}

/** One mark of which only the way from the centre line is open, read several times. */
export const offsets = (...rows: readonly Row[]): Survey =>
  boxSurvey({
    marks: [{ id: 'post', name: 'door post', at: [300, 600, 0], fixed: [true, false, true] }],
    readings: rows.map(({ value, sigma }, i) => ({
      id: `reading-${i + 1}`,
      kind: 'offset',
      from: 'post',
      value,
      sigma: sigma ?? null,
      note: `time ${i + 1}`,
    })),
  });

export const offsetScene = (...rows: readonly Row[]) => inspectScene({ survey: offsets(...rows) });

/** The lowest edge of the open hatch above ground, as taped. */
export const edgeScene = (tapedMm: number, floorAboveGroundMm = 800, hingeUp = 900) => {
  const hinge = { from: [-20, -550, hingeUp], to: [-20, 550, hingeUp] };
  return inspectScene({
    survey: boxSurvey({ closures: [{ ...HATCH, hinge, lowestEdgeAboveGroundMm: tapedMm }] }),
    design: { vehicle: vehicleWith({ floorAboveGroundMm }) },
  });
};

/** Sections at some depths. */
export const sectionsAt = (depths: readonly number[]): Survey =>
  surveyOf(depths.map((xMm) => ({ xMm, left: wall(600, 900) })));

/** The same survey with start values in its last section, which shapes the room from the one before it on. */
export const withLastStarted = (survey: Survey): Survey => ({
  ...survey,
  stations: survey.stations.map((station, i) =>
    i === survey.stations.length - 1 ? { ...station, startValues: true } : station,
  ),
});

/** A panel from the sill up to a depth. */
export const panelUpTo = (depth: number, survey: Design['survey']) =>
  inspectScene({
    survey,
    fitout: fitOut({ bodies: [body({ id: 'panel-1', min: [20, -300, 10], max: [depth, 300, 400] })] }),
  });

export const startedScene = (depths: readonly number[], panelDepth: number) =>
  panelUpTo(panelDepth, withLastStarted(sectionsAt(depths)));
