import { PURPOSES, type Purpose } from '../../shared/model/case.ts';
import { useCreateCaseMutation } from '../api.ts';
import { today } from '../case/newRecord.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { ErrorBar } from '../parts/ErrorBar.tsx';
import { go } from '../workbench/route.ts';
import { PURPOSE_WORDS } from './purposeWords.ts';

/** A new case asks one thing: what it is for. */
export function NewCase({ onClose }: { onClose: () => void }) {
  const [create, { isLoading, error }] = useCreateCaseMutation();
  const open = async (purpose: Purpose) => {
    const answer = await create({ purpose, athleteId: null, openedOn: today() });
    if (answer.data !== undefined) go({ screen: 'case', caseId: answer.data.caseId, section: 'athlete' });
  };
  return (
    <Dialog title="What is the case for?" onClose={onClose}>
      <ul className="purposes">
        {PURPOSES.map((purpose) => (
          <li key={purpose}>
            <button type="button" className="purpose" disabled={isLoading} onClick={() => void open(purpose)}>
              <span className="purpose-label">{PURPOSE_WORDS[purpose].label}</span>
              <span className="quiet">{PURPOSE_WORDS[purpose].means}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className="quiet">It can become another later; nothing is lost.</p>
      {error !== undefined && <ErrorBar>{'message' in error ? error.message : 'The case could not be made.'}</ErrorBar>}
    </Dialog>
  );
}
