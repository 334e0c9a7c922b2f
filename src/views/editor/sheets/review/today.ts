const NAME_KEY = 'hatchwright-name';

/** The name that was last written here, so that nobody types it twice. */
export const rememberedName = (): string => {
  try {
    return localStorage.getItem(NAME_KEY) ?? '';
  } catch {
    return '';
  }
};

export const rememberName = (name: string): void => {
  try {
    localStorage.setItem(NAME_KEY, name);
  } catch {
    // The name is then typed again next time.
  }
};

/** The day as it is written in the design: year, month, day. */
export const today = (): string => {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};
