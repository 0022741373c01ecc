package org.daymount.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * The kinds there are of a page: straight divisions into rows of equal pockets of the sizes that
 * are sold (common practice, no source), and the whole page that things are glued on. On 6 x 8 in
 * these are two 4x6 lying, one 4x6 and two 3x4, four 3x4 standing, and one plain 6x8.
 */
public final class PageKinds {
  private static final List<PaperSize> SOLD =
      List.of(
          PaperSize.inches(3, 4),
          PaperSize.inches(4, 4),
          PaperSize.inches(4, 6),
          PaperSize.inches(5, 7),
          PaperSize.inches(6, 6),
          PaperSize.inches(6, 8));

  private static final List<PaperSize> SOLD_IN_CENTIMETRES =
      List.of(
          PaperSize.millimetres(75, 100),
          PaperSize.millimetres(100, 150),
          PaperSize.millimetres(130, 180));

  /** What the pockets may lack of the page's width or height, for its seams. */
  private static final Length SLACK = Length.inchFraction(1, 4);

  private static final List<String> COUNTS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  /** A row of equal pockets across the page. */
  private record Row(PaperSize pocket, int count) {}

  private PageKinds() {}

  /** All kinds of a page; those with larger pockets first, {@code full} last. */
  public static List<PageKind> of(PaperSize page) {
    Map<String, PageKind> kinds = divisions(page, SOLD);
    if (kinds.isEmpty()) {
      kinds = divisions(page, SOLD_IN_CENTIMETRES);
    }
    PageKind plain = kind(page, List.of(new Row(page, 1)));
    kinds.putIfAbsent(plain.name(), plain);
    List<PageKind> sorted = new ArrayList<>(kinds.values());
    sorted.sort(Comparator.comparingInt((PageKind kind) -> kind.pockets().size()));
    sorted.add(PageKind.full(page));
    return sorted;
  }

  /**
   * The kind a person names: {@code two 4x6}, {@code 4x6 and two 3x4}, {@code 6x8}, {@code full}.
   *
   * @param sizes of the pockets, in any order and either way up
   */
  public static Optional<PageKind> withPockets(PaperSize page, List<PaperSize> sizes) {
    String wanted = name(sizes);
    return of(page).stream().filter(kind -> kind.name().equals(wanted)).findFirst();
  }

  private static Map<String, PageKind> divisions(PaperSize page, List<PaperSize> sold) {
    List<Row> rows = rows(page, sold);
    Map<String, PageKind> kinds = new LinkedHashMap<>();
    for (Row first : rows) {
      for (Row second : rows) {
        divisions(page, first, second).forEach(kind -> kinds.putIfAbsent(kind.name(), kind));
      }
    }
    return kinds;
  }

  private static List<Row> rows(PaperSize page, List<PaperSize> sizes) {
    List<Row> rows = new ArrayList<>();
    for (PaperSize sold : sizes) {
      for (PaperSize pocket :
          List.of(sold.towards(Orientation.LANDSCAPE), sold.towards(Orientation.PORTRAIT))) {
        int count = (int) (page.width().nanometres() / pocket.width().nanometres());
        if (count > 0
            && isWithinSlack(pocket.width().times(count), page.width())
            && !pocket.height().isLongerThan(page.height())
            && !rows.contains(new Row(pocket, count))) {
          rows.add(new Row(pocket, count));
        }
      }
    }
    rows.sort(Comparator.comparingInt(Row::count));
    return rows;
  }

  private static boolean isWithinSlack(Length pockets, Length page) {
    return !pockets.isLongerThan(page) && !page.minus(pockets).isLongerThan(SLACK);
  }

  /** All pages of some rows of the first sort above some of the second. */
  private static List<PageKind> divisions(PaperSize page, Row first, Row second) {
    List<PageKind> kinds = new ArrayList<>();
    for (int above = 1;
        above <= page.height().nanometres() / first.pocket().height().nanometres();
        above++) {
      Length left = page.height().minus(first.pocket().height().times(above));
      int below =
          first.equals(second)
              ? 0
              : (int) (left.nanometres() / second.pocket().height().nanometres());
      Length used =
          first.pocket().height().times(above).plus(second.pocket().height().times(below));
      if (isWithinSlack(used, page.height())) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < above; i++) {
          rows.add(first);
        }
        for (int i = 0; i < below; i++) {
          rows.add(second);
        }
        kinds.add(kind(page, rows));
      }
    }
    return kinds;
  }

  private static PageKind kind(PaperSize page, List<Row> rows) {
    Length tall = Length.ZERO;
    for (Row row : rows) {
      tall = tall.plus(row.pocket().height());
    }
    List<PaperBox> pockets = new ArrayList<>();
    Length y = page.height().minus(tall).half();
    for (Row row : rows) {
      Length x = page.width().minus(row.pocket().width().times(row.count())).half();
      for (int i = 0; i < row.count(); i++) {
        pockets.add(PaperBox.at(x, y, row.pocket()));
        x = x.plus(row.pocket().width());
      }
      y = y.plus(row.pocket().height());
    }
    return new PageKind(name(pockets.stream().map(PaperBox::size).toList()), page, pockets);
  }

  private static String name(List<PaperSize> sizes) {
    Map<PaperSize, Long> counts =
        sizes.stream()
            .map(size -> size.towards(Orientation.PORTRAIT))
            .collect(
                Collectors.groupingBy(size -> size, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .sorted(
            Comparator.comparingDouble(
                (Map.Entry<PaperSize, Long> entry) -> -entry.getKey().squareInches()))
        .map(entry -> count(entry.getValue().intValue()) + " " + SizeText.text(entry.getKey()))
        .collect(Collectors.joining(" and "));
  }

  private static String count(int count) {
    return count < COUNTS.size() ? COUNTS.get(count) : Integer.toString(count);
  }
}
