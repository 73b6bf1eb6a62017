import { useEffect, useRef } from 'react';
import { useAppSelector } from '../store.ts';

const IS_MAC = /mac/i.test(navigator.platform);

/** The chord of a place: Alt and a digit; on a Mac Control and a digit, because Option types characters there. */
export const chordWords = (digit: number) => `${IS_MAC ? 'Control' : 'Alt'} + ${digit}`;
export const UNDO_WORDS = IS_MAC ? 'Command + Z' : 'Ctrl + Z';
export const REDO_WORDS = IS_MAC ? 'Command + Shift + Z' : 'Ctrl + Shift + Z';

/** The digit of a chord, or null. By the key's place, so that it works on keyboards where digits need Shift. */
export function chordDigit(event: KeyboardEvent): number | null {
  const isChord = IS_MAC ? event.ctrlKey && !event.altKey : event.altKey && !event.ctrlKey;
  if (!isChord || event.metaKey || event.shiftKey || !event.code.startsWith('Digit')) return null;
  return Number(event.code.slice('Digit'.length));
}

export function isUndo(event: KeyboardEvent): boolean {
  return isCommandZ(event) && !event.shiftKey;
}

export function isRedo(event: KeyboardEvent): boolean {
  return isCommandZ(event) && event.shiftKey;
}

function isCommandZ(event: KeyboardEvent): boolean {
  return (IS_MAC ? event.metaKey : event.ctrlKey) && !event.altKey && event.key.toLowerCase() === 'z';
}

/** Hears keys for the whole window. A listener that returns true has dealt with the key. */
export function useKeys(listener: (event: KeyboardEvent) => boolean): void {
  const latest = useRef(listener);
  useEffect(() => {
    latest.current = listener;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!event.defaultPrevented && !event.isComposing && latest.current(event)) event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

/** A key pressed alone, outside anything one can type in, and only if such keys are wanted (WCAG 2.1.4). */
export function useSingleKey(key: string, action: () => void): void {
  const isWanted = useAppSelector((state) => state.preferences.singleKeys);
  useKeys((event) => {
    const isTyping =
      event.target instanceof Element && event.target.matches('input, textarea, select, [contenteditable]');
    if (!isWanted || isTyping || event.key !== key || event.ctrlKey || event.metaKey || event.altKey) return false;
    action();
    return true;
  });
}
