import { Component, type ReactNode } from 'react';
import { Button } from '../parts/index.ts';
import styles from './window.module.css';

interface SafeAreaProps {
  /** What stands here, for the sentence when it breaks. */
  readonly what: string;
  readonly children: ReactNode;
}

interface SafeAreaState {
  readonly fault: Error | null;
}

/** Keeps a fault in one part of the window from taking the rest along; the design itself is not touched by it. */
export class SafeArea extends Component<SafeAreaProps, SafeAreaState> {
  override state: SafeAreaState = { fault: null };

  static getDerivedStateFromError(fault: unknown): SafeAreaState {
    return { fault: fault instanceof Error ? fault : new Error(String(fault)) };
  }

  override render(): ReactNode {
    const { fault } = this.state;
    if (!fault) return this.props.children;
    return (
      <div className={styles.broken} role="alert">
        <p>
          {this.props.what} stopped working. Your design is not affected. ({fault.message})
        </p>
        <Button onClick={() => this.setState({ fault: null })}>Try again</Button>
      </div>
    );
  }
}
