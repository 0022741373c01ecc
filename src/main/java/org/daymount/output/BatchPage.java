package org.daymount.output;

import java.io.IOException;
import java.util.List;
import org.daymount.output.PdfText.Weight;

/** Cutting in batches on a page of the guide. */
final class BatchPage {
  private BatchPage() {}

  static void write(PdfFlow flow, BatchSteps batches) throws IOException {
    if (batches.lines().isEmpty()) {
      return;
    }
    flow.startPage();
    flow.section("Cut in batches");
    if (!batches.noCut().isEmpty()) {
      flow.marked("□", batches.noCut());
    }
    part(flow, "First cuts: set the trimmer once, cut all the sheets named", batches.wholeSheets());
    part(flow, "Then the parts, known by the pieces on them", batches.parts());
  }

  private static void part(PdfFlow flow, String heading, List<String> lines) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    flow.skip(4);
    flow.keepTogether(3 * PdfFlow.LINE);
    flow.paragraph(heading, Weight.BOLD);
    for (String line : lines) {
      flow.marked("□", line);
    }
  }
}
