import { useState } from 'react';
import { type Typed, valueOf } from '../../shared/format/typed.ts';

/**
 * Text of a field whose value is not text. Keeps what was typed, character by character, as long as it stands for the
 * stored value; takes the stored value's own text when that changes from elsewhere (undo, another window).
 */
export function useTyped<T>(value: T | null, format: (value: T) => string, parse: (text: string) => Typed<T | null>) {
  const shown = value === null ? '' : format(value);
  const [text, setText] = useState(shown);
  const [seen, setSeen] = useState(value);
  if (!Object.is(seen, value)) {
    setSeen(value);
    if (!Object.is(valueOf(parse(text)), value)) setText(shown);
  }
  return [text, setText] as const;
}
