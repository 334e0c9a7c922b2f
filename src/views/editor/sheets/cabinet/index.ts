// takes: the editor's state: design, fit-out, selection
// gives: the sheet of the cabinet: the face map with its dimension chains, and the settings of what is selected
// knows: the page
export { CabinetSheet } from './cabinet-sheet.tsx';
