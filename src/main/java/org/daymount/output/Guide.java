package org.daymount.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.SizeText;
import org.daymount.unit.Units;

/**
 * Cutting and assembly in words, the same for guide.pdf and index.html. Sentences stand in the
 * order in which the work is done.
 *
 * @param sheets one for each sheet, in order
 * @param mats the card that mats are cut from, sheet by sheet
 * @param batches the cuts of all sheets in an order that sets the trimmer seldom
 * @param pages one for each day that has a page
 * @param missing pictures still to be found; empty when nothing is missing
 * @param shopping what to buy or to have ready
 * @param cautions about blades
 * @param tips of the trade
 */
record Guide(
    List<SheetSteps> sheets,
    List<SheetSteps> mats,
    BatchSteps batches,
    List<PageSteps> pages,
    List<String> missing,
    List<String> shopping,
    List<String> cautions,
    List<String> tips) {

  /**
   * How one sheet is cut up.
   *
   * @param name {@code sheet-01}
   * @param pieces each piece with its day and space
   * @param cuts numbered by their place in the list, from 1; the sheet's cuts in the same order
   */
  record SheetSteps(String name, MonthSheet sheet, List<String> pieces, List<String> cuts) {
    SheetSteps {
      pieces = List.copyOf(pieces);
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * What is mounted on one page.
   *
   * @param heading the day in words
   * @param steps in the page's order
   */
  record PageSteps(LocalDate day, String heading, List<String> steps) {
    PageSteps {
      steps = List.copyOf(steps);
    }
  }

  /** Usual advice for blades (common practice, no source). */
  static final List<String> CAUTIONS =
      List.of(
          "Cut away from yourself, and keep the fingers of the other hand out of the blade's way.",
          "Use a metal ruler and a cutting mat; keep a trimmer's guard down.",
          "Close or cover blades whenever you put them down, and keep them away from children.",
          "Follow the maker's instructions and the rules of the place where you work.");

  /** Common practice, no source. */
  private static final List<String> TIPS =
      List.of(
          "Lay the pieces out on their pages before you glue anything.",
          "Keep glue off whatever overlaps a mat, so that a picture can still slide under it"
              + " later.",
          "Write the piece's name lightly on its back before the label on the waste is cut off.");

  Guide {
    sheets = List.copyOf(sheets);
    mats = List.copyOf(mats);
    pages = List.copyOf(pages);
    missing = List.copyOf(missing);
    shopping = List.copyOf(shopping);
    cautions = List.copyOf(cautions);
    tips = List.copyOf(tips);
  }

  /** Every sentence, a line each, in the order of the work. */
  String words() {
    List<String> lines = new ArrayList<>();
    for (SheetSteps sheet : sheets) {
      lines.add(sheet.name() + " " + SizeText.text(sheet.sheet().sheet().size()));
      lines.addAll(sheet.pieces());
      lines.addAll(sheet.cuts());
    }
    mats.forEach(card -> lines.addAll(card.cuts()));
    lines.addAll(batches.lines());
    for (PageSteps page : pages) {
      lines.add(page.heading());
      lines.addAll(page.steps());
    }
    lines.addAll(missing);
    lines.addAll(shopping);
    lines.addAll(cautions);
    lines.addAll(tips);
    return String.join("\n", lines);
  }

  static Guide of(Month month) {
    PieceNames names = new PieceNames(month);
    return new Guide(
        month.sheets().stream().map(sheet -> steps(sheet, names, month.units())).toList(),
        MatCard.of(month).stream().map(card -> steps(card, month.units())).toList(),
        BatchSteps.of(month.sheets(), month.units()),
        new PageGuide(month, names).pages(),
        Missing.in(month),
        new ShoppingList(month).lines(),
        CAUTIONS,
        TIPS);
  }

  /** Card for mats: its pieces say what they are by their names, those of one size together. */
  static SheetSteps steps(MonthSheet card, Units units) {
    Map<String, List<String>> bySize = new LinkedHashMap<>();
    for (PlacedPiece placed : card.sheet().pieces()) {
      bySize
          .computeIfAbsent(units.of(placed.piece().size()), size -> new ArrayList<>())
          .add(placed.piece().label());
    }
    return new SheetSteps(
        card.file(),
        card,
        bySize.entrySet().stream()
            .map(size -> String.join(", ", size.getValue()) + ": " + size.getKey())
            .toList(),
        new CutSteps(card.sheet(), units).sentences());
  }

  private static SheetSteps steps(MonthSheet sheet, PieceNames names, Units units) {
    return new SheetSteps(
        SheetsPdf.name(sheet),
        sheet,
        sheet.sheet().pieces().stream().map(placed -> names.sentence(sheet, placed)).toList(),
        new CutSteps(sheet.sheet(), units).sentences());
  }
}
