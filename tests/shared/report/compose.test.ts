import { describe, expect, test } from 'vitest';
import { readsAs } from '../../../shared/assess/standing.ts';
import { movementById } from '../../../shared/knowledge/movements/index.ts';
import { measureById } from '../../../shared/knowledge/measures/index.ts';
import { placeReport, type ReportRequest } from '../../../shared/report/compose.ts';
import type { PlacedReport } from '../../../shared/report/page.ts';
import { elementsOf, textOfPlaced, textOfReport } from '../../support/readPages.ts';
import { SAMPLE_CREATED_AT, SAMPLE_SHA256, sampleAssessment, sampleCase, sampleId } from '../../support/sampleCase.ts';
import { squareMetrics } from './squareMetrics.ts';

function place(more: Partial<ReportRequest>): PlacedReport {
  return placeReport({
    file: sampleCase(),
    assessment: sampleAssessment(),
    kind: 'study',
    paper: 'a4',
    metrics: squareMetrics,
    createdAt: SAMPLE_CREATED_AT,
    caseSha256: SAMPLE_SHA256,
    ...more,
  });
}
const textOf = (more: Partial<ReportRequest>): string => textOfReport(place(more));

test('law: the same request gives the same pages', () => {
  expect(JSON.stringify(place({}))).toBe(JSON.stringify(place({})));
});

test('phases stand in the order of the movement', () => {
  const headings = elementsOf(place({})).filter((placed) => placed.role === 'H3');
  const phases = movementById('handball-jump-throw')?.phases.map((phase) => phase.label) ?? [];
  const found = headings.map((placed) => textOfPlaced(placed).trim()).filter((label) => phases.includes(label));
  expect(found).toEqual(phases);
});

test('a report names app, kernel and rules, and the case by its SHA-256', () => {
  const report = place({});
  expect(textOfReport(report)).toMatch(
    /Caseframe \d+\.\d+\.\d+, kernel \d+\.\d+\.\d+, rules \d+\.\d+\.\d+, battery general 1\./,
  );
  expect(report.keywords).toContain(SAMPLE_SHA256);
});

test('the standing caution is on every page and in full at the end', () => {
  const report = place({});
  for (const page of report.pages) {
    const footer = page.content.find((placed) => placed.id.startsWith('footer'));
    expect(JSON.stringify(footer)).toContain('Screening is not diagnosis.');
  }
  expect(textOfReport(report)).toContain('Nothing here is a clearance to train or to play.');
});

test('only invented cases say that they are', () => {
  const file = sampleCase();
  expect(textOf({})).toContain('Invented data');
  expect(
    JSON.stringify(place({ file: { ...file, case: { ...file.case, isInvented: false } } })).toLowerCase(),
  ).not.toContain('invented data');
});

const landing = 'throw/landing-knee';

describe('the practitioner’s decisions', () => {
  test('a rewording of a finding that has changed since is not printed; the finding asks to be decided again', () => {
    const assessment = sampleAssessment();
    const findings = assessment.findings.map((finding) =>
      finding.key === landing
        ? { ...finding, outcome: 'replaced' as const, intervention: 'Sitting drills only.' }
        : finding,
    );
    const text = textOf({ assessment: { ...assessment, findings } });
    expect(text).not.toContain('Split squats with a slow way down');
    expect(text).toContain('Sitting drills only.');
    expect(text).toContain('to be decided again');
  });

  test('a rewording of what is stopped is never printed as advice', () => {
    const file = sampleCase();
    const assessment = sampleAssessment();
    const stopped = assessment.findings.find((finding) => finding.outcome === 'stopped');
    if (stopped === undefined) throw new Error('the sample has a stopped finding');
    const decision = {
      id: sampleId(60),
      caseId: file.case.id,
      findingKey: stopped.key,
      decision: 'reworded' as const,
      wording: 'Overhead throws at full speed.',
      reason: '',
      decidedOutcome: stopped.outcome,
      decidedText: readsAs(stopped),
    };
    const text = textOf({ file: { ...file, findingDecisions: [...file.findingDecisions, decision] } });
    expect(text).not.toContain('Overhead throws at full speed');
    expect(text).toContain('nothing is suggested here until it is cleared');
  });

  test('what was set aside is no step to work on', () => {
    expect(textOf({})).not.toContain('Run-up drills with a tall last step');
  });
});

test('law: withheld advice is in no mark and no alternative text of any kind of report', () => {
  for (const kind of ['client', 'study', 'referral'] as const) {
    const report = place({ kind });
    const everything = `${textOfReport(report)} ${elementsOf(report)
      .map((placed) => placed.alt)
      .join(' ')}`;
    for (const { withheld } of sampleAssessment().findings) {
      if (withheld !== null) expect(everything).not.toContain(withheld.text.split(' ').slice(0, 3).join(' '));
    }
  }
});

