// One day opened: its page, the picture in the chosen space, the story, and all its photos.

import { change, get, post, state } from './ask.js';
import { cropEditor } from './crop.js';
import { counted, dayName, el, printed, redraw } from './parts.js';
import { photoTiles } from './photos.js';

const SIZES = ['3x4', '4x4', '4x6', '5x7', '6x8'];
const TYPING_PAUSE = 250; // ms before the card is drawn again
let storySessions = 0;

export function showDay(root, date) {
  let day = find(date);
  let selected = 0;
  let from = date;
  let photosOf = '';
  let editor = null;
  let editorFor = '';

  const title = el('h1', {});
  const around = el('p', { class: 'around' });
  const remarks = el('ul', { class: 'remarks' });
  const page = el('div', { class: 'page large', role: 'group', 'aria-label': 'Spaces of the page' });
  const pageWords = el('p', { class: 'quiet' });
  const swap = el('div', { class: 'swap' });
  const settings = el('div', { class: 'settings' });
  const spaceTitle = el('h2', {});
  const cropPlace = el('div', {});
  const turnPlace = el('div', { class: 'buttons' });
  const why = el('div', { class: 'why' });
  const story = storyPart(date);
  const photosTitle = el('h2', {});
  const choosePhotos = el('div', { class: 'from' });
  const photos = el('ul', { class: 'photos', 'aria-label': 'Pictures' });
  root.replaceChildren(
    title,
    around,
    remarks,
    el(
      'div',
      { class: 'spread' },
      el('section', { class: 'left', 'aria-label': 'The page' }, page, pageWords, settings, swap),
      el(
        'section',
        { class: 'right', 'aria-label': 'The picture in the space' },
        spaceTitle,
        cropPlace,
        turnPlace,
        why,
      ),
    ),
    el('section', { 'aria-label': 'Photos' }, photosTitle, choosePhotos, photos),
    story.node,
  );

  function update() {
    day = find(date);
    selected = Math.min(selected, Math.max(0, day.spaces.length - 1));
    title.textContent = `${dayName(day)} ${state.month.title.split(' ')[0]}`;
    redraw(around, neighbours(day));
    redraw(remarks, day.remarks.map((text) => el('li', {}, text)));
    redraw(page, day.spaces.map(spaceButton));
    pageWords.textContent = pageSentence(day);
    redraw(swap, swapPart(day));
    drawSpace();
    story.update(day);
    drawPhotos();
  }

  function spaceButton(space) {
    const button = el(
      'button',
      {
        type: 'button',
        class: 'pick',
        'data-at': `space${space.space}`,
        'aria-pressed': String(space.space === selected),
        'aria-label': spaceLabel(space),
        onclick: () => select(space.space),
      },
      printed(space, 480),
    );
    button.addEventListener('dragover', (event) => {
      if (event.dataTransfer.types.includes('text/x-photo')) {
        event.preventDefault();
        button.classList.add('over');
      }
    });
    button.addEventListener('dragleave', () => button.classList.remove('over'));
    button.addEventListener('drop', (event) => {
      event.preventDefault();
      button.classList.remove('over');
      put(event.dataTransfer.getData('text/x-photo'), space.space);
    });
    return button;
  }

  function select(index) {
    selected = index;
    update();
  }

  function put(photo, space) {
    selected = space;
    change({ what: 'photo', day: date, space, photo });
  }

  function drawSpace() {
    const space = day.spaces[selected];
    if (!space) {
      spaceTitle.textContent = 'No space on this page';
      [cropPlace, turnPlace, why, settings].forEach((place) => place.replaceChildren());
      editor = null;
      return;
    }
    const whose = space.chosenBy === 'person' ? ', your choice' : '';
    spaceTitle.textContent = `Space ${selected + 1}: ${space.size} ${space.direction}${whose}`;
    redraw(settings, sizeSetting(space), directionSetting(space));
    drawCrop(space);
    redraw(turnPlace, space.photo ? pictureButtons(space) : []);
    redraw(why, reasons(space));
  }

  function drawCrop(space) {
    if (!space.photo) {
      cropPlace.replaceChildren(
        el('p', { class: 'warn' }, `Missing: ${space.reasons.join('; ')}.`),
      );
      editor = null;
      return;
    }
    const same = editorFor === `${date}/${selected}`;
    if (!editor || !same || !editor.follow(space)) {
      editor = cropEditor(day, space);
      editorFor = `${date}/${selected}`;
      redraw(cropPlace, editor.node);
    }
  }

  function pictureButtons(space) {
    const ask = (what, more) => () => change({ what, day: date, space: space.space, ...more });
    const button = (name, text, onclick) =>
      el('button', { type: 'button', 'data-at': name, onclick }, text);
    return [
      button('turn-left', 'Turn left', ask('turn', { quarterTurns: -1 })),
      button('turn-right', 'Turn right', ask('turn', { quarterTurns: 1 })),
      space.cropIsYours ? button('crop-back', 'Propose the crop again', ask('crop', { crop: null })) : null,
      space.chosenBy === 'person'
        ? button('photo-back', 'Propose a picture again', ask('photo', { photo: null }))
        : button('keep', 'Keep this picture', ask('photo', { photo: space.photo })),
      button('leave', 'Leave this picture out', () =>
        change({ what: 'used', photo: space.photo, used: false }),
      ),
    ].filter(Boolean);
  }

  function reasons(space) {
    const parts = [];
    if (space.photo) {
      parts.push(el('p', { class: 'file' }, space.name));
      parts.push(el('ul', {}, space.reasons.map((text) => el('li', {}, text))));
    } else if (space.chosenBy === 'person') {
      parts.push(
        el(
          'button',
          {
            type: 'button',
            'data-at': 'photo-back',
            onclick: () =>
              change({ what: 'photo', day: date, space: space.space, photo: null }),
          },
          'Propose a picture again',
        ),
      );
    }
    return parts;
  }

  function sizeSetting(space) {
    const name = 'space-size';
    const sizes = SIZES.includes(space.size) ? SIZES : [space.size, ...SIZES];
    const input = el(
      'select',
      {
        id: name,
        'data-at': name,
        onchange: () =>
          change({ what: 'size', day: date, space: space.space, size: input.value || null }),
      },
      sizes.map((size) => el('option', { value: size, selected: size === space.size }, `${size} in`)),
      space.sizeIsYours ? el('option', { value: '' }, 'as the page had it') : null,
    );
    return el('label', { for: name }, `Size of space ${space.space + 1}`, input);
  }

  function directionSetting(space) {
    const name = 'space-direction';
    const input = el(
      'select',
      {
        id: name,
        'data-at': name,
        onchange: () =>
          change({
            what: 'direction',
            day: date,
            space: space.space,
            direction: input.value || null,
          }),
      },
      space.directionFixed && !space.directionIsYours
        ? null
        : el(
            'option',
            { value: '', selected: !space.directionFixed },
            space.directionIsYours ? 'as the page had it' : 'whichever suits',
          ),
      ['landscape', 'portrait'].map((way) =>
        el('option', { value: way, selected: space.directionFixed === way }, way),
      ),
    );
    return el('label', { for: name }, 'Lies', input);
  }

  async function drawPhotos() {
    const version = `${state.month.version}/${from}`;
    photosTitle.textContent =
      from === date
        ? `${counted(day.photos, 'picture')} of this day`
        : from === 'undated'
          ? `${counted(state.month.undated, 'picture')} without a day`
          : `${counted(find(from).photos, 'picture')} of ${dayName(find(from))}`;
    redraw(choosePhotos, fromSetting());
    if (photosOf === version && photos.dataset.space === String(selected)) {
      return;
    }
    photosOf = version;
    photos.dataset.space = String(selected);
    try {
      const list = await get(from === 'undated' ? 'undated' : `day/${from}`);
      if (photosOf === version) {
        redraw(photos, photoTiles(list.photos, { day, space: day.spaces[selected], put, date }));
      }
    } catch (failure) {
      photos.replaceChildren(el('li', { class: 'warn' }, failure.message));
    }
  }

  function fromSetting() {
    const name = 'photos-from';
    const input = el(
      'select',
      {
        id: name,
        'data-at': name,
        onchange: () => {
          from = input.value;
          drawPhotos();
        },
      },
      state.month.days
        .filter((other) => other.photos > 0 || other.day === date)
        .map((other) =>
          el(
            'option',
            { value: other.day, selected: other.day === from },
            other.day === date ? 'this day' : `${dayName(other)} (${other.photos})`,
          ),
        ),
      state.month.undated > 0 || from === 'undated'
        ? el('option', { value: 'undated', selected: from === 'undated' }, 'without a day')
        : null,
    );
    return el('label', { for: name }, 'Show pictures of', input);
  }

  update();
  return { title: title.textContent, update };
}

