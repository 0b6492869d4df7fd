import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { AnswerPlate } from '../../panels/names/ask/answer-plate.tsx';
import { AskForm } from '../../panels/names/ask/ask-form.tsx';
import { AskLine } from '../../panels/names/ask/ask-line.tsx';
import { useAnswer, useKnowledge } from '../../panels/names/use-knowledge.ts';
import { useSession } from '../../panels/use-store.ts';
import { askQuestion } from '../../state/names/asking.ts';
import { exampleQuestions } from '../../state/names/question-forms.ts';
import styles from './ask-sheet.module.css';

/** A question in plain words, typed or picked, and its answer. */
export function AskSheet({ family }: { family: Family }) {
  const knowledge = useKnowledge(family);
  const answer = useAnswer(knowledge);
  return (
    <div className={styles.sheet}>
      <div className={styles.question}>
        <AskLine family={family} />
        <AskForm family={family} />
      </div>
      <div className={styles.answer}>
        {/* It stands before there is an answer, or the first one would not be called out. */}
        <div aria-live="polite">{answer && <AnswerPlate family={family} answer={answer} knowledge={knowledge} />}</div>
        <Examples family={family} asked={answer !== null} />
      </div>
    </div>
  );
}

function Examples({ family, asked }: { family: Family; asked: boolean }) {
  const session = useSession();
  const examples = useMemo(() => exampleQuestions(family), [family]);
  return (
    <section className={styles.examples} data-asked={asked}>
      <h2>{asked ? 'Ask also' : 'Ask about this family, for example'}</h2>
      <ul>
        {examples.map((question) => (
          <li key={question}>
            <button type="button" className={styles.example} onClick={() => askQuestion(session, question)}>
              {question}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
