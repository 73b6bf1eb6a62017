import { lazy, type ReactNode, Suspense, useMemo } from 'react';
import { SECTIONS, type SectionId } from '../../shared/assess/assessment.ts';
import { useOpenCaseQuery } from '../api.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { chordDigit, useKeys } from '../workbench/keys.ts';
import { go, hrefOf } from '../workbench/route.ts';
import { RunningHead } from '../workbench/RunningHead.tsx';
import { assessmentOf } from './assessmentOf.ts';
import { CaseState } from './CaseState.tsx';
import { Margin } from './Margin.tsx';
import { Sheet } from './Sheet.tsx';
import { Spine } from './Spine.tsx';
import { OpenCaseContext } from './useCase.ts';
import './case.css';

/** Comes with the film libraries, so it loads when first opened. */
const BenchScreen = lazy(async () => ({ default: (await import('../bench/BenchScreen.tsx')).BenchScreen }));

const MARGIN_DIGIT = SECTIONS.length + 2;

/** One case: spine, sheet and margin, three columns that never move; or one of its trials opened wide. */
export function CaseScreen(props: { caseId: string; section: SectionId; benchId: string | null }) {
  const { caseId, section, benchId } = props;
  const { data, error } = useOpenCaseQuery(caseId);
  const open = useMemo(
    () => data && { file: data.file, assessment: assessmentOf(data.file), edits: data.edits },
    [data],
  );

  useKeys((event) => {
    const digit = chordDigit(event);
    if (digit === null) return false;
    const target = SECTIONS[digit - 1];
    if (digit === 0) go({ screen: 'shelf' });
    else if (digit === MARGIN_DIGIT) document.getElementById('margin')?.focus();
    else if (target !== undefined) go({ screen: 'case', caseId, section: target });
    else return false;
    return true;
  });

  if (open === undefined) {
    return (
      <WithoutCase>
        {error === undefined ? (
          <p className="appears-late">Opening the case…</p>
        ) : (
          <EmptyState title="This case cannot be opened.">
            <p>{'message' in error ? error.message : ''}</p>
            <p>
              <a href={hrefOf({ screen: 'shelf' })}>To the shelf</a>
            </p>
          </EmptyState>
        )}
      </WithoutCase>
    );
  }
  return (
    <OpenCaseContext value={open}>
      <div className="case">
        <RunningHead>
          <CaseState />
        </RunningHead>
        {benchId === null ? (
          <div className="case-columns">
            <Spine section={section} />
            <Sheet key={section} section={section} />
            <Margin />
          </div>
        ) : (
          <Suspense fallback={<p className="appears-late">Opening the bench…</p>}>
            <BenchScreen key={benchId} trialId={benchId} />
          </Suspense>
        )}
      </div>
    </OpenCaseContext>
  );
}

function WithoutCase({ children }: { children: ReactNode }) {
  return (
    <>
      <RunningHead />
      <main id="sheet" className="shelf" tabIndex={-1}>
        {children}
      </main>
    </>
  );
}
