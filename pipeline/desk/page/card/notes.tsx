import type { BeforeAfter, HistoryNote, NameNote } from '../../protocol.js';

/** The names of this card: how each is said, when it opens, what to avoid. */
export function Names({ names }: { readonly names: readonly NameNote[] }) {
  return (
    <section class="panel" aria-labelledby="names-title">
      <h2 id="names-title">Names in this card</h2>
      {names.length === 0 && <p class="quiet">None that names.yaml knows.</p>}
      <ul class="names">
        {names.map((note) => (
          <Name key={note.name} note={note} />
        ))}
      </ul>
    </section>
  );
}

function Name({ note }: { readonly note: NameNote }) {
  const { name, kind, say, depicted, also, avoid, opens, opensLater, publicName, italic } = note;
  return (
    <li>
      <h3>
        {italic ? <em>{name}</em> : name} <span class="small quiet">{kind}</span>
      </h3>
      <ul class="small">
        {say !== null && <li>Said: {say}</li>}
        <li class={opensLater ? 'warn' : ''}>
          {opensLater ? 'Opens later than this card: ' : ''}
          {opens}
          {publicName !== null && `; until then “${publicName}”`}
        </li>
        {depicted && <li>Recognisable in the picture</li>}
        {also.map(({ form, opens: when }) => (
          <li key={form}>
            Also “{form}” ({when})
          </li>
        ))}
        {avoid.map(({ form, use, why }) => (
          <li key={form}>
            Not “{form}” but “{use}”{why !== null && ` (${why})`}
          </li>
        ))}
      </ul>
    </li>
  );
}

/** What was decided on this card, and when. */
export function History({ history }: { readonly history: readonly HistoryNote[] }) {
  return (
    <section class="panel" aria-labelledby="history-title">
      <h2 id="history-title">Approval history</h2>
      {history.length === 0 && <p class="quiet">Nothing yet.</p>}
      <ol class="history">
        {history.map(({ when, what, who, more }, at) => (
          <li key={at}>
            <p>{what}</p>
            <p class="small quiet">
              {who}, {when}
            </p>
            {more.map((words) => (
              <p class="small" key={words}>
                {words}
              </p>
            ))}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** The card as it was and as it is, words that came and went marked. */
export function Change({ change }: { readonly change: BeforeAfter | null }) {
  if (!change) return null;
  return (
    <section class="panel" aria-labelledby="change-title">
      <h2 id="change-title">Words changed</h2>
      <p class="small quiet">Against: {change.says}</p>
      {change.fields.length === 0 && <p>No word.</p>}
      {change.fields.map(({ field, pieces }) => (
        <div key={field}>
          <h3>{field}</h3>
          <p class="text">
            {pieces.map(({ is, text }, at) => {
              if (is === 'kept') return text;
              const said = <span class="unseen">{is}: </span>;
              return is === 'added' ? (
                <ins key={at}>
                  {said}
                  {text}
                </ins>
              ) : (
                <del key={at}>
                  {said}
                  {text}
                </del>
              );
            })}
          </p>
        </div>
      ))}
    </section>
  );
}
