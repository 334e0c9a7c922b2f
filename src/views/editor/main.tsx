import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow-condensed/latin-500.css';
import '@fontsource/barlow-condensed/latin-600.css';
import './tokens.css';
import './base.css';
import './print.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startEditor } from './frame/start-editor.ts';
import { Window } from './frame/window.tsx';
import { startTheme } from './parts/index.ts';

startTheme();

const root = document.getElementById('root');
if (!root) throw new Error('the page has no place for the window');
const { editor, desk, bench } = await startEditor();
createRoot(root).render(
  <StrictMode>
    <Window editor={editor} desk={desk} bench={bench} />
  </StrictMode>,
);
