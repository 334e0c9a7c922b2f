import type { CarryIn, Inspection, OpeningOrder } from '../../../../inspection/index.ts';
import {
  createPacket,
  type Drawing,
  MOST_IN_ORDER,
  type Packet,
  type PacketFile,
  type PacketInput,
  sheetJobs,
} from '../../../../shop/index.ts';
import { drawOrder } from '../../worker/connect-order.ts';
import { cutAgainOf } from '../cut-warning.tsx';
import type { LabelChoice } from './label-choice.ts';
import { jobsKey, layoutsFor } from './layouts/layouts-store.ts';
import type { ShopLists } from './shop-lists.ts';

/** Paper shows the layouts that stand on screen, improved ones too. */
const shownLayouts = ({ drawings, input }: ShopLists): Pick<PacketInput, 'layouts'> => {
  const layouts = layoutsFor(jobsKey(sheetJobs(drawings.rows, input.catalog, input.rules, input.design.stock)));
  return layouts === null ? {} : { layouts };
};

export interface PacketWish {
  readonly lists: ShopLists;
  readonly inspection: Inspection;
  readonly order: OpeningOrder;
  /** How everything is carried in, once that was searched for. */
  readonly carry: CarryIn | null;
  readonly labels: LabelChoice;
}

const inputOf = ({ lists, inspection, order, carry, labels }: PacketWish): PacketInput => ({
  ...lists.input,
  drawings: lists.drawings,
  inspection,
  order,
  carry,
  cutAgain: cutAgainOf(lists.input.design, lists.input.catalog),
  ...shownLayouts(lists),
  ...labels,
});

/** Lets the page draw and answer before the next piece of work. */
const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** The order of assembly drawn off the page, so that the packet finds it; what goes wrong with it the packet itself names. */
const orderDrawn = async (
  { lists: { input } }: PacketWish,
  onNext: (words: string) => void,
  signal: AbortSignal,
): Promise<void> => {
  const count = input.fitout.panels.length;
  if (count === 0 || count > MOST_IN_ORDER) return;
  const tell = (step: number, of: number): void =>
    onNext(of === 0 ? 'the order of assembly' : `the order of assembly, step ${step} of ${of}`);
  try {
    await drawOrder(input, tell, signal);
  } catch {
    signal.throwIfAborted();
  }
};

/** The files that leave for the saw, papers and all. Rejects with AbortError when the person stops it. */
export const makePacket = async (
  wish: PacketWish,
  onNext: (path: string) => void,
  signal: AbortSignal,
): Promise<Packet> => {
  await breath();
  await orderDrawn(wish, onNext, signal);
  // The writer of PDF is large: it comes when a packet is first made.
  const { openPdfWriter } = await import('../open-pdf-writer.ts');
  return createPacket({
    ...inputOf(wish),
    toPdf: await openPdfWriter(),
    pace: async (next) => {
      onNext(next);
      await breath();
      signal.throwIfAborted();
    },
  });
};

/** The first page of that packet, with every file named and none of the papers written. */
export const packetFront = async (wish: PacketWish, signal: AbortSignal): Promise<readonly Drawing[]> => {
  await orderDrawn(wish, () => undefined, signal);
  const packet = await createPacket({
    ...inputOf(wish),
    toPdf: () => new Uint8Array(),
    pace: async () => {
      await breath();
      signal.throwIfAborted();
    },
  });
  return packet.firstPage;
};

interface FolderWindow {
  readonly showDirectoryPicker?: (options: {
    readonly id: string;
    readonly mode: 'readwrite';
  }) => Promise<FileSystemDirectoryHandle>;
}

/** Whether this browser can write several files into a folder that a person chooses. */
export const canSaveFolder = (): boolean => 'showDirectoryPicker' in window;

const contentOf = (file: PacketFile): Blob =>
  'text' in file ? new Blob([file.text]) : new Blob([Uint8Array.from(file.bytes)]);

const writeInto = async (folder: FileSystemDirectoryHandle, file: PacketFile): Promise<void> => {
  const names = file.path.split('/');
  let inside = folder;
  for (const name of names.slice(0, -1)) inside = await inside.getDirectoryHandle(name, { create: true });
  const handle = await inside.getFileHandle(names.at(-1) ?? file.path, { create: true });
  const writing = await handle.createWritable();
  await writing.write(contentOf(file));
  await writing.close();
};

/** Asks for a folder: at once, while the press that asks for it still counts. Rejects with AbortError on a cancel. */
export const pickFolder = (): Promise<FileSystemDirectoryHandle> => {
  const { showDirectoryPicker } = window as FolderWindow;
  if (!showDirectoryPicker) return Promise.reject(new Error('this browser cannot write into a folder'));
  return showDirectoryPicker.call(window, { id: 'packet', mode: 'readwrite' });
};

/** Writes the files into the folder. Rejects with AbortError when the person stops it; what was written by then stays. */
export const saveIntoFolder = async (
  folder: FileSystemDirectoryHandle,
  files: readonly PacketFile[],
  onProgress: (done: number) => void,
  signal: AbortSignal,
): Promise<void> => {
  for (const [i, file] of files.entries()) {
    signal.throwIfAborted();
    await writeInto(folder, file);
    onProgress(i + 1);
  }
};

/** Saves one file the ordinary way, as a download; folders of the packet become part of its name. */
export const saveOne = (file: PacketFile): void => {
  const address = URL.createObjectURL(contentOf(file));
  const link = document.createElement('a');
  link.href = address;
  link.download = file.path.replaceAll('/', '-');
  link.click();
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};
