import * as fc from 'fast-check';
import type { Assessment, Finding } from '../../shared/assess/assessment.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { sampleAssessment, sampleCase } from './sampleCase.ts';

/** Text as people type it and as they should not: long words, line feeds, accents, right-to-left, emoji, nothing at all. */
const anyText = fc.oneof(
  fc.constant(''),
  fc.string({ unit: 'grapheme', maxLength: 300 }),
  fc.array(fc.lorem({ maxCount: 12 }), { maxLength: 30 }).map((some) => some.join('\n')),
  fc.constantFrom(
    'Donaudampfschifffahrtsgesellschaft'.repeat(12),
    'שלום עולם',
    'محمد علي',
    'Nour نور (24), דנה כהן-לוי 3, علی\u200cرضا',
    'محمدعبدالرحمنبنعبدالعزيزآلسعودالقحطانيالدوسري',
    'Zoë Ångström-Łukasiewicz',
    'A & B <c>',
    '🤾‍♀️ goal',
  ),
);
const anyLine = anyText.map((text) => text.replaceAll('\n', ' ').slice(0, 300));
/** Names of forty letters and more, in several scripts. */
const anyName = fc.oneof(anyLine, fc.string({ unit: 'grapheme-ascii', minLength: 40, maxLength: 60 }));

/** A case from nothing recorded to far too much, with what a judge might say of it. */
export const anyCase: fc.Arbitrary<{ file: CaseFile; assessment: Assessment }> = fc
  .record({
    name: anyName,
    line: anyLine,
    text: anyText,
    isEmpty: fc.boolean(),
    isReferenced: fc.boolean(),
    copies: fc.constantFrom(0, 1, 2, 40),
  })
  .map(({ name, line, text, isEmpty, isReferenced, copies }) => {
    const whole = sampleCase();
    const judged = sampleAssessment();
    const file: CaseFile = {
      ...whole,
      case: { ...whole.case, number: line, practitioner: line, question: text, addressee: line, isInvented: !isEmpty },
      athlete: {
        ...whole.athlete,
        name,
        sport: line,
        position: line,
        goals: text,
        ...(isEmpty ? { birthDate: null, massKg: null, statureM: null, hasRedFlags: null, consentOn: null } : {}),
        referenceSex: isReferenced ? 'female' : null,
      },
      injuries: isEmpty
        ? []
        : whole.injuries.map((injury) => ({ ...injury, diagnosis: line, restrictions: text, mechanism: text })),
      ...(isEmpty
        ? {
            screeningSessions: [],
            screeningResults: [],
            jumpTests: [],
            jumpTrials: [],
            movementTrials: [],
            trialEvents: [],
          }
        : { screeningResults: whole.screeningResults.map((result) => ({ ...result, note: text })) }),
      findingDecisions: whole.findingDecisions.map((decision) => ({ ...decision, wording: text, reason: text })),
    };
    const findings: Finding[] = Array.from({ length: copies }, (_, i) =>
      judged.findings.map((finding) => ({
        ...finding,
        key: `${finding.key}/${i}`,
        ...(i % 7 === 3 ? { finding: text, needed: finding.needed === null ? null : line } : {}),
      })),
    ).flat();
    return { file, assessment: { ...judged, findings, facts: isEmpty ? [] : judged.facts } };
  });
