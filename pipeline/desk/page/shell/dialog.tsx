import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** A question or a list over the page. Escape closes it, and what had the focus has it again. */
export function Dialog(props: {
  readonly title: string;
  readonly close: () => void;
  readonly wide?: boolean;
  readonly children: ComponentChildren;
}) {
  const box = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    box.current?.showModal();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={box}
      class={props.wide === true ? 'wide' : ''}
      aria-labelledby="dialog-title"
      onClose={props.close}
    >
      <div class="stack">
        <h2 id="dialog-title">{props.title}</h2>
        {props.children}
      </div>
    </dialog>
  );
}
