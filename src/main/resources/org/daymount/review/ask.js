// Talks with the program: one change after the other, each with the version it was made on.

import { said } from './words.js';

const KEPT_AS = 'review-token';

export const state = { month: null, start: null };
const listeners = new Set();
const waiting = [];
let sending = false;
let word = '';

/**
 * The word stands behind the # of the printed address; it is kept by this browser, for this address
 * alone, so that a tab that was closed can be opened again. Nothing of it stays in sight.
 */
export function takeWord() {
  const given = /^#([0-9a-f]{32})$/.exec(location.hash);
  if (given) {
    keep(given[1]);
  }
  word = localStorage.getItem(KEPT_AS) ?? '';
}

function keep(given) {
  localStorage.setItem(KEPT_AS, given);
  history.replaceState(null, '', '#/');
}

/** The address a browser was started with holds a ticket: it is handed in for the word, once. */
export async function handInTicket() {
  const ticket = /^#ticket-([0-9a-f]{32})$/.exec(location.hash);
  if (!ticket) {
    return;
  }
  history.replaceState(null, '', '#/');
  try {
    keep((await post('enter', { ticket: ticket[1] })).token);
  } catch (failure) {
    if (!localStorage.getItem(KEPT_AS)) {
      throw failure;
    } // the tab was opened again, and the word is known
  }
  takeWord();
}

/** The program has ended, and the word is worth nothing. */
export function forgetWord() {
  localStorage.removeItem(KEPT_AS);
}

/** Called with the month after each change, whoever made it. */
export function onMonth(listener) {
  listeners.add(listener);
}

export const pictureAddress = (id, turns, edge) => `/picture/${id}/${turns}/${edge}?key=${word}`;
export const detailAddress = (id, x, y) => `/detail/${id}/${x}/${y}?key=${word}`;
export const sheetAddress = (index, run) => `/sheet/${index}/${run}?key=${word}`;
export const cardAddress = (number) => `/card/${number}?key=${word}`;
export const progressAddress = () => `/api/progress?key=${word}`;
export const earlierAddress = (index) => `/earlier/${index}?key=${word}`;
export const openingAddress = () => `/api/opening?key=${word}`;

/** The status of a reply before the month is open. */
export const NOT_YET = 503;

/** The status of a reply to a change that was made on an older month, or an older note. */
export const OUTDATED = 409;

export class Failure extends Error {
  constructor(message, status) {
    super(message);
    this.status = status;
  }
}

async function ask(path, options) {
  let reply;
  try {
    reply = await fetch(`/api/${path}`, {
      ...options,
      headers: { 'X-Review-Token': word, 'Content-Type': 'application/json' },
    });
  } catch {
    throw new Failure('Daymount has ended; start it again', 0);
  }
  const body = await reply.json();
  if (!reply.ok) {
    throw new Failure(body.message, reply.status);
  }
  return body;
}

export const get = (path) => ask(path, {});
export const post = (path, body) => ask(path, { method: 'POST', body: JSON.stringify(body) });

export async function readMonth() {
  accept(await get('month'));
}

function accept(month) {
  state.month = month;
  listeners.forEach((listener) => listener(month));
  if (month.message) {
    notice(month.message);
  }
}

/** What was not understood is mended once a change is: its message goes. */
function mended() {
  if (document.getElementById('notice').dataset.until === 'mended') {
    notice('');
  }
}

/** Saves a change; of a word being typed or a frame being dragged only the newest waits. */
export function change(what) {
  const last = waiting.at(-1);
  const newer =
    last && what.session && last.session === what.session && last.what === what.what;
  if (newer) {
    waiting[waiting.length - 1] = what;
  } else {
    waiting.push(what);
  }
  send();
}

/** One step back, and the page where that is seen. */
export const undo = () => step('undo');
export const redo = () => step('redo');

function step(path) {
  change({ path, seen: state.month[path] });
}

/** @param seen called with where an undone or redone change is seen */
export function onStep(seen) {
  stepped = seen;
}
let stepped = () => {};
export const isSaving = () => sending;

async function send() {
  if (sending) {
    return;
  }
  sending = true;
  say('saving', 'saving');
  while (waiting.length > 0) {
    const { path = 'change', seen, ...what } = waiting.shift();
    try {
      accept(await post(path, { ...what, version: state.month.version }));
      mended();
      if (seen) {
        stepped(seen);
      }
    } catch (failure) {
      waiting.length = 0;
      await failed(failure, what);
      sending = false;
      return;
    }
  }
  sending = false;
  say('saved', 'saved');
}

async function failed(failure, what) {
  const lost = failure.status === 0 || failure.status >= 500;
  say(lost ? 'failed' : 'saved', lost ? 'not saved' : 'saved');
  if (lost) {
    notice(failure.message, 'mended');
    return;
  }
  const outdated = failure.status === OUTDATED;
  if (outdated) {
    document.activeElement?.blur(); // what is being written gives way to the newest
  }
  await readMonth().catch(() => {});
  const words = outdated && what.text ? ` You had written: “${what.text}”` : '';
  notice(failure.message + words, outdated ? 'understood' : 'mended');
  if (outdated) {
    document.querySelector('#notice button')?.focus();
  }
}

function say(kind, text) {
  const saved = document.getElementById('saved');
  saved.dataset.state = kind;
  saved.textContent = text;
}

/**
 * A sentence the person must not miss; an empty one clears it.
 *
 * @param until 'mended': it goes by itself with the next change that succeeds
 */
export function notice(text, until = 'understood') {
  const place = document.getElementById('notice');
  place.replaceChildren();
  place.dataset.until = until;
  if (text) {
    const line = document.createElement('p');
    line.textContent = said(text);
    const close = document.createElement('button');
    close.type = 'button';
    close.textContent = 'Understood';
    close.addEventListener('click', () => {
      notice('');
      document.getElementById('main').focus({ preventScroll: true });
    });
    place.append(line, close);
  }
}
