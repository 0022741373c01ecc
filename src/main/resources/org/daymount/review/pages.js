// The album as it will look: facing pages side by side, leaf by leaf.

import { cardAddress, pictureAddress, state } from './ask.js';
import { counted, dayName, el, redraw, svg } from './parts.js';

export const view = { path: 'pages', words: () => 'The pages', show: showPages };

const EDGE = 0.03; // inches around a page, for its outline

/**
 * One side of the album, as the program drew it: the same steps are drawn in pages.pdf, the guide
 * and index.html. A unit is an inch; the looks are in the style sheet.
 *
 * @param edge of the pictures to ask for, in pixels
 */
export function drawnPage(page, edge) {
  const { width, height } = state.month.album;
  const drawn = svg('svg', {
    class: 'pg',
    viewBox: `${-EDGE} ${-EDGE} ${width + 2 * EDGE} ${height + 2 * EDGE}`,
    'aria-hidden': 'true',
  });
  page.drawing.forEach((step) => drawn.append(...drawStep(step, edge)));
  return drawn;
}

const DRAWERS = {
  box: (step) => [rectangle(step, step.look)],
  picture: (step, edge) =>
    lying(step, (x, y, width, height) => [
      svg(
        'svg',
        { x, y, width, height, viewBox: step.crop, preserveAspectRatio: 'none' },
        svg('image', {
          width: step.photoWidth,
          height: step.photoHeight,
          preserveAspectRatio: 'none',
          href: pictureAddress(step.photo, step.turns, edge),
        }),
      ),
    ]),
  card: (step) =>
    lying(step, (x, y, width, height) => [
      svg('image', { x, y, width, height, preserveAspectRatio: 'none', href: cardAddress(step.card) }),
      svg('rect', { class: 'pg-edge', x, y, width, height }),
    ]),
  note: (step) => {
    const margin = Math.min(0.2, step.width / 10);
    return step.lines.map((line, i) => {
      const text = svg('text', { class: 'pg-note', x: step.x + margin, y: step.y + margin + (i + 0.8) * step.line });
      text.style.fontSize = `${step.line / 1.4}px`;
      text.textContent = line;
      return text;
    });
  },
  word: (step) => {
    const text = svg('text', { class: 'pg-word', x: step.x + step.width / 2, y: step.y + step.height / 2 });
    text.textContent = step.word;
    return [text];
  },
};

const drawStep = (step, edge) => DRAWERS[step.draw](step, edge);

function rectangle(step, look) {
  return svg('rect', { class: `pg-${look}`, x: step.x, y: step.y, width: step.width, height: step.height });
}

/** What is turned is drawn upright in a group that lies on its side, a quarter turn clockwise. */
function lying(step, draw) {
  if (!step.turned) {
    return draw(step.x, step.y, step.width, step.height);
  }
  const group = svg('g', { transform: `translate(${step.x + step.width} ${step.y}) rotate(90)` });
  group.append(...draw(0, 0, step.height, step.width));
  return [group];
}

/** What lies open: the back of one leaf on the left, the front of the next on the right. */
export function spreads(leaves) {
  const found = [];
  for (let i = 0; i <= leaves.length; i++) {
    const left = leaves[i - 1];
    const right = leaves[i];
    if (left?.back || right) {
      found.push([
        left ? { leaf: left, side: 'back', day: left.back } : null,
        right ? { leaf: right, side: 'front', day: right.front } : null,
      ]);
    }
  }
  return found;
}

function showPages(root) {
  const sum = el('p', { class: 'quiet' });
  const list = el('ol', { class: 'spreads' });
  root.replaceChildren(el('h1', {}, 'The pages'), sum, list);

  function update() {
    const { leaves, pages } = state.month.album;
    const empty = leaves.reduce((count, leaf) => count + !leaf.front + !leaf.back, 0);
    sum.textContent =
      `The album as it will look, opened leaf by leaf: ${counted(pages.length, 'page')} on ` +
      `${leaves.length} ${leaves.length === 1 ? 'leaf' : 'leaves'}` +
      `${empty > 0 ? `, ${counted(empty, 'side')} with nothing on ${empty === 1 ? 'it' : 'them'}` : ''}. Open a page to change it.`;
    redraw(
      list,
      spreads(leaves).map((sides) =>
        el('li', { class: 'open' }, sides.map((side) => (side ? sidePart(side) : el('div', { class: 'cover' })))),
      ),
    );
  }

  update();
  return { title: 'The pages', update };
}

function sidePart({ leaf, side, day }) {
  const where = `leaf ${leaf.number}, ${side}`;
  if (!day) {
    return el(
      'div',
      { class: 'nothing' },
      el('p', { class: 'quiet' }, 'nothing here'),
      el('p', { class: 'quiet' }, capital(where)),
    );
  }
  const page = state.month.album.pages.find((each) => each.day === day);
  const shown = state.month.days.find((each) => each.day === day);
  const warn = shown.attention.length > 0 ? el('span', { class: 'warn' }, shown.attention.join(', ')) : null;
  return el(
    'figure',
    { class: 'side' },
    el('p', { class: 'when' }, el('b', {}, dayName(shown)), warn),
    el(
      'a',
      { href: `#/day/${day}`, 'data-at': `page-${day}`, 'aria-label': `${dayName(shown)}: ${where}, ${page.kind}` },
      drawnPage(page, 960),
    ),
    el('figcaption', { class: 'quiet' }, `${capital(where)}: ${page.kind}`),
  );
}

const capital = (words) => words.charAt(0).toUpperCase() + words.slice(1);