function find(date) {
  return state.month.days.find((day) => day.day === date) ?? state.month.days[0];
}

function neighbours(day) {
  const at = state.month.days.indexOf(day);
  const link = (other, words) =>
    other ? el('a', { href: `#/day/${other.day}`, 'data-at': words }, `${words}: ${dayName(other)}`) : null;
  return [
    link(state.month.days[at - 1], 'Day before'),
    link(state.month.days[at + 1], 'Day after'),
  ].filter(Boolean);
}

function spaceLabel(space) {
  const what = space.photo ? space.name : 'picture missing';
  return `Space ${space.space + 1}, ${space.size} ${space.direction}: ${what}`;
}

function pageSentence(day) {
  if (day.kind === 'left_out') {
    return 'This day is left out of the album.';
  }
  if (day.spaces.length === 0) {
    return 'This page has no picture.';
  }
  return day.pageOf
    ? `This day uses the page of ${dayName(find(day.pageOf))}.`
    : `${counted(day.spaces.length, 'space')} on this page.`;
}

function swapPart(day) {
  const name = 'swap-with';
  const input = el(
    'select',
    { id: name, 'data-at': name },
    state.month.days
      .filter((other) => other !== day)
      .map((other) => el('option', { value: other.day }, dayName(other))),
  );
  const button = el(
    'button',
    {
      type: 'button',
      'data-at': 'swap',
      onclick: () => change({ what: 'swap', day: day.day, other: input.value }),
    },
    'Swap pages',
  );
  return [el('label', { for: name }, 'Swap its page with that of', input), button];
}

