import { type ReactNode, useId } from 'react';

/** One clause of what is written as a sentence, with what is wrong with it below. */
export function Clause(props: { title: string; problems: readonly string[]; children: ReactNode }) {
  const { title, problems, children } = props;
  const id = useId();
  return (
    <section className="rule-part" aria-labelledby={id} data-refused={problems.length > 0 ? true : undefined}>
      <p id={id} className="rule-title">
        {title}
      </p>
      <div className="rule-words">{children}</div>
      {problems.length > 0 && (
        <ul className="rule-problems">
          {problems.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
