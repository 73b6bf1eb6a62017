/** What to tell of a refused request: its own sentence, which says what to do next. */
export function failureWords(error: { readonly message?: string | undefined } | undefined): string {
  return error?.message ?? 'Something unforeseen happened and nothing was changed. Try once more.';
}
