/** A design that comes with the program. */
export interface Demo {
  readonly name: string;
  /** The name as words. */
  readonly title: string;
  readonly load: () => Promise<string>;
}

const ADDRESSES = import.meta.glob<string>('../../../../assets/designs/*.json', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** A file of the program itself; as a file and not as script it costs the start of the window nothing. */
const fetched = async (address: string): Promise<string> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.text();
};

/** The demo that a browser without any design of its own begins with. */
export const FIRST_DEMO = 'harrow-fell';

const nameOf = (path: string): string =>
  path
    .split('/')
    .at(-1)
    ?.replace(/(?:\.hatchwright)?\.json$/, '') ?? path;

const titleOf = (name: string): string => name.replace(/-/g, ' ').replace(/^./, (first) => first.toUpperCase());

/** The demo designs, loaded when one is opened. */
export const DEMOS: readonly Demo[] = Object.entries(ADDRESSES).map(([path, address]) => ({
  name: nameOf(path),
  title: titleOf(nameOf(path)),
  load: () => fetched(address),
}));
