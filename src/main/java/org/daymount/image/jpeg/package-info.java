/**
 * A JPEG decoder that makes a picture of a half, a quarter or an eighth of the size without ever
 * making the whole one. Read it in this order to learn how JPEG works: {@link
 * org.daymount.image.jpeg.MarkerReader} (how a file is divided), {@link
 * org.daymount.image.jpeg.HuffmanTable} and {@link org.daymount.image.jpeg.BitReader} (how numbers
 * are packed), {@link org.daymount.image.jpeg.Frame} (how a picture is divided into blocks), {@link
 * org.daymount.image.jpeg.BaselineScan} and {@link org.daymount.image.jpeg.ProgressiveDcScan} and
 * {@link org.daymount.image.jpeg.ProgressiveAcScan} (what is stored of a block), {@link
 * org.daymount.image.jpeg.ScaledIdct} (how a block becomes pixels), and {@link
 * org.daymount.image.jpeg.ReducedJpeg} (how pixels get their colours).
 *
 * <p>Clauses named here are those of ITU-T T.81 (09/92), the JPEG standard.
 */
package org.daymount.image.jpeg;
