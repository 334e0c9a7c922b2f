import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export const THEMES = ['system', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

interface ThemeState {
  readonly chosen: Theme;
  /** What is on screen: the choice, or what the system says. */
  readonly shown: 'light' | 'dark';
  readonly choose: (theme: Theme) => void;
}

const KEY = 'hatchwright-theme';

const remembered = (): Theme => {
  try {
    const stored = localStorage.getItem(KEY);
    return THEMES.find((theme) => theme === stored) ?? 'system';
  } catch {
    // A browser that forbids storage still shows its own theme.
    return 'system';
  }
};

const remember = (theme: Theme): void => {
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // The choice then lasts as long as the page.
  }
};

const systemIsDark = (): boolean => globalThis.matchMedia?.('(prefers-color-scheme: dark)').matches ?? false;

const shownFor = (theme: Theme): 'light' | 'dark' => (theme === 'system' ? (systemIsDark() ? 'dark' : 'light') : theme);

/** The colours in use, for the page's root element and for whoever paints outside of style sheets. */
export const themeStore = createStore<ThemeState>()((set) => ({
  chosen: 'system',
  shown: 'light',
  choose: (chosen) => {
    remember(chosen);
    set({ chosen, shown: shownFor(chosen) });
  },
}));

/** Puts the theme on the root element and keeps it there. Called once, before the first drawing. */
export const startTheme = (): void => {
  const write = (): void => {
    document.documentElement.dataset.theme = themeStore.getState().shown;
  };
  const chosen = remembered();
  themeStore.setState({ chosen, shown: shownFor(chosen) });
  write();
  themeStore.subscribe(write);
  globalThis.matchMedia?.('(prefers-color-scheme: dark)').addEventListener('change', () => {
    const { chosen: now } = themeStore.getState();
    themeStore.setState({ shown: shownFor(now) });
  });
};

export const useTheme = (): ThemeState => useStore(themeStore);
