/** The end of every design file's name. */
export const DESIGN_FILE_ENDING = '.hatchwright.json';

const LONGEST = 60;

/** A title as a file name that every system takes: `Harrow Fell, unit 2` → `harrow-fell-unit-2`. */
export const fileStem = (title: string): string => {
  const stem = title
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  return stem === '' ? 'design' : stem;
};
