import { describe, expect, test } from 'vitest';
import { runStops } from '../../../app/run/runStops.ts';
import { generalBattery } from '../../../shared/knowledge/screening/generalBattery.ts';
import { emptyCaseFile } from '../../../shared/model/caseLists.ts';
import type { ScreeningResult } from '../../../shared/model/screening.ts';
import { EXAMPLES } from '../../conformance/examples.ts';

// The dossier on screening, section 2: pain in a pattern stops it whatever the grade; so does a positive clearing test.

const session = { ...EXAMPLES.screeningSession, batteryId: 'general', batteryVersion: '1' };
const stops = (fields: Partial<ScreeningResult>) => {
  const result = {
    ...EXAMPLES.screeningResult,
    sessionId: session.id,
    valueSi: null,
    grade: null,
    isPositive: null,
    painNrs: null,
    ...fields,
  };
  const file = {
    ...emptyCaseFile(EXAMPLES.case, EXAMPLES.athlete),
    screeningSessions: [session],
    screeningResults: [result],
  };
  return runStops(file, session.id);
};

describe('stop and be seen', () => {
  for (const { id, hasSides } of generalBattery.items) {
    const side = hasSides ? 'right' : 'none';
    test.each([1, 2, 5, 10])(`pain %i in ${id}`, (painNrs) => {
      const found = stops({ itemId: id, side, painNrs });
      expect(found.some((stop) => stop.itemId === id && stop.words.startsWith('Stop and be seen'))).toBe(true);
    });
    test(`no pain in ${id} stops nobody`, () => expect(stops({ itemId: id, side, painNrs: 0 })).toEqual([]));
  }
  test.each(generalBattery.items.filter(({ kind }) => kind === 'clearing').map(({ id }) => id))(
    'a positive %s',
    (itemId) => {
      expect(stops({ itemId, side: 'none', isPositive: true })).toHaveLength(1);
      expect(stops({ itemId, side: 'none', isPositive: false })).toEqual([]);
    },
  );
});
