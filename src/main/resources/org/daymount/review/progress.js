// How far something is: what is being done, how much of it, and how long it will still take.

import { el } from './parts.js';

const ENOUGH = 3; // steps done before the time left can be told
const SOON = 3; // seconds not worth a word

const capital = (words) => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * @param id of the words, which a screen reader is told: each part once, not each step
 * @return `node`, and `say(state)` with a state of the program
 */
export function progressPart(id) {
  const words = el('p', { role: 'status', id });
  const count = el('p', { class: 'quiet', 'aria-hidden': 'true' });
  const bar = el('progress', { 'aria-labelledby': id });
  let since = { words: '', at: 0, done: 0 }; // when the part that is shown began

  /** How long this part will still take, once enough of it is done to tell. */
  function left(now) {
    const done = now.done - since.done;
    const seconds = (((performance.now() - since.at) / done) * (now.steps - now.done)) / 1000;
    if (done < ENOUGH || seconds < SOON) {
      return '';
    }
    return seconds < 90
      ? `, about ${Math.ceil(seconds / 5) * 5} seconds left`
      : `, about ${Math.ceil(seconds / 60)} minutes left`;
  }

  return {
    node: el('div', { class: 'progress' }, words, bar, count),
    say(now) {
      const known = now.steps > 0;
      if (since.words !== now.words) {
        since = { words: now.words, at: performance.now(), done: now.done };
        words.textContent = known ? `${capital(now.words)} (${now.steps})` : `${capital(now.words)} …`;
      }
      count.textContent = known ? `${now.done} of ${now.steps}${left(now)}` : ' ';
      if (known) {
        bar.max = now.steps;
        bar.value = now.done;
      } else {
        bar.removeAttribute('value');
      }
    },
  };
}
