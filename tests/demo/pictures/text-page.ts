/** A page that shows what a command printed, as a terminal does. */
export function textPage(command: string, printed: string): string {
  return `<!doctype html><meta charset="utf-8"><style>${STYLE}</style><pre><b>$ ${escaped(command)}</b>\n${escaped(printed)}</pre>`;
}

const STYLE = `
body { margin: 0; background: #14233a; }
pre { margin: 0; padding: 18px 20px; color: #f6f3ea; font: 12px/1.35 "DejaVu Sans Mono", monospace; white-space: pre; }
b { color: #f8d283; font-weight: normal; }
`;

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}
