// One day opened: its page, the picture in the chosen space, the story, and all its photos.

import { cardAddress, change, get, post, state } from './ask.js';
import { cropEditor } from './crop.js';
import { SIZES, counted, dayName, el, measured, printed, recut, redraw, sizeName, takesPhotos } from './parts.js';
import { MOVES } from './month.js';
import { photoTiles } from './photos.js';
import { said } from './words.js';

const TYPING_PAUSE = 250; // ms before the card is drawn again
let storySessions = 0;

export const view = { path: 'day', words: () => '', show: showDay };

function showDay(root, date) {
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
  const settings = el('div', { class: 'settings' });
  const whole = pagePart(date);
  const spaceTitle = el('h2', {});
  const cropPlace = el('div', {});
  const turnPlace = el('div', { class: 'buttons' });
  const why = el('div', { class: 'why' });
  const story = storyPart(date);
  const photosTitle = el('h2', { id: 'photos-title' });
  const tray = el('div', { class: 'tray' });
  const choosePhotos = el('div', { class: 'from' });
  const photos = el('ul', { class: 'photos', 'aria-label': 'Pictures' });
  root.replaceChildren(
    title,
    around,
    remarks,
    el(
      'div',
      { class: 'spread' },
      el('section', { class: 'left', 'aria-label': 'The page', 'data-part': 'page' }, page, pageWords, settings, whole.node),
      el(
        'section',
        { class: 'right', 'aria-label': 'The picture in the space' },
        spaceTitle,
        cropPlace,
        turnPlace,
        why,
      ),
      story.node,
      el(
        'section',
        { class: 'choose', 'aria-labelledby': 'photos-title', 'data-part': 'photos' },
        photosTitle,
        choosePhotos,
        tray,
        photos,
      ),
    ),
  );

  function update() {
    day = find(date);
    selected = Math.min(selected, Math.max(0, day.spaces.length - 1));
    title.textContent = `${dayName(day)} ${state.month.title.split(' ')[0]}`;
    redraw(around, neighbours(day));
    redraw(remarks, day.remarks.map((text) => el('li', {}, said(text))));
    redraw(page, day.spaces.map(spaceButton));
    pageWords.textContent = pageSentence(day);
    whole.update(day);
    drawSpace();
    drawTray();
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
        'data-part': `space${space.space}`,
        'aria-pressed': String(space.space === selected),
        'aria-label': spaceLabel(space),
        onclick: () => select(space.space),
      },
      printed(space, 480),
    );
    takesPhotos(button, (photo) => put(photo, space.space));
    return button;
  }

  function select(index) {
    selected = index;
    update();
  }

  /** The spaces again, small, beside the photos: there they are in reach however far one scrolls. */
  function drawTray() {
    const spaces = day.spaces.map((space) => {
      const button = el(
        'button',
        {
          type: 'button',
          class: 'pick',
          'data-at': `tray${space.space}`,
          'aria-pressed': String(space.space === selected),
          'aria-label': `Fill ${spaceLabel(space)}`,
          onclick: () => select(space.space),
        },
        printed(space, 240),
      );
      takesPhotos(button, (photo) => put(photo, space.space));
      return button;
    });
    const hint =
      day.spaces.length === 0
        ? 'This page has no space for a picture.'
        : day.spaces.length === 1
          ? 'Click a picture, or drag it here, to put it in the space.'
          : `Click a picture to put it in space ${selected + 1}, or drag it to any of these.`;
    redraw(
      tray,
      spaces.length > 0
        ? el('div', { class: 'page', role: 'group', 'aria-label': 'Spaces to fill' }, spaces)
        : null,
      el('p', { class: 'quiet' }, hint),
    );
  }

  function put(photo, space) {
    selected = space;
    change({ what: 'photo', day: date, space, photo });
  }

  function drawSpace() {
    const space = day.spaces[selected];
    if (!space) {
      spaceTitle.textContent = 'No picture on this page';
      [cropPlace, turnPlace, why, settings].forEach((place) => place.replaceChildren());
      editor = null;
      return;
    }
    const whose = space.chosenBy === 'person' ? ', your choice' : '';
    spaceTitle.textContent = `Space ${selected + 1}: ${sizeName(space.size, state.month.units)}, ${WAYS[space.direction] ?? space.direction}${whose}`;
    redraw(
      settings,
      sizeSetting(space),
      directionSetting(space),
      spaceSwitch(space, 'mat', space.reveal > 0, 'On a mat'),
      spaceSwitch(space, 'side', space.onSide, 'May lie on its side'), // turned, in a pocket
      el(
        'button',
        {
          type: 'button',
          'data-at': 'space-away',
          onclick: () => change({ what: 'remove', day: date, space: space.space }),
        },
        `Take space ${space.space + 1} away`,
      ),
    );
    drawCrop(space);
    redraw(turnPlace, space.photo ? pictureButtons(space) : []);
    redraw(why, reasons(space));
  }

  function drawCrop(space) {
    if (!space.photo) {
      cropPlace.replaceChildren(
        el('p', { class: 'warn' }, said(`Missing: ${space.reasons.join('; ')}.`)),
      );
      editor = null;
      return;
    }
    const same = editorFor === `${date}/${selected}`;
    if (!editor || !same || !editor.follow(space)) {
      editor = cropEditor(day, space, (frame) => preview(space, frame));
      editorFor = `${date}/${selected}`;
      redraw(cropPlace, editor.node);
    }
  }

  /** On the page and in the tray, while the frame is still being moved. */
  function preview(space, frame) {
    for (const at of [`space${space.space}`, `tray${space.space}`]) {
      const drawn = root.querySelector(`[data-at="${at}"]`);
      if (drawn) {
        recut(drawn, frame, space.picture, space.piece);
      }
    }
  }

  function turn(space, quarterTurns) {
    editor?.turn(quarterTurns);
    change({ what: 'turn', day: date, space: space.space, quarterTurns });
  }

  function pictureButtons(space) {
    const ask = (what, more) => () => change({ what, day: date, space: space.space, ...more });
    const button = (name, text, onclick) =>
      el('button', { type: 'button', 'data-at': name, onclick }, text);
    return [
      button('turn-left', 'Turn left', () => turn(space, -1)),
      button('turn-right', 'Turn right', () => turn(space, 1)),
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
      parts.push(el('ul', {}, space.reasons.map((text) => el('li', {}, said(text)))));
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
    const sizes = SIZES.some(([size]) => size === space.size)
      ? SIZES
      : [[space.size, sizeName(space.size, state.month.units)], ...SIZES];
    const input = el(
      'select',
      {
        id: name,
        'data-at': name,
        onchange: () =>
          change({ what: 'size', day: date, space: space.space, size: input.value || null }),
      },
      sizes.map(([size, words]) => el('option', { value: size, selected: size === space.size }, measured(words, state.month.units))),
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
      Object.entries(WAYS).map(([way, words]) =>
        el('option', { value: way, selected: space.directionFixed === way }, words),
      ),
    );
    return el('label', { for: name }, 'Direction', input);
  }

  function spaceSwitch(space, what, checked, words) {
    const name = `space-${what}`;
    const input = el('input', {
      type: 'checkbox',
      role: 'switch',
      id: name,
      'data-at': name,
      checked,
      onchange: () => change({ what, day: date, space: space.space, [what]: input.checked }),
    });
    return el('label', { for: name, class: 'switch' }, input, words);
  }

  async function drawPhotos() {
    const version = `${state.month.version}/${from}`;
    photosTitle.textContent =
      from === date
        ? `${counted(day.photos, 'picture')} of this day`
        : ELSEWHERE[from]
          ? `${counted(state.month[from], 'picture')} ${ELSEWHERE[from]}`
          : `${counted(find(from).photos, 'picture')} of ${dayName(find(from))}`;
    redraw(choosePhotos, fromSetting());
    if (photosOf === version && photos.dataset.space === String(selected)) {
      return;
    }
    photosOf = version;
    photos.dataset.space = String(selected);
    try {
      const list = await get(ELSEWHERE[from] ? from : `day/${from}`);
      if (photosOf === version) {
        const elsewhere = from === 'elsewhere';
        const within = photos.contains(document.activeElement);
        redraw(
          photos,
          photoTiles(list.photos, { day, space: day.spaces[selected], put, date, elsewhere }),
          list.more ? el('li', { class: 'quiet' }, `… and ${list.more} more of other months.`) : null,
        );
        if (within && !photos.contains(document.activeElement)) {
          choosePhotos.querySelector('select').focus(); // what had the focus went to another day
        }
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
      Object.entries(ELSEWHERE)
        .filter(([name]) => state.month[name] > 0 || from === name)
        .map(([name, words]) => el('option', { value: name, selected: from === name }, words)),
    );
    return el('label', { for: name }, 'Show pictures of', input);
  }

  update();
  return { title: title.textContent, update };
}

/** Pictures that lie on no day of the page, by what they are asked as. */
const ELSEWHERE = { undated: 'without a day', elsewhere: 'of other months or days' };

/** As said of a picture: lying or upright. */
const WAYS = { landscape: 'lying (landscape)', portrait: 'upright (portrait)' };

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
  if (day.outside) {
    return said('This day was not asked for with --days.');
  }
  if (day.kind === 'left_out') {
    return 'This day is left out of the album.';
  }
  if (day.spaces.length === 0) {
    return 'This page has no picture.';
  }
  const whose = day.pageIsYours ? ', changed by you' : '';
  return day.pageOf
    ? `This day uses the page of ${dayName(find(day.pageOf))}${whose}.`
    : `${counted(day.spaces.length, 'space')} on this page${whose}.`;
}

