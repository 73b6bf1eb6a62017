import { createSlice, type PayloadAction } from '@reduxjs/toolkit';
import type { Kind } from '../../shared/model/records.ts';

/** The one thing on the sheet that the margin speaks of. */
export type Selection =
  | { readonly kind: 'fact'; readonly key: string }
  | { readonly kind: 'finding'; readonly key: string }
  | { readonly kind: 'record'; readonly recordKind: Kind; readonly id: string; readonly field: string | null };

export const selectionSlice = createSlice({
  name: 'selection',
  initialState: null as Selection | null,
  reducers: {
    selected: (_state, action: PayloadAction<Selection | null>) => action.payload,
  },
});
