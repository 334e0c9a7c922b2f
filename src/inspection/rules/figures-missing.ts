import type { Vehicle } from '../../design/index.ts';
import type { Job } from '../job.ts';
import type { RuleId } from '../rule-ids.ts';
import { found, type Limit, NOTHING, type Verdict } from '../verdict.ts';

/** Figures of the vehicle that checks wait for, each with the rules that are silent without it. */
export const FIGURES = {
  slip: ['payload', 'front-axle', 'rear-axle', 'side-to-side', 'front-unload', 'front-share', 'stability'],
  'gross-rating': ['payload', 'disclosure'],
  'front-axle-rating': ['front-axle'],
  'rear-axle-rating': ['rear-axle'],
  wheelbase: ['front-axle', 'rear-axle', 'side-to-side', 'front-unload', 'front-share', 'stability'],
  'sill-behind-rear-axle': ['front-axle', 'rear-axle', 'side-to-side', 'front-unload', 'front-share', 'stability'],
  track: ['side-to-side', 'stability'],
  'floor-height': [
    'stability',
    'low-roof',
    'lifting',
    'control-height',
    'reading-angle',
    'head-clear',
    'pull-height',
    'see-in',
    'write-height',
    'mount-height',
    'rf-distance',
  ],
  'cg-height': ['stability'],
  seats: ['payload', 'front-axle', 'rear-axle'],
  fuel: ['payload', 'front-axle', 'rear-axle'],
} as const satisfies Record<string, readonly RuleId[]>;
export type FigureName = keyof typeof FIGURES;

const FIGURE_NAMES = Object.keys(FIGURES) as readonly FigureName[];

const KNOWN: { readonly [Name in FigureName]: (vehicle: Vehicle) => boolean } = {
  slip: ({ slip }) => slip !== null,
  'gross-rating': ({ ratings }) => ratings.grossKg !== null,
  'front-axle-rating': ({ ratings }) => ratings.frontAxleKg !== null,
  'rear-axle-rating': ({ ratings }) => ratings.rearAxleKg !== null,
  wheelbase: ({ wheelbaseMm }) => wheelbaseMm !== null,
  'sill-behind-rear-axle': ({ sillBehindRearAxleMm }) => sillBehindRearAxleMm !== null,
  track: ({ trackMm }) => trackMm !== null,
  'floor-height': ({ floorAboveGroundMm }) => floorAboveGroundMm !== null,
  'cg-height': ({ cgHeightAsReceivedMm }) => cgHeightAsReceivedMm !== null,
  seats: ({ seats }) => seats.length > 0,
  // Asked for once there is a slip, whose weight holds what was in the tank.
  fuel: ({ fuel, slip }) => fuel !== null || slip === null,
};

/** The figures that nobody has entered yet, in a stable order. */
export const missingFigures = (vehicle: Vehicle): readonly FigureName[] =>
  FIGURE_NAMES.filter((name) => !KNOWN[name](vehicle));

const ONE_FIGURE: Limit = { value: 1, unit: 'count', source: 'ratings and weigh slip of the design', status: 'design' };

/** Checks that could not be made for want of a figure, one note for each figure. Nothing is guessed in its place. */
export const figuresMissing = (job: Job): Verdict => ({
  ...NOTHING,
  findings: missingFigures(job.design.vehicle).map((name) =>
    found('figures-missing', {
      severity: 'note',
      parts: [name],
      value: 0,
      limit: ONE_FIGURE,
      facts: { figure: name, silent: FIGURES[name].join(' ') },
    }),
  ),
});
