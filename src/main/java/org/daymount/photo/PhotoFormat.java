package org.daymount.photo;

/**
 * The file formats a phone or a chat leaves behind, told by their first bytes, never by the name.
 */
public enum PhotoFormat {
  JPEG,
  PNG,
  WEBP,
  TIFF,
  HEIF,
  AVIF,
  GIF,
  BMP,
  RAW,

  /** A still from an MP4, MOV or 3GP clip. */
  CLIP;
}
