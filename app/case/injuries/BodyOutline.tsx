import type { Region } from '../../../shared/model/injury.ts';
import type { SideOrNone } from '../../../shared/model/parts.ts';
import { BACK, type BodyShape, FRONT } from './bodyShapes.ts';
import { REGION_WORDS } from './regionWords.ts';

export interface Place {
  readonly region: Region;
  readonly side: SideOrNone;
}

/**
 * The body from the front and from the back, to point at a region. For the mouse only: the list beside it does the same
 * for everyone, so this is hidden from the keyboard and from screen readers.
 */
export function BodyOutline({ chosen, onChoose }: { chosen: readonly Place[]; onChoose: (place: Place) => void }) {
  return (
    <div className="outline" aria-hidden="true">
      <Figure caption="Front" shapes={FRONT} leftIs={1} chosen={chosen} onChoose={onChoose} />
      <Figure caption="Back" shapes={BACK} leftIs={-1} chosen={chosen} onChoose={onChoose} />
    </div>
  );
}

function Figure({
  caption,
  shapes,
  leftIs,
  chosen,
  onChoose,
}: {
  caption: string;
  shapes: readonly BodyShape[];
  /** Which way the athlete's left lies on the drawing: 1 to the right (facing us), -1 to the left. */
  leftIs: 1 | -1;
  chosen: readonly Place[];
  onChoose: (place: Place) => void;
}) {
  const areas = shapes.flatMap(({ region, isPaired, path }) => {
    const sides: readonly SideOrNone[] = isPaired ? ['left', 'right'] : ['none'];
    return sides.map((side) => ({ region, path, side, isMirrored: side === (leftIs === 1 ? 'right' : 'left') }));
  });
  const [leftX, rightX] = [leftIs * 40, leftIs * -40];
  return (
    <svg className="outline-figure" viewBox="-56 -4 112 330">
      {areas.map(({ region, path, side, isMirrored }) => {
        const isChosen = chosen.some(
          (place) => place.region === region && (place.side === side || place.side === 'none'),
        );
        return (
          // The list of regions is the way of the keyboard.
          // oxlint-disable-next-line jsx-a11y/click-events-have-key-events
          <path
            key={`${region} ${side}`}
            className={isChosen ? 'outline-area outline-chosen' : 'outline-area'}
            d={path}
            transform={isMirrored ? 'scale(-1 1)' : undefined}
            onClick={() => onChoose({ region, side })}
          >
            <title>{placeWords({ region, side })}</title>
          </path>
        );
      })}
      <text className="outline-text" x={leftX} y="8" textAnchor="middle">
        left
      </text>
      <text className="outline-text" x={rightX} y="8" textAnchor="middle">
        right
      </text>
      <text className="outline-text" x="0" y="320" textAnchor="middle">
        {caption}
      </text>
    </svg>
  );
}

/** `Shoulder, left`. */
export function placeWords({ region, side }: Place): string {
  return side === 'none' ? REGION_WORDS[region] : `${REGION_WORDS[region]}, ${side}`;
}
