import { useState } from 'react';
import { gearMapPages, type ReviewData } from '../../shop/index.ts';
import { PaperPages } from '../paper-pages.tsx';
import { keepDraft, keptDraft } from './keep-draft.ts';
import { FindPanel } from './panels/find-panel.tsx';
import { CautionsPanel, OrderPanel, QuestionsPanel, WeightPanel } from './panels/plain-panels.tsx';
import { ReplyPanel } from './panels/reply-panel.tsx';
import { ShopPanel } from './panels/shop-panel.tsx';
import { SceneView } from './scene/scene-view.tsx';
import { createReview, nameOf, ReviewContext, TABS, type Tab, useReview } from './state.ts';

const TITLES: Readonly<Record<Tab, string>> = {
  find: 'Find',
  order: 'Order',
  weight: 'Weight',
  questions: 'Questions',
  cautions: 'Cautions',
  reply: 'Reply',
  shop: 'Shop',
};

const PANELS: Readonly<Record<Tab, () => React.ReactNode>> = {
  find: FindPanel,
  order: OrderPanel,
  weight: WeightPanel,
  questions: QuestionsPanel,
  cautions: CautionsPanel,
  reply: ReplyPanel,
  shop: ShopPanel,
};

const WaitingBar = () => {
  const data = useReview((state) => state.data);
  const waiting = useReview((state) => state.waiting);
  const wait = useReview((state) => state.wait);
  if (!waiting) return null;
  return (
    <p className="waiting" role="status">
      {waiting.kind === 'swap' ? 'Tap the gear to swap with ' : 'Tap where this should go: '}
      <bdi>{nameOf(data, waiting.part)}</bdi>{' '}
      <button type="button" onClick={() => wait(null)}>
        Leave it
      </button>
    </p>
  );
};

const Head = () => {
  const data = useReview((state) => state.data);
  return (
    <header>
      <h1>
        <bdi>{data.title}</bdi>
      </h1>
      <p>
        {data.stamp}
        {data.approvals.map(({ who, on }) => (
          <span key={who}>
            {' '}
            · approved by <bdi>{who}</bdi>
            {on === '' ? '' : `, ${on}`}
          </span>
        ))}
      </p>
      <button type="button" onClick={() => window.print()}>
        Print the gear map
      </button>
    </header>
  );
};

const Tabs = () => {
  const tab = useReview((state) => state.tab);
  const show = useReview((state) => state.show);
  const withShop = useReview((state) => state.data.shop !== null);
  const asked = useReview((state) => state.data.questions.length);
  const said = useReview((state) => state.draft.remarks.length);
  const counts: Partial<Record<Tab, number>> = { questions: asked, reply: said };
  return (
    <nav aria-label="What to look at">
      {TABS.filter((each) => each !== 'shop' || withShop).map((each) => (
        <button type="button" key={each} aria-pressed={tab === each} onClick={() => show(each)}>
          {TITLES[each]}
          {counts[each] ? ` ${counts[each]}` : ''}
        </button>
      ))}
    </nav>
  );
};

const Panel = () => {
  const tab = useReview((state) => state.tab);
  const Shown = PANELS[tab];
  return (
    <div className="panel">
      <Shown />
    </div>
  );
};

/** The whole copy: picture and panel on screen, the gear map on paper. */
export const App = ({ data }: { readonly data: ReviewData }) => {
  const [pages] = useState(() => gearMapPages(data));
  const [store] = useState(() => createReview(data, keptDraft(data), (draft) => keepDraft(data, draft)));
  return (
    <ReviewContext value={store}>
      <div className="screen">
        <Head />
        <main>
          <SceneView />
          <section className="side" aria-label="Gear, order, weight and reply">
            <Tabs />
            <WaitingBar />
            <Panel />
          </section>
        </main>
      </div>
      <PaperPages pages={pages} />
    </ReviewContext>
  );
};
