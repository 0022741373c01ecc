package org.daymount.review;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.pipeline.NoteInUse;
import org.daymount.start.FolderBrowser;
import org.daymount.start.MonthChoice;
import org.daymount.start.MonthText;
import org.daymount.start.SampleMonth;
import org.daymount.start.StartSettings;
import org.daymount.start.UserFolders;

/** What the start page is told, as data. Names of files and folders; never what is in a file. */
final class StartView {
  private static final String FIRST_SHEET = "sheets/sheet-01.jpg";

  private final UserFolders user;
  private final FolderBrowser folders;
  private final MonthOpener opener;
  private final StartSettings kept;

  StartView(UserFolders user, FolderBrowser folders, MonthOpener opener, StartSettings kept) {
    this.user = user;
    this.folders = folders;
    this.opener = opener;
    this.kept = kept;
  }

  /**
   * What the page begins with.
   *
   * @param sample whether there is a month to try
   * @param album what was chosen of the album before, by the option
   * @param months where months are made
   * @param open whether a month is
   * @param opening whether one is being opened
   */
  record Start(
      boolean sample,
      List<FolderBrowser.Folder> places,
      Map<String, String> album,
      String units,
      List<MonthOpener.Setting> settings,
      List<Earlier> earlier,
      Path months,
      boolean open,
      boolean opening) {}

  /**
   * A month that was opened before.
   *
   * @param there whether its pictures still are
   * @param picture whether its first sheet is there to be shown
   */
  record Earlier(String month, boolean invented, Path out, boolean there, boolean picture) {}

  Start start(boolean open, boolean opening) {
    return new Start(
        SampleMonth.isThere(),
        folders.places(),
        kept.album(),
        opener.units().word(),
        opener.settings(),
        kept.months().stream().map(this::earlier).toList(),
        user.months(),
        open,
        opening);
  }

  private Earlier earlier(MonthChoice month) {
    return new Earlier(
        month.month(),
        SampleMonth.is(month, user.months()),
        month.out(),
        month.folders().stream().allMatch(Files::isDirectory),
        Files.isRegularFile(firstSheet(month)));
  }

  /** Which texts the month would be made with if none were typed: the file, and whose it is. */
  ObjectNode texts(MonthChoice wish) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("out", wish.out().toString());
    for (MonthText text : MonthText.values()) {
      ObjectNode one = root.putObject(text.option());
      text.find(wish.folders(), wish.out())
          .ifPresent(
              file -> {
                one.put("file", file.toString());
                one.put("kept", file.startsWith(wish.out()));
              });
    }
    Optional<Path> note = MonthText.NOTE.find(wish.folders(), wish.out());
    if (NoteInUse.of(note, wish.out()).filter(NoteInUse::mended).isPresent()) {
      ObjectNode mended = root.putObject(MonthText.NOTE.option());
      mended.put("file", wish.out().resolve(NoteInUse.MENDED).toString());
      mended.put("mended", true);
    }
    kept.albumFile().ifPresent(file -> root.put("lastAlbum", file.toString()));
    return root;
  }

  static Path firstSheet(MonthChoice month) {
    return month.out().resolve(FIRST_SHEET);
  }
}
