// The crop of one space: a frame over the whole picture, held to the shape of the piece.

import { change, pictureAddress, state } from './ask.js';
import { el, percent, sharpness, svg } from './parts.js';

const SMALLEST = 32; // pixels of the picture
const SAME_SHAPE = 0.02;
const VISIBLE = 0.05; // of the frame's width: a step of an arrow key
const FINE = 0.005; // the same with Shift
let sessions = 0;

/**
 * @param day the day's data
 * @param space the space's data, with a photo
 * @param preview called with the frame as it moves, to show at once what it cuts
 */
export function cropEditor(day, space, preview) {
  const { picture, piece } = space;
  const aspect = piece.width / piece.height;
  let frame = { ...space.crop };
  let current = space;
  let session = `crop${++sessions}`;
  const fits = Math.abs(frame.width / frame.height / aspect - 1) < SAME_SHAPE;
  if (!fits) {
    return border(day, space, largest(picture, aspect));
  }
  const most = largest(picture, aspect).width;

  const said = el('p', { class: 'ppi', id: 'ppi', role: 'status' });
  const shade = svg('path', { class: 'off', 'fill-rule': 'evenodd' });
  const outline = svg('rect', { class: 'edge' });
  const safe = svg('rect', { class: 'safe' });
  const drawing = svg(
    'svg',
    { viewBox: `0 0 ${picture.width} ${picture.height}`, 'aria-hidden': 'true' },
    shade,
    outline,
    safe,
    ...space.faces.map((face) => svg('rect', { class: 'face', ...face })),
  );
  const hold = el('div', {
    class: 'hold',
    tabindex: '0',
    role: 'group',
    'data-at': 'hold',
    'aria-label': 'Frame of the crop. Arrow keys move it, with Shift in fine steps; plus and minus change its size.',
    'aria-describedby': 'ppi',
  });
  const corners = ['nw', 'ne', 'sw', 'se'].map((corner) =>
    el('span', { class: `corner ${corner}`, 'data-corner': corner }),
  );
  hold.append(...corners);
  const stage = stageFor(space, drawing, hold);
  const sliders = {
    size: slider('Size of the crop', 'crop-size', SMALLEST, most, (value) => sized(value)),
    x: slider('From the left', 'crop-x', 0, picture.width, (value) => moveTo(value, frame.y)),
    y: slider('From the top', 'crop-y', 0, picture.height, (value) => moveTo(frame.x, value)),
  };

  function draw() {
    const right = frame.x + frame.width;
    const bottom = frame.y + frame.height;
    shade.setAttribute(
      'd',
      `M0 0H${picture.width}V${picture.height}H0ZM${frame.x} ${frame.y}H${right}V${bottom}H${frame.x}Z`,
    );
    place(outline, frame);
    const inset = (state.month.safeEdge / piece.width) * frame.width;
    place(safe, {
      x: frame.x + inset,
      y: frame.y + inset,
      width: Math.max(1, frame.width - 2 * inset),
      height: Math.max(1, frame.height - 2 * inset),
    });
    hold.style.left = percent(frame.x, picture.width);
    hold.style.top = percent(frame.y, picture.height);
    hold.style.width = percent(frame.width, picture.width);
    hold.style.height = percent(frame.height, picture.height);
    sliders.size.set(frame.width);
    sliders.x.set(frame.x, picture.width - frame.width);
    sliders.y.set(frame.y, picture.height - frame.height);
    sayPpi(said, frame.width / piece.width, printedSmaller());
  }

  /** The tool prints a picture with few pixels smaller than its space, until a person crops it. */
  function printedSmaller() {
    const untouched = ['x', 'y', 'width', 'height'].every((side) => frame[side] === current.crop[side]);
    return untouched && current.printed.width < piece.width * 0.99 ? current.ppi : null;
  }

  function moveTo(x, y) {
    frame.x = clamp(Math.round(x), 0, picture.width - frame.width);
    frame.y = clamp(Math.round(y), 0, picture.height - frame.height);
    draw();
    preview(frame);
    save();
  }

  /** About the middle unless a corner is held. */
  function sized(width, anchor) {
    const w = clamp(Math.round(width), Math.min(SMALLEST, most), most);
    const h = Math.min(picture.height, Math.max(1, Math.round(w / aspect)));
    const middle = {
      x: frame.x + frame.width / 2 - w / 2,
      y: frame.y + frame.height / 2 - h / 2,
    };
    const at = anchor ? anchor(w, h) : middle;
    frame = { x: 0, y: 0, width: w, height: h };
    moveTo(at.x, at.y);
  }

  let dragging = false;
  function save() {
    change({
      what: 'crop',
      day: day.day,
      space: space.space,
      crop: { ...frame },
      session,
    });
  }

  hold.addEventListener('focus', () => {
    session = `crop${++sessions}`;
  });
  hold.addEventListener('keydown', (event) => {
    const step = Math.max(1, Math.round(frame.width * (event.shiftKey ? FINE : VISIBLE)));
    const moves = {
      ArrowLeft: () => moveTo(frame.x - step, frame.y),
      ArrowRight: () => moveTo(frame.x + step, frame.y),
      ArrowUp: () => moveTo(frame.x, frame.y - step),
      ArrowDown: () => moveTo(frame.x, frame.y + step),
      '+': () => sized(frame.width * 1.05),
      '=': () => sized(frame.width * 1.05),
      '-': () => sized(frame.width / 1.05),
      '−': () => sized(frame.width / 1.05),
    };
    if (moves[event.key] && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      moves[event.key]();
    }
  });
  hold.addEventListener('pointerdown', (event) => {
    event.preventDefault();
    hold.focus({ preventScroll: true });
    hold.setPointerCapture(event.pointerId);
    dragging = true;
    session = `crop${++sessions}`;
    const scale = picture.width / stage.getBoundingClientRect().width;
    const start = { x: event.clientX, y: event.clientY, frame: { ...frame } };
    const corner = event.target.dataset.corner;
    const move = (now) => {
      const dx = (now.clientX - start.x) * scale;
      const dy = (now.clientY - start.y) * scale;
      if (!corner) {
        moveTo(start.frame.x + dx, start.frame.y + dy);
        return;
      }
      const west = corner.includes('w');
      const north = corner.includes('n');
      const wider = (west ? -dx : dx) / 2 + ((north ? -dy : dy) * aspect) / 2;
      sized(start.frame.width + wider, (w, h) => ({
        x: west ? start.frame.x + start.frame.width - w : start.frame.x,
        y: north ? start.frame.y + start.frame.height - h : start.frame.y,
      }));
    };
    const end = () => {
      dragging = false;
      hold.removeEventListener('pointermove', move);
    };
    hold.addEventListener('pointermove', move);
    hold.addEventListener('pointerup', end, { once: true });
    hold.addEventListener('pointercancel', end, { once: true });
  });

  draw();
  return {
    node: el(
      'div',
      { class: 'crop' },
      stage,
      said,
      el('div', { class: 'sliders' }, ...Object.values(sliders).map((one) => one.node)),
    ),
    /** Shows the turned picture at once; the program's own follows. */
    turn: (quarters) => turned(stage, quarters),
    /** Takes over what the program made of the crop; false when it must be drawn anew. */
    follow(newer) {
      if (!sameBut(newer, space)) {
        return false;
      }
      current = newer;
      if (!dragging && document.activeElement !== hold && !hasFocus(sliders)) {
        frame = { ...newer.crop };
        draw();
      }
      return true;
    },
  };
}

