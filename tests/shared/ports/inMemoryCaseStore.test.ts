import { inMemoryCaseStore } from '../../../shared/ports/inMemoryCaseStore.ts';
import { caseStoreConformance } from '../../conformance/caseStore.ts';

caseStoreConformance('the in-memory case store', async () => {
  const store = inMemoryCaseStore();
  return { store, reopen: async () => store, dispose: () => store.close() };
});
