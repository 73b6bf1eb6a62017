import { describe, expect, test } from 'vitest';
import { isolated, levelsOf, turned, visualOrder, withoutIsolates } from '../../../../shared/report/steps/bidi.ts';

/** Capitals stand for letters written from right to left, as the annex has it: each becomes one of Hebrew's. */
const hebrew = (text: string) => text.replace(/[A-Z]/g, (c) => String.fromCharCode(0x5d0 + c.charCodeAt(0) - 65));
const capitals = (text: string) =>
  text.replace(/[\u05d0-\u05ea]/g, (c) => String.fromCharCode(c.charCodeAt(0) - 0x5d0 + 65));
const [RLI, LRI, PDI] = ['\u2067', '\u2066', '\u2069'];
const levels = (text: string) => Array.from(levelsOf(hebrew(text)) ?? []).join('');
const shown = (text: string) => {
  const written = Array.from(withoutIsolates(text));
  return visualOrder(Array.from(levelsOf(hebrew(text)) ?? written.map(() => 0)))
    .map((i) => written[i])
    .join('');
};

describe('UAX #9, 3.4: the annex’s own examples of resolved levels and of the order shown', () => {
  test.each([
    ['car means CAR.', '00000000001110', 'car means RAC.'],
    [`${RLI}car MEANS CAR.${PDI}`, '22211111111111', '.RAC SNAEM car'],
    [
      `he said “${RLI}car MEANS CAR${PDI}.” “${RLI}IT DOES${PDI},” she agreed.`,
      '00000000022211111111110000111111100000000000000',
      'he said “RAC SNAEM car.” “SEOD TI,” she agreed.',
    ],
  ])('%s', (text, resolved, order) => {
    expect(levels(text)).toBe(resolved);
    expect(shown(text)).toBe(order);
  });

  test('DID YOU SAY ’he said “car MEANS CAR”‘?, in a paragraph from right to left: the order shown, from the levels resolved there', () => {
    const text = `DID YOU SAY ’${LRI}he said “${RLI}car MEANS CAR${PDI}”${PDI}‘?`;
    const written = Array.from(withoutIsolates(text));
    const resolved = Array.from('11111111111112222222224443333333333211', Number);
    expect(
      visualOrder(resolved)
        .map((i) => written[i])
        .join(''),
    ).toBe('?‘he said “RAC SNAEM car”’ YAS UOY DID');
  });
});

test('UAX #9, L4: brackets from right to left are drawn by their counterparts, letters keep their points', () => {
  expect(turned(' (3] ')).toBe(' [3) ');
  expect(turned('שָׁל')).toBe('לשָׁ');
});

const listed = (put: (name: string) => string) =>
  shown(capitals(`${['TERN', 'GULL'].map((name) => put(hebrew(name))).join(' · ')} case 3`));

test('UAX #9, 2.4: two names in a list keep their order when each is isolated, and change places when not', () => {
  expect(listed(isolated)).toBe('NRET · LLUG case 3');
  expect(listed((name) => name)).toBe('LLUG · NRET case 3');
});

test('a paragraph without a letter from right to left has no levels; one of Hebrew alone begins at the right', () => {
  expect(levelsOf('Zoë (24), case 3')).toBeNull();
  expect(isolated('Zoë')).toBe('Zoë');
  expect(shown('TERN.')).toBe('.NRET');
  expect(shown('TERN throws.')).toBe('NRET throws.');
});
