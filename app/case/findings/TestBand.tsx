import type { Fact, TestResult } from '../../../shared/assess/assessment.ts';
import { GROUND_WORDS, groundOf } from '../../../shared/assess/groundOf.ts';
import { isKnown } from '../../../shared/quantity.ts';
import type { RuleKind } from '../../../shared/rules/rule.ts';
import { BandStrip } from '../../parts/BandStrip.tsx';
import { useCase } from '../useCase.ts';

/** Where the value lies beside the limit it was held against. Nothing for ratings, and where there is no one stretch. */
export function TestBand({ test, kind, fact }: { test: TestResult; kind: RuleKind; fact: Fact }) {
  const ground = groundOf(test, useCase().file.athlete.referenceSex);
  const reading = fact.value.kind === 'number' && isKnown(fact.value.reading) ? fact.value.reading : null;
  if (reading === null || ground === null || test.unit === null || test.unit === '{score}') return null;
  return (
    <BandStrip
      quantity={reading}
      unit={fact.displayUnit ?? reading.unit}
      band={ground}
      bandUnit={test.unit}
      bandWords={`Hatched, ${GROUND_WORDS[kind]}`}
    />
  );
}
