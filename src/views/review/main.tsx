import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { readData } from './read-data.ts';
import './review.css';

const root = document.getElementById('root');
const data = readData(document.getElementById('review-data')?.textContent ?? '');
if (!root) throw new Error('the page has no root');
if (data) {
  document.title = `${data.title} — review copy`;
  createRoot(root).render(<App data={data} />);
} else root.textContent = 'This file is empty or damaged: ask the shop for the copy again.';
