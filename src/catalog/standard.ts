import devices from '../../assets/catalog/devices.json' with { type: 'json' };
import gear from '../../assets/catalog/gear.json' with { type: 'json' };
import hardware from '../../assets/catalog/hardware.json' with { type: 'json' };
import materials from '../../assets/catalog/materials.json' with { type: 'json' };
import slides from '../../assets/catalog/slides.json' with { type: 'json' };
import rules from '../../assets/rules/house-rules.json' with { type: 'json' };
import { type Catalog, readCatalog } from './catalog.ts';

/** Faults named in the message when our own data files are wrong; more would not be read. */
const NAMED_FAULTS = 5;

let checked: Catalog | null = null;

/**
 * The catalog that comes with the product: generic trade pieces and starting limits. Checked on the first call and
 * remembered. Throws an Error that names the first faults when a data file is wrong, since nothing can be built then.
 */
export const standardCatalog = (): Catalog => {
  if (checked !== null) return checked;
  const read = readCatalog({ materials, slides, hardware, gear, devices, rules });
  if (!read.ok) {
    const named = read.error.slice(0, NAMED_FAULTS).map((fault) => `${fault.at}: ${fault.expected ?? fault.code}`);
    throw new Error(`The standard catalog has ${read.error.length} fault(s): ${named.join('; ')}`);
  }
  checked = read.value;
  return checked;
};