function hasFocus(sliders) {
  return Object.values(sliders).some((one) => one.node.contains(document.activeElement));
}

function sameBut(newer, older) {
  return (
    newer.photo === older.photo &&
    newer.turns === older.turns &&
    newer.piece.width === older.piece.width &&
    newer.piece.height === older.piece.height &&
    Math.abs(newer.crop.width / newer.crop.height / (older.crop.width / older.crop.height) - 1) <
      SAME_SHAPE
  );
}

/** The whole picture with white around it: shown as it is, with a way to fill the piece instead. */
function border(day, space, fill) {
  const said = el('p', { class: 'ppi', role: 'status' });
  sayPpi(said, space.ppi);
  const fillIt = el(
    'button',
    {
      type: 'button',
      'data-at': 'fill',
      onclick: () =>
        change({ what: 'crop', day: day.day, space: space.space, crop: fill }),
    },
    'Fill the space instead',
  );
  const drawing = svg(
    'svg',
    { viewBox: `0 0 ${space.picture.width} ${space.picture.height}`, 'aria-hidden': 'true' },
    ...space.faces.map((face) => svg('rect', { class: 'face', ...face })),
  );
  const stage = stageFor(space, drawing, null);
  return {
    node: el('div', { class: 'crop' }, stage, said, fillIt),
    turn: (quarters) => turned(stage, quarters),
    follow: (newer) => sameBut(newer, space) && newer.fit === space.fit,
  };
}

