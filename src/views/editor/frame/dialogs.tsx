import { lazy, Suspense } from 'react';
import { useDesk } from '../state/use-desk.ts';

const DesignsDialog = lazy(() => import('./designs-dialog.tsx').then((it) => ({ default: it.DesignsDialog })));
const FindDialog = lazy(() => import('./find-dialog.tsx').then((it) => ({ default: it.FindDialog })));
const HelpDialog = lazy(() => import('./help-dialog.tsx').then((it) => ({ default: it.HelpDialog })));
const BadFileDialog = lazy(() => import('./bad-file-dialog.tsx').then((it) => ({ default: it.BadFileDialog })));

/** Whatever lies over the window, loaded when it is first wanted. */
export const Dialogs = () => {
  const dialog = useDesk((desk) => desk.dialog);
  if (!dialog) return null;
  return (
    <Suspense fallback={null}>
      {dialog.kind === 'designs' ? <DesignsDialog /> : null}
      {dialog.kind === 'find' ? <FindDialog /> : null}
      {dialog.kind === 'help' ? <HelpDialog /> : null}
      {dialog.kind === 'bad-file' ? <BadFileDialog name={dialog.name} problems={dialog.problems} /> : null}
    </Suspense>
  );
};
