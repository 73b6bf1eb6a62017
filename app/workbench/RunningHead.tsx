import { type ReactNode, useState } from 'react';
import { Button } from '../parts/Button.tsx';
import { useSingleKey } from './keys.ts';
import { KeysDialog } from './KeysDialog.tsx';
import { hrefOf } from './route.ts';
import { ViewDialog } from './ViewDialog.tsx';

/** The line at the top of every screen: where one is, how saving stands, what can be taken back. */
export function RunningHead({ children }: { children?: ReactNode }) {
  const [dialog, setDialog] = useState<'keys' | 'view' | null>(null);
  useSingleKey('?', () => setDialog('keys'));
  return (
    <header className="running-head">
      <a className="running-head-name" href={hrefOf({ screen: 'shelf' })}>
        Caseframe
      </a>
      {children}
      <span className="running-head-end">
        <Button look="quiet" onClick={() => setDialog('keys')}>
          Keys
        </Button>
        <Button look="quiet" onClick={() => setDialog('view')}>
          View
        </Button>
      </span>
      {dialog === 'keys' && <KeysDialog onClose={() => setDialog(null)} />}
      {dialog === 'view' && <ViewDialog onClose={() => setDialog(null)} />}
    </header>
  );
}
