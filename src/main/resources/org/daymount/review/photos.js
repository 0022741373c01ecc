// Photos as tiles, each with what became of it in words.

import { change, get, pictureAddress, state } from './ask.js';
import { dateButton, dateWords } from './date.js';
import { showSideBySide } from './side.js';
import { DRAGGED, dayName, el } from './parts.js';
import { said } from './words.js';

const opened = new Set(); // bursts a person unfolded

/**
 * @param photos in order of time
 * @param where the day and space they may be put in, with `put(photo, space)`
 */
export function photoTiles(photos, where) {
  const groups = new Map();
  for (const photo of photos) {
    const name = photo.group ?? photo.photo;
    groups.set(name, [...(groups.get(name) ?? []), photo]);
  }
  const tiles = [];
  for (const [name, alike] of groups) {
    const first = alike.find((photo) => isUsed(photo)) ?? alike.find((photo) => photo.places.length) ?? alike[0];
    const open = opened.has(name);
    tiles.push(tile(first, where, alike.length > 1 ? folding(name, alike, open) : null));
    if (open) {
      alike
        .filter((photo) => photo !== first)
        .forEach((photo) => tiles.push(tile(photo, where, null)));
    }
  }
  return tiles;

  function folding(name, alike, open) {
    const fold = el(
      'button',
      {
        type: 'button',
        class: 'fold',
        'data-at': `fold${name}`,
        'aria-expanded': String(open),
        onclick: (event) => {
          open ? opened.delete(name) : opened.add(name);
          const list = event.currentTarget.closest('ul');
          list.replaceChildren(...photoTiles(photos, where));
          list.querySelector(`[data-at="${CSS.escape(`fold${name}`)}"]`)?.focus();
        },
      },
      open ? `fold these ${alike.length} alike` : `${alike.length - 1} more alike`,
    );
    const compare = el(
      'button',
      {
        type: 'button',
        class: 'side-by-side',
        'data-at': `side${name}`,
        'aria-label': `Compare these ${alike.length} side by side`,
        onclick: () => showSideBySide(alike, where),
      },
      'Compare',
    );
    return [fold, compare];
  }
}

const isUsed = (photo) => photo.places.some((place) => place.how !== 'next');

function tile(photo, where, folding) {
  const words = inWords(photo, where);
  const image = el('img', {
    src: pictureAddress(photo.photo, 0, 240),
    alt: '',
    loading: 'lazy',
    decoding: 'async',
    width: photo.width,
    height: photo.height,
    draggable: 'false',
  });
  const time = (where.elsewhere ? photo.dated.when : photo.time) ?? '';
  const put = where.space
    ? el(
        'button',
        {
          type: 'button',
          class: 'put',
          draggable: 'true',
          disabled: !photo.readable,
          'data-at': `put${photo.photo}`,
          'aria-label': `Put ${photo.name}${time ? `, ${time}` : ''} in space ${where.space.space + 1}. ${words.join(', ')}`,
          onclick: () => where.put(photo.photo, where.space.space),
          ondragstart: (event) => event.dataTransfer.setData(DRAGGED, photo.photo),
          onkeydown: walk,
        },
        image,
      )
    : el('span', { class: 'put' }, image);
  const leftOut = photo.used === false;
  return el(
    'li',
    { class: isUsed(photo) ? 'tile used' : 'tile' },
    put,
    el('p', { class: 'file' }, el('span', { class: 'time' }, time), ` ${photo.name.split('/').at(-1)}`),
    words.length ? el('p', { class: 'became' }, words.join('; ')) : null,
    el(
      'div',
      { class: 'buttons' },
      folding,
      dateButton(photo),
      where.elsewhere ? null : el(
        'button',
        {
          type: 'button',
          'data-at': `use${photo.photo}`,
          'aria-label': `${leftOut ? 'Use' : 'Leave out'} ${photo.name}`,
          onclick: () =>
            change({ what: 'used', photo: photo.photo, used: leftOut ? null : false }),
        },
        leftOut ? 'Use again' : 'Leave out',
      ),
      photo.problem && !leftOut && photo.readable && photo.used !== true && photo.time && !where.elsewhere
        ? el(
            'button',
            {
              type: 'button',
              'data-at': `take${photo.photo}`,
              'aria-label': `Let ${photo.name} be proposed too`,
              onclick: () => change({ what: 'used', photo: photo.photo, used: true }),
            },
            'Use it all the same',
          )
        : null,
    ),
  );
}

/** Arrow keys go from picture to picture. */
function walk(event) {
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (!step) {
    return;
  }
  event.preventDefault();
  const all = [...event.currentTarget.closest('ul').querySelectorAll('button.put')];
  all[all.indexOf(event.currentTarget) + step]?.focus();
}

function inWords(photo, where) {
  const words = photo.places.map((place) => {
    const space = `space ${place.space + 1}`;
    const day = state.month.days.find((each) => each.day === place.day);
    const there = place.day === where.date ? space : `${space} of ${dayName(day)}`;
    return { chosen: `chosen by you for ${there}`, proposed: `proposed for ${there}`, next: `next best for ${there}` }[place.how];
  });
  if (photo.problem) {
    words.push(photo.problem === 'you left it out' ? photo.problem : said(`left out: ${photo.problem}`));
  }
  const date = dateWords(photo);
  return date ? [...words, date] : words;
}

/** The view of photos that have no day: each may be given one. */
export const view = {
  path: 'undated',
  words: (month) => (month.undated > 0 ? `Without a day (${month.undated})` : 'Without a day'),
  show: showUndated,
};

function showUndated(root) {
  const title = el('h1', {}, 'Without a day');
  const words = el('p', { class: 'quiet' });
  const list = el('ul', { class: 'photos', 'aria-label': 'Pictures without a day' });
  root.replaceChildren(title, words, list);

  async function update() {
    words.textContent =
      state.month.undated === 0
        ? 'Every picture says when it was taken, or was given a day.'
        : 'These pictures do not say when they were taken. Give one a day, and it takes part there.';
    const { photos } = await get('undated');
    list.replaceChildren(
      ...photos.map((photo) => {
        const made = tile(photo, {}, null);
        const name = `give${photo.photo}`;
        const input = el('select', {
          id: name,
          'data-at': name,
          onchange: () => change({ what: 'given', photo: photo.photo, day: input.value || null }),
        });
        // thousands of lists of 30 days each would be slow: filled when they are reached
        const fill = () => {
          if (input.options.length <= 1) {
            input.replaceChildren(...dayOptions(photo.given));
          }
        };
        input.append(el('option', { value: photo.given ?? '' }, givenName(photo.given)));
        input.addEventListener('pointerdown', fill);
        input.addEventListener('focus', fill);
        made.append(el('label', { for: name }, `Day of ${photo.name.split('/').at(-1)}`, input));
        return made;
      }),
    );
  }

  update();
  return { title: 'Without a day', update };
}

function dayOptions(given) {
  return [
    el('option', { value: '' }, 'no day'),
    ...state.month.days.map((day) =>
      el('option', { value: day.day, selected: given === day.day }, dayName(day)),
    ),
  ];
}

function givenName(given) {
  const day = state.month.days.find((each) => each.day === given);
  return day ? dayName(day) : 'no day';
}
