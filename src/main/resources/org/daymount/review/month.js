// The month on one screen.

import { change, state } from './ask.js';
import { counted, dayName, el, printed, redraw } from './parts.js';

export const view = { path: '', words: () => 'Month', show: showMonth };

function showMonth(root) {
  const title = el('h1', {});
  const sum = el('p', { class: 'quiet' });
  const remarks = el('ul', { class: 'remarks' });
  const days = el('ol', { class: 'month' });
  const hint = el('p', { class: 'quiet hint' }, 'Open a day to choose or crop; drag a day onto another to exchange their pages.');
  root.replaceChildren(title, sum, remarks, days, hint);

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
    redraw(remarks, month.remarks.map((text) => el('li', {}, text)));
    redraw(days, month.days.map(dayCell));
  }

  update();
  return { title: state.month.title, update };
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
  const page = el('span', { class: 'page', 'aria-hidden': 'true' });
  // A page is drawn to one scale; more spaces than usual wrap, as they would on the paper.
  day.spaces.forEach((space) => page.append(printed(space, 480)));
  if (day.spaces.length === 0) {
    page.append(
      el('span', { class: 'word' }, day.kind === 'left_out' ? 'left out' : 'no picture wanted'),
    );
  }
  const cell = el(
    'li',
    { class: day.spaces.length > 2 ? 'day many' : day.spaces.length === 2 ? 'day two' : 'day' },
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
        day.story ? el('span', { class: 'quiet' }, 'story') : null,
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
