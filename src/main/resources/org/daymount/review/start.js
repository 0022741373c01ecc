// The start page: which pictures, which month, the note, what the album is; then the month.

import { earlierAddress, forgetWord, get, notice, post, state } from './ask.js';
import { counted, el, redraw } from './parts.js';

export const view = { path: 'start', words: () => (state.start ? 'Start' : ''), show: showStart };

/** What the album is: the option of the program, its question, and what may be chosen. */
const ALBUM = [
  {
    option: 'page',
    ask: 'Size of the album’s pages',
    among: [
      ['', '6 × 8 in (15 × 20 cm)'],
      ['8.5x11', '8½ × 11 in'],
      ['12x12', '12 × 12 in (30 × 30 cm)'],
      ['9x12', '9 × 12 in (23 × 30 cm)'],
      ['A5', 'A5 (14.8 × 21 cm)'],
      ['A4', 'A4 (21 × 29.7 cm)'],
    ],
  },
  {
    option: 'space',
    ask: 'What a page usually holds',
    among: [
      ['', 'one 4 × 6 in picture (10 × 15 cm)'],
      ['4x6 on mat', 'one 4 × 6 in picture on a mat'],
      ['two 4x6', 'two 4 × 6 in pictures'],
      ['two 3x4', 'two 3 × 4 in pictures (7.5 × 10 cm)'],
      ['four 3x4', 'four 3 × 4 in pictures'],
      ['5x7', 'one 5 × 7 in picture (13 × 18 cm)'],
      ['6x8', 'one 6 × 8 in picture (15 × 20 cm)'],
    ],
  },
  {
    option: 'cards',
    ask: 'Story cards',
    among: [
      ['', 'none'],
      ['3x4', '3 × 4 in (7.5 × 10 cm)'],
      ['4x6', '4 × 6 in (10 × 15 cm)'],
    ],
  },
  {
    option: 'reveal',
    ask: 'How wide a mat shows on each side',
    among: [
      ['', '1/8 in (3 mm)'],
      ['1/16in', '1/16 in (1.5 mm)'],
      ['1/4in', '1/4 in (6 mm)'],
      ['3/8in', '3/8 in (10 mm)'],
    ],
  },
  {
    option: 'sheet',
    ask: 'The prints you order or make',
    among: [
      ['', '4 × 6 in (US)'],
      ['10x15cm', '10 × 15 cm'],
      ['5x7', '5 × 7 in (13 × 18 cm)'],
      ['6x8', '6 × 8 in (15 × 20 cm)'],
      ['letter', 'whole Letter paper, cut at home'],
      ['a4', 'whole A4 paper, cut at home'],
    ],
  },
  {
    option: 'paper',
    ask: 'Where they are printed',
    among: [
      ['', 'at a lab, one print a page'],
      ['letter', 'at home, several on Letter paper'],
      ['a4', 'at home, several on A4 paper'],
    ],
  },
  {
    option: 'start',
    ask: 'The first day lies',
    among: [
      ['', 'on the right, the front of the first leaf'],
      ['left', 'on the left'],
    ],
  },
];

/** Asked more seldom: typed as the command line takes them. */
const MORE = [
  { option: 'days', ask: 'Only these days', hint: '1-14' },
  { option: 'day-starts', ask: 'A day begins at', hint: '04:00' },
  { option: 'clock', ask: 'A camera whose clock was wrong', hint: 'Tarn T4=+1h' },
  { option: 'margin', ask: 'What the printer at home leaves white at each edge', hint: '1/4in' },
  { option: 'lab-trim', ask: 'How much the lab trims from each edge', hint: '1/16in' },
  { option: 'min-ppi', ask: 'Fewest pixels per inch: below it a print looks soft', hint: '200' },
  { option: 'ppi', ask: 'Pixels per inch of the prints made', hint: '300' },
];

