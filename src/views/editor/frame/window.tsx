import { lazy, Suspense, useMemo } from 'react';
import { type Bench, BenchContext } from '../state/bench.ts';
import type { DeskStore } from '../state/desk.ts';
import type { EditorStore, StepName } from '../state/store.ts';
import { DeskContext } from '../state/use-desk.ts';
import { EditorContext, useEditor } from '../state/use-editor.ts';
import { Banner } from './banner.tsx';
import { Dialogs } from './dialogs.tsx';
import { useDrop } from './drop.ts';
import { Header } from './header.tsx';
import { useKeyboard } from './keyboard.ts';
import { MarginStrip } from './margin-strip.tsx';
import { SafeArea } from './safe-area.tsx';
import { SHEETS } from './sheets.ts';
import { Split } from './split.tsx';
import { STEP_TITLES } from './step-facts.ts';
import { Tape } from './tape.tsx';
import { Toaster } from './toaster.tsx';
import styles from './window.module.css';

const Bay = lazy(() => import('../bay/index.ts').then((it) => ({ default: it.Bay })));

const Waiting = ({ says }: { readonly says: string }) => <p className={styles.waiting}>{says}</p>;

const BaySide = () => (
  <section className={styles.bay} aria-label="The bay">
    <SafeArea what="The bay">
      <Suspense fallback={<Waiting says="Setting up the bay…" />}>
        <Bay />
      </Suspense>
    </SafeArea>
  </section>
);

/** Sheets whose paper has a head of its own. */
const OWN_HEAD: ReadonlySet<StepName> = new Set(['inspect', 'review']);

const SheetSide = () => {
  const step = useEditor((editor) => editor.step);
  const title = useEditor((editor) => editor.history.design.title);
  const Sheet = SHEETS[step];
  return (
    <section className={styles.sheet} aria-label={`${STEP_TITLES[step]} sheet`}>
      {OWN_HEAD.has(step) ? null : <p className="print-only">{title}</p>}
      <SafeArea key={step} what="This sheet">
        <Suspense fallback={<Waiting says="…" />}>
          <Sheet />
        </Suspense>
      </SafeArea>
    </section>
  );
};

interface WindowProps {
  readonly editor: EditorStore;
  readonly desk: DeskStore;
  readonly bench: Bench;
}

/** The whole window: header, tape of steps, bay beside the sheet, margins along the foot. */
export const Window = ({ editor, desk, bench }: WindowProps) => {
  useKeyboard(editor, desk, bench.files);
  const over = useDrop(bench.files.openDropped);
  const split = useMemo(() => <Split left={<BaySide />} right={<SheetSide />} />, []);
  return (
    <EditorContext value={editor}>
      <DeskContext value={desk}>
        <BenchContext value={bench}>
          <div className={styles.window}>
            <Header />
            <Tape />
            <div>
              <Banner />
            </div>
            <main className={styles.main}>{split}</main>
            <footer>
              <MarginStrip />
            </footer>
          </div>
          <Toaster />
          <Dialogs />
          {over ? <div className={styles.drop}>Let go to open the design</div> : null}
        </BenchContext>
      </DeskContext>
    </EditorContext>
  );
};
