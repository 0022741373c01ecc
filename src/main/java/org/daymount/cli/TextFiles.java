package org.daymount.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.album.AlbumFile;
import org.daymount.album.AlbumFileParser;
import org.daymount.ingest.DateTable;
import org.daymount.pipeline.UserFiles;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What the person wrote: texts that were named, or that lie where they are looked for. */
final class TextFiles {
  private static final String NOTE = "note.txt";
  private static final String ALBUM = "album.txt";
  private static final String DATES = "dates.csv";

  private TextFiles() {}

  static DateTable dates(
      CommandSpec spec, CommandContext context, PhotoOptions options, List<Path> folders) {
    Optional<Path> table =
        options.dates == null
            ? beside(context, folders.get(0).resolve(DATES))
            : Optional.of(options.dates);
    if (options.dates != null && !isThere(context, options.dates)) {
      throw new ParameterException(
          spec.commandLine(),
          "there is no table of dates " + options.dates + "; look at its spelling");
    }
    try {
      return table
          .map(path -> DateTable.read(context.here().resolve(path), path.getFileName().toString()))
          .orElse(DateTable.EMPTY);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }

  /**
   * What was written about the album.
   *
   * @param named by the person; null: the one beside the note, if there is one
   */
  static AlbumFile album(
      CommandSpec spec, CommandContext context, Path named, Optional<Path> note) {
    if (named != null && !isThere(context, named)) {
      throw new ParameterException(
          spec.commandLine(), "there is no album file " + named + "; look at its spelling");
    }
    Optional<Path> file =
        named != null
            ? Optional.of(named)
            : note.flatMap(written -> beside(context, written.resolveSibling(ALBUM)));
    return file.map(path -> AlbumFileParser.parse(UserFiles.album(context.here().resolve(path))))
        .orElse(AlbumFile.NONE);
  }

  static Optional<Path> note(
      CommandSpec spec, CommandContext context, PageOptions pages, List<Path> folders) {
    if (pages.note != null) {
      if (!isThere(context, pages.note)) {
        throw new ParameterException(
            spec.commandLine(),
            "there is no note "
                + pages.note
                + "; 'daymount note --month 2026-06' writes one to"
                + " fill in");
      }
      return Optional.of(pages.note);
    }
    return beside(context, folders.get(0).resolve(NOTE));
  }

  /** Whatever it is: who reads it says what is wrong with it. */
  static boolean isThere(CommandContext context, Path path) {
    return Files.exists(context.here().resolve(path), LinkOption.NOFOLLOW_LINKS);
  }

  /** A text that is taken without being named; a folder of its name is none, which is said. */
  private static Optional<Path> beside(CommandContext context, Path path) {
    if (Files.isDirectory(context.here().resolve(path))) {
      context
          .err()
          .println(
              "note: "
                  + TerminalEscaper.of(path.toString())
                  + " is a folder and not used; give it another name if it is none of yours");
      return Optional.empty();
    }
    return Optional.of(path).filter(there -> isThere(context, there));
  }
}
