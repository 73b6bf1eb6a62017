import { isKnown, type Reading } from '../../../shared/quantity.ts';
import { ReadingText } from '../../parts/ReadingText.tsx';
import { WorkingView } from '../../parts/WorkingView.tsx';

/** A value in a table that opens to its working. */
export function WorkedCell({ reading }: { reading: Reading }) {
  return (
    <td>
      {isKnown(reading) ? (
        <details>
          <summary>
            <ReadingText reading={reading} />
          </summary>
          <WorkingView quantity={reading} />
        </details>
      ) : (
        <ReadingText reading={reading} />
      )}
    </td>
  );
}
