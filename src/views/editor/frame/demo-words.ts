/** What each demo design is, in a line, by its name; a file without one shows its name alone. */
export const DEMO_WORDS: Readonly<Record<string, string>> = {
  'harrow-fell': 'Large utility, battalion chief: two carcasses at the hatch.',
  quillmoor: 'Mid-size utility, duty officer: one low carcass across the back.',
  'skerrow-gap': 'Pickup with a cap: a carcass at the tailgate and one across the bed that faces it.',
  'ostrel-moor': 'High van: stores and a command desk along an aisle, a tray at the rear.',
  'ten-faults': 'Harrow Fell made wrong in ten ways, to see each of them found.',
};
