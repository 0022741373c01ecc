package org.daymount.look;

import org.daymount.unit.PixelBox;

/**
 * A face as a detector found it: from brow to chin, without hair.
 *
 * @param box upright pixels of the whole picture
 * @param confidence 0 to 1; low ones are kept too, because a crop must not cut a face that may be
 *     one
 */
public record Face(PixelBox box, double confidence) {}
