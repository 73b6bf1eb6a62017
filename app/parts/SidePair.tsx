import type { ReactNode } from 'react';

/** The same thing on the left and on the right, always in that order, with what the two together say beneath. */
export function SidePair({
  label,
  left,
  right,
  together,
}: {
  label: string;
  left: ReactNode;
  right: ReactNode;
  together?: ReactNode;
}) {
  return (
    <fieldset className="side-pair">
      <legend className="field-label">{label}</legend>
      <div className="side-pair-sides">
        <div>{left}</div>
        <div>{right}</div>
      </div>
      {together !== undefined && <div className="side-pair-together">{together}</div>}
    </fieldset>
  );
}
