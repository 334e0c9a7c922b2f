/** A usual slip of the tape as the end of a sentence: It may be … */
const SLIP_WORDS: Readonly<Record<string, string>> = {
  'feet-inches-swapped': 'feet and inches that changed places',
  'feet-for-inches': 'inches written as feet',
  'inches-for-feet': 'feet written as inches',
  'inches-for-mm': 'inches written as millimetres',
  'mm-for-inches': 'millimetres written as inches',
  'cm-for-mm': 'centimetres written as millimetres',
  'mm-for-cm': 'millimetres written as centimetres',
  'hook-at-100': 'a tape held at 100 and not taken off',
  'hook-at-one-inch': 'a tape held at one inch and not taken off',
  'ten-off': 'a slip of ten millimetres',
  'hundred-off': 'a slip of a hundred millimetres',
  'foot-off': 'a slip of one foot',
  'inch-off': 'a slip of one inch',
  'digits-swapped': 'two digits that changed places',
  sign: 'written to the wrong side',
};

/** The words of a slip by its code; empty for none. */
export const saySlip = (slip: string): string => SLIP_WORDS[slip] ?? '';
