import { type ComponentType, lazy, type LazyExoticComponent, Suspense, useEffect, useRef } from 'react';
import type { Assessment, SectionId } from '../../shared/assess/assessment.ts';
import { Button } from '../parts/Button.tsx';
import { Words } from '../parts/Words.tsx';
import { ErrorBoundary } from '../workbench/ErrorBoundary.tsx';
import { AthleteSection } from './athlete/AthleteSection.tsx';
import { InjuriesSection } from './injuries/InjuriesSection.tsx';
import { SECTION_TITLES } from './sectionTitles.ts';
import { type Selection, useSelect } from './selection.ts';
import { useCase } from './useCase.ts';

/** Sections with plots come with the plotting library, so they load when first opened. */
const CONTENT: Readonly<Record<SectionId, ComponentType | LazyExoticComponent<ComponentType>>> = {
  athlete: AthleteSection,
  injuries: InjuriesSection,
  screening: lazy(async () => ({ default: (await import('./screening/ScreeningSection.tsx')).ScreeningSection })),
  jumps: lazy(async () => ({ default: (await import('./jumps/JumpsSection.tsx')).JumpsSection })),
  trials: lazy(async () => ({ default: (await import('./trials/TrialsSection.tsx')).TrialsSection })),
  findings: lazy(async () => ({ default: (await import('./findings/FindingsSection.tsx')).FindingsSection })),
  report: lazy(async () => ({ default: (await import('./report/ReportSection.tsx')).ReportSection })),
};

/** A notice speaks of a fact where it can name one, otherwise of the finding itself. */
function selectionOf(about: string, { facts }: Assessment): Selection {
  return { kind: facts.some(({ key }) => key === about) ? 'fact' : 'finding', key: about };
}

/** The section at hand, laid out like the page it will become. */
export function Sheet({ section }: { section: SectionId }) {
  const { file, assessment } = useCase();
  const select = useSelect();
  const sheet = useRef<HTMLElement>(null);
  const Content = CONTENT[section];
  const title = SECTION_TITLES[section];
  const name = file.athlete.name;

  useEffect(() => {
    document.title = `${title}, ${name === '' ? file.case.number : name}, Caseframe`;
  }, [title, name, file.case.number]);

  // Each section is a page of its own: keyboard and screen reader start at its top, with nothing selected.
  useEffect(() => {
    select(null);
    sheet.current?.focus({ preventScroll: true });
  }, [select]);

  return (
    <main id="sheet" className="sheet" tabIndex={-1} ref={sheet} aria-labelledby="sheet-title">
      <article className="sheet-page">
        {assessment.stops.length > 0 && (
          <section className="sheet-stops" aria-label="Stop and be seen">
            <ul>
              {assessment.stops.map(({ words, about }) => (
                <li key={`${about} ${words}`}>
                  <Words weight="stop">{words}</Words>{' '}
                  <Button
                    look="quiet"
                    aria-label={`What stands behind it: ${words}`}
                    onClick={() => select(selectionOf(about, assessment))}
                  >
                    What stands behind it
                  </Button>
                </li>
              ))}
            </ul>
          </section>
        )}
        <div className="sheet-head">
          <h2 id="sheet-title">{title}</h2>
          <p className="quiet">{assessment.sections.find((state) => state.section === section)?.words}</p>
        </div>
        <ErrorBoundary place={section}>
          <Suspense fallback={<p className="appears-late">Laying out the section…</p>}>
            <Content />
          </Suspense>
        </ErrorBoundary>
        <p className="sheet-foot">Screening is not diagnosis. A licensed clinician and local protocols decide.</p>
      </article>
    </main>
  );
}
