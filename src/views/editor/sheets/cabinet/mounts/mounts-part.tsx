import { useEffect, useRef } from 'react';
import {
  addMount,
  changeMount,
  type Design,
  freshMount,
  type Mount,
  removeMount,
} from '../../../../../design/index.ts';
import { solveFitOut } from '../../../../../fitout/index.ts';
import { Button, quantityText } from '../../../parts/index.ts';
import { useBench } from '../../../state/bench.ts';
import { useAdd } from '../../../state/use-add.ts';
import { useEditor } from '../../../state/use-editor.ts';
import { useNames } from '../../../state/use-names.ts';
import { useUnits } from '../../../state/use-units.ts';
import sheet from '../../sheet.module.css';
import { PieceCard } from '../piece-card.tsx';
import settings from '../settings/settings.module.css';
import { useCabinet } from '../use-cabinet.ts';
import { MountFields } from './mount-fields.tsx';
import { setAgainst } from './set-against.ts';

/** What is hung outside a cabinet most often, by the device that it begins with. */
const ADDS = [
  { label: 'Add a speaker', device: 'speaker-hatch' },
  { label: 'Add a light', device: 'light-strip-500' },
  { label: 'Add a switch', device: 'switch-panel-6' },
] as const;

const MountCard = ({ mount }: { readonly mount: Mount }) => {
  const { editor } = useCabinet();
  const { catalog } = useBench();
  const { nameOf } = useNames();
  const { edit } = editor.getState();
  const device = catalog.devices.get(mount.device);
  const words = mount.name === '' ? (device?.name ?? mount.device) : mount.name;
  const carrier = mount.on === null ? 'on the vehicle' : `on ${nameOf(mount.on)}`;
  const units = useUnits();
  const draws = device && device.amps.run > 0 ? `, ${quantityText(device.amps.run, 'A', units)}` : '';
  const about = device ? `${carrier}, ${quantityText(device.massKg, 'kg', units)}${draws}` : carrier;
  return (
    <PieceCard
      within={[]}
      id={mount.id}
      words={words}
      about={about}
      onRemove={() => edit('take a mount off', (now) => removeMount(now, mount.id))}
    >
      <MountFields mount={mount} onChange={(step, change) => edit(step, (now) => changeMount(now, mount.id, change))} />
    </PieceCard>
  );
};

/** Devices on closures, on the trim and on the outside of carcasses: they ride, weigh and draw current where they hang. */
export const MountsPart = () => {
  const { design, selection, catalog, rules } = useCabinet();
  const addNew = useAdd();
  const space = useEditor((state) => (state.judgement?.space.ok ? state.judgement.space.value : null));
  // Set against its closure in the same step that adds it; it is solved alone for that.
  const placed = (now: Design, device: string): Omit<Mount, 'id'> => {
    const isLetIn = (catalog.devices.get(device)?.cutout.shape ?? 'none') !== 'none';
    const fresh = { ...freshMount(now, device), letIn: isLetIn };
    const alone = addMount({ ...now, cabinet: { carcasses: [], braces: [] }, mounts: [] }, fresh);
    const fitOut = solveFitOut(alone.design, catalog, rules);
    const at = space && setAgainst(alone.design, alone.id, fitOut, space);
    return at ? { ...fresh, at } : fresh;
  };
  const list = useRef<HTMLUListElement>(null);
  const shown = design.mounts.find(({ id }) => selection.includes(id))?.id ?? null;
  // A mount that was chosen in the bay or in a finding comes into view.
  useEffect(() => {
    if (shown !== null) list.current?.querySelector('[data-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [shown]);
  return (
    <section className={settings.settings}>
      <h3 className={settings.subhead}>On the hatch, the trim and outside the carcasses</h3>
      <ul ref={list} className={sheet.group} aria-label="Mounts" hidden={design.mounts.length === 0}>
        {design.mounts.map((mount) => (
          <MountCard key={mount.id} mount={mount} />
        ))}
      </ul>
      <div className={sheet.head}>
        {ADDS.map(({ label, device }) => (
          <Button
            key={device}
            small
            onClick={() => addNew(label.toLowerCase(), (now) => addMount(now, placed(now, device)))}
          >
            {label}
          </Button>
        ))}
      </div>
    </section>
  );
};
