import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** One design kept in this browser, without its text. */
export interface KeptDesign {
  readonly id: string;
  readonly title: string;
  /** Milliseconds of the clock when it was last kept. */
  readonly savedAt: number;
}

export interface KeptText extends KeptDesign {
  /** A design file, as `printDesign` writes it. */
  readonly text: string;
}

/** Where designs are kept between visits. */
export interface Vault {
  readonly put: (kept: KeptText) => Promise<void>;
  readonly get: (id: string) => Promise<KeptText | null>;
  /** The newest first. */
  readonly list: () => Promise<readonly KeptDesign[]>;
  readonly remove: (id: string) => Promise<void>;
}

interface Shelves extends DBSchema {
  /** Texts and entries apart, so that a list does not read every text. */
  texts: { key: string; value: string };
  entries: { key: string; value: KeptDesign };
}

const NAME = 'hatchwright';
const VERSION = 1;

const opened = (): Promise<IDBPDatabase<Shelves>> =>
  openDB<Shelves>(NAME, VERSION, {
    upgrade: (db) => {
      db.createObjectStore('texts');
      db.createObjectStore('entries', { keyPath: 'id' });
    },
  });

/** The browser's own database. Every call rejects where the browser forbids one. */
export const browserVault = (): Vault => {
  let shelves: Promise<IDBPDatabase<Shelves>> | null = null;
  const db = (): Promise<IDBPDatabase<Shelves>> => {
    shelves ??= opened().catch((fault: unknown) => {
      shelves = null;
      throw fault;
    });
    return shelves;
  };
  return {
    put: async ({ text, ...entry }) => {
      const writing = (await db()).transaction(['texts', 'entries'], 'readwrite');
      await Promise.all([
        writing.objectStore('texts').put(text, entry.id),
        writing.objectStore('entries').put(entry),
        writing.done,
      ]);
    },
    get: async (id) => {
      const reading = (await db()).transaction(['texts', 'entries'], 'readonly');
      const [text, entry] = await Promise.all([
        reading.objectStore('texts').get(id),
        reading.objectStore('entries').get(id),
      ]);
      return text === undefined || entry === undefined ? null : { ...entry, text };
    },
    list: async () => (await (await db()).getAll('entries')).toSorted((a, b) => b.savedAt - a.savedAt),
    remove: async (id) => {
      const writing = (await db()).transaction(['texts', 'entries'], 'readwrite');
      await Promise.all([
        writing.objectStore('texts').delete(id),
        writing.objectStore('entries').delete(id),
        writing.done,
      ]);
    },
  };
};
