import { DomainError, plainMessage } from '../../errors.ts';
import type { Unknown } from '../../quantity.ts';

/**
 * A computation that refuses its input is a reading that cannot be given; its message is the reason.
 *
 * @source three answers: what is refused is not known
 */
export function readingOr<T>(compute: () => T): T | Unknown {
  try {
    return compute();
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown;
    return { unknown: plainMessage(thrown.message) };
  }
}
