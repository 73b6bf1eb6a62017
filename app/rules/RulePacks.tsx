import { useExportRulesMutation, useImportRulesMutation } from '../api.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';
import { FileDoor } from '../parts/FileDoor.tsx';
import { saveBlob } from '../parts/saveBlob.ts';

/** Own rules out of a case, or of those for every case, and into it, as one file. */
export function RulePacks({ caseId, hasOwn }: { caseId: string | null; hasOwn: boolean }) {
  const [write, written] = useExportRulesMutation();
  const [read, taken] = useImportRulesMutation();
  const failure = written.error ?? taken.error;
  return (
    <>
      <div className="row-of-buttons">
        {hasOwn && (
          <Button
            onClick={() =>
              void write({ caseId, name: 'Own rules' })
                .unwrap()
                .then(({ fileName, text }) => saveBlob(fileName, new Blob([text], { type: 'application/json' })))
                .catch(() => undefined)
            }
          >
            Write the rules that are on to a file
          </Button>
        )}
      </div>
      {written.data !== undefined && (
        <p className="quiet">
          SHA-256 of the content: <code>{written.data.sha256}</code>. It shows that the content is unchanged, not who
          wrote it.
        </p>
      )}
      <FileDoor
        label="Take in a file of rules"
        accept=".json"
        hint="Each rule is checked like those of the program; with one fault in the file nothing is taken in."
        isBusy={taken.isLoading}
        onFile={({ name, text }) => void read({ caseId, fileName: name, text })}
      />
      {taken.data !== undefined && (
        <output>
          Taken in: {taken.data.rules}.{' '}
          {taken.data.sha256 === null
            ? 'The file carries no SHA-256, so nothing shows whether it was changed.'
            : 'Its content is as it was written; this does not show who wrote it.'}
        </output>
      )}
      {failure !== undefined && <p role="alert">{failureWords(failure)}</p>}
    </>
  );
}
