import { useEffect, useRef, useState } from 'react';
import { useRedoMutation, useUndoMutation } from '../api.ts';
import { Button } from '../parts/Button.tsx';
import { isRedo, isUndo, REDO_WORDS, UNDO_WORDS, useKeys } from '../workbench/keys.ts';
import { useCase } from './useCase.ts';
import { useSaving } from './useEdit.ts';

/** In the running head: how saving stands, and what can be taken back or done again, in words. */
export function CaseState() {
  const { file, edits } = useCase();
  const { waiting, failure } = useSaving();
  const [undo] = useUndoMutation();
  const [redo] = useRedoMutation();
  const [done, setDone] = useState({ words: '', revision: -1 });
  const latest = useRef(edits);
  const running = useRef(Promise.resolve());
  useEffect(() => {
    latest.current = edits;
  }, [edits]);

  const step = async (way: 'undo' | 'redo') => {
    const what = latest.current[way];
    if (what === null) return;
    const answer = await (way === 'undo' ? undo : redo)({ caseId: file.case.id });
    if (answer.data !== undefined) latest.current = answer.data;
    const said = `${way === 'undo' ? 'Undone' : 'Done again'}: ${what}`;
    const words = answer.error === undefined ? said : messageOf(answer.error);
    setDone({ words, revision: latest.current.revision });
  };
  /** Pressed twice in quick succession it goes back two steps, one after the other. */
  const queue = (way: 'undo' | 'redo') => {
    running.current = running.current.then(() => step(way));
  };

  useKeys((event) => {
    if (isUndo(event)) queue('undo');
    else if (isRedo(event)) queue('redo');
    else return false;
    return true;
  });

  const saving = failure !== null ? 'Not saved' : waiting > 0 ? 'Saving…' : 'All saved';
  return (
    <div className="case-state">
      <Button look="quiet" disabled={edits.undo === null} title={UNDO_WORDS} onClick={() => queue('undo')}>
        Undo<span className="case-state-what">{edits.undo !== null && ` ${edits.undo}`}</span>
      </Button>
      <Button look="quiet" disabled={edits.redo === null} title={REDO_WORDS} onClick={() => queue('redo')}>
        Redo<span className="case-state-what">{edits.redo !== null && ` ${edits.redo}`}</span>
      </Button>
      <output className="case-state-done">{done.revision === edits.revision && done.words}</output>
      <span className={failure === null ? 'quiet' : 'words words-heavy'}>{saving}</span>
    </div>
  );
}

function messageOf(error: object): string {
  return 'message' in error && typeof error.message === 'string' ? error.message : 'That could not be done.';
}
