import { type Remote, wrap } from 'comlink';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Problem, Vec3 } from '../../../../../base/index.ts';
import type { ComparedScan, MarkPair, RefineOptions, ScanUnit, Section } from '../../../../../envelope/index.ts';
import type { LoadedScan, ScanDesk } from '../../../worker/scan-api.ts';

/** One mark that is looked for in the scan. */
export interface SoughtMark {
  readonly mark: string | null;
  /** In the unit of the file, or null until it is found. */
  readonly at: Vec3 | null;
}

interface ScanState {
  readonly name: string;
  readonly scan: LoadedScan | null;
  readonly unit: ScanUnit;
  readonly sought: readonly SoughtMark[];
  /** Which of the sought marks the next press on the picture places. */
  readonly placing: number;
  readonly compared: ComparedScan | null;
  readonly busy: string | null;
  readonly problems: readonly Problem[];
}

const NONE_SOUGHT: readonly SoughtMark[] = [0, 1, 2].map(() => ({ mark: null, at: null }));

const EMPTY: ScanState = {
  name: '',
  scan: null,
  unit: 'm',
  sought: NONE_SOUGHT,
  placing: 0,
  compared: null,
  busy: null,
  problems: [],
};

/** The scan that lies beside the tape: kept while a person looks at other steps, never in the design. */
const store = createStore<ScanState>()(() => EMPTY);
export const useScan = (): ScanState => useStore(store);

let worker: Worker | null = null;
let desk: Remote<ScanDesk> | null = null;

export const putScanAway = (): void => {
  worker?.terminate();
  [worker, desk] = [null, null];
  store.setState(EMPTY);
};

const startDesk = (): Remote<ScanDesk> => {
  putScanAway();
  const mine = new Worker(new URL('../../../worker/scan-worker.ts', import.meta.url), { type: 'module', name: 'scan' });
  mine.addEventListener('error', () => {
    if (worker !== mine) return;
    putScanAway();
    store.setState({ problems: [{ at: 'scan', code: 'too-large', expected: 'a scan that this machine can hold' }] });
  });
  worker = mine;
  desk = wrap<ScanDesk>(mine);
  return desk;
};

/** Reads a file into a worker of its own. The taped size tells the unit. */
export const loadScan = async (file: File, longestTapedMm: number): Promise<void> => {
  const mine = startDesk();
  store.setState({ name: file.name, busy: `Reading ${file.name}` });
  const bytes = new Uint8Array(await file.arrayBuffer());
  const loaded = await mine.load(bytes, longestTapedMm);
  if (desk !== mine) return;
  if (loaded.ok) store.setState({ busy: null, scan: loaded.value, unit: loaded.value.unit });
  else store.setState({ busy: null, problems: loaded.error });
};

export const chooseUnit = (unit: ScanUnit): void => store.setState({ unit, compared: null, problems: [] });

export const changeSought = (index: number, change: Partial<SoughtMark>): void =>
  store.setState(({ sought }) => ({
    sought: sought.map((one, i) => (i === index ? { ...one, ...change } : one)),
    compared: null,
    problems: [],
  }));

export const placeNext = (placing: number): void => store.setState({ placing });

/** Asks where a line of sight meets the scan and puts the mark there; then the next one without a place is on. */
export const pickMark = async (from: Vec3, along: Vec3, facing: 'towards' | 'away'): Promise<void> => {
  const mine = desk;
  const { placing } = store.getState();
  const at = mine ? await mine.pick(from, along, facing) : null;
  if (desk !== mine || at === null) return;
  changeSought(placing, { at });
  const open = store.getState().sought.findIndex((one) => one.at === null);
  if (open >= 0) placeNext(open);
};

/** Aligns and compares; gives what came of it, or null where it was refused or put away meanwhile. */
export const compareWithTape = async (
  marks: readonly MarkPair[],
  sections: readonly Section[],
  options: RefineOptions,
): Promise<ComparedScan | null> => {
  const mine = desk;
  if (!mine) return null;
  store.setState({ busy: 'Aligning', problems: [] });
  const compared = await mine.compare({ unit: store.getState().unit, marks, sections, options });
  if (desk !== mine) return null;
  store.setState({
    busy: null,
    compared: compared.ok ? compared.value : null,
    problems: compared.ok ? [] : compared.error,
  });
  return compared.ok ? compared.value : null;
};

/** A station out of the scan, or null with the reason under the picture. */
export const scanStation = async (depthMm: number, count: number) => {
  const made = desk ? await desk.station(depthMm, count) : null;
  if (made && !made.ok) store.setState({ problems: made.error });
  return made?.ok ? made.value : null;
};
