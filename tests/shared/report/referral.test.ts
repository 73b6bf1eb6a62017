import { describe, expect, test } from 'vitest';
import { FLAG_WORDS } from '../../../shared/knowledge/shoulder/words.ts';
import { blankShoulderRecord } from '../../../shared/model/blank.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { SHOULDER_FLAGS, type ShoulderRecord } from '../../../shared/model/shoulder.ts';
import { placeReport } from '../../../shared/report/compose.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { bodyOf, textOfPlaced, textOfReport } from '../../support/readPages.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase, sampleId } from '../../support/sampleCase.ts';
import { squareMetrics } from './squareMetrics.ts';

/** The letter of the sample, whose unstable shoulder has two episodes; parts of its record as given. */
function letter(record: Partial<ShoulderRecord> | null, more: Partial<CaseFile> = {}): string {
  const file = sampleCase();
  const shoulderRecords =
    record === null ? [] : [{ ...blankShoulderRecord({ id: sampleId(900), injuryId: sampleId(3) }), ...record }];
  const report = placeReport({
    file: { ...file, shoulderRecords, ...more },
    assessment: sampleAssessment(),
    kind: 'referral',
    paper: 'a4',
    metrics: squareMetrics,
    createdAt: SAMPLE_CREATED_AT,
    caseSha256: SAMPLE_SHA256,
  });
  return textOfReport(report);
}

const NO_FLAG = Object.fromEntries(SHOULDER_FLAGS.map((flag) => [flag, false])) as Record<
  (typeof SHOULDER_FLAGS)[number],
  boolean
>;
const INDEX = {
  ageAtSurgeryYears: 19,
  isCompetitive: true,
  isContactOrOverhead: true,
  isHyperlaxShoulder: false,
  headDentVisible: true,
  lowerOutlineLost: false,
} as const;

test('each of the four parts that cannot be told says so and why (promise 3 of the design)', () => {
  const text = letter(null);
  for (const part of ['Frequency', 'Cause', 'Main direction', 'Severity']) {
    expect(text).toMatch(new RegExp(`${part}: cannot tell – \\S`));
  }
  expect(text.indexOf('In one line')).toBeLessThan(text.indexOf('Frequency: cannot tell'));
  expect(text.indexOf('Frequency: cannot tell')).toBeLessThan(text.indexOf('History'));
});

test('Balg & Boileau 2007: 2 + 2 + 1 + 0 + 2 + 0 = 7 points of 10, printed only with all six items', () => {
  expect(letter(INDEX)).toContain('Severity index 7 of 10');
  expect(letter({ ...INDEX, headDentVisible: null })).not.toMatch(/severity index/i);
});

test('every red flag stands under its answer: yes, no, or not asked', () => {
  const text = letter({ ...NO_FLAG, locking: true, tumourSigns: null });
  const [yes, no, open] = [text.indexOf('Yes: '), text.indexOf('No: '), text.indexOf('Not asked or not recorded: ')];
  expect(yes).toBeGreaterThan(0);
  const end = text.indexOf('Health questions', open);
  const under = { yes: text.slice(yes, no), no: text.slice(no, open), open: text.slice(open, end) };
  for (const flag of SHOULDER_FLAGS) {
    const words = FLAG_WORDS[flag].slice(1);
    const place = flag === 'locking' ? 'yes' : flag === 'tumourSigns' ? 'open' : 'no';
    for (const [name, part] of Object.entries(under))
      expect(part.includes(words), `${flag} ${name}`).toBe(name === place);
  }
});

test('where no red flag was asked, one line says so, with a record or without; none is named as if it had been found', () => {
  for (const text of [letter(null), letter({})]) {
    expect(text).toContain(
      `None of the ${SHOULDER_FLAGS.length} red flags of an unstable shoulder was asked or recorded.`,
    );
    expect(text).not.toContain(FLAG_WORDS.locking.slice(1));
    expect(text).toContain('Every red flag of the unstable shoulder answered.');
  }
});

test('an answer that asks for sooner than was stated is said in the first lines (Mitchell 2005: vessel signs are an emergency)', () => {
  const record = { ...sampleCase().case, urgency: 'soon' as const, urgencyReason: 'second episode' };
  const text = letter({ ...NO_FLAG, vesselSigns: true }, { case: record });
  expect(text).toContain('emergency, now');
  expect(text).toContain('That is sooner than stated.');
  expect(letter(NO_FLAG, { case: record })).not.toContain('sooner than stated');
});

describe('examination', () => {
  const test1 = { ...EXAMPLES.provocationTest, injuryId: sampleId(3), test: 'relocation', side: 'right' } as const;

  test('Farber 2006, Lo 2004: apprehension and pain are two answers, each in its own column', () => {
    const text = letter(
      {},
      { provocationTests: [{ ...test1, apprehension: true, painNrs: 0, clunk: null, note: '' }] },
    );
    expect(text).toContain('Apprehension Pain of 10');
    expect(text).toMatch(/Relocation right yes 0 not recorded/);
  });

  const check = { ...EXAMPLES.neurovascularCheck, injuryId: sampleId(3), note: '' };

  test('nerves and vessels before and after: what is missing at one time is said, normal findings are counted and listed', () => {
    const event = { ...EXAMPLES.instabilityEvent, injuryId: sampleId(3), reduction: 'in-hospital' } as const;
    const text = letter(
      {},
      {
        instabilityEvents: [event],
        neurovascularChecks: [
          { ...check, timing: 'after-reduction', axillaryFeeling: 'reduced', radialPulse: 'normal' },
        ],
      },
    );
    expect(text).toContain('Before reduction: not recorded.');
    expect(text).toContain('At assessment: not recorded.');
    expect(text).toContain('reduced: axillary nerve: feeling over the outer deltoid.');
    expect(text).toContain('Nerves and vessels, one by one');
  });
});

test('law of a signed page: wherever a letter breaks, who signs stands on the page of the signature', () => {
  const file = sampleCase();
  const breaks = new Set<number>();
  for (let lines = 0; lines < 60; lines += 1) {
    const athlete = { ...file.athlete, goals: Array.from({ length: lines }, (_, i) => `Line ${i}`).join('\n') };
    const { pages } = placeReport({
      file: { ...file, athlete },
      assessment: sampleAssessment(),
      kind: 'referral',
      paper: 'letter',
      metrics: squareMetrics,
      createdAt: SAMPLE_CREATED_AT,
      caseSha256: SAMPLE_SHA256,
    });
    const signed = pages.find((page) => bodyOf(page).some(({ alt }) => alt?.startsWith('Signature box')));
    if (signed === undefined) return expect.fail('no signature');
    breaks.add(signed.number);
    expect([lines, bodyOf(signed).map(textOfPlaced).join(' ').includes('contact not recorded')]).toEqual([lines, true]);
  }
  // The lines have pushed it over a page's end at least once.
  expect(breaks.size).toBeGreaterThan(1);
  return undefined;
});
