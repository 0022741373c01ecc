package org.daymount.look;

import org.daymount.unit.PixelBox;

/**
 * Something a picture may be about.
 *
 * @param box upright pixels of the whole picture
 * @param what in a person's words: "person", "dog", "boat"
 * @param confidence 0 to 1
 */
public record Subject(PixelBox box, String what, double confidence) {}
