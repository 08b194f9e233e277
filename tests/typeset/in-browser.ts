/** What runs in the page of the browser; text, because the project does without its types. */
export const IN_BROWSER = String.raw`/** Sets paragraphs in the page: px of CSS. */
function setParagraphs(asked) {
  document.body.replaceChildren(
    ...asked.map(({ text, family, size, width }) => {
      const element = document.createElement('p');
      element.textContent = text;
      element.style.cssText = 'font: ' + size + "px '" + family + "'; width: " + width + 'px; hyphens: manual';
      return element;
    }),
  );
}

/** Lengths in characters of the lines of a paragraph, its spaces and soft hyphens included. */
function lineLengths(element) {
  const node = element.firstChild;
  const range = document.createRange();
  const bottomOf = (at) => {
    range.setStart(node, at);
    range.setEnd(node, at + 1);
    // After a soft hyphen that shows, the first box is the end of the line before.
    return [...range.getClientRects()].at(-1).bottom;
  };
  const letters = [...node.data.matchAll(/[^ \u00ad]/gu)].map((match) => match.index);
  const lengths = [];
  let first = 0;
  while (first < letters.length) {
    const bottom = bottomOf(letters[first]);
    let inside = first;
    let outside = letters.length;
    while (outside - inside > 1) {
      const middle = (inside + outside) >> 1;
      if (bottomOf(letters[middle]) > bottom + 1) outside = middle;
      else inside = middle;
    }
    const start = first === 0 ? 0 : letters[first];
    lengths.push((letters[outside] ?? node.length) - start);
    first = outside;
  }
  return lengths;
}

function breakParagraphs(asked) {
  setParagraphs(asked);
  return [...document.body.children].map(lineLengths);
}

/** Widths in px of strings at 100 px. */
function measureStrings(family, strings) {
  const context = document.createElement('canvas').getContext('2d');
  context.font = "100px '" + family + "'";
  context.fontKerning = 'normal';
  context.textRendering = 'geometricPrecision';
  return strings.map((text) => context.measureText(text).width);
}
`;
