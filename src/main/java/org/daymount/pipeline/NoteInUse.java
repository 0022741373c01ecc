package org.daymount.pipeline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.daymount.file.WholeFile;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteParser;

/**
 * The month note that a run goes by: the person's own file, or what was made of it in the review.
 * The mended note is kept beside the output, and beside it the note as it was typed. When the
 * person's own file is edited after that, the file holds.
 *
 * @param mended whether it is the review's
 * @param remark what the person should know of the choice between the two
 */
public record NoteInUse(String text, boolean mended, Optional<String> remark) {
  public static final String MENDED = "note-mended.txt";
  public static final String AS_TYPED = "note-as-typed.txt";
  private static final String NOT_USED = "note-not-used.txt";

  /** Empty when there is no note at all. */
  public static Optional<NoteInUse> of(Request request, YearMonth month) {
    return of(request.note(), request.out().folder(month));
  }

  /**
   * The same before there is a request.
   *
   * @param file the person's own
   * @param folder where the month is made
   */
  public static Optional<NoteInUse> of(Optional<Path> file, Path folder) {
    Optional<String> own = file.map(UserFiles::note);
    Path mended = folder.resolve(MENDED);
    if (!Files.exists(mended)) {
      return own.map(text -> new NoteInUse(text, false, Optional.empty()));
    }
    Path typed = folder.resolve(AS_TYPED);
    String asTyped = Files.exists(typed) ? UserFiles.note(typed) : "";
    String text = UserFiles.note(mended);
    if (asTyped.equals(own.orElse(""))) {
      return Optional.of(new NoteInUse(text, true, Optional.empty()));
    }
    Optional<String> remark =
        own.filter(text::equals).isPresent()
            ? Optional.empty()
            : Optional.of(
                "the note was edited after it was mended in the review, so the note's own file"
                    + " holds; what was mended is kept in "
                    + MENDED);
    return own.map(written -> new NoteInUse(written, false, remark));
  }

  /**
   * A note as it was read.
   *
   * @param mended whether it is the review's
   */
  public record Reading(MonthNote note, boolean mended) {}

  Reading read(Request request, YearMonth month) {
    return new Reading(read(text, request, month), mended);
  }

  /** A note's text as a run reads it. */
  public static MonthNote read(String text, Request request, YearMonth month) {
    return NoteParser.parse(
        text, request.pages().album().names(), Optional.of(month), request.locale());
  }

  /** Keeps a mended note beside the output; the person's own file stays as it is. */
  public static void keep(Request request, YearMonth month, String text) throws IOException {
    Path folder = request.out().folder(month);
    Files.createDirectories(folder);
    String own = request.note().map(UserFiles::note).orElse("");
    Path mended = folder.resolve(MENDED);
    Path typed = folder.resolve(AS_TYPED);
    boolean sameNote = Files.exists(typed) && UserFiles.note(typed).equals(own);
    if (!sameNote && Files.exists(mended)) {
      WholeFile.setAside(mended, mended); // made of another note, and not in use
    }
    write(mended, text); // first: until the other is there too, the person's own file holds
    if (!sameNote) {
      if (Files.exists(typed)) {
        WholeFile.setAside(typed, typed);
      }
      write(typed, own);
    }
  }

  /**
   * Keeps a text beside the output that is used for nothing: one of two that cannot both be.
   *
   * @return where it is
   */
  public static Path aside(Request request, YearMonth month, String text) throws IOException {
    Path folder = request.out().folder(month);
    Files.createDirectories(folder);
    Path kept = folder.resolve(NOT_USED);
    write(kept, text);
    return WholeFile.setAside(kept, kept);
  }

  /** What a review that died left unfinished of these files; the next may never write them. */
  public static void clearParts(Request request, YearMonth month) throws IOException {
    Path folder = request.out().folder(month);
    for (String name : List.of(MENDED, AS_TYPED, NOT_USED)) {
      WholeFile.clearParts(folder.resolve(name));
    }
    if (request.note().isPresent()) {
      WholeFile.clearParts(target(request.note().get()));
    }
  }

  /** Goes by the person's own file again; what was mended is kept under another name. */
  public static void takeBack(Request request, YearMonth month) throws IOException {
    Path mended = request.out().folder(month).resolve(MENDED);
    if (Files.exists(mended)) {
      WholeFile.setAside(mended, mended);
    }
  }

  /**
   * Writes what was mended over the person's own file, because they asked for it. The note as it
   * was typed stays beside the output.
   */
  public static void writeOver(Request request, YearMonth month, String text) throws IOException {
    Path own =
        request
            .note()
            .orElseThrow(() -> new RunFailed("there is no note of your own to write over"));
    keep(request, month, text);
    write(target(own), text);
  }

  private static Path target(Path own) throws IOException {
    return Files.isSymbolicLink(own) ? own.toRealPath() : own;
  }

  private static void write(Path file, String text) throws IOException {
    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
  }
}
