package org.daymount.review;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.daymount.start.MonthChoice;
import org.daymount.unit.Units;

/** What the start page can have done; whoever starts the server does it. */
public interface MonthOpener {
  /**
   * When pictures were taken.
   *
   * @param undated how many do not say
   */
  record Dates(SortedMap<LocalDate, Integer> days, int undated) {
    public Dates {
      days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
    }
  }

  /**
   * An option of {@code daymount sheets} that can be set on the page.
   *
   * @param name without its dashes
   * @param hint how its value looks
   * @param words what it is, as the help of the command says
   * @param among the values it may have; empty when it is typed
   */
  record Setting(String name, Kind kind, String hint, String words, List<String> among) {
    public Setting {
      among = List.copyOf(among);
    }

    /** Whether it takes one value, several, or none. */
    public enum Kind {
      ONE,
      SEVERAL,
      SWITCH
    }
  }

  /** All that can be set but pictures, month, texts and place, which are asked otherwise. */
  List<Setting> settings();

  /** That the person reads first unless another is chosen. */
  Units units();

  /** Reads dates only; no picture is decoded. */
  Dates dates(List<Path> folders);

  /**
   * What this program cannot do on this computer, because it was made for another system: a
   * sentence each, with what to do. Takes a moment when asked for the first time.
   */
  List<String> missing();

  /** What is wrong with the choice, in words for the person; empty when a month can be opened. */
  Optional<String> wrong(MonthChoice choice);

  /**
   * Looks at the pictures and shows the month; takes a while.
   *
   * @throws org.daymount.pipeline.RunFailed with the reason, which the server was told too
   */
  void open(MonthChoice choice, ReviewServer server);

  /**
   * Opens a file or folder as a double-click would.
   *
   * @return whether this computer has a way to
   */
  boolean show(Path file);
}
