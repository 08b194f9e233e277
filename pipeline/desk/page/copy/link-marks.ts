import { RangeSetBuilder } from '@codemirror/state';
import {
  Decoration,
  ViewPlugin,
  type DecorationSet,
  type EditorView,
  type ViewUpdate,
} from '@codemirror/view';
import { linksIn } from './links.js';

/** Shows held spans and count links as what they are, in copy that stays as it is typed. */
export function linkMarks(labelOf: (id: string) => string) {
  const marksOf = (view: EditorView): DecorationSet => {
    const builder = new RangeSetBuilder<Decoration>();
    for (const { kind, words, of, from, to } of linksIn(view.state.doc.toString())) {
      const title =
        kind === 'held' ? `Held until ${labelOf(of)}: prints, stays off the site` : `Counts ${of}`;
      const inner = from + 1 + words.length;
      builder.add(from, from + 1, Decoration.mark({ class: 'copy-sign' }));
      builder.add(
        from + 1,
        inner,
        Decoration.mark({ class: `copy-${kind}`, attributes: { title } }),
      );
      builder.add(inner, to, Decoration.mark({ class: 'copy-sign' }));
    }
    return builder.finish();
  };
  return ViewPlugin.fromClass(
    class {
      marks: DecorationSet;
      constructor(view: EditorView) {
        this.marks = marksOf(view);
      }
      update({ docChanged, view }: ViewUpdate): void {
        if (docChanged) this.marks = marksOf(view);
      }
    },
    { decorations: ({ marks }) => marks },
  );
}
