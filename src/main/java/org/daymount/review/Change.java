package org.daymount.review;

import org.daymount.choices.Choices;

/**
 * One thing a person changed.
 *
 * @param words for the undo button: "picture on 3 June"
 * @param session changes of one kind that follow each other in one session (a word being typed, a
 *     crop being dragged) are undone together; empty: on its own
 */
record Change(Choices choices, String words, String session) {}
