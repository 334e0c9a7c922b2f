import { type Design, printDesign } from '../../../../design/index.ts';
import type { CarryIn, Inspection } from '../../../../inspection/index.ts';
import { createPacket, type PacketFile, type PacketInput, sheetJobs } from '../../../../shop/index.ts';
import { DESIGN_FILE_ENDING, fileStem } from '../../files/file-name.ts';
import { cutAgainOf } from '../cut-warning.tsx';
import { jobsKey, layoutsFor } from './layouts/layouts-store.ts';
import type { ShopLists } from './shop-lists.ts';

/** Paper shows the layouts that stand on screen, improved ones too. */
const shownLayouts = ({ drawings, input }: ShopLists): Pick<PacketInput, 'layouts'> => {
  const layouts = layoutsFor(jobsKey(sheetJobs(drawings.rows, input.catalog, input.rules)));
  return layouts === null ? {} : { layouts };
};

/** The files that leave for the saw, the design file among them, so that the packet can be opened again. */
export const packetFiles = async (
  design: Design,
  lists: ShopLists,
  inspection: Inspection,
  carry: CarryIn | null,
): Promise<readonly PacketFile[]> => [
  ...(
    await createPacket({
      ...lists.input,
      inspection,
      carry,
      cutAgain: cutAgainOf(design, lists.input.catalog),
      // The writer of PDF is large: it comes when a first packet is saved.
      toPdf: await (await import('../open-pdf-writer.ts')).openPdfWriter(),
      ...shownLayouts(lists),
    })
  ).files,
  {
    path: `${fileStem(design.title)}${DESIGN_FILE_ENDING}`,
    kind: 'contents',
    about: 'the design itself',
    text: printDesign(design),
  },
];

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

/**
 * Writes the files into a folder that the person picks, and gives its name. Rejects with AbortError when the person
 * cancels the choice or stops the saving; what was written by then stays.
 */
export const saveIntoFolder = async (
  files: readonly PacketFile[],
  onProgress: (done: number) => void,
  signal: AbortSignal,
): Promise<string> => {
  const { showDirectoryPicker } = window as FolderWindow;
  if (!showDirectoryPicker) throw new Error('this browser cannot write into a folder');
  const folder = await showDirectoryPicker.call(window, { id: 'packet', mode: 'readwrite' });
  for (const [i, file] of files.entries()) {
    signal.throwIfAborted();
    await writeInto(folder, file);
    onProgress(i + 1);
  }
  return folder.name;
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
