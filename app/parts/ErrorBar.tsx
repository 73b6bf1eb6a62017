import type { ReactNode } from 'react';

/** Something went wrong: what, and what to do, in words; then the ways on. */
export function ErrorBar({ children, actions }: { children: ReactNode; actions?: ReactNode }) {
  return (
    <div className="error-bar" role="alert">
      <div className="error-bar-words">{children}</div>
      {actions !== undefined && <div className="error-bar-actions">{actions}</div>}
    </div>
  );
}
