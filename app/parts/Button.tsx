import type { ButtonHTMLAttributes } from 'react';

/** `main` once on a screen at most, `quiet` inside running text and rows. */
export function Button({
  look = 'plain',
  ...attributes
}: ButtonHTMLAttributes<HTMLButtonElement> & { readonly look?: 'main' | 'plain' | 'quiet' }) {
  return <button type="button" {...attributes} className={`button button-${look}`} />;
}
