import { useState } from 'react';
import { useRedoMutation, useUndoMutation } from '../api.ts';
import { Button } from '../parts/Button.tsx';
import { isRedo, isUndo, REDO_WORDS, UNDO_WORDS, useKeys } from '../workbench/keys.ts';
import { useCase } from './useCase.ts';
import { useSaving } from './useEdit.ts';

/** In the running head: how saving stands, and what can be taken back or done again, in words. */
export function CaseState() {
  const { file, edits } = useCase();
  const { waiting, failure } = useSaving();
  const [undo, undoing] = useUndoMutation();
  const [redo, redoing] = useRedoMutation();
  const [done, setDone] = useState('');
  const isBusy = undoing.isLoading || redoing.isLoading;

  const step = async (way: 'undo' | 'redo') => {
    const what = edits[way];
    if (what === null || isBusy) return;
    const answer = await (way === 'undo' ? undo : redo)({ caseId: file.case.id });
    setDone(
      answer.error === undefined ? `${way === 'undo' ? 'Undone' : 'Done again'}: ${what}` : messageOf(answer.error),
    );
  };

  useKeys((event) => {
    if (isUndo(event)) void step('undo');
    else if (isRedo(event)) void step('redo');
    else return false;
    return true;
  });

  const saving = failure !== null ? 'Not saved' : waiting > 0 ? 'Saving…' : 'All saved';
  return (
    <div className="case-state">
      <Button look="quiet" disabled={edits.undo === null} title={UNDO_WORDS} onClick={() => void step('undo')}>
        Undo<span className="case-state-what">{edits.undo !== null && ` ${edits.undo}`}</span>
      </Button>
      <Button look="quiet" disabled={edits.redo === null} title={REDO_WORDS} onClick={() => void step('redo')}>
        Redo<span className="case-state-what">{edits.redo !== null && ` ${edits.redo}`}</span>
      </Button>
      <output className="case-state-done">{done}</output>
      <span className={failure === null ? 'quiet' : 'words words-heavy'}>{saving}</span>
    </div>
  );
}

function messageOf(error: object): string {
  return 'message' in error && typeof error.message === 'string' ? error.message : 'That could not be done.';
}
