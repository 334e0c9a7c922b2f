/** A number kept in this browser for the comfort of the next visit; a browser that forbids storage forgets it. */
export const remembered = (key: string, otherwise: number): number => {
  try {
    const stored = localStorage.getItem(key);
    const value = stored === null ? Number.NaN : Number(stored);
    return Number.isFinite(value) ? value : otherwise;
  } catch {
    return otherwise;
  }
};

export const rememberNumber = (key: string, value: number): void => {
  try {
    localStorage.setItem(key, String(value));
  } catch {
    // Comfort only: nothing is lost.
  }
};
