import { describe, expect, it } from 'vitest';
import { changeDocument, emptyDesign } from '../../../../src/design/index.ts';
import { carryOut, keyCommand, type Press } from '../../../../src/views/editor/frame/keyboard.ts';
import type { FileActions } from '../../../../src/views/editor/state/bench.ts';
import { createDesk } from '../../../../src/views/editor/state/desk.ts';
import { createEditorStore } from '../../../../src/views/editor/state/store.ts';
import { solveNothing } from '../solve-nothing.ts';

const press = (key: string, part: Partial<Press> = {}): Press => ({
  key,
  command: false,
  shift: false,
  typing: false,
  drafting: false,
  ...part,
});

describe('what a key asks for', () => {
  it('undoes and redoes, also from a field that holds nothing uncommitted', () => {
    expect(keyCommand(press('z', { command: true }))).toBe('undo');
    expect(keyCommand(press('Z', { command: true, shift: true }))).toBe('redo');
    expect(keyCommand(press('z', { command: true, typing: true }))).toBe('undo');
  });

  it('leaves undo to the text while something is being typed', () => {
    expect(keyCommand(press('z', { command: true, typing: true, drafting: true }))).toBeNull();
    expect(keyCommand(press('s', { command: true, typing: true, drafting: true }))).toBe('save');
  });

  it('goes to steps by number, but not while typing a number', () => {
    expect(keyCommand(press('3'))).toEqual({ step: 'cabinet' });
    expect(keyCommand(press('3', { typing: true }))).toBeNull();
    expect(keyCommand(press('7'))).toBeNull();
    expect(keyCommand(press('0'))).toBeNull();
  });

  it('finds, helps and backs out', () => {
    expect(keyCommand(press('k', { command: true, typing: true }))).toBe('find');
    expect(keyCommand(press('?', { shift: true }))).toBe('help');
    expect(keyCommand(press('?', { typing: true }))).toBeNull();
    expect(keyCommand(press('Escape', { typing: true }))).toBe('back-out');
  });
});

describe('carrying it out', () => {
  const start = emptyDesign('start', 'in');
  const files = {} as FileActions;

  it('backs out one thing at a time: gesture, feeler line, selection', () => {
    const editor = createEditorStore(start, solveNothing);
    const desk = createDesk();
    editor.getState().select(['gear-1']);
    editor.getState().setFeeler(2);
    editor.getState().beginGesture();
    const left = () => {
      const { gesture, feeler, selection } = editor.getState();
      return [gesture !== null, feeler !== null, selection.length > 0];
    };
    const seen = [left()];
    for (let i = 0; i < 3; i++) {
      carryOut('back-out', editor, desk, files);
      seen.push(left());
    }
    expect(seen).toEqual([
      [true, true, true],
      [false, true, true],
      [false, false, true],
      [false, false, false],
    ]);
  });

  it('takes undo during a gesture for backing out of the gesture', () => {
    const editor = createEditorStore(start, solveNothing);
    const desk = createDesk();
    editor.getState().edit('rename', (design) => changeDocument(design, { title: 'named' }));
    editor.getState().beginGesture();
    editor.getState().previewGesture((design) => changeDocument(design, { title: 'dragged' }));
    carryOut('undo', editor, desk, files);
    expect(editor.getState().history.design.title).toBe('named');
    expect(editor.getState().history.future).toEqual([]);
  });
});
