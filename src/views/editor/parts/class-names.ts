/** Class names joined; whatever is missing or false is left out. */
export const classNames = (...names: readonly (string | false | null | undefined)[]): string =>
  names.filter((name) => typeof name === 'string' && name !== '').join(' ');