/** The sample under a real-looking name, written into several fields. */
const named = () => {
  const file = sampleCase();
  return {
    ...file,
    athlete: {
      ...file.athlete,
      name: 'Signe Strandskov',
      isPseudonym: false,
      goals: 'Signe wants to throw again, says SIGNE STRANDSKOV.',
    },
    case: { ...file.case, question: 'May Ms Strandskov throw?' },
    movementTrials: file.movementTrials.map((trial) => ({ ...trial, label: 'Signe, throw 3' })),
  };
};

describe('de-identified', () => {
  test('law: no part of the name is left in any mark, alternative text or metadata of a study', () => {
    const everything = JSON.stringify(place({ file: named(), kind: 'study' }));
    expect(everything).not.toMatch(/signe|strandskov/i);
    expect(everything).not.toContain('2003-05-14');
    expect(everything).not.toMatch(/14\W+May\W+2003/);
    expect(textOf({ file: named(), kind: 'study' })).toContain('May Ms the athlete throw?');
  });

  test('a client report keeps the name unless asked; a study keeps it if asked', () => {
    expect(textOf({ file: named(), kind: 'client' })).toContain('Signe Strandskov');
    expect(textOf({ file: named(), kind: 'client', deidentify: true })).not.toContain('Strandskov');
    expect(textOf({ file: named(), kind: 'study', deidentify: false })).toContain('Strandskov');
  });

  test('a name inside another word stays: Ann in Annual', () => {
    const file = named();
    const text = textOf({
      kind: 'study',
      file: { ...file, athlete: { ...file.athlete, name: 'Ann Bo', goals: 'Annual goal for Ann.' } },
    });
    expect(text).toContain('Annual goal for the athlete.');
  });
});

test('an empty case still says what is missing, and claims nothing', () => {
  const file = sampleCase();
  const empty = {
    ...file,
    case: { ...file.case, practitioner: '', question: '' },
    athlete: {
      ...file.athlete,
      birthDate: null,
      massKg: null,
      statureM: null,
      sport: '',
      position: '',
      level: '',
      goals: '',
      dominantSide: null,
      hasRedFlags: null,
      consentOn: null,
    },
    injuries: [],
    screeningSessions: [],
    screeningResults: [],
    jumpTests: [],
    jumpTrials: [],
    movementTrials: [],
    trialEvents: [],
    findingDecisions: [],
  };
  const assessment = { ...sampleAssessment(), facts: [], findings: [], checks: [], stops: [], missing: ['body mass'] };
  const study = textOf({ file: empty, assessment });
  expect(study).toContain('age not recorded');
  expect(study).toContain('None recorded. That is not the same as none.');
  expect(study).toContain('Nothing recorded says stop. That is not a clearance.');
  expect(study).toContain('Body mass');
  expect(textOf({ file: empty, assessment, kind: 'client' })).toContain('Your age was not recorded.');
  expect(textOf({ file: empty, assessment, kind: 'referral' })).toContain('Addressee not recorded.');
  expect(textOf({ file: empty, assessment, kind: 'study' })).toContain('No screening was done.');
});

const client = (more: Partial<ReportRequest> = {}) => textOf({ kind: 'client', ...more });

