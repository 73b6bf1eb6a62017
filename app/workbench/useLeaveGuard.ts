import { useEffect } from 'react';
import { editQueue } from '../api.ts';

/** Asks before the window closes on something that is not stored yet. */
export function useLeaveGuard(): void {
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      if (editQueue.getState().waiting > 0) event.preventDefault();
    };
    window.addEventListener('beforeunload', onLeave);
    return () => window.removeEventListener('beforeunload', onLeave);
  }, []);
}
