import { createContext, useContext } from 'react';
import type { Catalog } from '../../../catalog/index.ts';
import type { KeptDesign } from '../files/vault.ts';

/** What a person can do with files from anywhere in the window. */
export interface FileActions {
  readonly newDesign: () => Promise<void>;
  readonly openFile: () => Promise<void>;
  readonly openDropped: (files: readonly File[]) => Promise<void>;
  readonly openDemo: (name: string) => Promise<void>;
  readonly openKept: (id: string) => Promise<void>;
  readonly forgetKept: (id: string) => Promise<void>;
  /** Designs kept in this browser, the newest first. */
  readonly kept: () => Promise<readonly KeptDesign[]>;
  readonly saveToFile: () => Promise<void>;
  /** Takes the design over from the tab that has it open. */
  readonly workHere: () => Promise<void>;
  /** The id under which the present design is kept. */
  readonly presentId: () => string;
}

/** What the sheets work with besides the state: the catalog, files, the worker. */
export interface Bench {
  readonly catalog: Catalog;
  readonly files: FileActions;
  /** Gives up looking for ways out until the next edit. */
  readonly stopLooking: () => void;
}

export const BenchContext = createContext<Bench | null>(null);

/** The bench of the surrounding window. Throws outside of one. */
export const useBench = (): Bench => {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('useBench: no window around this component');
  return bench;
};
