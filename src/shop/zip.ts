import { strToU8, unzipSync, zipSync } from 'fflate';
import type { PacketFile } from './packet-file.ts';

/** Every entry carries one moment, which nobody takes for a real one, so that the same files are the same bytes. */
const NO_MOMENT = new Date(1980, 0, 1, 0, 0, 0);
const PACKED = { level: 6, mtime: NO_MOMENT } as const;

/** The files as one archive, in their order. */
export const zipFiles = (files: readonly PacketFile[]): Uint8Array =>
  zipSync(
    Object.fromEntries(files.map((file) => [file.path, 'text' in file ? strToU8(file.text) : file.bytes])),
    PACKED,
  );

/** The same archive packed anew, so that its bytes do not hang on who packed it. */
export const packedAnew = (archive: Uint8Array): Uint8Array => zipSync(unzipSync(archive), PACKED);
