import { useRef, useState } from 'react';
import type { CarryIn, Inspection } from '../../../../inspection/index.ts';
import type { PacketFile } from '../../../../shop/index.ts';
import { Button, Dialog } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor } from '../../state/use-editor.ts';
import { canSaveFolder, packetFiles, saveIntoFolder, saveOne } from './save-packet.ts';
import styles from './shop.module.css';
import type { ShopLists } from './shop-lists.ts';

const isAbort = (fault: unknown): boolean => fault instanceof Error && fault.name === 'AbortError';

interface OneByOneProps {
  readonly files: readonly PacketFile[];
  readonly onClose: () => void;
}

/** One file after another, for a browser that cannot write into a folder. */
const OneByOne = ({ files, onClose }: OneByOneProps) => (
  <Dialog title="Save the packet" wide onClose={onClose} foot={<Button onClick={onClose}>Done</Button>}>
    <p>This browser cannot write into a folder, so the packet is saved one file at a time.</p>
    <ul className={styles.files}>
      {files.map((file) => (
        <li key={file.path}>
          <Button small title={file.about} onClick={() => saveOne(file)}>
            {file.path}
          </Button>
        </li>
      ))}
    </ul>
  </Dialog>
);

interface PacketBarProps {
  readonly lists: ShopLists;
  /** Null until the present design is inspected: the packet holds the inspection sheet. */
  readonly inspection: Inspection | null;
  /** How everything is carried in, once that was searched for. */
  readonly carry: CarryIn | null;
}

/** Saves and prints the packet; a long save says how far it is and can be stopped. */
export const PacketBar = ({ lists, inspection, carry }: PacketBarProps) => {
  const design = useEditor((editor) => editor.history.design);
  const tell = useDesk((desk) => desk.tell);
  const [progress, setProgress] = useState<string | null>(null);
  const [oneByOne, setOneByOne] = useState<readonly PacketFile[] | null>(null);
  const stop = useRef<AbortController | null>(null);
  const save = async (judged: Inspection): Promise<void> => {
    const files = await packetFiles(design, lists, judged, carry);
    if (!canSaveFolder()) return setOneByOne(files);
    const stopper = new AbortController();
    stop.current = stopper;
    try {
      const say = (done: number): void => setProgress(`${done} of ${files.length} files`);
      const folder = await saveIntoFolder(files, say, stopper.signal);
      tell(`${files.length} files saved into ${folder}.`);
    } catch (fault) {
      if (!isAbort(fault)) tell(`The packet could not be saved: ${String(fault)}`, 'trouble');
    } finally {
      setProgress(null);
    }
  };
  return (
    <div className={`${styles.bar} no-print`}>
      <Button
        look="main"
        disabled={progress !== null || inspection === null}
        title={inspection === null ? 'Waits for the inspection, whose sheet goes into the packet' : undefined}
        onClick={() => inspection && void save(inspection)}
      >
        Save the packet…
      </Button>
      <Button onClick={() => window.print()}>Print this list</Button>
      {progress === null ? null : (
        <span role="status">
          {progress}{' '}
          <Button small onClick={() => stop.current?.abort()}>
            Stop
          </Button>
        </span>
      )}
      {oneByOne ? <OneByOne files={oneByOne} onClose={() => setOneByOne(null)} /> : null}
    </div>
  );
};
