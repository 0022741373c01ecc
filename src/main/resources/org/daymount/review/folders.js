// Finding a folder on this computer: the program lists names and how many pictures each holds.

import { notice, post } from './ask.js';
import { counted, el, redraw } from './parts.js';

/** What a folder holds; one that may not be looked into says so, and is not said to be empty. */
export function countOf(folder) {
  const known = [
    folder.pictures > 0 ? counted(folder.pictures, 'picture') : '',
    folder.clips > 0 ? counted(folder.clips, 'clip') : '',
  ].filter(Boolean).join(', ') + (folder.more ? ' or more' : '');
  const closed =
    folder.closed === 0
      ? ''
      : known
        ? `, ${counted(folder.closed, 'folder')} not readable`
        : 'may not be looked into';
  return known + closed;
}

const isEmpty = (folder) => folder.pictures + folder.clips === 0;

/**
 * @param places where to begin
 * @param taken called with a folder a person takes
 * @return `node`, and `rest()` once something was taken: a way to more
 */
export function folderPart(places, taken) {
  const walk = el('div', { class: 'walk' });
  const typed = el('input', { type: 'text', id: 'typed', autocomplete: 'off', spellcheck: 'false' });
  const look = () => into({ typed: typed.value });
  typed.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') look();
  });

  function begin() {
    redraw(
      walk,
      el('p', { class: 'quiet' }, 'Look for the folder; only names and how many pictures are shown.'),
      list(places),
    );
  }

  function list(folders) {
    if (folders.length === 0) {
      return el('p', { class: 'quiet' }, 'No folders in here.');
    }
    return el('ul', { class: 'folders' }, folders.map((folder) => el('li', {}, el(
      'button',
      { type: 'button', 'data-at': folder.id, class: isEmpty(folder) ? 'none' : '', onclick: () => into({ in: folder.id }) },
      el('span', {}, folder.name),
      folder.link ? el('span', { class: 'quiet' }, ` leads to ${folder.place}`) : null,
      el('span', { class: 'count' }, countOf(folder)),
    ))));
  }

  async function into(where) {
    walk.setAttribute('aria-busy', 'true');
    try {
      const found = await post('start/folder', where);
      notice('');
      show(found);
      (walk.querySelector('#take:enabled') ?? walk.querySelector('button:enabled')).focus({ preventScroll: true });
    } catch (failure) {
      notice(failure.message);
    }
    walk.removeAttribute('aria-busy');
  }

  function show({ folder, folders, up }) {
    redraw(
      walk,
      el('p', { class: 'here' }, el('b', {}, folder.name), ' ', el('span', { class: 'quiet' }, folder.place)),
      el(
        'div',
        { class: 'buttons' },
        el(
          'button',
          { type: 'button', class: 'main', id: 'take', disabled: isEmpty(folder), onclick: () => taken(folder) },
          isEmpty(folder) ? 'No pictures in here' : `Take these ${countOf(folder)}`,
        ),
        up ? el('button', { type: 'button', 'data-at': 'up', onclick: () => into({ in: up }) }, 'One folder up') : null,
        el('button', { type: 'button', 'data-at': 'places', onclick: begin }, 'Other places'),
      ),
      list(folders),
    );
  }

  begin();
  return {
    node: el(
      'div',
      {},
      walk,
      el(
        'div',
        { class: 'settings' },
        el('label', { for: 'typed', class: 'wide' }, 'Or type where they are', typed),
        el('button', { type: 'button', id: 'typed-go', onclick: look }, 'Look there'),
      ),
    ),
    begin,
    rest() {
      redraw(walk, el('div', { class: 'buttons' }, el(
        'button',
        { type: 'button', 'data-at': 'more-folders', onclick: begin },
        'Add another folder',
      )));
      walk.querySelector('button').focus({ preventScroll: true });
    },
  };
}
