import type { Fact, Finding, TestResult } from '../../../shared/assess/assessment.ts';
import { groundOf } from '../../../shared/assess/groundOf.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { askedWords, chanceWords } from '../../../shared/rules/checks/words.ts';
import { Words } from '../../parts/Words.tsx';
import { FactText } from '../FactText.tsx';
import { useCase } from '../useCase.ts';
import { TestBand } from './TestBand.tsx';

/** One measure a finding was judged by: the value, the limit it was held against, and where it lies. */
export function TestView({ test, finding }: { test: TestResult; finding: Finding }) {
  const { file, assessment } = useCase();
  const fact = assessment.facts.find((one) => one.key === test.factKey) ?? null;
  const reading = fact?.value.kind === 'number' && isKnown(fact.value.reading) ? fact.value.reading : null;
  const ground = groundOf(test, file.athlete.referenceSex);
  const limits = reading === null ? null : limitWordsOf(test, ground);
  return (
    <div className="test-view">
      <p>
        {test.label} {fact !== null && <FactText fact={fact} />}
        <span className="quiet">{wordsBeside(test, fact, limits)}</span>
      </p>
      {test.isBorderline && (
        <p>
          <Words weight="open">inside its own measurement error of the limit</Words>
          {test.chance !== null && `; chance that the true value is past it: ${chanceWords(test.chance)}`}
        </p>
      )}
      {fact !== null && <TestBand test={test} kind={finding.kind} fact={fact} />}
    </div>
  );
}

/** A yes, no or grade says all there is to say; a number is followed by what it was held against. */
function wordsBeside(test: TestResult, fact: Fact | null, limits: string | null): string {
  if (limits !== null) return `, held against ${limits}`;
  return fact === null || fact.value.kind === 'number' ? `: ${test.words}` : '';
}

/** The limit alone, for beside a value that is shown with its uncertainty; null where the test compares no numbers. */
function limitWordsOf({ comparator, threshold, unit }: TestResult, ground: ReturnType<typeof groundOf>): string | null {
  if (unit === null) return null;
  const ends: readonly (number | null)[] = Array.isArray(threshold) ? threshold : (ground ?? []);
  const limits = ends.filter((end) => end !== null);
  return limits.length === 0 ? null : askedWords(comparator, limits, unit);
}
