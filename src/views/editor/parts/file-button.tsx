import { useRef } from 'react';
import { Button, type ButtonProps } from './button.tsx';
import styles from './file-button.module.css';

interface FileButtonProps extends Pick<ButtonProps, 'look' | 'title' | 'children'> {
  /** What the file is, for those who do not see the button. */
  readonly label: string;
  /** Endings and media types, as the file chooser takes them. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
}

/** A button that asks for one file. */
export const FileButton = ({ label, accept, onFile, ...button }: FileButtonProps) => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        className={styles.file}
        tabIndex={-1}
        aria-label={label}
        accept={accept}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file, saved again, can then be chosen again.
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
      <Button {...button} onClick={() => input.current?.click()} />
    </>
  );
};
