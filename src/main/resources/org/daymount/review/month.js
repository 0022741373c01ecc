// The month as a calendar: each day's page as it will look.

import { change, state } from './ask.js';
import { drawnPage } from './pages.js';
import { counted, dayName, el, redraw } from './parts.js';
import { said } from './words.js';

export const view = { path: '', words: () => 'Month', show: showMonth };

function showMonth(root) {
  const title = el('h1', {});
  const sum = el('p', { class: 'quiet' });
  const remarks = el('ul', { class: 'remarks' });
  const weekdays = el('ol', { class: 'weekdays', 'aria-hidden': 'true' });
  const days = el('ol', { class: 'month' });
  const hint = el('p', { class: 'quiet hint' }, 'Open a day to choose or crop; drag a day onto another to exchange their pages.');
  root.replaceChildren(title, sum, remarks, weekdays, days, hint);

  function update() {
    const month = state.month;
    title.textContent = month.title;
    const spaces = month.days.flatMap((day) => day.spaces);
    const missing = spaces.filter((space) => !space.photo).length;
    const yours = spaces.filter((space) => space.chosenBy === 'person' && space.photo).length;
    const toLookAt = month.days.filter((day) => day.attention.length > 0).length;
    sum.textContent =
      `${counted(month.photos, 'picture')}, ${counted(spaces.length, 'space')}, ` +
      `${missing === 0 ? 'none missing' : `${missing} missing`}` +
      `${yours > 0 ? `, ${yours} chosen by you` : ''}` +
      `${toLookAt > 0 ? `, ${counted(toLookAt, 'day')} to look at` : ''}. Kept in ${month.out}.`;
    hint.hidden = month.days.length < 2;
    redraw(remarks, month.remarks.map((text) => el('li', {}, said(text))));
    const first = month.album.firstWeekday;
    redraw(weekdays, WEEK.map((_, i) => el('li', {}, WEEK[(first - 1 + i) % WEEK.length])));
    const cells = month.days.map(dayCell);
    const column = columnOf(month.days[0], first);
    days.style.setProperty('--weeks', Math.ceil((column - 1 + cells.length) / WEEK.length));
    days.style.setProperty('--page', `${month.album.width} / ${month.album.height}`);
    days.style.setProperty('--wide', month.album.width / month.album.height);
    cells[0]?.style.setProperty('grid-column-start', column);
    redraw(days, cells);
  }

  update();
  return { title: state.month.title, update };
}

const WEEK = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** From 1, in weeks that begin with the given weekday; Monday is 1 (ISO 8601). */
function columnOf(day, first) {
  const weekday = WEEK.indexOf(day.weekday.slice(0, 3)) + 1;
  return ((weekday - first + WEEK.length) % WEEK.length) + 1;
}

/** What can go along when a page is moved. */
export const MOVES = [
  ['move', 'all that is on it: pictures and story'],
  ['swap', 'only its spaces'],
];

/** Days are dragged by their date. */
const DRAGGED_DAY = 'text/x-day';

/** A page dropped on another day: asks what goes along. */
function askMove(from, to) {
  const days = state.month.days;
  const name = (date) => dayName(days.find((day) => day.day === date));
  const dialog = el(
    'dialog',
    { class: 'ask-move', 'aria-labelledby': 'ask-move' },
    el('h2', { id: 'ask-move' }, `Move the page of ${name(from)} to ${name(to)}`),
    el('p', { class: 'quiet' }, `The page of ${name(to)} comes here in exchange.`),
    el(
      'div',
      { class: 'buttons' },
      MOVES.map(([what, words]) =>
        el(
          'button',
          {
            type: 'button',
            'data-at': what,
            onclick: () => {
              dialog.close();
              change({ what, day: from, other: to });
            },
          },
          words.charAt(0).toUpperCase() + words.slice(1),
        ),
      ),
      el('button', { type: 'button', onclick: () => dialog.close() }, 'Leave it where it is'),
    ),
  );
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}

function takesDays(cell, date) {
  cell.addEventListener('dragover', (event) => {
    if (event.dataTransfer.types.includes(DRAGGED_DAY)) {
      event.preventDefault();
      cell.classList.add('over');
    }
  });
  cell.addEventListener('dragleave', () => cell.classList.remove('over'));
  cell.addEventListener('drop', (event) => {
    event.preventDefault();
    cell.classList.remove('over');
    const from = event.dataTransfer.getData(DRAGGED_DAY);
    if (from && from !== date) {
      askMove(from, date);
    }
  });
}

function dayCell(day) {
  const words = attention(day);
  const label = `${dayName(day)}: ${inWords(day)}`;
  const drawn = state.month.album.pages.find((page) => page.day === day.day);
  const page = el(
    'span',
    { class: 'page' },
    drawn ? drawnPage(drawn, 480) : el('span', { class: 'word' }, 'left out'),
  );
  const cell = el(
    'li',
    { class: day.attention.length > 0 ? 'day look' : 'day' },
    el(
      'a',
      {
        href: `#/day/${day.day}`,
        'data-at': day.day,
        'aria-label': label,
        draggable: 'true',
        ondragstart: (event) => event.dataTransfer.setData(DRAGGED_DAY, day.day),
      },
      el(
        'span',
        { class: 'head' },
        el('b', {}, String(day.number)),
        el('span', { class: 'quiet' }, day.weekday.slice(0, 3)),
        day.attention.length > 0 ? el('span', { class: 'mark', 'aria-hidden': 'true' }, '!') : null,
      ),
      page,
      el('span', { class: 'say' }, words),
    ),
  );
  takesDays(cell, day.day);
  return cell;
}

function attention(day) {
  if (day.attention.length > 0) {
    return day.attention.map((word) => el('span', { class: 'warn' }, word));
  }
  return day.spaces.some((space) => space.chosenBy === 'person')
    ? [el('span', { class: 'yours' }, 'your choice')]
    : [];
}

function inWords(day) {
  const filled = day.spaces.filter((space) => space.photo).length;
  const pages =
    day.kind === 'left_out'
      ? 'left out'
      : day.spaces.length === 0
        ? 'no picture wanted'
        : `${filled} of ${counted(day.spaces.length, 'space')} filled`;
  return [pages, ...day.attention, day.story ? 'has a story' : ''].filter(Boolean).join(', ');
}
