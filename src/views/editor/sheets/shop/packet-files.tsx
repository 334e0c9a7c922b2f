import { groupBy } from '../../../../base/index.ts';
import { type PacketFile, zipFiles } from '../../../../shop/index.ts';
import { Button, Dialog, Heading } from '../../parts/index.ts';
import { saveOne } from './save-packet.ts';
import styles from './shop.module.css';

const TOP = '';
const folderOf = ({ path }: PacketFile): string => (path.includes('/') ? path.slice(0, path.lastIndexOf('/')) : TOP);

interface FolderProps {
  readonly folder: string;
  readonly files: readonly PacketFile[];
}

const Folder = ({ folder, files }: FolderProps) => (
  <section aria-label={folder === TOP ? 'lists and papers' : folder}>
    <Heading
      level={3}
      title={folder === TOP ? 'Lists and papers' : `${folder}/`}
      aside={`${files.length} files`}
      actions={
        folder === TOP ? null : (
          <Button
            small
            onClick={() => saveOne({ path: `${folder}.zip`, kind: 'contents', about: folder, bytes: zipFiles(files) })}
          >
            This folder as a zip
          </Button>
        )
      }
    />
    <ul className={styles.files}>
      {files.map((file) => (
        <li key={file.path}>
          <Button small title={file.about} onClick={() => saveOne(file)}>
            {file.path.slice(folder === TOP ? 0 : folder.length + 1)}
          </Button>
        </li>
      ))}
    </ul>
  </section>
);

interface PacketFilesProps {
  readonly files: readonly PacketFile[];
  readonly onClose: () => void;
}

/** Every file of the packet by itself, and every folder of it as one. */
export const PacketFiles = ({ files, onClose }: PacketFilesProps) => (
  <Dialog title="Files of the packet" wide onClose={onClose} foot={<Button onClick={onClose}>Done</Button>}>
    <div className={styles.folders}>
      {[...groupBy(files, folderOf)].map(([folder, own]) => (
        <Folder key={folder} folder={folder} files={own} />
      ))}
    </div>
  </Dialog>
);
