import type { Design } from '../../../design/index.ts';
import type { Figure } from '../../../revision/index.ts';

/** The door of the worker that reckons what two designs are compared by. */
export interface FiguresDesk {
  /** Masses, axles, margins, sheets and price; seconds, since it inspects the design and lays its sheets out. */
  figures(design: Design): Promise<readonly Figure[]>;
}
