import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { openSqliteCaseStore } from '../../../main/store/sqliteCaseStore.ts';
import { caseStoreConformance } from '../../conformance/caseStore.ts';

const HOLDER = { host: 'test', pid: process.pid, since: '' };

caseStoreConformance('the SQLite case store', async () => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-store-'));
  let store = openSqliteCaseStore(folder, HOLDER);
  return {
    store,
    reopen: async () => {
      await store.close();
      store = openSqliteCaseStore(folder, HOLDER);
      return store;
    },
    dispose: async () => {
      await store.close();
      fs.rmSync(folder, { recursive: true });
    },
  };
});
