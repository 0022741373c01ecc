package org.daymount.image;

import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelSize;

/**
 * What the first bytes of a picture file say; nothing has been decoded.
 *
 * @param stored width and height as stored, before any orientation
 */
public record PictureHeader(PhotoFormat format, PixelSize stored) {}
