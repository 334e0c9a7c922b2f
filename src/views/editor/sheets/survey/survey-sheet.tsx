import { lazy, Suspense } from 'react';
import { sayProblem } from '../../../../says/index.ts';
import { Heading, SeverityMark, ToggleChip } from '../../parts/index.ts';
import { useEditor, useEditorParts } from '../../state/use-editor.ts';
import { useUnits } from '../../state/use-units.ts';
import styles from '../sheet.module.css';
import { Closures } from './closures.tsx';
import { Obstacles } from './obstacles.tsx';
import { ReadingsPart } from './readings-part.tsx';
import { Sections } from './sections.tsx';
import { StartValuesBanner } from './start-values.tsx';
import { useReadings } from './use-readings.ts';
import { VehicleForm } from './vehicle-form.tsx';
import { SURVEY_PART_TITLES, SURVEY_PARTS, type SurveyPart, showSurveyPart, useSurveyView } from './view.ts';
import { volumeText } from './volume-text.ts';
import { Zones } from './zones.tsx';

const ScanPart = lazy(() => import('./scan/scan-part.tsx').then((it) => ({ default: it.ScanPart })));

const PARTS: Readonly<Record<SurveyPart, React.ComponentType>> = {
  readings: ReadingsPart,
  sections: Sections,
  obstacles: Obstacles,
  closures: Closures,
  zones: Zones,
  scan: ScanPart,
  vehicle: VehicleForm,
};

/** Volumes of the cargo space, or why there is none. */
const SpaceSays = () => {
  const space = useEditor((editor) => editor.judgement?.space ?? null);
  const measured = useEditor((editor) => editor.history.design.survey.stations.length > 0);
  const units = useUnits();
  if (!measured || !space) return null;
  if (space.ok)
    return (
      <p className={styles.soft}>
        {volumeText(space.value.freeVolumeMm3, units)} free of {volumeText(space.value.skinVolumeMm3, units)} inside the
        trim.
      </p>
    );
  return (
    <ul className={styles.problems} aria-label="What is wrong with the survey">
      {space.error.map((problem) => (
        <li key={`${problem.at} ${problem.code}`}>
          <SeverityMark severity="stop" />
          <span>{sayProblem(problem)}.</span>
        </li>
      ))}
    </ul>
  );
};

/** The measured vehicle: sections, what stands in them, closures, zones, and what the scales say. */
export const SurveySheet = () => {
  const view = useSurveyView();
  const readings = useReadings();
  const { survey } = useEditorParts((editor) => ({ survey: editor.history.design.survey }));
  const part = view.part ?? (survey.readings.length > 0 ? 'readings' : 'sections');
  const counts: Readonly<Record<SurveyPart, number | null>> = {
    readings: survey.readings.length,
    sections: survey.stations.length,
    obstacles: survey.obstacles.length,
    closures: survey.closures.length,
    zones: survey.zones.length,
    scan: null,
    vehicle: null,
  };
  const Part = PARTS[part];
  return (
    <div className={styles.sheet}>
      <Heading title="Survey" aside={survey.startValues ? 'start values, not measured' : null} />
      <div className={styles.chips}>
        {SURVEY_PARTS.map((one) => (
          <ToggleChip key={one} pressed={one === part} onClick={() => showSurveyPart(one)}>
            {SURVEY_PART_TITLES[one]}
            {counts[one] === null ? '' : ` ${counts[one]}`}
          </ToggleChip>
        ))}
      </div>
      <StartValuesBanner readings={readings} />
      <SpaceSays />
      <Suspense fallback={null}>
        <Part />
      </Suspense>
      {part === 'sections' ? (
        <p className={`${styles.later} no-print`}>
          A point that follows a mark takes its adjusted place. Any other is taken as written, good to ±{' '}
          {survey.sigmaMm} mm (1σ): readings that repeat and cross each other make it better known.
        </p>
      ) : null}
    </div>
  );
};
