import { OutcomeWords, Words } from '../parts/Words.tsx';
import { useCase } from './useCase.ts';

/** *Stop and be seen*, or a caution, in words beside the record that calls for it. Nothing where nothing does. */
export function StopWords({ about }: { about: string }) {
  const { stops, findings } = useCase().assessment;
  const own = stops.filter((stop) => stop.about.includes(about));
  const cautions = findings.filter(
    (finding) => finding.outcome === 'caution' && finding.tests.some((test) => test.factKey?.includes(about) === true),
  );
  return (
    <div role="alert" className="stop-words">
      {own.map((stop) => (
        <p key={stop.words}>
          <Words weight="stop">{stop.words}</Words>
        </p>
      ))}
      {cautions.map((finding) => (
        <p key={finding.key}>
          <OutcomeWords outcome="caution" /> {finding.finding}
        </p>
      ))}
    </div>
  );
}
