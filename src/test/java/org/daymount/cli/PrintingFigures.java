package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.pipeline.MonthMaker;
import org.daymount.pipeline.Progress;
import org.daymount.sheet.CuttingBatches;
import org.daymount.sheet.Sheet;
import org.daymount.sheet.TrimmerSettings;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import picocli.CommandLine;

/**
 * How many pages, cuts and settings of the trimmer three months take: the sample, and two whose
 * pictures are painted here. The figures of docs/evaluation.md; the command stands there.
 */
public final class PrintingFigures {
  private static final int MOST_PICTURES = 4;
  private static final List<String> MIXED =
      List.of("two 4x6", "4x6, two 3x4", "four 2 3/4 x 3 3/4", "3 1/2 x 5");

  /** Two 4x6 on a page are freed by the cuts at four edges, and two between them. */
  private static final int CUTS_OF_A_PAGE = 6;

  private static final int CUTS_OF_HALF_A_PAGE = 4;

  private PrintingFigures() {}

  /**
   * @param arguments the folder to paint in
   */
  public static void main(String[] arguments) throws IOException {
    Path work = Path.of(arguments[0]);
    Cache cache = Cache.empty("figures");
    figures("sample", Path.of("sample-photos"), cache);
    figures(
        "mats and pockets",
        painted(work.resolve("pockets"), day -> day <= 20 ? "two 3x4" : "4x6 on mat"),
        cache);
    figures("mixed", painted(work.resolve("mixed"), day -> MIXED.get(day % MIXED.size())), cache);
  }

  private static void figures(String name, Path photos, Cache cache) throws IOException {
    List<Sheet> prints = sheets(photos, "4x6", cache);
    int cuts = cuts(prints);
    int pages = (prints.size() + 1) / 2;
    int freeing = prints.size() / 2 * CUTS_OF_A_PAGE + prints.size() % 2 * CUTS_OF_HALF_A_PAGE;
    print(name + ", 4x6 from a lab", prints, prints.size(), cuts);
    print(name + ", 4x6 two to a letter page", prints, pages, cuts + freeing);
    for (String paper : List.of("letter", "a4")) {
      List<Sheet> sheets = sheets(photos, paper, cache);
      print(name + ", " + paper, sheets, sheets.size(), cuts(sheets));
    }
  }

  private static void print(String name, List<Sheet> sheets, int pages, int cuts) {
    System.out.printf(
        Locale.ROOT,
        "%-42s %3d pieces %3d pages %3d cuts; settings %3d sheet by sheet, %3d in batches%n",
        name,
        sheets.stream().mapToInt(sheet -> sheet.pieces().size()).sum(),
        pages,
        cuts,
        TrimmerSettings.sheetBySheet(sheets),
        TrimmerSettings.of(CuttingBatches.of(sheets)));
  }

  private static int cuts(List<Sheet> sheets) {
    return sheets.stream().mapToInt(sheet -> sheet.cuts().size()).sum();
  }

  /** The month as the command line would make it. */
  private static List<Sheet> sheets(Path photos, String sheet, Cache cache) {
    CommandContext around = CommandContext.ofThisComputer(System.out, System.err);
    CommandLine line = CommandLines.line(around);
    line.parseArgs("sheets", photos.toString(), "--sheet", sheet);
    SheetsCommand command =
        (SheetsCommand) line.getSubcommands().get("sheets").getCommandSpec().userObject();
    Month month =
        new MonthMaker(new Pictures(), Progress.SILENT, cache)
            .make(
                Requests.of(command.spec, around, command.photos, command.pages, Optional.empty()),
                note -> {});
    return month.sheets().stream().map(MonthSheet::sheet).toList();
  }

  /** Four pictures a day, an hour apart, and a note. */
  private static Path painted(Path folder, IntFunction<String> page) throws IOException {
    Files.createDirectories(folder);
    for (int day = 1; day <= 30; day++) {
      for (int i = 0; i < MOST_PICTURES; i++) {
        Path file = folder.resolve("%02d-%d.jpg".formatted(day, i));
        if (!Files.exists(file)) {
          boolean lying = (day + i) % 3 != 0;
          ExifPhoto.painted()
              .picture(Scenes.scene(day * 10 + i, lying ? 1600 : 1200, lying ? 1200 : 1600))
              .original("2026:06:%02d %02d:00:00".formatted(day, 9 + i))
              .write(file);
        }
      }
    }
    String note =
        IntStream.rangeClosed(1, 30)
            .mapToObj(day -> day + " " + page.apply(day))
            .collect(Collectors.joining("\n\n"));
    Files.writeString(folder.resolve("note.txt"), "June 2026\n\n" + note + "\n");
    return folder;
  }
}
