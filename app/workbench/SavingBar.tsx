import { editQueue } from '../api.ts';
import { useSaving } from '../case/useEdit.ts';
import { Button } from '../parts/Button.tsx';
import { ErrorBar } from '../parts/ErrorBar.tsx';

/** Says what could not be stored and what to do about it. */
export function SavingBar() {
  const { failure, canRetry, waiting } = useSaving();
  if (failure === null) return null;
  return (
    <ErrorBar
      actions={
        canRetry ? (
          <Button onClick={editQueue.retry}>Try again</Button>
        ) : (
          <Button onClick={editQueue.dismiss}>Close this notice</Button>
        )
      }
    >
      <strong>Not saved.</strong> {failure.message}{' '}
      {canRetry
        ? `What you typed stays on this screen (${waiting === 1 ? 'one change waits' : `${waiting} changes wait`}); keep the window open.`
        : 'The sheet shows what is stored.'}
    </ErrorBar>
  );
}
