import { diffWordsWithSpace } from 'diff';

/** A text whole, with the words marked that are not in another. */
export function WordsThatCame({ before, now }: { readonly before: string; readonly now: string }) {
  const kept = diffWordsWithSpace(before, now).filter(({ removed }) => !removed);
  return (
    <p class="text">
      {kept.map(({ value, added }, at) => (added ? <ins key={at}>{value}</ins> : value))}
    </p>
  );
}
