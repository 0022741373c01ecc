package org.daymount.sheet;

import java.util.List;

/**
 * All pieces on their sheets.
 *
 * @param sheets in the order they are cut, earlier days first as far as that costs no sheet
 * @param provenFewest whether it is certain that no edge-to-edge cutting plan uses fewer sheets
 * @param how one sentence for a person: how many sheets, and how that was found
 */
public record Packing(List<Sheet> sheets, boolean provenFewest, String how) {
  public Packing {
    sheets = List.copyOf(sheets);
  }
}
