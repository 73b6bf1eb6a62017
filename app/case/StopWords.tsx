import { Words } from '../parts/Words.tsx';
import { useCase } from './useCase.ts';

/** *Stop and be seen*, in words, beside the record that calls for it. Nothing where nothing does. */
export function StopWords({ about }: { about: string }) {
  const stops = useCase().assessment.stops.filter((stop) => stop.about.includes(about));
  return (
    <div role="alert" className="stop-words">
      {stops.map((stop) => (
        <p key={stop.words}>
          <Words weight="stop">{stop.words}</Words>
        </p>
      ))}
    </div>
  );
}
