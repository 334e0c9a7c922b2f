import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export const SURVEY_PARTS = ['readings', 'sections', 'obstacles', 'closures', 'zones', 'scan', 'vehicle'] as const;
export type SurveyPart = (typeof SURVEY_PARTS)[number];

export const SURVEY_PART_TITLES: Readonly<Record<SurveyPart, string>> = {
  readings: 'Readings',
  sections: 'Sections',
  obstacles: 'Obstacles',
  closures: 'Closures',
  zones: 'Zones',
  scan: 'Scan',
  vehicle: 'Vehicle',
};

interface SurveyView {
  /** Null until somebody chooses: readings where there are any, else the sections. */
  readonly part: SurveyPart | null;
  /** The station whose section is drawn; null takes the first. */
  readonly station: string | null;
  /** The row of the point table that has the pen. */
  readonly row: number | null;
}

/** What of the survey sheet is open: kept while a person looks at other steps, never in the design. */
const view = createStore<SurveyView>()(() => ({ part: null, station: null, row: null }));

export const useSurveyView = (): SurveyView => useStore(view);
export const showSurveyPart = (part: SurveyPart): void => view.setState({ part });
export const showStation = (station: string | null): void => view.setState({ station, row: null });
export const showRow = (row: number | null): void => view.setState({ row });
