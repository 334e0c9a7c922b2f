import { useState } from 'react';
import { houseRules } from '../../../../catalog/index.ts';
import { askQuestion, withdrawQuestion } from '../../../../design/index.ts';
import { createReviewData, fillReviewPage, SHOP_EXTRAS, type ShopExtra } from '../../../../shop/index.ts';
import { fileStem } from '../../files/file-name.ts';
import { Button, CheckField, Heading } from '../../parts/index.ts';
import { useBench } from '../../state/bench.ts';
import { useDesk } from '../../state/use-desk.ts';
import { useEditor, useEditorStore } from '../../state/use-editor.ts';
import sheet from '../sheet.module.css';
import { saveOne } from '../shop/save-packet.ts';
import styles from './review.module.css';
import { WordsField } from './words-field.tsx';

const EXTRA_LABELS: Readonly<Record<ShopExtra, string>> = {
  'cut-list': 'cut list',
  hardware: 'pick list of hardware',
  price: 'price',
};

/** The built page that a copy is filled into, beside the editor's own. */
const PAGE = 'review-copy.html';

const builtPage = async (): Promise<string> => {
  const answer = await fetch(new URL(PAGE, document.baseURI));
  if (!answer.ok) throw new Error(`${PAGE} is not there (${answer.status})`);
  return answer.text();
};

/** Questions for whoever reviews, and the one file that they get. */
export const CopyPart = () => {
  const store = useEditorStore();
  const { catalog } = useBench();
  const tell = useDesk((desk) => desk.tell);
  const questions = useEditor((editor) => editor.history.design.questions);
  const edit = useEditor((editor) => editor.edit);
  const about = useEditor((editor) => editor.selection.at(-1) ?? null);
  const ready = useEditor((editor) => editor.judgement !== null && editor.judgement.edit >= editor.editNumber);
  const [question, setQuestion] = useState('');
  const [withShop, setWithShop] = useState<readonly ShopExtra[]>([]);
  const [making, setMaking] = useState(false);
  const save = async (): Promise<void> => {
    const { history, fitOut, judgement } = store.getState();
    if (!judgement) return;
    setMaking(true);
    try {
      const page = await builtPage();
      const { design } = history;
      const rules = houseRules(catalog, design.houseRules);
      const space = judgement.space.ok ? judgement.space.value : null;
      const { inspection, order } = judgement;
      const data = createReviewData({ design, fitout: fitOut, catalog, rules, space, inspection, order, withShop });
      const path = `${fileStem(design.title)}-review.html`;
      saveOne({ path, kind: 'contents', about: 'review copy', text: fillReviewPage(page, data) });
      tell(`${path} saved: it opens by double click, without a network.`);
    } catch (fault) {
      tell(`The review copy could not be made: ${String(fault)}`, 'trouble');
    } finally {
      setMaking(false);
    }
  };
  return (
    <section className={sheet.group}>
      <Heading title="Review copy" aside="one file, no network" />
      {questions.map(({ id, text }) => (
        <div className={sheet.bar} key={id}>
          <span>{text}</span>
          <Button small onClick={() => edit('withdraw a question', (design) => withdrawQuestion(design, id))}>
            Withdraw
          </Button>
        </div>
      ))}
      <div className={sheet.bar}>
        <WordsField
          label="A question for the chief, about what is chosen"
          value={question}
          maxLength={2000}
          onChange={setQuestion}
        />
        <Button
          disabled={question.trim() === ''}
          onClick={() => {
            edit('ask a question', (design) => askQuestion(design, { text: question.trim(), about }).design);
            setQuestion('');
          }}
        >
          Ask it
        </Button>
      </div>
      <fieldset className={styles.ticks}>
        <legend>Put in of the shop</legend>
        {SHOP_EXTRAS.map((extra) => (
          <CheckField
            key={extra}
            label={EXTRA_LABELS[extra]}
            checked={withShop.includes(extra)}
            onCommit={(on) =>
              setWithShop(SHOP_EXTRAS.filter((each) => (each === extra ? on : withShop.includes(each))))
            }
          />
        ))}
      </fieldset>
      <div className={sheet.bar}>
        <Button
          look="main"
          disabled={!ready || making}
          title={ready ? undefined : 'Waits for the inspection'}
          onClick={() => void save()}
        >
          {making ? 'Making the copy…' : 'Save the review copy'}
        </Button>
      </div>
    </section>
  );
};
