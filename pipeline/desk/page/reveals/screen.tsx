import { useEffect, useState } from 'preact/hooks';
import type { RevealsReport } from '../../../../schema/index.js';
import type { StatusAnswer } from '../../protocol.js';
import { sentenceOf, type Desk } from '../line/desk.js';
import { counted } from '../parts/counted.js';
import { instantWords } from '../parts/instant-words.js';
import { Title } from '../shell/title.js';

type Step = RevealsReport['steps'][number];

/** The timeline: what opens when. */
export function RevealsScreen(props: {
  readonly desk: Desk;
  readonly status: StatusAnswer | null;
}) {
  const { desk, status } = props;
  const [report, setReport] = useState<RevealsReport | string | null>(null);
  useEffect(() => {
    void desk.reveals().then(setReport, (thrown: unknown) => setReport(sentenceOf(thrown)));
  }, [desk]);
  if (report === null) return <Title words="Reveals" more="Fetching them…" />;
  if (typeof report === 'string') return <Title words="Reveals" more={report} />;
  return (
    <>
      <Title words="Reveals" more="What the public sees, and from when on" />
      {report.steps.length === 0 && <p>Nothing opens.</p>}
      <ol class="steps">
        {report.steps.map((step) => (
          <StepItem key={step.at} step={step} isPast={isPast(step, status)} />
        ))}
      </ol>
    </>
  );
}

/** Whether it is not among the instants to come. */
function isPast({ at }: Step, status: StatusAnswer | null): boolean {
  const ahead = status?.sheet?.ahead;
  return ahead !== undefined && !ahead.some((opening) => opening.at === at);
}

function StepItem({ step, isPast }: { readonly step: Step; readonly isPast: boolean }) {
  const { at, opens, inShops, titles, names, cards, shown, placeholders } = step;
  return (
    <li class={isPast ? 'past' : ''}>
      <h2>
        {instantWords(at)} {isPast && <span class="state">past</span>}
      </h2>
      <ul>
        {opens.length > 0 && <li>Opens: {opens.join(', ')}</li>}
        {inShops.length > 0 && <li>In shops: {inShops.join(', ')}</li>}
        <li class="quiet">
          {counted(shown, 'card')} shown from then on, {placeholders} still to be revealed
        </li>
      </ul>
      <Listed words={`${counted(titles.length, 'title')} new`} list={titles} />
      <Listed words={`${counted(names.length, 'name')} that may be told`} list={names} />
      {cards.length > 0 && (
        <details>
          <summary>{counted(cards.length, 'card')} seen otherwise</summary>
          <ul class="small">
            {cards.map((card, which) => (
              <li key={which}>
                {[card.number, card.name].filter((words) => words !== null).join(' · ')} (
                {card.subset}): {card.change}
                {card.fields.length > 0 && ` (${card.fields.join(', ')})`}
              </li>
            ))}
          </ul>
        </details>
      )}
    </li>
  );
}

function Listed({ words, list }: { readonly words: string; readonly list: readonly string[] }) {
  if (list.length === 0) return null;
  return (
    <details>
      <summary>{words}</summary>
      <p class="small">{list.join(', ')}</p>
    </details>
  );
}
