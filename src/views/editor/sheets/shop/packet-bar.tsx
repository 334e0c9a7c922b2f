import { useRef, useState } from 'react';
import { type PacketFile, zipFiles } from '../../../../shop/index.ts';
import { fileStem } from '../../files/file-name.ts';
import { Button } from '../../parts/index.ts';
import { useDesk } from '../../state/use-desk.ts';
import { PacketFiles } from './packet-files.tsx';
import { canSaveFolder, makePacket, type PacketWish, pickFolder, saveIntoFolder, saveOne } from './save-packet.ts';
import styles from './shop.module.css';
import type { ShopLists } from './shop-lists.ts';
import { usePacketWish } from './use-packet-wish.ts';

const isAbort = (fault: unknown): boolean => fault instanceof Error && fault.name === 'AbortError';

/** How far the making or saving is, and the way to stop it. */
interface Task {
  readonly says: string;
  readonly stop: () => void;
}

type Where = 'folder' | 'zip' | 'one';

/** Saves and prints the packet; a long save says how far it is and can be stopped. */
export const PacketBar = ({ lists }: { readonly lists: ShopLists }) => {
  const wish = usePacketWish(lists);
  const tell = useDesk((desk) => desk.tell);
  const [task, setTask] = useState<Task | null>(null);
  const [files, setFiles] = useState<readonly PacketFile[] | null>(null);
  const busy = useRef(false);
  const save = async (wished: PacketWish, where: Where): Promise<void> => {
    if (busy.current) return;
    busy.current = true;
    const stopper = new AbortController();
    const say = (says: string): void => setTask({ says, stop: () => stopper.abort() });
    try {
      const folder = where === 'folder' ? await pickFolder() : null;
      say('making the packet');
      const packet = await makePacket(wished, (next) => say(`making ${next}`), stopper.signal);
      if (folder) {
        const { length } = packet.files;
        await saveIntoFolder(folder, packet.files, (done) => say(`${done} of ${length} files`), stopper.signal);
        tell(`${length} files saved into ${folder.name}.`);
      } else if (where === 'zip') {
        const path = `${fileStem(wished.lists.input.design.title)}-packet.zip`;
        saveOne({ path, kind: 'contents', about: 'the whole packet', bytes: zipFiles(packet.files) });
        tell(`${packet.files.length} files saved as ${path}.`);
      } else setFiles(packet.files);
    } catch (fault) {
      if (!isAbort(fault)) tell(`The packet could not be saved: ${String(fault)}`, 'trouble');
    } finally {
      busy.current = false;
      setTask(null);
    }
  };
  const waits = wish === null ? 'Waits for the inspection, whose sheet goes into the packet' : undefined;
  const button = (where: Where, words: string, main = false) => (
    <Button
      look={main ? 'main' : 'plain'}
      disabled={task !== null || wish === null}
      title={waits}
      onClick={() => wish && void save(wish, where)}
    >
      {words}
    </Button>
  );
  return (
    <div className={`${styles.bar} no-print`}>
      {canSaveFolder() ? button('folder', 'Save the packet…', true) : null}
      {button('zip', 'All in one zip', !canSaveFolder())}
      {button('one', 'One file…')}
      <Button title="Prints what is shown here" onClick={() => window.print()}>
        Print
      </Button>
      {task === null ? null : (
        <span role="status">
          {task.says}{' '}
          <Button small onClick={task.stop}>
            Stop
          </Button>
        </span>
      )}
      {files ? <PacketFiles files={files} onClose={() => setFiles(null)} /> : null}
    </div>
  );
};
