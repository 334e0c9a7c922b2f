import { type Catalog, type HouseRules, houseRules, standardCatalog } from '../../../catalog/index.ts';
import type { Design } from '../../../design/index.ts';
import { createFitOutSolver, type FitOut } from '../../../fitout/index.ts';
import { beginning } from '../files/begin.ts';
import { browserClaims, type ClaimHooks, type Claims, soleClaims } from '../files/claims.ts';
import { FIRST_DEMO } from '../files/demos.ts';
import { createKeeper, type Keeper } from '../files/keeper.ts';
import { collectNotes, leaveNote } from '../files/late-note.ts';
import { createSession } from '../files/session.ts';
import { browserVault } from '../files/vault.ts';
import type { Bench } from '../state/bench.ts';
import { createDesk, type DeskStore } from '../state/desk.ts';
import { createEditorStore, type EditorStore } from '../state/store.ts';
import { createEngineClient, type EngineClient } from '../worker/client.ts';
import { connectWorker } from '../worker/connect.ts';

/** Rest before a design is kept, and before ways out are tried. */
const REST_MS = 400;
const LAST_ID = 'hatchwright-last';

const later = (run: () => void, ms: number): (() => void) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

/** This tab's last design first, then this browser's. */
const lastIds = (): readonly string[] => {
  try {
    return [sessionStorage.getItem(LAST_ID), localStorage.getItem(LAST_ID)].filter((id) => id !== null);
  } catch {
    return [];
  }
};

const rememberId = (id: string): void => {
  try {
    sessionStorage.setItem(LAST_ID, id);
    localStorage.setItem(LAST_ID, id);
  } catch {
    // The design is still found under Designs.
  }
};

const claimsOfBrowser = (): Claims =>
  'locks' in navigator ? browserClaims(navigator.locks, new BroadcastChannel('hatchwright')) : soleClaims();

/** The fit-out stage alone: the rest of the flow runs in the worker and stays out of the page. */
const solverFor = (catalog: Catalog): ((design: Design) => FitOut) => {
  const solve = createFitOutSolver(catalog);
  let last: { readonly changes: Design['houseRules']; readonly rules: HouseRules } | null = null;
  return (design) => {
    if (last?.changes !== design.houseRules)
      last = { changes: design.houseRules, rules: houseRules(catalog, design.houseRules) };
    return solve(design, last.rules);
  };
};

const startEngine = (editor: EditorStore, desk: DeskStore): EngineClient => {
  const { setEngine, setLookingForWaysOut, tell } = desk.getState();
  const client = createEngineClient({
    connect: connectWorker,
    onJudged: editor.getState().judged,
    onBusy: (busy) => {
      if (busy || desk.getState().engine.kind !== 'failed') setEngine({ kind: busy ? 'working' : 'ready' });
    },
    onLookingForWaysOut: setLookingForWaysOut,
    onTrouble: (says, again) => {
      if (again) tell('The inspection broke off and was started again.', 'trouble');
      else setEngine({ kind: 'failed', says });
    },
    restMs: REST_MS,
    later,
  });
  let asked: Design | null = null;
  const ask = (): void => {
    const { history, editNumber } = editor.getState();
    if (history.design === asked) return;
    asked = history.design;
    client.ask(asked, editNumber);
  };
  editor.subscribe(ask);
  ask();
  return client;
};

/** Keeps what is unsaved when the page goes away, hidden or closed. */
const keepOnLeaving = (keeper: Keeper): void => {
  const keep = (): void => {
    const unkept = keeper.unkept();
    if (unkept) leaveNote(localStorage, unkept);
    void keeper.flush();
  };
  window.addEventListener('pagehide', keep);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void keeper.flush();
  });
};

/** Everything behind the window: state, keeping, files and the inspection, with the design that was open last. */
export const startEditor = async (): Promise<{
  readonly editor: EditorStore;
  readonly desk: DeskStore;
  readonly bench: Bench;
}> => {
  const catalog = standardCatalog();
  const vault = browserVault();
  const newId = (): string => crypto.randomUUID();
  await collectNotes(localStorage, vault).catch(() => undefined);
  const begun = await beginning(vault, lastIds(), newId);
  const editor = createEditorStore(begun.design, solverFor(catalog));
  const desk = createDesk();
  const claims = claimsOfBrowser();
  const keeper = createKeeper({ editor, vault, now: Date.now, later, restMs: REST_MS });
  const hooks: ClaimHooks = { beforeLoss: keeper.flush, onLost: () => keeper.setMine(false) };
  keeper.follow(begun.id, begun.design, await claims.claim(begun.id, hooks));
  rememberId(begun.id);
  if (begun.design.survey.stations.length === 0) editor.getState().setStep('survey');
  if (begun.unreadable) desk.getState().lay({ kind: 'bad-file', ...begun.unreadable });
  const files = createSession({ editor, desk, vault, claims, keeper, newId, remember: rememberId });
  keepOnLeaving(keeper);
  // Whoever comes for the first time sees a finished job, not an empty sheet.
  if (!begun.found && !begun.unreadable) await files.openDemo(FIRST_DEMO);
  const engine = startEngine(editor, desk);
  return { editor, desk, bench: { catalog, files, stopLooking: engine.stopLooking } };
};
