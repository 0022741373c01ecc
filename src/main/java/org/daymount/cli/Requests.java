package org.daymount.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.temporal.WeekFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.album.AlbumFile;
import org.daymount.album.CommonPractice;
import org.daymount.crop.CropSettings;
import org.daymount.day.DayNumbers;
import org.daymount.day.DaySettings;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.IngestSettings;
import org.daymount.month.Settings;
import org.daymount.page.PageSettings;
import org.daymount.pipeline.OutputLocation;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.UserFiles;
import org.daymount.unit.PaperSize;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Options and surroundings to a {@link Request}. */
final class Requests {
  private Requests() {}

  static Request of(
      CommandSpec spec,
      CommandContext context,
      PhotoOptions photos,
      PageOptions pages,
      Optional<Path> out) {
    try {
      List<Path> folders = photos(spec, context, photos);
      out.ifPresent(given -> checkApart(context, folders, given));
      Optional<Path> note = TextFiles.note(spec, context, pages, folders);
      note.map(context.here()::resolve).ifPresent(UserFiles::note); // now, not minutes later
      AlbumFile album = TextFiles.album(spec, context, pages.album, note);
      return new Request(
          folders,
          out.map(List::of).orElseGet(() -> earlierOutput(context)),
          days(photos),
          note,
          new OutputLocation(context.here(), out),
          AlbumDefaults.of(pages.space, pages.reveal).with(album),
          new CropSettings(
              pages.print.ppi, pages.minPpi, CropSettings.SAFE_EDGE.max(pages.labTrim)),
          ingest(spec, context, photos, folders),
          settings(pages, photos.dayStarts.at()),
          cards(pages),
          pages.cardStyle(),
          pageSettings(context, pages, album),
          context.locale(),
          jobs(spec, photos));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }

  /** A card is cut from one sheet. */
  private static Optional<PaperSize> cards(PageOptions pages) {
    Optional<PaperSize> size =
        Optional.ofNullable(pages.cards).flatMap(Converters.CardChoice::size);
    PaperSize sheet = settings(pages).sheets().usable();
    size.filter(card -> !card.fitsEitherWayInto(sheet))
        .ifPresent(
            card -> {
              throw new IllegalArgumentException(
                  "a story card of %s in cannot be cut from a sheet of %s in; take smaller cards, or larger sheets with --sheet"
                      .formatted(card, pages.print.sheet));
            });
    return size;
  }

  /**
   * The folders and files named, as they were typed, so that month.json reads the same anywhere.
   */
  static List<Path> photos(CommandSpec spec, CommandContext context, PhotoOptions options) {
    for (Path path : options.photos) {
      if (!Files.exists(context.here().resolve(path))) {
        throw new ParameterException(
            spec.commandLine(), "there is no file or folder " + path + "; look at its spelling");
      }
    }
    return List.copyOf(options.photos);
  }

  /** What is written must not come to lie among the photos. */
  private static void checkApart(CommandContext context, List<Path> folders, Path out) {
    for (Path folder : folders) {
      try {
        Path there = context.here().resolve(out);
        if (Files.exists(there) && Files.isSameFile(context.here().resolve(folder), there)) {
          throw new IllegalArgumentException(
              "--out "
                  + out
                  + " is the folder of the photos, and nothing is written among photos; name"
                  + " another, such as --out "
                  + out.resolve("album"));
        }
      } catch (IOException e) {
        // what cannot be reached is said when it is read or written
      }
    }
  }

  static DaySettings days(PhotoOptions options) {
    return new DaySettings(
        options.dayStarts,
        Optional.ofNullable(options.month),
        options.days == null ? DayNumbers.ALL : options.days);
  }

  static IngestSettings ingest(
      CommandSpec spec, CommandContext context, PhotoOptions options, List<Path> folders) {
    return new IngestSettings(
        ClockCorrections.parse(new ArrayList<>(options.clocks)),
        context.today(),
        options.zone == null ? context.zone() : options.zone,
        TextFiles.dates(spec, context, options, folders),
        options.verboseRecord);
  }

  static int jobs(CommandSpec spec, PhotoOptions options) {
    if (options.jobs == null) {
      return Runtime.getRuntime().availableProcessors();
    }
    if (options.jobs < 1 || options.jobs > 256) {
      throw new ParameterException(
          spec.commandLine(), "--jobs takes a number from 1 to 256, was " + options.jobs);
    }
    return options.jobs;
  }

  /** Folders that a run without --out may have left here. */
  private static List<Path> earlierOutput(CommandContext context) {
    try (DirectoryStream<Path> folders =
        Files.newDirectoryStream(context.here().toAbsolutePath(), "daymount-[0-9]*-[0-9]*")) {
      List<Path> found = new ArrayList<>();
      folders.forEach(found::add);
      return found;
    } catch (IOException e) {
      return List.of(); // nothing can be written here either; that is said later
    }
  }

  /** Where days do not matter. */
  static Settings settings(PageOptions pages) {
    return settings(pages, LocalTime.MIDNIGHT);
  }

  private static Settings settings(PageOptions pages, LocalTime dayStarts) {
    return new Settings(
        dayStarts,
        pages.space,
        pages.reveal,
        pages.print.ppi,
        pages.minPpi,
        pages.print.sheet,
        pages.labTrim,
        pages.print.paper,
        pages.print.margin(),
        pages.lighter);
  }

  static PageSettings pageSettings(CommandContext context, PageOptions pages, AlbumFile album) {
    return new PageSettings(
        pages.page != null ? pages.page : album.page().orElse(CommonPractice.PAGE),
        pages.start,
        WeekFields.of(context.locale()).getFirstDayOfWeek(),
        album,
        pages.print.units(context.locale()));
  }
}
