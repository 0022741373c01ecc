// Opens the view that the address names, and keeps it up to date.
//
// To add a view:
// 1. A file NAME.js beside this one, all small letters, that exports
//      export const view = {
//        path: 'NAME',                    // its address is #/NAME
//        words: (month) => 'In the bar',  // its words there; '' to stand in no bar (a day)
//        show(root, rest) { …; return { title, update, leave }; },
//      };
//    `rest` is what follows in the address (#/NAME/rest). `update()` is called after each change,
//    whoever made it; `leave()`, if there is one, when another view is opened.
//    Elements are made by el() of parts.js, so that text is always text.
// 2. An import and its place in VIEWS below; the bar is drawn in that order.
// 3. If it needs data of its own: a class that implements ViewApi, entered in ApiHandler's `views`
//    under NAME. get('NAME/…') and post('NAME/…', body) of ask.js then reach it; GET shows, POST
//    changes. What changes the choices goes through change() of ask.js, so that it can be undone.
// Files are served by their name alone; there is no list of them to add to.

import {
  NOT_YET,
  get,
  handInTicket,
  isSaving,
  notice,
  onMonth,
  onStep,
  readMonth,
  redo,
  state,
  takeWord,
  undo,
} from './ask.js';
import { view as day } from './day.js';
import { view as month } from './month.js';
import { view as note } from './note.js';
import { showOpening } from './opening.js';
import { view as pages } from './pages.js';
import { el, redraw } from './parts.js';
import { view as undated } from './photos.js';
import { view as sheets } from './sheets.js';
import { quit, readStart, showStart, view as start } from './start.js';

const VIEWS = [month, pages, note, day, undated, sheets, start];

const main = document.getElementById('main');
const bar = document.getElementById('views');
const undoButton = document.getElementById('undo');
const redoButton = document.getElementById('redo');
let view = null;
let shown = null;
let here = month;

function open() {
  const path = location.hash.replace(/^#\/?/, '');
  view?.leave?.();
  document.querySelector('header').classList.remove('before');
  document.querySelectorAll('dialog').forEach((dialog) => dialog.close());
  const [name, ...rest] = path.split('/');
  const found = VIEWS.find((each) => each.path === name) ?? month;
  view = found.show(main, rest.join('/'));
  document.title = `${view.title} · Daymount`;
  here = found;
  drawBar();
  if (shown !== null) {
    main.focus({ preventScroll: true });
    scrollTo(0, 0);
  }
  shown = path;
  if (pointAt) {
    point(pointAt);
    pointAt = '';
  }
}

onMonth((month) => {
  label(undoButton, 'Undo', month.undo);
  label(redoButton, 'Redo', month.redo);
  drawBar();
  view?.update();
});

function drawBar() {
  const links = VIEWS.map((each) => [each, each.words(state.month)])
    .filter(([, words]) => words !== '')
    .map(([each, words]) =>
      el(
        'a',
        {
          id: `to-${each.path || 'month'}`,
          href: `#/${each.path}`,
          'data-at': `view-${each.path}`,
          'aria-current': each === here ? 'page' : null,
        },
        words,
      ),
    );
  redraw(bar, links);
}

/** What would be undone stands on the button, as far as there is room. */
function label(button, word, step) {
  button.disabled = !step;
  button.setAttribute('aria-label', step ? `${word}: ${step.words}` : word);
  button.title = step?.words ?? '';
  button.replaceChildren(word, el('span', { class: 'what' }, step ? `: ${step.words}` : ''));
}

/** An undone change is shown where it happened. */
onStep(({ day, part }) => {
  if (!day || here === month) {
    return; // the month shows it, or it is no day's
  }
  const there = `#/day/${day}`;
  if (location.hash === there) {
    point(part);
  } else {
    pointAt = part;
    location.hash = there;
  }
});
let pointAt = '';

function point(part) {
  const place = main.querySelector(`[data-part="${CSS.escape(part)}"]`);
  if (!place) {
    return;
  }
  place.scrollIntoView({ block: 'nearest' });
  place.classList.remove('pointed');
  requestAnimationFrame(() => place.classList.add('pointed'));
}

undoButton.addEventListener('click', undo);
redoButton.addEventListener('click', redo);
document.getElementById('skip').addEventListener('click', (event) => {
  event.preventDefault();
  main.focus();
});
document.addEventListener('keydown', (event) => {
  const writing = event.target.matches('textarea, input[type="text"], dialog input');
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
  if (/^#(ticket-)?[0-9a-f]{32}$/.test(location.hash)) {
    location.reload(); // another start's address, given to this tab
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
  await handInTicket();
  state.start = await readStart();
  const quitButton = document.getElementById('quit');
  quitButton.hidden = !state.start;
  quitButton.addEventListener('click', quit);
  if (state.start && !state.start.open && !state.start.opening) {
    chooseMonth();
  } else {
    await showOpenedMonth();
  }
} catch (failure) {
  main.replaceChildren();
  notice(failure.message);
  if (state.start) chooseMonth();
}

function chooseMonth() {
  document.querySelector('header').classList.add('before');
  document.title = 'Start · Daymount';
  view = showStart(main);
}

async function showOpenedMonth() {
  try {
    await readMonth();
  } catch (failure) {
    if (failure.status !== NOT_YET) {
      throw failure;
    }
    document.querySelector('header').classList.add('before');
    await showOpening(main);
    await readMonth();
  }
  open();
  requestAnimationFrame(() => performance.mark('month usable'));
}
