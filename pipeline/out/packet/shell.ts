import { createHash } from 'node:crypto';

/** What the clear part of a sealed page carries: numbers, digests and octets in base64. */
export interface Sealed {
  readonly rounds: number;
  readonly salt: string;
  readonly nonce: string;
  readonly sealed: string;
  /** The texts of the scripts that the page inside may run. */
  readonly scripts: readonly string[];
}

/**
 * The clear part of a sealed page. It is the same for every one of a kind: it tells neither property
 * nor set nor person, and it may ask nothing of a network.
 */
export function shell({ rounds, salt, nonce, sealed, scripts }: Sealed): string {
  const allowed = [SCRIPT, ...scripts].map((text) => `'sha256-${digestOf(text)}'`).join(' ');
  const policy = `default-src 'none'; script-src ${allowed}; style-src 'unsafe-inline'; img-src data:; form-action 'none'; base-uri 'none'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>A sealed page</title>
<style>${STYLE}</style>
</head>
<body>
<main>
<h1>A sealed page</h1>
<p>It opens on this device alone, with the passphrase that you were told. Nothing is sent anywhere.</p>
<form id="open">
<label for="passphrase">Passphrase</label>
<input id="passphrase" autocomplete="off" autocapitalize="characters" spellcheck="false" required>
<button>Open</button>
<p id="said" role="status"></p>
</form>
<noscript><p>This page needs its script to open.</p></noscript>
</main>
<template id="sealed" data-rounds="${String(rounds)}" data-salt="${salt}" data-nonce="${nonce}">${sealed}</template>
<script>${SCRIPT}</script>
</body>
</html>
`;
}

function digestOf(script: string): string {
  return createHash('sha256').update(script).digest('base64');
}

const SCRIPT = `
'use strict';
function octetsOf(text) {
  const signs = atob(text);
  const octets = new Uint8Array(signs.length);
  for (let at = 0; at < signs.length; at++) octets[at] = signs.charCodeAt(at);
  return octets;
}
const lettersOf = (typed) =>
  typed.toUpperCase().replace(/[\\s-]+/g, '').replaceAll('O', '0').replace(/[IL]/g, '1');
const form = document.getElementById('open');
const said = document.getElementById('said');
async function unsealed(typed) {
  const { dataset, content } = document.getElementById('sealed');
  const letters = new TextEncoder().encode(lettersOf(typed));
  const base = await crypto.subtle.importKey('raw', letters, 'PBKDF2', false, ['deriveKey']);
  const salt = octetsOf(dataset.salt);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: Number(dataset.rounds) };
  const coming = crypto.subtle.deriveKey(how, base, { name: 'AES-GCM', length: 256 }, false, ['decrypt']);
  const nonce = { name: 'AES-GCM', iv: octetsOf(dataset.nonce) };
  const hidden = octetsOf(content.textContent);
  const octets = await crypto.subtle.decrypt(nonce, await coming, hidden);
  const length = new DataView(octets).getUint32(0);
  return new TextDecoder().decode(new Uint8Array(octets, 4, length));
}
form.addEventListener('submit', async (event) => {
  event.preventDefault();
  said.textContent = 'Opening …';
  let page;
  try {
    page = await unsealed(document.getElementById('passphrase').value);
  } catch {
    said.textContent = 'It does not open with that passphrase. Look at each letter; capitals do not count.';
    return;
  }
  document.open();
  document.write(page);
  document.close();
});
`;

const STYLE = `
:root { color-scheme: light dark; --ground: #fbfaf7; --ink: #1c2429; --quiet: #55646c; --mark: #0b6e69; --on: #fff; }
@media (prefers-color-scheme: dark) { :root { --ground: #171d20; --ink: #edf1f0; --quiet: #a6b4b9; --mark: #6cc5be; --on: #10181a; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--ground); color: var(--ink); font: 1.125rem/1.5 Georgia, 'Times New Roman', serif; }
main { max-width: 32rem; margin: 0 auto; padding: 3rem 1.25rem; }
h1 { font-size: 1.75rem; line-height: 1.2; margin: 0 0 .5rem; }
label { display: block; margin-top: 1.5rem; font-weight: bold; }
input, button { font: inherit; min-height: 2.75rem; padding: .375rem .75rem; border: 2px solid var(--mark); border-radius: .25rem; }
input { width: 100%; background: transparent; color: inherit; font-family: ui-monospace, monospace; letter-spacing: .06em; }
button { margin-top: .75rem; background: var(--mark); color: var(--on); font-weight: bold; }
:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
#said { color: var(--quiet); min-height: 1.5em; }
`;
