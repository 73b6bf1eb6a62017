import { useSyncExternalStore } from 'react';
import { SECTIONS, type SectionId } from '../../shared/assess/assessment.ts';

/** Where in the workbench one is. Kept in the address, so that reloading and going back lead to the same place. */
export type Route =
  | { readonly screen: 'shelf' }
  | { readonly screen: 'case'; readonly caseId: string; readonly section: SectionId };

export function routeOf(hash: string): Route {
  const [, screen, caseId = '', section] = hash.split('/');
  if (screen !== 'case' || caseId === '') return { screen: 'shelf' };
  return { screen: 'case', caseId, section: SECTIONS.find((one) => one === section) ?? 'athlete' };
}

export function hrefOf(route: Route): string {
  return route.screen === 'shelf' ? '#/' : `#/case/${route.caseId}/${route.section}`;
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
