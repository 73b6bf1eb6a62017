import { type DragEvent, useId, useState } from 'react';

/** A place for one file, or for several that belong together: chosen, or dropped on it. What becomes of the file is for whoever asked for it. */
export function DropDoor(
  props: {
    label: string;
    /** File name endings, `.csv,.txt`. */
    accept: string;
    hint: string;
    isBusy: boolean;
    /** Why the last file was not taken. */
    refusal: string | null;
  } & ({ onFile: (file: File) => void; onFiles?: never } | { onFiles: (files: readonly File[]) => void }),
) {
  const id = useId();
  const [isOver, setOver] = useState(false);
  const [isTooMany, setTooMany] = useState(false);
  const refusal = isTooMany ? 'One file at a time, please: nothing was taken in.' : props.refusal;

  const take = (files: FileList | null) => {
    const [file, ...others] = files ?? [];
    setTooMany(!props.onFiles && others.length > 0);
    if (file === undefined || props.isBusy) return;
    if (props.onFiles) props.onFiles([file, ...others]);
    else if (others.length === 0) props.onFile(file);
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
        take(event.dataTransfer.files);
      }}
    >
      <label htmlFor={id} className="field-label">
        {props.label}
      </label>
      <input
        id={id}
        type="file"
        accept={props.accept}
        multiple={props.onFiles !== undefined}
        disabled={props.isBusy}
        aria-describedby={`${id}-notes`}
        onChange={({ target }) => {
          take(target.files);
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
