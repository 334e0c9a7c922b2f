/** A design that comes with the program. */
export interface Demo {
  readonly name: string;
  /** The name as words. */
  readonly title: string;
  readonly load: () => Promise<string>;
}

const FILES = import.meta.glob<string>('../../../../assets/designs/*.json', { query: '?raw', import: 'default' });

/** The demo that a browser without any design of its own begins with. */
export const FIRST_DEMO = 'harrow-fell';

const nameOf = (path: string): string =>
  path
    .split('/')
    .at(-1)
    ?.replace(/(?:\.hatchwright)?\.json$/, '') ?? path;

const titleOf = (name: string): string => name.replace(/-/g, ' ').replace(/^./, (first) => first.toUpperCase());

/** The demo designs, loaded when one is opened. */
export const DEMOS: readonly Demo[] = Object.entries(FILES).map(([path, load]) => ({
  name: nameOf(path),
  title: titleOf(nameOf(path)),
  load,
}));
