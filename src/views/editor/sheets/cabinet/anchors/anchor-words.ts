import type { Anchor } from '../../../../../design/index.ts';

/** What an anchor is called in the list of its carcass. */
export const anchorWords = (anchor: Anchor, index: number): string =>
  anchor.on === 'floor'
    ? `Anchor ${index + 1}, floor`
    : `Anchor ${index + 1}, ${anchor.side === 'back' ? 'back' : `${anchor.side} wall`}`;

/** Load over capacity as shops say it, or what keeps it from being known. */
export const useWords = (use: number | null): string =>
  use === null ? 'not inspected yet' : `${Math.round(use * 100)} % used`;
