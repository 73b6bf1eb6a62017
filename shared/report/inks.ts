import type { Ink } from './page.ts';

/** Inks on white paper. Text inks keep a contrast of 4.5 : 1 and more; all stay apart in grey. */
export const INK_ON_PAPER: Readonly<Record<Ink, string>> = {
  ink: '#1d1b18',
  muted: '#565049',
  accent: '#0b4f53',
  tint: '#dde9e8',
  rule: '#a59d91',
  paper: '#ffffff',
};
