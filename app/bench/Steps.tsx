import { type ReactNode, useId } from 'react';
import { Behind } from '../case/Margin.tsx';
import { useSelection } from '../case/selection.ts';
import { type Standing, type Step, STEP_TITLES, stepNeeds, STEPS } from './stepNeeds.ts';

/** The five steps in order, each saying what it still needs; the one at hand is laid open. */
export function Steps(props: {
  step: Step;
  onStep: (step: Step) => void;
  standing: Standing;
  /** Whether what stands behind the number selected is shown below. */
  behind: boolean;
  /** What the step at hand holds. */
  children: ReactNode;
}) {
  const { step, onStep, standing, behind, children } = props;
  const hasNumber = useSelection()?.kind === 'fact';
  const id = useId();
  return (
    <section className="bench-steps" aria-label="Steps">
      <ol>
        {STEPS.map((one, i) => {
          const needs = stepNeeds(one, standing);
          const isOpen = one === step;
          return (
            <li key={one}>
              <h2>
                <button
                  type="button"
                  className="bench-step"
                  aria-expanded={isOpen}
                  aria-controls={`${id}-${one}`}
                  onClick={() => onStep(one)}
                >
                  <strong>
                    {i + 1} {STEP_TITLES[one]}
                  </strong>
                  <span className={needs === '' ? 'quiet' : 'bench-needs'}>
                    {needs === '' ? 'has what it needs' : needs}
                  </span>
                </button>
              </h2>
              <div id={`${id}-${one}`} className="bench-step-body" hidden={!isOpen}>
                {isOpen && children}
              </div>
            </li>
          );
        })}
      </ol>
      {behind && hasNumber && (
        // It scrolls by itself, so it can be reached by the keyboard.
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
        <section className="bench-behind margin" aria-label="Behind the number" tabIndex={0}>
          <Behind />
        </section>
      )}
    </section>
  );
}
