import { render } from 'preact';
import { Desk } from './line/desk.js';
import { Live } from './line/live.js';
import { sessionToken } from './line/token.js';
import { App } from './shell/app.js';
import { listenForKeys } from './shell/keys.js';
import { Shut } from './shell/shut.js';

/** Opens the desk in this tab, if it may. */
async function start(): Promise<void> {
  const place = document.getElementById('desk');
  if (!place) return;
  const token = await sessionToken();
  place.replaceChildren();
  if (token === null) {
    render(<Shut />, place);
    return;
  }
  const desk = new Desk(token);
  listenForKeys();
  render(<App desk={desk} live={new Live(desk)} />, place);
}

void start();
