import { Button } from '../../../parts/index.ts';
import type { OrderState } from './use-order.ts';

/** What stands in the place of the assembly order until it is drawn. */
export const OrderWait = ({ state, again }: { readonly state: OrderState; readonly again: () => void }) => {
  switch (state.is) {
    case 'drawing':
      return (
        <p role="status">
          {state.says}{' '}
          <Button small onClick={state.stop}>
            Stop
          </Button>
        </p>
      );
    case 'stopped':
      return (
        <p role="status">
          The order of assembly is not drawn: you stopped it.{' '}
          <Button small onClick={again}>
            Draw it
          </Button>
        </p>
      );
    case 'failed':
      return (
        <p role="alert">
          The order of assembly could not be drawn: {state.says}.{' '}
          <Button small onClick={again}>
            Try again
          </Button>
        </p>
      );
    case 'idle':
    case 'there':
      return <p role="status">Drawing…</p>;
  }
};
