import { useSyncExternalStore } from 'react';
import { SECTIONS, type SectionId } from '../../shared/assess/assessment.ts';

/** Where in the workbench one is. Kept in the address, so that reloading and going back lead to the same place. */
export type Route =
  | { readonly screen: 'shelf' }
  | { readonly screen: 'case'; readonly caseId: string; readonly section: SectionId; readonly trialId?: string };

export function routeOf(hash: string): Route {
  const [, screen, caseId = '', section, trialId] = hash.split('/');
  if (screen !== 'case' || caseId === '') return { screen: 'shelf' };
  const found = SECTIONS.find((one) => one === section) ?? 'athlete';
  // A trial opened wide is its bench.
  return { screen: 'case', caseId, section: found, ...(found === 'trials' && trialId ? { trialId } : {}) };
}

export function hrefOf(route: Route): string {
  if (route.screen === 'shelf') return '#/';
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