/** What concerns the page as a whole: its words, more spaces, none at all, another day's page. */
function pagePart(date) {
  const words = el('input', {
    type: 'text',
    id: 'page-words',
    'data-at': 'page-words',
    autocomplete: 'off',
    spellcheck: 'false',
    maxlength: '400',
    'aria-describedby': 'page-help',
    onkeydown: (event) => {
      if (event.key === 'Enter') use();
    },
  });
  const use = () => change({ what: 'page', day: date, words: words.value });
  const other = el(
    'select',
    { id: 'swap-with', 'data-at': 'swap-with' },
    state.month.days
      .filter((each) => each.day !== date)
      .map((each) => el('option', { value: each.day }, dayName(each))),
  );
  const what = el('select', { id: 'swap-what', 'data-at': 'swap-what' }, MOVES.map(([move, words]) =>
    el('option', { value: move }, words)));
  const buttons = el('div', { class: 'buttons' });
  const node = el(
    'div',
    { class: 'whole' },
    buttons,
    el(
      'div',
      { class: 'settings' },
      el('label', { for: 'page-words', class: 'wide' }, 'The page in words', words),
      el('button', { type: 'button', 'data-at': 'page-use', onclick: use }, 'Use these words'),
    ),
    el(
      'p',
      { class: 'quiet', id: 'page-help' },
      'As in the month note: 4x6, two 3x4 portrait, 5x7 on mat, no photo, leave out.',
    ),
    el(
      'div',
      { class: 'settings' },
      el('label', { for: 'swap-with' }, 'Move this page to', other),
      el('label', { for: 'swap-what' }, 'With it goes', what),
      el(
        'button',
        {
          type: 'button',
          'data-at': 'swap',
          onclick: () => change({ what: what.value, day: date, other: other.value }),
        },
        'Move it',
      ),
    ),
    el('p', { class: 'quiet' }, 'The page of the other day comes here in exchange.'),
  );
  const button = (name, text, asked) =>
    el(
      'button',
      { type: 'button', 'data-at': name, onclick: () => change({ day: date, ...asked }) },
      text,
    );
  return {
    node,
    update(day) {
      node.hidden = day.outside;
      if (document.activeElement !== words) {
        words.value = day.page;
      }
      redraw(buttons, [
        button('space-add', 'Add a space', { what: 'add' }),
        day.kind === 'left_out'
          ? null
          : button('day-out', 'Leave this day out', { what: 'page', words: 'leave out' }),
        day.kind === 'left_out' || day === state.month.days.at(-1)
          ? null
          : button('stop', 'Stop the album here', { what: 'stop' }),
        day.pageIsYours
          ? button('page-back', 'Take the page as it was planned', { what: 'page', words: null })
          : null,
      ].filter(Boolean));
    },
  };
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
      const only = state.month.cards ? '' : said(' Cards are printed when a size is chosen for them with --cards.');
      words.textContent = [...set.notes.map((note) => `${note}.`), only].join(' ').trim();
      // those that stay as they are stay where they are, and are not fetched again
      const before = new Map([...cards.children].map((img) => [`${img.dataset.card} ${img.alt}`, img]));
      cards.replaceChildren(
        ...set.cards.map((card, i) => {
          const alt = `Card ${i + 1} of ${set.cards.length} as it will be printed`;
          return (
            before.get(`${card.picture} ${alt}`) ??
            el('img', {
              loading: 'lazy',
              src: cardAddress(card.picture),
              alt,
              'data-card': String(card.picture),
              width: Math.round(card.width * 96),
              height: Math.round(card.height * 96),
            })
          );
        }),
      );
    } catch (failure) {
      drawn = null;
      words.textContent = failure.message;
    }
  }

  return {
    node: el(
      'section',
      { class: 'story', 'aria-labelledby': 'story-title', 'data-part': 'story' },
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
