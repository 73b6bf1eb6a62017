import type { Drill } from './drill.ts';
import { SOURCES } from '../sources/index.ts';

export const loadChanges = {
  'lighter-session': {
    label: 'A lighter session',
    dose: '1 session at half the usual volume',
    progression: 'Back to the usual volume when the jump is back within test error.',
    source: SOURCES.convention,
  },
} as const satisfies Record<string, Drill>;