function turned(stage, quarters) {
  const { width, height } = stage.getBoundingClientRect();
  const scale = Math.min(1, height / width, width / height);
  stage.classList.add('turning');
  stage.querySelector('img').style.transform = `rotate(${quarters * 90}deg) scale(${scale})`;
}

function stageFor(space, drawing, hold) {
  const stage = el(
    'div',
    { class: 'stage' },
    el('img', {
      src: pictureAddress(space.photo, space.turns, 1600),
      alt: `${space.name}, whole`,
      draggable: 'false',
    }),
    drawing,
    hold,
  );
  stage.style.aspectRatio = `${space.picture.width} / ${space.picture.height}`;
  stage.style.setProperty('--wide', space.picture.width / space.picture.height);
  return stage;
}

function largest(picture, aspect) {
  const width = Math.min(picture.width, Math.floor(picture.height * aspect));
  const height = Math.min(picture.height, Math.round(width / aspect));
  return {
    x: Math.floor((picture.width - width) / 2),
    y: Math.floor((picture.height - height) / 2),
    width,
    height,
  };
}

/** @param smaller the pixels per inch of a picture printed smaller than its space, or null */
function sayPpi(place, ppi, smaller) {
  const { month } = state;
  const word = sharpness(ppi, month);
  const low = ppi < month.minPpi;
  place.classList.toggle('warn', low);
  const ofPpi = `${Math.floor(ppi)} ppi`;
  const text = smaller
    ? `Printed smaller than its space, to stay sharp enough (${Math.floor(smaller)} ppi). Move the frame to fill the space: ${word} then (${ofPpi}).`
    : {
        'too small': `Too small to print well (${ofPpi}): take in more of the picture, or choose a smaller space.`,
        soft: `Soft in print (${ofPpi}, below ${month.minPpi}): take in more of the picture, or choose a smaller space.`,
        'sharp enough to print': `Sharp enough to print (${ofPpi}).`,
        sharp: `Sharp in print (${ofPpi}).`,
      }[word];
  if (place.textContent !== text) {
    place.textContent = text;
  }
}

function slider(label, name, least, most, moved) {
  const input = el('input', {
    type: 'range',
    id: name,
    min: least,
    max: most,
    'data-at': name,
    oninput: () => moved(Number(input.value)),
  });
  return {
    node: el('label', { for: name }, label, input),
    set(value, max = most) {
      input.max = max;
      input.disabled = max <= least;
      input.value = value;
    },
  };
}

function place(rect, box) {
  for (const [name, value] of Object.entries(box)) {
    rect.setAttribute(name, value);
  }
}

const clamp = (value, least, most) => Math.max(least, Math.min(most, value));