function storyPart(date) {
  let session = '';
  let timer = 0;
  const input = el('textarea', {
    id: 'story',
    rows: '6',
    maxlength: '20000',
    'aria-describedby': 'story-words',
    onfocus: () => {
      session = `story${++storySessions}`;
    },
    oninput: () => {
      change({ what: 'story', day: date, text: input.value, session });
      clearTimeout(timer);
      timer = setTimeout(draw, TYPING_PAUSE);
    },
  });
  const words = el('p', { class: 'quiet', id: 'story-words' });
  const noted = el('div', {});
  const cards = el('div', { class: 'cards' });
  let drawn = null;

  async function draw() {
    const text = input.value;
    if (drawn === text) {
      return;
    }
    drawn = text;
    try {
      const set = await post('card', { day: date, text });
      if (text !== input.value) {
        return;
      }
      const only = state.month.cards ? '' : ' Cards are printed when --cards is given.';
      words.textContent = [...set.notes.map((note) => `${note}.`), only].join(' ').trim();
      cards.replaceChildren(
        ...set.cards.map((card, i) =>
          el('img', {
            src: card.picture,
            alt: `Card ${i + 1} of ${set.cards.length} as it will be printed`,
            width: Math.round(card.width * 96),
            height: Math.round(card.height * 96),
          }),
        ),
      );
    } catch (failure) {
      drawn = null;
      words.textContent = failure.message;
    }
  }

  return {
    node: el(
      'section',
      { class: 'story', 'aria-labelledby': 'story-title' },
      el('h2', { id: 'story-title' }, 'Story'),
      el('div', { class: 'pair' }, el('div', {}, el('label', { for: 'story' }, 'The words of this day', input), words, noted), cards),
    ),
    update(day) {
      const text = day.story ?? '';
      if (document.activeElement !== input && input.value !== text) {
        input.value = text;
      }
      redraw(
        noted,
        day.storyIsYours
          ? el(
              'button',
              {
                type: 'button',
                'data-at': 'story-back',
                onclick: () => change({ what: 'story', day: date, text: null }),
              },
              day.notedStory ? 'Take the note’s words again' : 'Take the story away',
            )
          : [],
      );
      draw();
    },
  };
}
