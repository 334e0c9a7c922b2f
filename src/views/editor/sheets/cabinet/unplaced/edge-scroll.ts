/** Within this of its upper or lower edge, a sheet scrolls while something is dragged over it. */
const EDGE_PX = 44;
const STEP_PX = 16;

const scrollable = (element: Element | null): Element | null => {
  for (let at = element; at; at = at.parentElement) if (at.scrollHeight > at.clientHeight + 1 && scrolls(at)) return at;
  return null;
};

const scrolls = (element: Element): boolean => /auto|scroll/.test(getComputedStyle(element).overflowY);

/** Scrolls the sheet around an element when the pointer comes near its upper or lower edge. */
export const edgeScroll = (inside: Element, y: number): void => {
  const sheet = scrollable(inside.closest('[data-sheet]')?.parentElement ?? null);
  if (!sheet) return;
  const { top, bottom } = sheet.getBoundingClientRect();
  if (y < top + EDGE_PX) sheet.scrollTop -= STEP_PX;
  else if (y > bottom - EDGE_PX) sheet.scrollTop += STEP_PX;
};
