package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
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

  ObjectNode start() {
    ObjectNode root = node();
    root.put("sample", SampleMonth.isThere());
    ArrayNode places = root.putArray("places");
    folders.places().forEach(place -> places.add(node(place)));
    kept.album().forEach(root.putObject("album")::put);
    root.put("units", opener.units().word());
    ArrayNode settings = root.putArray("settings");
    for (MonthOpener.Setting setting : opener.settings()) {
      ObjectNode one = settings.addObject();
      one.put("name", setting.name());
      one.put("kind", setting.kind().name().toLowerCase(Locale.ROOT));
      one.put("hint", setting.hint());
      one.put("words", setting.words());
      setting.among().forEach(one.putArray("among")::add);
    }
    ArrayNode earlier = root.putArray("earlier");
    for (MonthChoice month : kept.months()) {
      ObjectNode one = earlier.addObject();
      one.put("month", month.month());
      one.put("invented", SampleMonth.is(month, user.months()));
      one.put("out", month.out().toString());
      one.put("there", month.folders().stream().allMatch(Files::isDirectory));
      one.put("picture", Files.isRegularFile(firstSheet(month)));
    }
    return root;
  }

  /** Which texts the month would be made with if none were typed: the file, and whose it is. */
  ObjectNode texts(MonthChoice wish) {
    ObjectNode root = node();
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

  static ObjectNode node(FolderBrowser.Folder folder) {
    ObjectNode node = node();
    node.put("id", folder.id());
    node.put("name", folder.name());
    node.put("place", folder.place().toString());
    node.put("link", folder.link());
    node.put("pictures", folder.pictures());
    node.put("clips", folder.clips());
    node.put("more", folder.more());
    node.put("closed", folder.closed());
    return node;
  }

  private static ObjectNode node() {
    return JsonNodeFactory.instance.objectNode();
  }
}