export function showStart(root) {
  const at = state.start;
  const chosen = new Map(); // id to folder
  let month = '';
  let days = {};

  const walk = el('div', { class: 'walk' });
  const taken = el('ul', { class: 'chosen', 'aria-label': 'Chosen folders' });
  const typed = el('input', { type: 'text', id: 'typed', autocomplete: 'off', spellcheck: 'false' });
  const noMonth = () => el('p', { class: 'quiet' }, 'Proposed as soon as there are pictures: the month with most of them.');
  const months = el('div', { class: 'when' }, noMonth());
  const note = el('textarea', { id: 'note-text', rows: '6', maxlength: '190000' });
  const noteFile = el('input', { type: 'file', id: 'note-file', accept: '.txt,text/plain' });
  const noteWords = el('p', { class: 'quiet', role: 'status' });
  const told = el('section', { class: 'told', 'aria-label': 'What this program cannot do here', hidden: true });
  const go = el('button', { type: 'button', class: 'main', id: 'go', disabled: true, onclick: open }, 'Open this month');
  const why = el('p', { class: 'quiet', id: 'go-words' }, 'Choose a folder with pictures first.');

  root.replaceChildren(el(
    'div',
    { class: 'start' },
    el('h1', {}, 'Which month shall it be?'),
    el('p', { class: 'quiet' }, 'Your pictures are only read, and nothing leaves this computer.'),
    told,
    ...(state.month
      ? [el('p', {}, el('a', { href: '#/' }, `${state.month.title} is open: back to it`))]
      : []),
    el(
      'div',
      { class: 'begin' },
      el(
        'div',
        { class: 'asks' },
        step('1', 'The pictures', taken, walk, el(
          'div',
          { class: 'settings' },
          el('label', { for: 'typed', class: 'wide' }, 'Or type where they are', typed),
          el('button', { type: 'button', id: 'typed-go', onclick: () => into({ typed: typed.value }) }, 'Look there'),
        )),
        step('2', 'The month', months),
        step('3', 'The note', el(
          'p',
          { class: 'quiet' },
          'What you wrote on your phone, a line for each day. It can stay empty: every page then holds what is usual.',
        ), el('label', { for: 'note-text' }, 'Paste it here', note), el('label', { for: 'note-file' }, 'Or choose its file', noteFile), noteWords),
        step('4', 'The album', el('div', { class: 'settings album' }, ALBUM.map(choice)), el(
          'details',
          {},
          el('summary', {}, 'Asked more seldom'),
          el('div', { class: 'settings album' }, MORE.map(field)),
        )),
        el('div', { class: 'buttons' }, go),
        why,
      ),
      el('aside', { class: 'beside', 'aria-label': 'Other ways to begin' }, sample(), earlier()),
    ),
  ));
  typed.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') into({ typed: typed.value });
  });
  noteFile.addEventListener('change', readNote);

  function step(number, title, ...parts) {
    return el(
      'section',
      { class: 'ask', 'aria-labelledby': `ask${number}` },
      el('h2', { id: `ask${number}` }, el('span', { class: 'number', 'aria-hidden': 'true' }, number), ` ${title}`),
      ...parts,
    );
  }

  function choice({ option, ask, among }) {
    const now = at.album[option] ?? '';
    const all = among.some(([value]) => value === now) ? among : [[now, now], ...among];
    const id = `album-${option}`;
    return el('label', { for: id }, ask, el(
      'select',
      { id, 'data-option': option },
      all.map(([value, words]) => el('option', { value, selected: value === now }, words)),
    ));
  }

  function field({ option, ask, hint }) {
    const id = `album-${option}`;
    return el('label', { for: id }, ask, el('input', {
      type: 'text',
      id,
      'data-option': option,
      value: at.album[option] ?? '',
      placeholder: hint,
      autocomplete: 'off',
    }));
  }

  function sample() {
    if (!at.sample) {
      return null;
    }
    return el(
      'section',
      { class: 'try' },
      el('h2', {}, 'Only looking?'),
      el('p', {}, 'An island, a dog, a boat being painted: a month that was invented for you to try everything on.'),
      el('button', { type: 'button', id: 'try', onclick: () => begin('start/sample', {}) }, 'Try it with our invented June'),
    );
  }

  function earlier() {
    return el(
      'section',
      { class: 'earlier' },
      el('h2', {}, 'Earlier months'),
      at.earlier.length === 0
        ? el('p', { class: 'quiet' }, 'None yet. A month that was opened is listed here.')
        : el('ul', {}, at.earlier.map((one, index) => el('li', {}, el(
          'button',
          {
            type: 'button',
            class: 'again',
            disabled: !one.there,
            onclick: () => begin('start/earlier', { month: index }),
          },
          one.picture
            ? el('img', { src: earlierAddress(index), alt: '', loading: 'lazy' })
            : el('span', { class: 'nothing', 'aria-hidden': 'true' }, 'no prints yet'),
          el('span', {}, monthName(one.month)),
          el('span', { class: 'quiet' }, one.there ? one.out : 'its pictures are not there now'),
        )))),
    );
  }

  function drawPlaces() {
    redraw(walk, el('p', { class: 'quiet' }, 'Look for the folder; only names and how many pictures are shown.'), list(at.places));
  }

  function list(folders) {
    if (folders.length === 0) {
      return el('p', { class: 'quiet' }, 'No folders in here.');
    }
    return el('ul', { class: 'folders' }, folders.map((folder) => el('li', {}, el(
      'button',
      { type: 'button', 'data-at': folder.id, onclick: () => into({ in: folder.id }) },
      el('span', {}, folder.name),
      folder.link ? el('span', { class: 'quiet' }, ` leads to ${folder.place}`) : null,
      el('span', { class: 'count' }, countOf(folder)),
    ))));
  }

  /** A folder that may not be looked into says so, and is not said to be empty. */
  function countOf(folder) {
    const known = folder.pictures === 0 ? '' : `${counted(folder.pictures, 'picture')}${folder.more ? ' or more' : ''}`;
    const closed = folder.closed === 0 ? '' : known ? `, ${counted(folder.closed, 'folder')} not readable` : 'may not be looked into';
    return known + closed;
  }

  async function into(where) {
    walk.setAttribute('aria-busy', 'true');
    try {
      const found = await post('start/folder', where);
      notice('');
      const { folder } = found;
      redraw(
        walk,
        el('p', { class: 'here' }, el('b', {}, folder.name), ' ', el('span', { class: 'quiet' }, folder.place)),
        el(
          'div',
          { class: 'buttons' },
          el('button', { type: 'button', class: 'main', id: 'take', disabled: folder.pictures === 0, onclick: () => take(found) },
            folder.pictures === 0 ? 'No pictures in here' : `Take these ${counted(folder.pictures, 'picture')}${folder.more ? ' or more' : ''}`),
          found.up ? el('button', { type: 'button', 'data-at': 'up', onclick: () => into({ in: found.up }) }, 'One folder up') : null,
          el('button', { type: 'button', 'data-at': 'places', onclick: drawPlaces }, 'Other places'),
        ),
        list(found.folders),
      );
    } catch (failure) {
      notice(failure.message);
    }
    walk.removeAttribute('aria-busy');
  }

  function take(found) {
    chosen.set(found.folder.id, found.folder);
    drawTaken();
    if (found.hasNote && !note.value) {
      noteWords.textContent = 'There is a note.txt beside the pictures: it is used unless you paste another.';
    }
    changed();
  }

  /** What was taken stands above; here is the way to more. */
  function drawTaken() {
    redraw(walk, el('div', { class: 'buttons' }, el(
      'button',
      { type: 'button', 'data-at': 'more-folders', onclick: drawPlaces },
      'Add another folder',
    )));
    walk.querySelector('button').focus({ preventScroll: true });
  }

  async function changed() {
    redraw(taken, [...chosen.values()].map((folder) => el(
      'li',
      {},
      el('span', {}, el('b', {}, folder.name), ` ${countOf(folder)} `, el('span', { class: 'quiet' }, folder.place)),
      el('button', {
        type: 'button',
        'data-at': `away-${folder.id}`,
        'aria-label': `Take ${folder.name} away`,
        onclick: () => {
          chosen.delete(folder.id);
          if (chosen.size === 0) drawPlaces();
          changed();
        },
      }, 'Take away'),
    )));
    taken.hidden = chosen.size === 0;
    month = '';
    ready();
    if (chosen.size === 0) {
      months.replaceChildren(noMonth());
      return;
    }
    months.replaceChildren(el('p', { role: 'status' }, 'Reading when the pictures were taken …'), el('progress', { 'aria-label': 'Reading dates' }));
    try {
      const found = await post('start/dates', { folders: [...chosen.keys()] });
      days = found.days;
      propose(found.undated);
    } catch (failure) {
      months.replaceChildren(el('p', { class: 'warn' }, failure.message));
    }
  }

  function propose(undated) {
    const counts = new Map();
    for (const [day, count] of Object.entries(days)) {
      counts.set(day.slice(0, 7), (counts.get(day.slice(0, 7)) ?? 0) + count);
    }
    if (counts.size === 0) {
      months.replaceChildren(el('p', { class: 'warn' }, 'None of these pictures says when it was taken. Choose another folder.'));
      return;
    }
    month = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? 1 : -1))[0][0];
    const strip = el('ol', { class: 'dates', 'aria-label': 'Pictures a day' });
    const select = el(
      'select',
      { id: 'month', onchange: () => {
        month = select.value;
        drawDays(strip);
      } },
      [...counts].sort((a, b) => (a[0] < b[0] ? 1 : -1)).map(([name, count]) =>
        el('option', { value: name, selected: name === month }, `${monthName(name)}: ${counted(count, 'picture')}`)),
    );
    months.replaceChildren(
      el('label', { for: 'month' }, 'Most were taken in the month proposed', select),
      strip,
      undated > 0 ? el('p', { class: 'quiet' }, `${counted(undated, 'picture')} ${undated === 1 ? 'does' : 'do'} not say; you can give ${undated === 1 ? 'it' : 'them'} a day later.`) : '',
    );
    drawDays(strip);
    ready();
  }

  function drawDays(strip) {
    const [year, number] = month.split('-').map(Number);
    const last = new Date(Date.UTC(year, number, 0)).getUTCDate();
    const most = Math.max(...Object.entries(days).filter(([day]) => day.startsWith(month)).map(([, count]) => count));
    strip.replaceChildren(...Array.from({ length: last }, (_, i) => {
      const count = days[`${month}-${String(i + 1).padStart(2, '0')}`] ?? 0;
      const bar = el('span', { class: 'bar', 'aria-hidden': 'true' });
      bar.style.height = `${(2.4 * count) / most}rem`;
      return el('li', { class: count === 0 ? 'none' : '' }, bar, el('span', {}, String(i + 1)), el('span', { class: 'quiet' }, String(count)));
    }));
  }

  function ready() {
    go.disabled = month === '';
    go.textContent = month ? `Open ${monthName(month)}` : 'Open this month';
    why.textContent = month ? `Everything is kept in ${at.months}.` : 'Choose a folder with pictures first.';
  }

  /** Read here, in the browser: the program is told the words, not where the file lies. */
  async function readNote() {
    const file = noteFile.files[0];
    if (!file) {
      return;
    }
    note.value = decoded(new Uint8Array(await file.arrayBuffer()));
    noteWords.textContent = `${file.name} was read.`;
  }

  function open() {
    const album = {};
    for (const input of root.querySelectorAll('[data-option]')) {
      album[input.dataset.option] = input.value;
    }
    begin('start/open', { folders: [...chosen.keys()], month, note: note.value, album });
  }

  async function begin(path, body) {
    try {
      await post(path, body);
      location.hash = '#/';
      location.reload(); // the month is opened, and shown, as after any start
    } catch (failure) {
      notice(failure.message);
    }
  }

  /** A program made for another system says so here, and what to do. */
  async function tellMissing() {
    try {
      const { missing } = await post('start/missing', {});
      told.hidden = missing.length === 0;
      told.replaceChildren(...missing.map((text) => el('p', {}, text)));
    } catch {
      // the program has ended; whatever is asked next says so
    }
  }

  drawPlaces();
  tellMissing();
  return { title: 'Start', update() {} };
}

/** What the page must know before anything else; null when it was started by `daymount review`. */
export async function readStart() {
  try {
    const start = await get('start');
    return start.places ? start : null; // null in a review of one month
  } catch {
    return null;
  }
}

/** Ends the program, after asking when something is still being made. */
export async function quit() {
  try {
    let said = await post('start/quit', {});
    if (said.asks && confirm(said.asks)) {
      said = await post('start/quit', { sure: true });
    }
    if (said.ended) {
      forgetWord();
      document.querySelector('header').remove();
      document.getElementById('main').replaceChildren(
        el('h1', {}, 'Daymount has ended'),
        el('p', {}, 'All is saved. You can close this tab.'),
      );
    }
  } catch (failure) {
    notice(failure.message);
  }
}

const monthName = (name) => {
  const [year, month] = name.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, 1)).toLocaleDateString('en', { month: 'long', year: 'numeric', timeZone: 'UTC' });
};

/** UTF-8 unless the bytes say otherwise; last, what older Windows programs write. */
function decoded(bytes) {
  const mark = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : null;
  if (mark) {
    return new TextDecoder(mark).decode(bytes);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
