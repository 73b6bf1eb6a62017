import { plainMessage } from '../shared/errors.ts';

/** What to tell of a refused request: its own sentence, which says what to do next, closed so that another can follow. */
export function failureWords(error: { readonly message?: string | undefined } | undefined): string {
  const words = error?.message === undefined ? UNFORESEEN : plainMessage(error.message);
  return /[.!?]$/.test(words) ? words : `${words}.`;
}

const UNFORESEEN = 'Something unforeseen happened and nothing was changed. Try once more.';
