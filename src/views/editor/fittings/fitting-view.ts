import type { FunctionComponent } from 'react';
import type { FittingByKind, FittingKind, NodeId } from '../../../design/index.ts';

/** What a settings form gets: the opening that is fitted, and what it is fitted with. */
export interface FittingFormProps<F> {
  readonly opening: NodeId;
  readonly fitting: F;
}

/** What the views know of one kind of fitting. */
export interface FittingView<F> {
  readonly name: string;
  readonly withArticle: string;
  readonly purpose: string;
  /** The few settings that matter, each undoable on its own. */
  readonly Form: FunctionComponent<FittingFormProps<F>>;
}

/** One answer for every kind; a kind that is missing does not compile. */
export type FittingViews = { readonly [Kind in FittingKind]: FittingView<FittingByKind[Kind]> };
