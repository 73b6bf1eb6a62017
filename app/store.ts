import { configureStore } from '@reduxjs/toolkit';
import { useDispatch, useSelector, useStore } from 'react-redux';
import { api, editQueue, onCaseChanged } from './api.ts';
import { selectionSlice } from './case/selectionSlice.ts';
import { preferencesSlice } from './workbench/preferences.ts';

export const store = configureStore({
  reducer: {
    [api.reducerPath]: api.reducer,
    [preferencesSlice.name]: preferencesSlice.reducer,
    [selectionSlice.name]: selectionSlice.reducer,
  },
  middleware: (defaults) => defaults().concat(api.middleware),
  // What is typed must come back to its field in the same event. Told a frame later, React would first put the old
  // text back, and quick typing would lose letters.
  enhancers: (defaults) => defaults({ autoBatch: false }),
});

export type RootState = ReturnType<typeof store.getState>;
export const useAppDispatch = useDispatch.withTypes<typeof store.dispatch>();
export const useAppSelector = useSelector.withTypes<RootState>();
export const useAppStore = useStore.withTypes<typeof store>();

const refetchCase = (caseId: string) =>
  store.dispatch(api.util.invalidateTags([{ type: 'Case', id: caseId }, 'Shelf']));

/** Newest revision of each case that this window made or read itself. */
const knownRevision = (caseId: string) =>
  api.endpoints.openCase.select(caseId)(store.getState()).data?.edits.revision ?? -1;

editQueue.onAnswer((caseId, answer) => {
  if (!answer.ok) {
    refetchCase(caseId);
    return;
  }
  store.dispatch(
    api.util.updateQueryData('openCase', caseId, (open) => {
      open.edits = answer.value;
    }),
  );
});

// Main also announces the changes this window made; those are on screen already and must not be read again.
onCaseChanged(async (caseId, revision) => {
  await editQueue.settled();
  if (revision > knownRevision(caseId)) refetchCase(caseId);
  else store.dispatch(api.util.invalidateTags(['Shelf']));
});
