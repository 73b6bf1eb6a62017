import { useSyncExternalStore } from 'react';
import { SECTIONS, type SectionId } from '../../shared/assess/assessment.ts';

/** An intake run is found again by its day and its battery, in the very version. */
export interface RunKey {
  readonly heldOn: string;
  readonly batteryId: string;
  readonly batteryVersion: string;
}

/** Where in the workbench one is. Kept in the address, so that reloading and going back lead to the same place. */
export type Route =
  | { readonly screen: 'shelf' }
  | { readonly screen: 'rules' }
  | { readonly screen: 'batteries' }
  | { readonly screen: 'run'; readonly run: RunKey | null; readonly isSquad: boolean }
  | { readonly screen: 'case'; readonly caseId: string; readonly section: SectionId; readonly trialId?: string };

export function routeOf(hash: string): Route {
  const [, screen, caseId = '', section, trialId, last] = hash.split('/');
  if (screen === 'rules' || screen === 'batteries') return { screen };
  if (screen === 'run') {
    const run =
      section === undefined || trialId === undefined
        ? null
        : { heldOn: caseId, batteryId: section, batteryVersion: trialId };
    return { screen, run, isSquad: run !== null && last === 'squad' };
  }
  if (screen !== 'case' || caseId === '') return { screen: 'shelf' };
  const found = SECTIONS.find((one) => one === section) ?? 'athlete';
  // A trial opened wide is its bench.
  return { screen: 'case', caseId, section: found, ...(found === 'trials' && trialId ? { trialId } : {}) };
}

export function hrefOf(route: Route): string {
  if (route.screen === 'shelf') return '#/';
  if (route.screen === 'rules' || route.screen === 'batteries') return `#/${route.screen}`;
  if (route.screen === 'run') {
    const { run, isSquad } = route;
    if (run === null) return '#/run';
    return `#/run/${run.heldOn}/${run.batteryId}/${run.batteryVersion}${isSquad ? '/squad' : ''}`;
  }
  return `#/case/${route.caseId}/${route.section}${route.trialId === undefined ? '' : `/${route.trialId}`}`;
}

export function go(route: Route): void {
  window.location.hash = hrefOf(route);
}

function subscribe(listener: () => void): () => void {
  window.addEventListener('hashchange', listener);
  return () => window.removeEventListener('hashchange', listener);
}

export function useRoute(): Route {
  const hash = useSyncExternalStore(subscribe, () => window.location.hash);
  return routeOf(hash);
}
