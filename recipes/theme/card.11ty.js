/** Whatever is put into a page is escaped here: nothing else writes it. */
const escape = (text) =>
  String(text).replace(/[&<>"']/g, (sign) => `&#${String(sign.charCodeAt(0))};`);

const pagesOf = (set) =>
  set.subsets.flatMap((subset) =>
    subset.cards.filter(({ page }) => page !== null).map((card) => ({ set, subset, card })),
  );

export const data = {
  pagination: {
    data: 'publicData.sets',
    size: 1,
    alias: 'it',
    before: (sets) => sets.flatMap(pagesOf),
  },
  permalink: ({ it }) => `${it.card.page}index.html`,
};

export function render({ it, publicData }) {
  const { set, subset, card } = it;
  const { legal } = publicData.property;
  const number = `${card.number}${card.letter ?? ''}`;
  const words = (runs) => runs.map((run) => ('held' in run ? '…' : run.text)).join('');
  const bio = card.bio.map((runs) => `<p>${escape(words(runs))}</p>`).join('\n');
  const told = `<p>${escape(card.name)}</p>\n${bio}`;
  const level = Math.max(card.level, card.nameLevel);
  const folded = `<details><summary>Tells of ${escape(publicData.property.levels[level])}</summary>${told}</details>`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escape(`${number} · ${set.short}`)}</title>
</head>
<body>
<main>
<p><a href="../../">${escape(set.title)}</a>, ${escape(subset.title)}</p>
<h1>${escape(number)}</h1>
${level > 0 ? folded : told}
${publicData.preview ? `<p>Preview: not to be passed on before ${escape(publicData.asOf)}.</p>` : ''}
<p>As of ${escape(publicData.asOf)}. ${escape(legal ?? '')}</p>
</main>
</body>
</html>
`;
}
