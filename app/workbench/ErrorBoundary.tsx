import { Component, type ReactNode } from 'react';
import { Button } from '../parts/Button.tsx';
import { hrefOf } from './route.ts';

interface Props {
  /** A new value tries again: another case, another section. */
  readonly place: string;
  readonly children: ReactNode;
}

/** Keeps a fault in one place of the screen from taking the rest with it. */
export class ErrorBoundary extends Component<Props, { readonly fault: string | null; readonly place: string }> {
  override state = { fault: null as string | null, place: this.props.place };

  static getDerivedStateFromError(thrown: unknown) {
    return { fault: thrown instanceof Error ? thrown.message : String(thrown) };
  }

  static getDerivedStateFromProps(props: Props, state: { fault: string | null; place: string }) {
    return props.place === state.place ? null : { fault: null, place: props.place };
  }

  override render() {
    if (this.state.fault === null) return this.props.children;
    return (
      <div className="empty" role="alert">
        <p className="empty-title">This part of the screen could not be drawn.</p>
        <p>What was typed is stored; nothing is lost. Draw it again, or go back to the shelf.</p>
        <p className="quiet">What went wrong: {this.state.fault}</p>
        <p className="empty-actions">
          <Button onClick={() => this.setState({ fault: null })}>Draw it again</Button>{' '}
          <a href={hrefOf({ screen: 'shelf' })}>To the shelf</a>
        </p>
      </div>
    );
  }
}
