import { useCallback } from 'react';
import { useAppDispatch, useAppSelector } from '../store.ts';
import { type Selection, selectionSlice } from './selectionSlice.ts';

export type { Selection } from './selectionSlice.ts';

export function useSelection(): Selection | null {
  return useAppSelector((state) => state.selection);
}

export function useSelect(): (selection: Selection | null) => void {
  const dispatch = useAppDispatch();
  return useCallback((selection) => dispatch(selectionSlice.actions.selected(selection)), [dispatch]);
}

export function isSameSelection(a: Selection | null, b: Selection | null): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
