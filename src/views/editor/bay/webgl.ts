/** Whether this browser can draw in three dimensions here and now. */
export const canDrawScene = (): boolean => {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null;
  } catch {
    // Some browsers throw where they refuse.
    return false;
  }
};
