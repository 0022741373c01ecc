package org.daymount.output;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.daymount.month.MonthSheet;
import org.daymount.sheet.CuttingBatches;
import org.daymount.sheet.CuttingBatches.Batch;
import org.daymount.sheet.CuttingBatches.Edge;
import org.daymount.sheet.CuttingBatches.Step;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.Units;

/**
 * Cutting in batches, in words: what needs no cut, then each setting of the trimmer with the sheets
 * it is for.
 *
 * @param noCut one sentence; empty when every sheet is cut
 * @param wholeSheets a line for each setting, in order
 * @param parts a line for each setting after that, in order
 */
record BatchSteps(String noCut, List<String> wholeSheets, List<String> parts) {
  BatchSteps {
    wholeSheets = List.copyOf(wholeSheets);
    parts = List.copyOf(parts);
  }

  static BatchSteps of(List<MonthSheet> monthSheets, Units units) {
    return of(monthSheets, "sheet", units);
  }

  /**
   * @param noun what one of them is called
   */
  static BatchSteps of(List<MonthSheet> monthSheets, String noun, Units units) {
    List<Sheet> sheets = monthSheets.stream().map(MonthSheet::sheet).toList();
    List<Batch> batches = CuttingBatches.of(sheets);
    return new BatchSteps(
        noCut(sheets, noun),
        batches.stream()
            .filter(Batch::whole)
            .map(batch -> line(batch, sheets, noun, units))
            .toList(),
        batches.stream()
            .filter(batch -> !batch.whole())
            .map(batch -> line(batch, sheets, noun, units))
            .toList());
  }

  /** Every sentence, a line each. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (!noCut.isEmpty()) {
      lines.add(noCut);
    }
    lines.addAll(wholeSheets);
    lines.addAll(parts);
    return lines;
  }

  private static String noCut(List<Sheet> sheets, String noun) {
    List<String> whole =
        IntStream.range(0, sheets.size())
            .filter(i -> sheets.get(i).cuts().isEmpty())
            .mapToObj(i -> Integer.toString(i + 1))
            .toList();
    return whole.isEmpty() ? "" : "No cut: " + sheetsNamed(whole, noun) + ".";
  }

  private static String line(Batch batch, List<Sheet> sheets, String noun, Units units) {
    Map<Edge, List<Step>> byEdge = new EnumMap<>(Edge.class);
    batch.steps().forEach(s -> byEdge.computeIfAbsent(s.from(), e -> new ArrayList<>()).add(s));
    Length setting = batch.setting();
    return units.of(setting)
        + byEdge.entrySet().stream()
            .map(
                entry ->
                    " from the "
                        + entry.getKey().name().toLowerCase(java.util.Locale.ROOT)
                        + ": "
                        + (batch.whole()
                            ? sheetsNamed(numbers(entry.getValue()), noun)
                            : partsNamed(entry.getValue(), sheets, noun)))
            .collect(Collectors.joining(";"))
        + ".";
  }

  private static List<String> numbers(List<Step> steps) {
    return steps.stream().map(step -> Integer.toString(step.sheet() + 1)).toList();
  }

  private static String sheetsNamed(List<String> numbers, String noun) {
    return noun + (numbers.size() == 1 ? " " : "s ") + String.join(", ", numbers);
  }

  /** {@code sheet 3 (07a), sheet 8 (10a+10b)}: a part is known by the pieces on it. */
  private static String partsNamed(List<Step> steps, List<Sheet> sheets, String noun) {
    Map<Integer, List<String>> bySheet = new LinkedHashMap<>();
    for (Step step : steps) {
      List<String> names =
          sheets.get(step.sheet()).pieces().stream()
              .filter(placed -> placed.box().overlaps(step.part()))
              .map(placed -> placed.piece().label())
              .toList();
      bySheet
          .computeIfAbsent(step.sheet() + 1, s -> new ArrayList<>())
          .add(PartNames.of(names, "+"));
    }
    return noun
        + (bySheet.size() == 1 ? " " : "s ")
        + bySheet.entrySet().stream()
            .map(e -> e.getKey() + " (" + String.join(", ", e.getValue()) + ")")
            .collect(Collectors.joining(", "));
  }
}
