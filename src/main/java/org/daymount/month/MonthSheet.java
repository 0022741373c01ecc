package org.daymount.month;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.Sheet;

/**
 * A sheet with its file name and what is drawn on each piece.
 *
 * @param file below the output folder, {@code sheets/sheet-01.jpg}
 * @param content by piece label
 */
public record MonthSheet(String file, Sheet sheet, Map<String, PieceContent> content) {
  public MonthSheet {
    content = Collections.unmodifiableMap(new TreeMap<>(content)); // one order in every process
  }
}
