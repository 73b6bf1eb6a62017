import { REGIONS } from '../../../shared/model/injury.ts';
import { Button } from '../../parts/Button.tsx';
import type { Place } from './BodyOutline.tsx';
import { PAIRED } from './bodyShapes.ts';
import { REGION_WORDS } from './regionWords.ts';

/** Every region by name, with its sides. */
export function RegionList({ onChoose }: { onChoose: (place: Place) => void }) {
  return (
    <ul className="regions">
      {REGIONS.map((region) => (
        <li key={region}>
          <span>{REGION_WORDS[region]}</span>
          {PAIRED.has(region) ? (
            (['left', 'right'] as const).map((side) => (
              <Button
                key={side}
                look="quiet"
                aria-label={`${REGION_WORDS[region]}, ${side}`}
                onClick={() => onChoose({ region, side })}
              >
                {side}
              </Button>
            ))
          ) : (
            <Button
              look="quiet"
              aria-label={`${REGION_WORDS[region]}, choose`}
              onClick={() => onChoose({ region, side: 'none' })}
            >
              choose
            </Button>
          )}
        </li>
      ))}
    </ul>
  );
}
