// takes: the editor's state: fit-out, cargo space, selection, shares, the chosen finding
// gives: the bay, drawn and worked with in three dimensions
// knows: the page and the graphics card
export { Bay } from './bay.tsx';
