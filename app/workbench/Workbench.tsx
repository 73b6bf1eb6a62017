import { lazy, Suspense, useEffect } from 'react';
import { CaseScreen } from '../case/CaseScreen.tsx';
import { Shelf } from '../shelf/Shelf.tsx';
import { useAppSelector } from '../store.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { applyPreferences } from './preferences.ts';
import { hrefOf, useRoute } from './route.ts';
import { SavingBar } from './SavingBar.tsx';
import { useLeaveGuard } from './useLeaveGuard.ts';

const RulesScreen = lazy(async () => ({ default: (await import('../rules/RulesScreen.tsx')).RulesScreen }));
const BatteriesScreen = lazy(async () => ({
  default: (await import('../batteries/BatteriesScreen.tsx')).BatteriesScreen,
}));
const RunScreen = lazy(async () => ({ default: (await import('../run/RunScreen.tsx')).RunScreen }));

/** The frame around every screen. */
export function Workbench() {
  const route = useRoute();
  const preferences = useAppSelector((state) => state.preferences);
  useEffect(() => applyPreferences(preferences), [preferences]);
  useLeaveGuard();
  return (
    <>
      <a
        className="skip-link"
        href="#sheet"
        onClick={(event) => {
          // The address holds the place in the workbench, so the jump is made by hand.
          event.preventDefault();
          document.getElementById('sheet')?.focus();
        }}
      >
        Skip to the sheet
      </a>
      <SavingBar />
      <ErrorBoundary place={hrefOf(route)}>
        {route.screen === 'shelf' ? (
          <Shelf />
        ) : route.screen === 'rules' ? (
          <Suspense fallback={<p className="appears-late">Opening the rules…</p>}>
            <RulesScreen />
          </Suspense>
        ) : route.screen === 'batteries' ? (
          <Suspense fallback={<p className="appears-late">Opening the batteries…</p>}>
            <BatteriesScreen />
          </Suspense>
        ) : route.screen === 'run' ? (
          <Suspense fallback={<p className="appears-late">Opening the run…</p>}>
            <RunScreen key={hrefOf(route)} run={route.run} isSquad={route.isSquad} />
          </Suspense>
        ) : (
          <CaseScreen
            key={route.caseId}
            caseId={route.caseId}
            section={route.section}
            benchId={route.trialId ?? null}
          />
        )}
      </ErrorBoundary>
    </>
  );
}