describe('the client report', () => {
  test('at most three things to work on, each with the day of its re-test (28 days after 18 November 2026)', () => {
    const assessment = sampleAssessment();
    const one = assessment.findings.find(({ key }) => key === landing);
    if (one === undefined) throw new Error('the sample has this finding');
    const retest = { measure: 'x', label: 'Knee bend', afterDays: 28 };
    const findings = [1, 2, 3, 4, 5].map((n) => ({
      ...one,
      key: `${n}`,
      outcome: 'intervention' as const,
      kind: 'intervention' as const,
      takenOn: '2026-11-18',
      retest,
      drill: null,
      wording: {
        ...one.wording,
        athlete: { finding: '', intervention: `Exercise ${n}, three sets of eight.`, adjustments: [] },
      },
    }));
    const text = client({ assessment: { ...assessment, stops: [], findings } });
    expect(text).toContain('Three things to work on');
    expect(text).toContain(
      '3. Follow-through and landing. Exercise 3, three sets of eight. We test this again on or after 16 December 2026.',
    );
    expect(text).not.toContain('Exercise 4');
    expect(text).toContain('2 more things can wait');
  });

  test('what to leave alone names the limit and who can clear it; nothing of working, sources or raw tables is left', () => {
    const text = client();
    expect(text).toContain('What to leave alone for now');
    expect(text).toContain('No straight-arm blocking');
    expect(text).toContain('Who can clear it: a physiotherapist');
    expect(text).not.toMatch(/Working|Sources|Trial by trial|Evidence:/);
  });

  test('a limit on file stands once, and holds beside a clearance of the injury', () => {
    const file = sampleCase();
    const injuries = file.injuries.map((injury) => ({
      ...injury,
      restrictions: injury.condition === 'ankle-sprain' ? 'Brace for all jumping.' : injury.restrictions,
    }));
    const assessment = sampleAssessment();
    const findings = assessment.findings.map((finding) => ({
      ...finding,
      wording: {
        ...finding.wording,
        athlete: { ...finding.wording.athlete, adjustments: ['Restriction on file: Brace for all jumping.'] },
      },
    }));
    const text = client({ file: { ...file, injuries }, assessment: { ...assessment, findings } });
    expect(text.match(/Brace for all jumping/g)).toHaveLength(1);
    expect(text).not.toContain('Restriction on file');
  });

  test('who must be seen reads it in plain words at the head, with what to do, and not a second time', () => {
    const assessment = sampleAssessment();
    const one = assessment.findings.find(({ key }) => key === landing);
    if (one === undefined) throw new Error('the sample has this finding');
    const athlete = {
      finding: 'A test of your arm hurt: 3 of 10.',
      intervention: 'Have it looked at.',
      adjustments: [],
    };
    const referral = {
      ...one,
      key: 'r',
      outcome: 'referral' as const,
      kind: 'referral' as const,
      movement: 'any' as const,
      trialId: null,
      side: 'right' as const,
      intervention: 'Stop that test.',
      drill: null,
      wording: { ...one.wording, athlete },
    };
    const text = client({ assessment: { ...assessment, findings: [referral] } });
    expect(text).toContain('Right side. A test of your arm hurt: 3 of 10. Have it looked at.');
    expect(text.match(/A test of your arm hurt/g)).toHaveLength(1);
  });

  test('no number below zero, whose sign means nothing to a reader who was not told what zero is', () => {
    const assessment = sampleAssessment();
    const findings = assessment.findings.map((finding) => ({
      ...finding,
      wording: {
        ...finding.wording,
        athlete: {
          ...finding.wording.athlete,
          finding: 'The ball leaves near the top: −32\u00a0ms. Keep that timing.',
        },
      },
    }));
    const text = client({ assessment: { ...assessment, findings } });
    expect(text).toContain('The ball leaves near the top. Keep that timing.');
    expect(text).not.toContain('−32');
  });

  test('Vairo 2012, table 4, is of men: its range is not drawn for a woman; nor one of adults under 16 or from 65 on (convention)', () => {
    const file = sampleCase();
    const [first] = file.screeningResults;
    if (first === undefined) throw new Error('the sample was screened');
    const turned = (side: 'left' | 'right', n: number) => ({
      ...first,
      id: sampleId(n),
      itemId: 'shoulder-internal-rotation',
      side,
      valueSi: 1,
      isPositive: null,
    });
    const screeningResults = [...file.screeningResults, turned('left', 950), turned('right', 951)];
    const of = (referenceSex: 'female' | 'male', birthDate = '2000-01-01') =>
      client({ file: { ...file, screeningResults, athlete: { ...file.athlete, referenceSex, birthDate } } });
    expect(of('male')).toContain('young active men');
    for (const other of ['2012-01-01', '1950-01-01']) expect(of('male', other)).not.toContain('young active men');
    expect(of('female')).not.toContain('young active men');
  });

  test('a measure taken again is judged by the minimal detectable change published for it', () => {
    const assessment = sampleAssessment();
    const lunge = assessment.facts[0];
    if (lunge?.value.kind !== 'number' || !('value' in lunge.value.reading)) throw new Error('the sample begins so');
    const reading = { ...lunge.value.reading, unit: 'm' as const };
    const now = { ...lunge, measure: 'wblt.distance', displayUnit: 'cm' as const, takenOn: '2026-11-18' };
    const mdc = measureById(now.measure)?.error?.mdc ?? Number.NaN; // in cm
    const earlier = (cm: number) => ({
      ...now,
      key: 'earlier',
      takenOn: '2026-05-01',
      value: { kind: 'number' as const, reading: { ...reading, value: reading.value - cm / 100 } },
    });
    const said = (cm: number) =>
      client({ assessment: { ...assessment, facts: [{ ...now, value: { kind: 'number', reading } }, earlier(cm)] } });
    expect(said(mdc + 0.1)).toContain('This is a real change.');
    expect(said(mdc - 0.1)).toContain('too small to be sure of');
    expect(client()).not.toContain('What has changed since last time');
  });
});
