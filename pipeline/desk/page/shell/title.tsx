import { useEffect } from 'preact/hooks';

/** The title of a screen, of the page as well. */
export function Title({ words, more = '' }: { readonly words: string; readonly more?: string }) {
  useEffect(() => {
    document.title = `${words} – Writers’ desk`;
  }, [words]);
  return (
    <div class="stack">
      <h1 id="screen-title" tabIndex={-1}>
        {words}
      </h1>
      {more !== '' && <p class="quiet">{more}</p>}
    </div>
  );
}
