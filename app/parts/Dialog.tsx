import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './Button.tsx';

/** Asks or shows one thing and gives the focus back when closed. Escape closes it. */
export function Dialog({ title, onClose, children }: { title: string; onClose: () => void; children: ReactNode }) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    return () => {
      // Unless it has been taken elsewhere already: a dialog that closes late must not take it from who types on.
      if (before instanceof HTMLElement && document.activeElement === document.body) before.focus();
    };
  }, []);
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby={id} onClose={onClose}>
      <div className="dialog-head">
        <h2 id={id}>{title}</h2>
        <Button look="quiet" onClick={() => dialog.current?.close()}>
          Close
        </Button>
      </div>
      {children}
    </dialog>
  );
}
