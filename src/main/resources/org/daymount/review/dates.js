// Which month: the one with most pictures is proposed, with a count for every day.

import { post } from './ask.js';
import { counted, el } from './parts.js';

const BACK = 36; // months offered where no picture says when it was taken
const BAR = 2.4; // rem, of the day with most pictures

export function monthName(name) {
  const [year, month] = name.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, 1)).toLocaleDateString('en', { month: 'long', year: 'numeric', timeZone: 'UTC' });
}

/** @param changed called with the month chosen; '' while there is none */
export function monthPart(changed) {
  const node = el('div', { class: 'when' });
  let asked = 0;

  function nothing() {
    node.replaceChildren(el('p', { class: 'quiet' }, 'Proposed as soon as there are pictures: the month with most of them.'));
  }

  /** @param wish the month to begin with, if pictures were taken in it; '' for the one with most */
  async function of(folders, wish) {
    const now = ++asked;
    changed('');
    if (folders.length === 0) {
      nothing();
      return;
    }
    node.replaceChildren(
      el('p', { role: 'status' }, 'Reading when the pictures were taken …'),
      el('progress', { 'aria-label': 'Reading dates' }),
    );
    try {
      const found = await post('start/dates', { folders });
      if (now === asked) {
        propose(found, wish);
      }
    } catch (failure) {
      if (now === asked) {
        node.replaceChildren(el('p', { class: 'warn' }, failure.message));
      }
    }
  }

  function propose({ days, undated }, wish) {
    const counts = new Map();
    for (const [day, count] of Object.entries(days)) {
      counts.set(day.slice(0, 7), (counts.get(day.slice(0, 7)) ?? 0) + count);
    }
    const dated = counts.size > 0;
    if (!dated) {
      lastMonths().forEach((month) => counts.set(month, 0));
    }
    const most = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? 1 : -1))[0][0];
    const begin = counts.has(wish) ? wish : most;
    const strip = el('ol', { class: 'dates', 'aria-label': 'Pictures a day', hidden: !dated });
    const select = el(
      'select',
      { id: 'month', onchange: () => {
        drawDays(strip, select.value, days);
        changed(select.value);
      } },
      [...counts].sort((a, b) => (a[0] < b[0] ? 1 : -1)).map(([name, count]) =>
        el('option', { value: name, selected: name === begin }, dated ? `${monthName(name)}: ${counted(count, 'picture')}` : monthName(name))),
    );
    node.replaceChildren(
      dated ? '' : el('p', { class: 'warn' }, `None of these ${counted(undated, 'picture')} says when it was taken.`),
      el('label', { for: 'month' }, dated ? 'Most were taken in the month proposed' : 'Which month are they of?', select),
      strip,
      undated > 0
        ? el('p', { class: 'quiet' }, dated
          ? `${counted(undated, 'picture')} ${undated === 1 ? 'does' : 'do'} not say; you can give ${undated === 1 ? 'it' : 'them'} a day once the month is open.`
          : 'You can give each a day once the month is open, or write a table of dates under “Asked more seldom”.')
        : '',
    );
    drawDays(strip, begin, days);
    changed(begin);
  }

  nothing();
  return { node, of };
}

function lastMonths() {
  const today = new Date();
  return Array.from({ length: BACK }, (_, i) =>
    new Date(Date.UTC(today.getFullYear(), today.getMonth() - i, 1)).toISOString().slice(0, 7));
}

function drawDays(strip, month, days) {
  const [year, number] = month.split('-').map(Number);
  const last = new Date(Date.UTC(year, number, 0)).getUTCDate();
  const most = Math.max(1, ...Object.entries(days).filter(([day]) => day.startsWith(month)).map(([, count]) => count));
  strip.replaceChildren(...Array.from({ length: last }, (_, i) => {
    const count = days[`${month}-${String(i + 1).padStart(2, '0')}`] ?? 0;
    const bar = el('span', { class: 'bar', 'aria-hidden': 'true' });
    bar.style.height = `${(BAR * count) / most}rem`;
    return el('li', { class: count === 0 ? 'none' : '' }, bar, el('span', {}, String(i + 1)), el('span', { class: 'quiet' }, String(count)));
  }));
}
