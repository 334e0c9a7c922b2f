import { type KeyboardEvent, lazy, Suspense, useCallback, useEffect, useMemo, useState } from 'react';
import { Button, WhenSeen } from '../../parts/index.ts';
import { actionOfKey, openingActions } from './actions/opening-actions.ts';
import { OpeningMenu } from './actions/opening-menu.tsx';
import styles from './cabinet.module.css';
import { CarcassTabs, useAddCarcass } from './carcass-tabs.tsx';
import { FaceMap } from './face/face-map.tsx';
import { InsidePlan } from './inside/inside-plan.tsx';
import { ChosenHead } from './settings/chosen-head.tsx';
import { Settings } from './settings/settings.tsx';
import { createGearDrag } from './unplaced/gear-drag.ts';
import { CarriedGear, UnplacedGear } from './unplaced/unplaced-gear.tsx';
import { CabinetContext, GearDragContext, useCabinet, useCabinetView } from './use-cabinet.ts';

/** Fetched when they come into view. */
const MountsPart = lazy(async () => ({ default: (await import('./mounts/mounts-part.tsx')).MountsPart }));
const LargestPart = lazy(() => import('./largest/largest-part.tsx').then((it) => ({ default: it.LargestPart })));

interface FirstCarcassProps {
  readonly onLargest: () => void;
}

const FirstCarcass = ({ onLargest }: FirstCarcassProps) => {
  const add = useAddCarcass();
  return (
    <div className={styles.first}>
      <h2>No carcass yet</h2>
      <p>
        A carcass is one rigid box of panels that is carried in and bolted down on its own. Start with one; then divide
        its opening into columns and rows, and fit drawers, trays and brackets.
      </p>
      <Button look="main" onClick={add}>
        Add the first carcass
      </Button>
      <Button onClick={onLargest}>Find the largest that fits…</Button>
    </div>
  );
};

const TYPES_TEXT = 'input, textarea, select';

/** The sheet of the third step: the face of a carcass to work on, and the settings of what is selected in it. */
export const CabinetSheet = () => {
  const view = useCabinetView();
  return (
    <CabinetContext value={view}>
      <Sheet />
    </CabinetContext>
  );
};

const Sheet = () => {
  const { editor, chosen, design, selection } = useCabinet();
  const drag = useMemo(createGearDrag, []);
  const [menu, setMenu] = useState<{ readonly x: number; readonly y: number } | null>(null);
  const openMenu = useCallback((x: number, y: number) => setMenu({ x, y }), []);
  const [largest, setLargest] = useState(false);
  const { carcass, opening } = chosen;
  // A selection made elsewhere brings its carcass to the front.
  useEffect(() => {
    const { carcass: shown, showCarcass } = editor.getState();
    if (carcass && carcass.id !== shown) showCarcass(carcass.id);
  }, [editor, carcass]);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (!opening || chosen.gear || (event.target instanceof Element && event.target.closest(TYPES_TEXT))) return;
    const id = actionOfKey(event);
    const action = id && openingActions(editor, opening).find((one) => one.id === id);
    if (!action?.enabled || (id === 'copy' && String(getSelection()) !== '')) return;
    event.preventDefault();
    action.run();
  };
  const search = largest ? (
    <Suspense fallback={null}>
      <LargestPart onClose={() => setLargest(false)} />
    </Suspense>
  ) : null;
  if (!carcass)
    return (
      <div className={styles.sheet}>
        <FirstCarcass onLargest={() => setLargest(true)} />
        {search}
      </div>
    );
  return (
    <GearDragContext value={drag}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys that reach the sheet from anything in it */}
      <div className={styles.sheet} data-sheet="" onKeyDown={onKeyDown}>
        <CarcassTabs shown={carcass} onLargest={() => setLargest(!largest)} />
        {search}
        <FaceMap carcass={carcass} onMenu={openMenu} />
        <UnplacedGear />
        <ChosenHead />
        <InsidePlan />
        <Settings />
        <WhenSeen now={design.mounts.some(({ id }) => selection.includes(id))}>
          <Suspense fallback={null}>
            <MountsPart />
          </Suspense>
        </WhenSeen>
      </div>
      {menu && opening ? <OpeningMenu opening={opening} at={menu} onClose={() => setMenu(null)} /> : null}
      <CarriedGear />
    </GearDragContext>
  );
};
