import { useEffect, useRef, useState } from 'react';
import { counted } from '../../../shared/format/number.ts';
import { suggest } from './suggest.ts';
import type { SuggestedFrame } from './suggestion.ts';

/**
 * Suggestions of this visit to the bench. They are no part of the case: confirming puts them there, in one step of undo.
 * Where a point of the case stands already, its suggestion is silent; when undo takes that point out, it speaks again.
 */
export function useSuggester(source: { readonly href: string; readonly name: string }) {
  const [found, setFound] = useState<ReadonlyMap<number, SuggestedFrame>>(new Map());
  const [words, setWords] = useState<string | null>(null);
  const [outcome, setOutcome] = useState<string | null>(null);
  const stop = useRef<(() => void) | null>(null);
  useEffect(() => () => stop.current?.(), []);

  const start = (from: number, to: number) => {
    const total = to - from + 1;
    const made: SuggestedFrame[] = [];
    const show = () => setFound((before) => new Map([...before, ...made.map((one) => [one.frame, one] as const)]));
    const finish = (why: string | null) => {
      stop.current = null;
      setWords(null);
      show();
      const withPerson = made.filter(({ points }) => points.length > 0).length;
      setOutcome(
        `Looked at ${counted(made.length, 'frame')}; a person was found in ${withPerson}.${why === null ? '' : ` ${why}`}`,
      );
    };
    setOutcome(null);
    setWords('Opening the landmark model…');
    const end = suggest({ ...source, from, to }, (report) => {
      if ('end' in report) return finish(report.end);
      made.push(report);
      setWords(`Looking for landmarks: ${made.length} of ${counted(total, 'frame')}.`);
      if (made.length % 10 === 1) show();
    });
    stop.current = () => {
      end();
      finish('Stopped as asked.');
    };
  };
  return { found, words, outcome, start, stop: () => stop.current?.(), clear: () => setFound(new Map()) };
}
