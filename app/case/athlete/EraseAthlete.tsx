import { useState } from 'react';
import { useEraseAthleteMutation } from '../../api.ts';
import { Button } from '../../parts/Button.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { ErrorBar } from '../../parts/ErrorBar.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { go } from '../../workbench/route.ts';
import { useCase } from '../useCase.ts';

/** Takes the athlete out of the store for good, once the number of the case is typed again. */
export function EraseAthlete() {
  const [isAsking, setAsking] = useState(false);
  return (
    <div className="field">
      <p className="field-label">When an athlete asks to be forgotten</p>
      <Button onClick={() => setAsking(true)}>Erase this athlete…</Button>
      {isAsking && <Asked onClose={() => setAsking(false)} />}
    </div>
  );
}

function Asked({ onClose }: { onClose: () => void }) {
  const { file } = useCase();
  const [typed, setTyped] = useState('');
  const [erase, { data, error, isLoading }] = useEraseAthleteMutation();
  const { id: caseId, number } = file.case;
  const name = file.athlete.name === '' ? 'this athlete' : file.athlete.name;
  const close = () => (data === undefined ? onClose() : go({ screen: 'shelf' }));
  return (
    <Dialog title={data === undefined ? `Erase ${name}?` : 'Erased'} onClose={close}>
      {data === undefined ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void erase({ caseId, number: typed.trim() });
          }}
        >
          <p>
            Everything about {name} goes: every case, injury, test, film and report, and all history. It cannot be
            undone. To put a case out of the way and keep it, archive it instead.
          </p>
          <TextField label={`To go on, type the number of this case, ${number}`} value={typed} onChange={setTyped} />
          <div className="dialog-ways">
            <button type="submit" className="button button-plain" disabled={typed.trim() !== number || isLoading}>
              Erase for good
            </button>
          </div>
          {error !== undefined && <ErrorBar>{'message' in error ? error.message : 'Nothing was erased.'}</ErrorBar>}
        </form>
      ) : (
        <>
          <p>
            {count(data.cases, 'case')} and {count(data.files, 'file')} are gone from this store.
          </p>
          {data.copies.length > 0 && (
            <p>
              The store’s folder still holds copies made before an update, with the athlete in them:{' '}
              {data.copies.join(', ')}. Delete them once you no longer need to go back.
            </p>
          )}
          <p className="quiet">Copies that you made yourself, and reports handed out, are not reached from here.</p>
        </>
      )}
    </Dialog>
  );
}

const count = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;
