// The note as it was typed, beside what was read in it; doubtful lines are mended here.

import { get, notice, OUTDATED, post, readMonth, state } from './ask.js';
import { counted, el, redraw } from './parts.js';
import { said } from './words.js';

export const view = {
  path: 'note',
  words: () => 'The note',
  show: showNote,
};

const PAUSE = 400; // milliseconds without a key before what was typed is read

function showNote(root) {
  const about = el('p', { class: 'quiet' });
  const two = el('div', { class: 'buttons', id: 'two-notes' });
  const text = el('textarea', {
    id: 'typed',
    spellcheck: 'false',
    'aria-describedby': 'how',
    oninput: typed,
  });
  const marks = el('div', { class: 'marks', 'aria-hidden': 'true' });
  const days = el('tbody', {});
  const doubts = el('ul', { class: 'doubts' });
  const doubtsTitle = el('h2', {}, 'Reading the note …');
  const ends = el('p', {});
  const keep = el('button', { type: 'button', class: 'main', id: 'keep', onclick: () => send('keep') }, 'Keep this');
  const back = el('button', { type: 'button', id: 'note-back', onclick: () => step() }, 'Take the last change back');
  const own = el('button', { type: 'button', id: 'note-own', hidden: true, onclick: writeOver }, '');
  const asTyped = el('button', { type: 'button', id: 'as-typed', hidden: true, onclick: () => send('back') }, '');
  root.replaceChildren(
    el('h1', {}, 'The note'),
    about,
    two,
    el(
      'div',
      { class: 'note' },
      el(
        'section',
        { class: 'typed', 'aria-label': 'The note as typed' },
        el('label', { for: 'typed' }, 'As typed'),
        el('div', { class: 'paper' }, marks, text),
        el(
          'p',
          { class: 'quiet', id: 'how' },
          'What you change here is read at once and kept only when you say so. A line that begins with \\ is story.',
        ),
        el('div', { class: 'buttons' }, keep, back, asTyped, own),
      ),
      el(
        'section',
        { class: 'read', 'aria-label': 'What was read' },
        doubtsTitle,
        doubts,
        ends,
        el(
          'table',
          {},
          el('caption', {}, 'What was read'),
          el(
            'thead',
            {},
            el(
              'tr',
              {},
              ['Day', 'Page', 'Story begins'].map((word) => el('th', { scope: 'col' }, word)),
            ),
          ),
          days,
        ),
      ),
    ),
  );
  let shown = null;
  let waiting = 0;
  let asked = 0;
  const before = [];

  const unsaved = () => shown !== null && text.value !== shown.text;

  function typed() {
    clearTimeout(waiting);
    waiting = setTimeout(read, PAUSE);
    buttons();
  }

  async function read() {
    const mine = ++asked;
    try {
      const now = await post('note/read', { text: text.value });
      if (mine === asked) drawRead(now);
    } catch (failure) {
      notice(failure.message);
    }
  }

  /** @param more what is to be mended, of the text as it stands now */
  async function send(what, more = {}) {
    clearTimeout(waiting);
    asked++;
    const last = shown.text;
    try {
      const now = await post(`note/${what}`, { text: text.value, seen: shown.seen, ...more });
      if (what !== 'own') before.push(last);
      draw(now);
      await readMonth();
      notice(now.aside ? `What you had typed here is kept in ${now.aside}.` : '');
    } catch (failure) {
      notice(failure.message);
      if (failure.status === OUTDATED) await choose();
    }
  }

  /** Another program wrote the person's file: both texts are there, and the person says which holds. */
  async function choose() {
    const newest = await get('note');
    const choice = (id, words, what) =>
      el('button', { type: 'button', id, onclick: () => send(what, { seen: newest.seen }) }, words);
    redraw(two, [
      choice('keep-typed', 'Keep what is typed here', 'keep'),
      choice('take-file', `Show ${newest.file ?? 'the note'} as it is now`, 'aside'),
    ]);
  }

  async function step() {
    if (unsaved()) {
      text.value = shown.text;
      await read();
      buttons();
      return;
    }
    text.value = before.pop();
    await send('keep');
    before.pop();
    buttons();
  }

  function writeOver() {
    const sure = confirm(
      `Write this over ${shown.file}? The note as you typed it stays in note-as-typed.txt beside the album.`,
    );
    if (sure) send('own');
  }

  function buttons() {
    keep.disabled = !unsaved();
    back.disabled = !unsaved() && before.length === 0;
    own.hidden = !shown.file || !shown.mended || unsaved();
    own.textContent = `Write it into ${shown.file ?? ''}`;
    asTyped.hidden = !shown.mended || unsaved();
    asTyped.textContent = shown.file ? `Go by ${shown.file} again` : 'Go on without a note';
  }

  function draw(now) {
    shown = now;
    text.value = now.text;
    redraw(two, []);
    about.textContent = now.mended
      ? `Mended here and kept in ${now.kept}; ${now.file ? `${now.file} itself is as you typed it.` : 'there is no file of yours.'}`
      : now.file
        ? `${now.file}, as you typed it. What you mend is kept beside the album, never over your file unless you ask.`
        : 'There is no note yet. Type one: the month, then a line for each day and its story below.';
    buttons();
    drawRead(now);
  }

  function drawRead(now) {
    const doubtful = new Set(now.remarks.map((remark) => remark.line));
    doubtsTitle.textContent =
      now.remarks.length === 0 ? 'Nothing had to be guessed' : `${counted(now.remarks.length, 'line')} to look at`;
    redraw(doubts, now.remarks.map((remark) => doubt(remark, now)));
    redraw(ends, now.stops
      ? 'The album ends behind the last day of the note.'
      : now.lastDay
        ? [
            `The note ends with day ${now.lastDay}; the days after it still get their pages. `,
            el('button', { type: 'button', id: 'stop', onclick: () => send('stop') }, `Stop after day ${now.lastDay}`),
          ]
        : []);
    const lines = now.text.split(/\r\n|\r|\n/);
    redraw(days, now.days.map((day, i) => {
      const next = now.days[i + 1]?.line ?? lines.length + 1;
      const guessed = now.remarks.some((remark) => remark.line >= day.line && remark.line < next);
      return el(
        'tr',
        { class: guessed ? 'guessed' : null },
        el(
          'th',
          { scope: 'row' },
          el(
            'button',
            { type: 'button', class: 'plain', 'data-at': `line-${day.line}`, onclick: () => goTo(day.line) },
            `${guessed ? '? ' : ''}${day.days}`,
          ),
        ),
        el('td', {}, day.page),
        el(
          'td',
          {},
          day.story,
          day.notPrinted.length === 0 ? null : el('small', { class: 'quiet' }, ` not printed: ${day.notPrinted.join(' ')} `),
          !day.printable ? null : el(
            'button',
            {
              type: 'button',
              class: 'plain',
              'data-at': `printed-${day.line}`,
              title: 'These words are story, not for the page',
              onclick: () => send('mend', { line: day.line, as: 'printed' }),
            },
            'Print it',
          ),
        ),
      );
    }));
    redraw(marks, lines.map((line, i) =>
      el('div', { class: doubtful.has(i + 1) ? 'doubtful' : null }, line === '' ? ' ' : line)));
  }

  function doubt(remark, now) {
    const line = now.text.split(/\r\n|\r|\n/)[remark.line - 1] ?? '';
    const mend = (as, words, day) =>
      el(
        'button',
        {
          type: 'button',
          'data-at': `${as}-${remark.line}`,
          onclick: () => send('mend', { line: remark.line, as, day }),
        },
        words,
      );
    return el(
      'li',
      {},
      el('p', {}, el('b', {}, `Line ${remark.line}: `), el('q', {}, line.trim())),
      el('p', { class: 'quiet' }, said(remark.text)),
      el(
        'div',
        { class: 'buttons' },
        remark.day ? mend('day', `It is day ${remark.day}`, remark.day) : null,
        remark.story ? mend('story', 'It is story') : null,
        el('button', { type: 'button', onclick: () => goTo(remark.line) }, 'Change it'),
      ),
    );
  }

  function goTo(number) {
    const lines = text.value.split('\n');
    const from = lines.slice(0, number - 1).reduce((sum, line) => sum + line.length + 1, 0);
    text.focus();
    text.setSelectionRange(from, from + (lines[number - 1]?.length ?? 0));
    marks.children[number - 1]?.scrollIntoView({ block: 'center' });
  }

  async function update() {
    if (unsaved()) return; // what is being typed is not taken away, and Keep asks
    const mine = asked;
    try {
      const now = await get('note');
      if (mine === asked && !unsaved()) draw(now); // nor what was typed or kept meanwhile
    } catch (failure) {
      notice(failure.message);
    }
  }

  update();
  return {
    title: `The note · ${state.month.title}`,
    update,
    leave: () => clearTimeout(waiting),
  };
}
