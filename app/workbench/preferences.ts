import { createSlice, type PayloadAction } from '@reduxjs/toolkit';

export const THEMES = ['system', 'light', 'dark'] as const;
export const TEXT_SIZES = [100, 115, 130, 150] as const;

export interface Preferences {
  readonly theme: (typeof THEMES)[number];
  /** Percent of the browser's own text size. */
  readonly textSize: (typeof TEXT_SIZES)[number];
  /** Keys that work without Ctrl or Alt; some people's speech input triggers them by accident. */
  readonly singleKeys: boolean;
}

const DEFAULTS: Preferences = { theme: 'system', textSize: 100, singleKeys: true };
const PLACE = 'caseframe.preferences';

/** Preferences kept on this machine; anything unreadable falls back to the default. */
function stored(): Preferences {
  try {
    const found = JSON.parse(localStorage.getItem(PLACE) ?? '{}') as Partial<Preferences>;
    return {
      theme: THEMES.find((theme) => theme === found.theme) ?? DEFAULTS.theme,
      textSize: TEXT_SIZES.find((size) => size === found.textSize) ?? DEFAULTS.textSize,
      singleKeys: found.singleKeys !== false,
    };
  } catch {
    return DEFAULTS;
  }
}

export const preferencesSlice = createSlice({
  name: 'preferences',
  initialState: stored,
  reducers: {
    changed: (state, action: PayloadAction<Partial<Preferences>>) => ({ ...state, ...action.payload }),
  },
});

/** Shows the preferences on the page and keeps them. */
export function applyPreferences(preferences: Preferences): void {
  const root = document.documentElement;
  root.dataset['theme'] = preferences.theme;
  root.dataset['text'] = String(preferences.textSize);
  localStorage.setItem(PLACE, JSON.stringify(preferences));
}
