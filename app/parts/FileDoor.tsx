import { type DragEvent, useId, useState } from 'react';

export interface TakenFile {
  readonly name: string;
  readonly text: string;
}

/** The contract takes no more in one request. */
const MOST_CHARACTERS = 24_000_000;

/** Takes in one text file: chosen, or dropped on it. Reads nothing else of the machine. */
export function FileDoor(props: {
  label: string;
  /** File name endings, `.csv,.txt`. */
  accept: string;
  hint: string;
  isBusy: boolean;
  onFile: (file: TakenFile) => void;
}) {
  const id = useId();
  const [isOver, setOver] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);

  const take = async (files: FileList | null) => {
    const [file] = files ?? [];
    if (file === undefined) return;
    if ((files?.length ?? 0) > 1) {
      setRefusal('One file at a time, please: nothing was taken in.');
      return;
    }
    if (file.size > MOST_CHARACTERS) {
      setRefusal(`${file.name} is larger than 24 MB. Cut it to the part that matters, then choose it again.`);
      return;
    }
    try {
      const text = await file.text();
      setRefusal(null);
      props.onFile({ name: file.name, text });
    } catch {
      setRefusal(`${file.name} could not be read. Check that it still exists and may be opened, then choose it again.`);
    }
  };
  const over = (event: DragEvent, isNow: boolean) => {
    event.preventDefault();
    setOver(isNow);
  };

  return (
    <div
      className={isOver ? 'file-door file-door-over' : 'file-door'}
      onDragOver={(event) => over(event, true)}
      onDragLeave={(event) => over(event, false)}
      onDrop={(event) => {
        over(event, false);
        void take(event.dataTransfer.files);
      }}
    >
      <label htmlFor={id} className="field-label">
        {props.label}
      </label>
      <input
        id={id}
        type="file"
        accept={props.accept}
        disabled={props.isBusy}
        aria-describedby={`${id}-notes`}
        onChange={({ target }) => {
          void take(target.files);
          // So that choosing the same file again, once mended, counts as a choice.
          target.value = '';
        }}
      />
      <div id={`${id}-notes`} className="field-notes" aria-live="polite">
        {refusal !== null && <p className="field-refusal">{refusal}</p>}
        <p className="field-hint">{props.hint}</p>
      </div>
    </div>
  );
}
