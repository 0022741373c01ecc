package org.daymount.pipeline;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.daymount.album.AlbumPlan;
import org.daymount.album.AlbumPlanner;
import org.daymount.album.AlbumRemark;
import org.daymount.album.Choices;
import org.daymount.album.ChoicesMerge;
import org.daymount.album.DayPage;
import org.daymount.album.MonthNote;
import org.daymount.album.NoteParser;
import org.daymount.album.NoteRemark;
import org.daymount.look.Looked;
import org.daymount.month.Warning;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.PersonsChoice;

/** What the month's pages are to hold: the defaults, the person's note and the person's choices. */
final class AlbumPages {
  private final List<DayPage> pages;
  private final Choices choices;
  private final List<Warning> warnings;

  private AlbumPages(List<DayPage> pages, Choices choices, List<Warning> warnings) {
    this.pages = List.copyOf(pages);
    this.choices = choices;
    this.warnings = List.copyOf(warnings);
  }

  /**
   * @param photos that are there now; choices are met with them by content
   */
  static AlbumPages read(Request request, YearMonth month, List<Photo> photos) {
    ChoicesMerge merged = ChoicesMerge.of(PersonsFiles.choices(request), photos);
    Choices choices = merged.choices();
    Optional<MonthNote> note =
        request.note().map(file -> NoteParser.parse(text(file), request.locale()));
    Predicate<LocalDate> wanted = day -> request.daySettings().days().contains(day.getDayOfMonth());
    AlbumPlan plan = AlbumPlanner.plan(month, wanted, note, request.defaults(), choices);
    List<Warning> warnings = new ArrayList<>();
    for (NoteRemark remark : note.map(MonthNote::remarks).orElse(List.of())) {
      warnings.add(
          new Warning("note", Optional.empty(), Optional.empty(), "in the month note, " + remark));
    }
    addAll(warnings, plan.remarks());
    addAll(warnings, merged.remarks());
    return new AlbumPages(plan.pages(), choices, warnings);
  }

  private static void addAll(List<Warning> warnings, List<AlbumRemark> remarks) {
    for (AlbumRemark remark : remarks) {
      warnings.add(new Warning(remark.code(), Optional.empty(), remark.day(), remark.text()));
    }
  }

  List<DayPage> pages() {
    return pages;
  }

  List<Warning> warnings() {
    return warnings;
  }

  PersonsChoice choices(Map<PhotoFile, Looked> looked) {
    return new ChosenByPerson(choices, looked.values());
  }

  /** UTF-8; a note from an old editor that is not is taken for Windows-1252, which never fails. */
  private static String text(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      try {
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      } catch (CharacterCodingException e) {
        return new String(bytes, Charset.forName("windows-1252"));
      }
    } catch (IOException e) {
      throw new RunFailed("the note " + file + " cannot be read; check that it may be opened");
    }
  }
}
