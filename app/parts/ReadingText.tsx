import { formatQuantity, NO_BREAK_SPACE } from '../../shared/format/number.ts';
import { isKnown, type Reading } from '../../shared/quantity.ts';
import type { Unit } from '../../shared/units.ts';

/** A number with its uncertainty in smaller type and its unit; or why there is none. Angles are shown in degrees. */
export function ReadingText({ reading, unit }: { reading: Reading; unit?: Unit | null | undefined }) {
  if (!isKnown(reading)) return <span className="reading reading-unknown">not known: {reading.unknown}</span>;
  const { value, u, unit: label } = formatQuantity(reading, unit ?? shownUnit(reading.unit));
  return (
    <span className="reading">
      <span className="reading-value">{value}</span>
      {u !== null && (
        <span className="reading-u">
          {NO_BREAK_SPACE}±{NO_BREAK_SPACE}
          {u}
        </span>
      )}
      {label !== '' && (
        <span className="reading-unit">
          {label === '°' ? '' : NO_BREAK_SPACE}
          {label}
        </span>
      )}
    </span>
  );
}

const ON_SCREEN: Partial<Record<Unit, Unit>> = { rad: 'deg', 'rad/s': 'deg/s', 'rad/s2': 'deg/s2' };

/** The kernel works in radians; people read degrees. */
export function shownUnit(unit: Unit): Unit {
  return ON_SCREEN[unit] ?? unit;
}
