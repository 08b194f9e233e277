import { Title } from './title.js';

/** What a tab without a token shows. */
export function Shut() {
  return (
    <main>
      <Title words="The desk is shut here" />
      <p>
        This address alone does not open it. Use the one that <kbd>holdback desk</kbd> printed when
        it was started: what comes after # in it is the key.
      </p>
    </main>
  );
}
