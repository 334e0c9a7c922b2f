import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Drawing } from '../../../shop/index.ts';

/** The door of the worker that works out the order of assembly and draws its sheets. */
export interface OrderDesk {
  /** Seconds for a large cabinet; tells which step of how many it draws. Null where there is nothing to put together. */
  sheets(design: Design, fitout: FitOut, tell: (step: number, of: number) => void): Promise<readonly Drawing[] | null>;
}
