import { type ReactNode, useId } from 'react';
import { type Standing, type Step, STEP_TITLES, stepNeeds, STEPS } from './stepNeeds.ts';

/** The five steps in order, each saying what it still needs; the one at hand is laid open. */
export function Steps(props: {
  step: Step;
  onStep: (step: Step) => void;
  standing: Standing;
  /** What the step at hand holds. */
  children: ReactNode;
}) {
  const { step, onStep, standing, children } = props;
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
    </section>
  );
}
