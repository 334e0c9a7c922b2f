import { formatLengthUnit, type LengthUnits } from '../../../base/index.ts';
import type { Catalog, Hardware, Material, Slide } from '../../../catalog/index.ts';

export interface CatalogChoice {
  readonly value: string;
  readonly label: string;
  readonly group?: string | undefined;
}

/** Stands for "none" or "let it be chosen" in a list of choices, where the design says null. */
export const NO_CHOICE = '';

export const choiceOrNull = (value: string): string | null => (value === NO_CHOICE ? null : value);

/** Keeps an id that the catalog does not have in the list, so that a field never shows another one in its place. */
const withPresent = (choices: readonly CatalogChoice[], present: string | null): readonly CatalogChoice[] =>
  present === null || choices.some((choice) => choice.value === present)
    ? choices
    : [...choices, { value: present, label: `${present} (not in the catalog)` }];

const SHEET_GROUPS: Readonly<Record<Material['kind'], string>> = {
  plywood: 'plywood',
  'faced-plywood': 'faced plywood',
  plastic: 'plastic',
  aluminium: 'aluminium',
  composite: 'composite',
};

export const materialChoices = (catalog: Catalog, present: string): readonly CatalogChoice[] =>
  withPresent(
    [...catalog.materials.values()].map(({ id, name, kind }) => ({
      value: id,
      label: name,
      group: SHEET_GROUPS[kind],
    })),
    present,
  );

export const hardwareChoices = (
  catalog: Catalog,
  kinds: readonly Hardware['kind'][],
  present: string | null,
  none: string,
): readonly CatalogChoice[] => [
  { value: NO_CHOICE, label: none },
  ...withPresent(
    [...catalog.hardware.values()]
      .filter(({ kind }) => kinds.includes(kind))
      .map(({ id, name }) => ({ value: id, label: name })),
    present,
  ),
];

export const slideChoices = (
  catalog: Catalog,
  mounts: readonly Slide['mount'][],
  present: string | null,
): readonly CatalogChoice[] => [
  { value: NO_CHOICE, label: 'chosen by load and depth' },
  ...withPresent(
    [...catalog.slides.values()]
      .filter(({ mount }) => mounts.includes(mount))
      .map(({ id, name }) => ({ value: id, label: name })),
    present,
  ),
];

/** Lengths that the slide comes in, or any slide for the mounting where none is chosen. */
export const slideLengthChoices = (
  catalog: Catalog,
  mounts: readonly Slide['mount'][],
  slide: string | null,
  present: number | null,
  units: LengthUnits,
): readonly CatalogChoice[] => {
  const chosen = slide === null ? undefined : catalog.slides.get(slide);
  const from = chosen ? [chosen] : [...catalog.slides.values()].filter(({ mount }) => mounts.includes(mount));
  const lengths = new Set([...from.flatMap(({ lengthsMm }) => lengthsMm), ...(present === null ? [] : [present])]);
  return [
    { value: NO_CHOICE, label: 'the longest that fits' },
    ...[...lengths].sort((a, b) => a - b).map((mm) => ({ value: String(mm), label: formatLengthUnit(mm, units) })),
  ];
};

const DEVICE_GROUPS: Readonly<Record<string, string>> = {
  radio: 'radios',
  head: 'control heads',
  deck: 'radio decks',
  speaker: 'speakers',
  socket: 'sockets',
  usb: 'charging sockets',
  switch: 'switches',
  screen: 'screens and gauges',
  charger: 'chargers',
  light: 'lights',
  blank: 'blanks',
  hub: 'network and sound',
  fan: 'fans',
};

export const deviceChoices = (catalog: Catalog, present: string | null): readonly CatalogChoice[] =>
  withPresent(
    [...catalog.devices.values()].map(({ id, name, kind }) => ({
      value: id,
      label: name,
      group: DEVICE_GROUPS[kind] ?? kind,
    })),
    present,
  );
