import { DomainError } from '../errors.ts';

export interface Sequence<F> {
  readonly inOrder: readonly F[];
  /** What the whole is called. */
  readonly fileName: string;
  /** How many pictures, one after the other; null for a film. */
  readonly pictures: number | null;
}

function isPicture(name: string): boolean {
  return /\.(png|jpe?g)$/i.test(name);
}

/**
 * Files that belong together as one film: a film alone, or pictures of one kind, in the order of the last number in their
 * names, which rises by one from each to the next.
 * @throws DomainError 'input-missing' for nothing or a gap, 'input-malformed' for what does not belong together
 */
export function sequenceOf<F extends { readonly name: string }>(files: readonly F[]): Sequence<F> {
  const [first] = files;
  if (first === undefined) throw new DomainError('input-missing', 'There is no film among the files.');
  if (files.length === 1) return { inOrder: files, fileName: first.name, pictures: isPicture(first.name) ? 1 : null };
  const numbered = files.map((file) => {
    const [, before = '', digits = '', ending = ''] = /^(.*?)(\d+)\D*(\.[^.]+)$/.exec(file.name) ?? [];
    return { file, number: Number(digits), kind: digits === '' ? '' : `${before}#${ending.toLowerCase()}` };
  });
  const odd = numbered.find(({ file, kind }) => !isPicture(file.name) || kind === '' || kind !== numbered[0]?.kind);
  if (odd !== undefined) {
    throw new DomainError(
      'input-malformed',
      `Several files are taken in as one film only where they are pictures of one kind, numbered in their names; ${odd.file.name} does not fit. Bring in one film at a time.`,
    );
  }
  const rising = numbered.toSorted((a, b) => a.number - b.number);
  const gap = rising.findIndex(({ number }, i) => i > 0 && number !== (rising[i - 1]?.number ?? 0) + 1);
  if (gap > 0) {
    throw new DomainError(
      'input-missing',
      `After picture ${rising[gap - 1]?.file.name} comes ${rising[gap]?.file.name}: those between are missing, or one is there twice.`,
    );
  }
  return {
    inOrder: rising.map(({ file }) => file),
    fileName: `${rising[0]?.file.name} to ${rising.at(-1)?.file.name}`,
    pictures: files.length,
  };
}
