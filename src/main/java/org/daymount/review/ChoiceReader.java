package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.start.FolderBrowser;
import org.daymount.start.MonthChoice;
import org.daymount.start.MonthText;
import org.daymount.start.StartSettings;
import org.daymount.start.UserFolders;

/** Reads what a person chose on the start page; folders come by the numbers that were listed. */
final class ChoiceReader {
  private final UserFolders user;
  private final FolderBrowser folders;
  private final MonthOpener opener;
  private final StartSettings kept;

  ChoiceReader(UserFolders user, FolderBrowser folders, MonthOpener opener, StartSettings kept) {
    this.user = user;
    this.folders = folders;
    this.opener = opener;
    this.kept = kept;
  }

  /** What was chosen, with the texts that are there; nothing is written. */
  MonthChoice wish(JsonNode body) throws HttpException {
    List<Path> photos = folders(body);
    String month = body.path("month").asText("");
    try {
      YearMonth.parse(month);
    } catch (DateTimeException e) {
      throw new HttpException(HttpException.BAD_REQUEST, "choose a month first");
    }
    Path out = out(body.path("out").asText("").strip(), month);
    Map<MonthText, Path> texts = new EnumMap<>(MonthText.class);
    for (MonthText text : MonthText.values()) {
      text.find(photos, out).ifPresent(file -> texts.put(text, file));
    }
    if (body.path("lastAlbum").asBoolean()) {
      kept.albumFile().ifPresent(file -> texts.putIfAbsent(MonthText.ALBUM, file));
    }
    return new MonthChoice(photos, month, texts, album(body), out);
  }

  /** The same with what was typed, which is kept once everything else is found to be right. */
  MonthChoice choice(JsonNode body) throws HttpException, IOException {
    MonthChoice wish = wish(body);
    Map<MonthText, Path> texts = new EnumMap<>(MonthText.class);
    texts.putAll(wish.texts());
    Map<MonthText, String> typed = new EnumMap<>(MonthText.class);
    for (MonthText text : MonthText.values()) {
      String words = body.path("texts").path(text.option()).asText("");
      if (!words.isBlank()) {
        typed.put(text, words);
        texts.remove(text);
      }
    }
    Optional<String> wrong = opener.wrong(wish.with(texts));
    if (wrong.isPresent()) {
      throw new HttpException(HttpException.BAD_REQUEST, wrong.get());
    }
    for (Map.Entry<MonthText, String> each : typed.entrySet()) {
      texts.put(each.getKey(), each.getKey().write(wish.out(), each.getValue()));
    }
    return wish.with(texts);
  }

  List<Path> folders(JsonNode body) throws HttpException {
    List<Path> paths = new ArrayList<>();
    for (JsonNode id : body.path("folders")) {
      paths.add(path(id.asText()));
    }
    if (paths.isEmpty()) {
      throw new HttpException(HttpException.BAD_REQUEST, "choose a folder with pictures first");
    }
    return paths;
  }

  Path path(String id) throws HttpException {
    return folders
        .path(id)
        .orElseThrow(() -> new HttpException(HttpException.NOT_FOUND, "there is no such folder"));
  }

  private Path out(String typed, String month) throws HttpException {
    if (typed.isEmpty()) {
      return user.months().resolve(month);
    }
    try {
      return user.home().resolve(typed).normalize();
    } catch (InvalidPathException e) {
      throw new HttpException(
          HttpException.BAD_REQUEST, "'" + typed + "' cannot be the name of a folder here");
    }
  }

  private static Map<String, String> album(JsonNode body) {
    Map<String, String> album = new LinkedHashMap<>();
    body.path("album")
        .properties()
        .forEach(
            each -> {
              if (!each.getValue().asText().isBlank()) {
                album.put(each.getKey(), each.getValue().asText().strip());
              }
            });
    return album;
  }
}
