import { startFolding } from './fold.js';
import { writeOwnTimes } from './own-time.js';

/** What every page does for its reader: folds, tells the time, and works without a line. */
const site = new URL(document.body.dataset['root'] ?? './', location.href).pathname;

startFolding(site);
writeOwnTimes();
sayOffline();
addEventListener('online', sayOffline);
addEventListener('offline', sayOffline);

if ('serviceWorker' in navigator && location.protocol !== 'file:') {
  navigator.serviceWorker.register(`${site}sw.js`).catch(() => {
    // Without it the site needs a line, and works all the same.
  });
}

function sayOffline() {
  const notice = document.querySelector('.offline');
  if (notice instanceof HTMLElement) notice.hidden = navigator.onLine;
}
