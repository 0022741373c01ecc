package org.daymount.sheet;

import org.daymount.unit.PaperBox;

/**
 * A piece on its sheet.
 *
 * @param turned whether the piece lies a quarter turn clockwise from the way it will on the page;
 *     its {@code box} then has the piece's height as its width
 */
public record PlacedPiece(Piece piece, PaperBox box, boolean turned) {}
