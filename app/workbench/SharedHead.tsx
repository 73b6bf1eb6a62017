import { Button } from '../parts/Button.tsx';
import { isRedo, isUndo, REDO_WORDS, UNDO_WORDS, useKeys } from './keys.ts';
import { RunningHead } from './RunningHead.tsx';

/** The running head over what every case shares: its steps are taken back and made again here, by button and by key. */
export function SharedHead(props: {
  /** Absent while it is being read. */
  steps: { readonly canUndo: boolean; readonly canRedo: boolean } | undefined;
  undo: () => Promise<unknown>;
  redo: () => Promise<unknown>;
  /** After either: what is stored is shown again. */
  onDone: () => void;
}) {
  const { steps, undo, redo, onDone } = props;
  const go = (way: () => Promise<unknown>) => void way().then(onDone);
  useKeys((event) => {
    if (isUndo(event) && steps?.canUndo === true) go(undo);
    else if (isRedo(event) && steps?.canRedo === true) go(redo);
    else return false;
    return true;
  });
  return (
    <RunningHead>
      <span className="case-state">
        <Button look="quiet" disabled={steps?.canUndo !== true} title={UNDO_WORDS} onClick={() => go(undo)}>
          Undo
        </Button>
        <Button look="quiet" disabled={steps?.canRedo !== true} title={REDO_WORDS} onClick={() => go(redo)}>
          Redo
        </Button>
      </span>
    </RunningHead>
  );
}
