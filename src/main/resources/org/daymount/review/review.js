// Opens the view that the address names, and keeps it up to date.

import {
  NOT_YET,
  get,
  isSaving,
  notice,
  onMonth,
  readMonth,
  redo,
  state,
  takeWord,
  undo,
} from './ask.js';
import { showDay } from './day.js';
import { showMonth } from './month.js';
import { showOpening } from './opening.js';
import { showUndated } from './photos.js';
import { showSheets } from './sheets.js';

const main = document.getElementById('main');
const undoButton = document.getElementById('undo');
const redoButton = document.getElementById('redo');
let view = null;
let shown = null;

function open() {
  const path = location.hash.replace(/^#\/?/, '');
  view?.leave?.();
  document.querySelectorAll('dialog').forEach((dialog) => dialog.close());
  const day = /^day\/(\d{4}-\d{2}-\d{2})$/.exec(path);
  if (day) {
    view = showDay(main, day[1]);
  } else if (path === 'undated') {
    view = showUndated(main, get);
  } else if (path === 'sheets') {
    view = showSheets(main);
  } else {
    view = showMonth(main);
  }
  document.title = `${view.title} · Daymount`;
  for (const link of document.querySelectorAll('nav a')) {
    const here = link.getAttribute('href') === `#/${path}`;
    here ? link.setAttribute('aria-current', 'page') : link.removeAttribute('aria-current');
  }
  if (shown !== null) {
    main.focus({ preventScroll: true });
    scrollTo(0, 0);
  }
  shown = path;
}

onMonth((month) => {
  label(undoButton, 'Undo', month.undo);
  label(redoButton, 'Redo', month.redo);
  document.getElementById('to-undated').textContent =
    month.undated > 0 ? `Without a day (${month.undated})` : 'Without a day';
  view?.update();
});

function label(button, word, what) {
  button.disabled = !what;
  button.setAttribute('aria-label', what ? `${word}: ${what}` : word);
  button.title = what ?? '';
}

undoButton.addEventListener('click', undo);
redoButton.addEventListener('click', redo);
document.getElementById('skip').addEventListener('click', (event) => {
  event.preventDefault();
  main.focus();
});
document.addEventListener('keydown', (event) => {
  const writing = event.target.matches('textarea, input[type="text"]');
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || writing) {
    return;
  }
  event.preventDefault();
  if (event.shiftKey) {
    if (!redoButton.disabled) redo();
  } else if (!undoButton.disabled) {
    undo();
  }
});
addEventListener('hashchange', () => {
  const before = sessionStorage.getItem('review-token');
  takeWord();
  if (sessionStorage.getItem('review-token') !== before) {
    location.reload();
    return;
  }
  if (state.month) open();
});
addEventListener('beforeunload', (event) => {
  if (isSaving()) event.preventDefault();
});
// A tab that comes back to the front shows the newest.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible' && state.month && !isSaving()) {
    readMonth().catch(() => {});
  }
});

takeWord();
try {
  try {
    await readMonth();
  } catch (failure) {
    if (failure.status !== NOT_YET) {
      throw failure;
    }
    await showOpening(main);
    await readMonth();
  }
  open();
  requestAnimationFrame(() => performance.mark('month usable'));
} catch (failure) {
  main.replaceChildren();
  notice(failure.message);
}
