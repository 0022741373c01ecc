/** The month note, from text to days; {@link org.daymount.note.NoteParser} is the door. */
package org.daymount.note;
