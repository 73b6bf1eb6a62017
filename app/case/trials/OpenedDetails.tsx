import { type ReactNode, useState } from 'react';

/** A part of a trial that is worked out only once it is opened. */
export function OpenedDetails({ title, children }: { title: string; children: () => ReactNode }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="trial-details" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{title}</summary>
      {isOpen && children()}
    </details>
  );
}
