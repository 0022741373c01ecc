package org.daymount.sheet;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.daymount.sheet.CuttingBatches.Batch;
import org.daymount.sheet.CuttingBatches.Step;
import org.daymount.unit.Length;

/** How often the trimmer has to be set, in one order and in another. */
public final class TrimmerSettings {
  private TrimmerSettings() {}

  /** In the order of the batches. */
  public static int of(List<Batch> batches) {
    return changes(batches.stream().map(Batch::setting));
  }

  /** When sheet after sheet is cut up, measured from left and top. */
  public static int sheetBySheet(List<Sheet> sheets) {
    List<Step> steps =
        CuttingBatches.of(sheets).stream().flatMap(batch -> batch.steps().stream()).toList();
    return changes(
        IntStream.range(0, sheets.size())
            .boxed()
            .flatMap(
                sheet ->
                    sheets.get(sheet).cuts().stream()
                        .map(
                            cut ->
                                steps.stream()
                                    .filter(each -> each.sheet() == sheet && each.cut() == cut)
                                    .findFirst()
                                    .orElseThrow()))
            .map(TrimmerSettings::nearEdge));
  }

  private static Length nearEdge(Step step) {
    Cut cut = step.cut();
    return cut.at().minus(cut.axis() == Cut.Axis.X ? step.part().x() : step.part().y());
  }

  private static int changes(Stream<Length> settings) {
    Length last = Length.ZERO;
    int count = 0;
    for (Length setting : settings.toList()) {
      count += setting.equals(last) ? 0 : 1;
      last = setting;
    }
    return count;
  }
}
