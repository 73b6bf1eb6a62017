import { expect, test } from 'vitest';
import { searchText, searchWords } from '../../../shared/ports/searchText.ts';
import { EXAMPLES } from '../../conformance/examples.ts';

test('all that was typed, without ids, hashes, days and instants', () => {
  expect(searchText(EXAMPLES.media)).toBe('force plate, third jump.csv · text/csv');
  expect(searchText(EXAMPLES.case)).toBe(
    '2026-001 · study · R. Quillfeather · physiotherapist · by letter · What limits the throw? · twelve weeks of exercise, kept to',
  );
  expect(searchText(EXAMPLES.findingDecision)).not.toContain('00000000');
});

test('words hold a letter or a digit; signs alone are none', () => {
  expect(searchWords('  orla  2026-001 — * 肩 ')).toEqual(['orla', '2026-001', '肩']);
});
