// The start page: which pictures, which month, the note, what the album is; then the month.

import { albumPart } from './album.js';
import { earlierAddress, forgetWord, get, notice, post, state } from './ask.js';
import { monthName, monthPart } from './dates.js';
import { countOf, folderPart } from './folders.js';
import { confirmed, el, redraw } from './parts.js';
import { textPart } from './texts.js';

export const view = { path: 'start', words: () => (state.start ? 'Start' : ''), show: showStart };

export function showStart(root) {
  const at = state.start;
  const chosen = new Map(); // id to folder
  let month = '';
  let asked = 0;

  const taken = el('ul', { class: 'chosen', 'aria-label': 'Chosen folders', hidden: true });
  const folders = folderPart(at.places, (folder) => take([folder]));
  const months = monthPart((now) => {
    month = now;
    ready();
    findTexts();
  });
  const texts = {
    note: textPart('note', 'Paste it here', 6),
    album: textPart('album', 'The album file: your kinds of page, and pages made ahead', 3),
    dates: textPart('dates', 'Dates you know, a line for each picture: file, date, time', 3),
  };
  const lastAlbum = el('input', { type: 'checkbox', role: 'switch', id: 'last-album', checked: true });
  const asLast = el('label', { for: 'last-album', class: 'switch', hidden: true }, lastAlbum, el('span', {}, `Pages as in ${at.lastAlbum}`));
  const album = albumPart(at.settings, at.album, at.units);
  const out = el('input', { type: 'text', id: 'out', autocomplete: 'off', spellcheck: 'false', onchange: () => {
    ready();
    findTexts();
  } });
  const told = el('section', { class: 'told', 'aria-label': 'What this program cannot do here', hidden: true });
  const go = el('button', { type: 'button', class: 'main', id: 'go', disabled: true, onclick: open }, 'Open this month');
  const why = el('p', { class: 'quiet', id: 'go-words' });

  const earlierPlace = el('section', { class: 'earlier' });
  root.replaceChildren(el(
    'div',
    { class: 'start' },
    el('h1', {}, 'Which month shall it be?'),
    el('p', { class: 'quiet' }, 'Your pictures are only read, and nothing leaves this computer.'),
    told,
    state.month ? el('p', {}, el('a', { href: '#/' }, `${state.month.title} is open: back to it`)) : null,
    el(
      'div',
      { class: 'begin' },
      el(
        'div',
        { class: 'asks' },
        step('1', 'The pictures', taken, folders.node),
        step('2', 'The month', months.node),
        step('3', 'The note', el(
          'p',
          { class: 'quiet' },
          'What you wrote on your phone, a line for each day. It can stay empty: every page then holds what is usual.',
        ), texts.note.node),
        step('4', 'The album', album.usual, el(
          'details',
          { class: 'seldom' },
          el('summary', {}, 'Asked more seldom'),
          album.seldom,
          el(
            'fieldset',
            {},
            el('legend', {}, 'Files of yours, and where all is kept'),
            asLast,
            texts.album.node,
            texts.dates.node,
            el('label', { for: 'out' }, 'The folder everything is written to', out),
          ),
        )),
        el('div', { class: 'go' }, go, why),
      ),
      el('aside', { class: 'beside', 'aria-label': 'Other ways to begin' }, sample(), earlierPlace),
    ),
  ));

  function step(number, title, ...parts) {
    return el(
      'section',
      { class: 'ask', 'aria-labelledby': `ask${number}` },
      el('h2', { id: `ask${number}` }, el('span', { class: 'number', 'aria-hidden': 'true' }, number), ` ${title}`),
      ...parts,
    );
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

  function drawEarlier(months) {
    redraw(
      earlierPlace,
      el('h2', {}, 'Earlier months'),
      months.length === 0
        ? el('p', { class: 'quiet' }, 'None yet. A month that was opened is listed here.')
        : el('ul', {}, months.map(earlierMonth)),
    );
  }

  /** What was made since the page was opened is listed too. */
  async function readEarlier() {
    drawEarlier(at.earlier);
    if (state.month) {
      drawEarlier((await readStart())?.earlier ?? at.earlier);
    }
  }

  function earlierMonth(one, index) {
    const name = one.invented ? 'Our invented June' : monthName(one.month);
    return el(
      'li',
      {},
      el(
        'button',
        { type: 'button', class: 'again', 'data-at': `month${index}`, disabled: !one.there, onclick: () => begin('start/earlier', { month: index }) },
        one.picture
          ? el('img', { src: earlierAddress(index), alt: '', loading: 'lazy' })
          : el('span', { class: 'nothing', 'aria-hidden': 'true' }, 'no prints yet'),
        el('span', {}, name),
        el('span', { class: 'quiet' }, one.there ? one.out : 'its pictures are not there now'),
      ),
      one.there
        ? el('button', { type: 'button', class: 'plain', 'aria-label': `Change what ${name} is made with`, onclick: () => again(index) }, 'Change what it is made with')
        : null,
    );
  }

  function take(more, wish = '') {
    more.forEach((folder) => chosen.set(folder.id, folder));
    folders.rest();
    changed(wish);
  }

  function changed(wish = '') {
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
          if (chosen.size === 0) folders.begin();
          changed();
        },
      }, 'Take away'),
    )));
    taken.hidden = chosen.size === 0;
    months.of([...chosen.keys()], wish);
  }

  const place = () => out.value.trim() || `${at.months}/${month}`;

  function ready() {
    go.disabled = month === '';
    go.textContent = month ? `Open ${monthName(month)}` : 'Open this month';
    why.textContent = month ? `Everything is kept in ${place()}.` : 'Choose a folder with pictures first.';
    out.placeholder = `${at.months}/${month || '2026-06'}`;
  }

  const choice = () => ({ folders: [...chosen.keys()], month, out: out.value, lastAlbum: !asLast.hidden && lastAlbum.checked });

  /** Says which note, album file and dates are used when nothing is typed. */
  async function findTexts() {
    const now = ++asked;
    if (month === '') {
      return;
    }
    try {
      const found = await post('start/texts', choice());
      if (now !== asked) {
        return;
      }
      for (const [name, part] of Object.entries(texts)) {
        const { file, kept, mended } = found[name];
        part.say(!file ? '' : mended
          ? `What you mended on the page The note is used (${file}), unless you put another here; it is kept then.`
          : kept
          ? `What was kept the last time is used (${file}), unless you put another here; then that one is kept beside it.`
          : `The one beside the pictures is used (${file}), unless you put another here.`);
      }
      asLast.hidden = Boolean(found.album.file) || !at.lastAlbum;
    } catch (failure) {
      notice(failure.message);
    }
  }

  /** An earlier month, laid out in the questions. */
  async function again(index) {
    try {
      const earlierOne = await post('start/again', { month: index });
      chosen.clear();
      album.set(earlierOne.album);
      out.value = earlierOne.out === `${at.months}/${earlierOne.month}` ? '' : earlierOne.out;
      take(earlierOne.folders, earlierOne.month);
      document.getElementById('ask4').scrollIntoView({ block: 'start' });
    } catch (failure) {
      notice(failure.message);
    }
  }

  function open() {
    const typed = Object.fromEntries(Object.entries(texts).map(([name, part]) => [name, part.get()]));
    begin('start/open', { ...choice(), texts: typed, album: album.values() });
  }

  async function begin(path, body) {
    try {
      const answer = await post(path, body);
      if (answer.asks) {
        if (!(await confirmed(answer.asks, 'Use this folder all the same', 'Take another folder'))) {
          document.querySelector('.seldom').open = true;
          out.focus();
          return;
        }
        await post(path, { ...body, sure: true });
      }
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

  ready();
  readEarlier();
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
    if (said.asks && (await confirmed(said.asks, 'Stop it and end', 'Let it go on'))) {
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
