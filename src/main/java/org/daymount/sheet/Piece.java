package org.daymount.sheet;

import org.daymount.unit.PaperSize;

/**
 * Something to be cut out of a sheet.
 *
 * @param label names the piece on plans and guides: day and letter, {@code 07a}; unique in a month
 * @param size lying as it will on the page
 * @param order pieces with a lower number are wanted on earlier sheets when that costs none
 */
public record Piece(String label, PaperSize size, int order) {}
