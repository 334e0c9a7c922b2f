/** Kinds of device that a hand works or an eye reads. */
export const CONTROL_KINDS: ReadonlySet<string> = new Set(['radio', 'head', 'screen', 'switch', 'deck']);
