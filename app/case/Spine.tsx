import { useState } from 'react';
import { SECTIONS, type SectionId, type SectionState } from '../../shared/assess/assessment.ts';
import { formatDate } from '../../shared/format/number.ts';
import { Button } from '../parts/Button.tsx';
import { PURPOSE_WORDS } from '../shelf/purposeWords.ts';
import { chordWords } from '../workbench/keys.ts';
import { hrefOf } from '../workbench/route.ts';
import { HistoryDialog } from './history/HistoryDialog.tsx';
import { SECTION_TITLES } from './sectionTitles.ts';
import { useCase } from './useCase.ts';

/** Whose case it is, and its sections in report order, each with its state in words. */
export function Spine({ section: here }: { section: SectionId }) {
  const { file, assessment } = useCase();
  const [isHistoryOpen, setHistoryOpen] = useState(false);
  const { id: caseId, number, purpose, openedOn, isInvented, archivedOn } = file.case;
  return (
    <nav className="spine" aria-label="Sections">
      <h1 className="spine-name">{file.athlete.name.trim() === '' ? 'Athlete not named yet' : file.athlete.name}</h1>
      <p className="quiet">
        {number}, {PURPOSE_WORDS[purpose].label.toLowerCase()}
        <br />
        opened {formatDate(openedOn)}
      </p>
      {isInvented && <p className="spine-notice">Invented data. Not a real person.</p>}
      {archivedOn !== null && <p className="spine-notice">Archived {formatDate(archivedOn)}.</p>}
      <ol className="spine-sections">
        {SECTIONS.map((section, index) => {
          const state = assessment.sections.find((one) => one.section === section);
          return (
            <li key={section}>
              <a
                className="spine-section"
                href={hrefOf({ screen: 'case', caseId, section })}
                aria-current={section === here ? 'page' : undefined}
                title={chordWords(index + 1)}
              >
                <span className="spine-title">{SECTION_TITLES[section]}</span>
                {state !== undefined && <span className={markOf(state)}>{state.words}</span>}
              </a>
            </li>
          );
        })}
      </ol>
      <p>
        <Button look="quiet" onClick={() => setHistoryOpen(true)}>
          History
        </Button>
      </p>
      {isHistoryOpen && <HistoryDialog onClose={() => setHistoryOpen(false)} />}
    </nav>
  );
}

/** Complete: a solid rule. Still required: a hatched one. Neither: none. The words say the same. */
function markOf({ isComplete, isRequired }: SectionState): string {
  if (isComplete) return 'spine-state spine-complete';
  return isRequired ? 'spine-state spine-required' : 'spine-state';
}
