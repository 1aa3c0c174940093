import { Component, type ReactNode } from 'react';

/** Catches what no part of the page should ever throw, and keeps the way open to the job: every step of it is kept. */
export class Broken extends Component<{ readonly children: ReactNode }, { readonly why: string | null }> {
  override state = { why: null as string | null };

  static getDerivedStateFromError(error: unknown): { why: string } {
    return { why: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.why === null) return this.props.children;
    return (
      <div className="broken" role="alert">
        <h1>This page stopped.</h1>
        <p>The job is kept up to the last step. Open it again; if it stops at the same place, undo that step.</p>
        <p className="broken-why">{this.state.why}</p>
        <button type="button" className="key primary" onClick={() => location.reload()}>
          Open it again
        </button>
      </div>
    );
  }
}
