// The month on one screen.

import { state } from './ask.js';
import { counted, dayName, el, printed, redraw } from './parts.js';

export const view = { path: '', words: () => 'Month', show: showMonth };

function showMonth(root) {
  const title = el('h1', {});
  const sum = el('p', { class: 'quiet' });
  const remarks = el('ul', { class: 'remarks' });
  const days = el('ol', { class: 'month' });
  root.replaceChildren(title, sum, remarks, days);

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
    redraw(remarks, month.remarks.map((text) => el('li', {}, text)));
    redraw(days, month.days.map(dayCell));
  }

  update();
  return { title: state.month.title, update };
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
  return el(
    'li',
    { class: day.spaces.length > 2 ? 'day many' : day.spaces.length === 2 ? 'day two' : 'day' },
    el(
      'a',
      { href: `#/day/${day.day}`, 'data-at': day.day, 'aria-label': label },
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
