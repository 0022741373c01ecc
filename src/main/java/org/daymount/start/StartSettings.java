package org.daymount.start;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.file.SmallFile;
import org.daymount.file.WholeFile;

/**
 * What the start page remembers on this computer, in start.json: what the album is, and the months
 * opened, the newest first. A file that cannot be read is set aside as start-unreadable-1.json.
 */
public final class StartSettings {
  private static final String FILE = "start.json";
  private static final int MOST_MONTHS = 60;
  private static final int MOST_BYTES = 4_000_000; // of months with long names

  /** What is true of one month's pictures alone. */
  private static final List<String> OF_ONE_MONTH = List.of("days", "clock", "zone");

  private final ObjectMapper json = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
  private final Path folder;

  public StartSettings(Path folder) {
    this.folder = folder;
  }

  /** Made if need be, for this person alone where the system knows such rights. */
  public Path folder() throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
      if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
      }
    }
    return folder;
  }

  /** By option, without its dashes. */
  public Map<String, String> album() {
    return texts(read().path("album"));
  }

  /**
   * Those that can be; an entry that says no folder, or a way that this system cannot spell, no.
   */
  public List<MonthChoice> months() {
    List<MonthChoice> months = new ArrayList<>();
    for (JsonNode node : read().path("months")) {
      try {
        month(node).ifPresent(months::add);
      } catch (InvalidPathException e) {
        // passed over
      }
    }
    return months;
  }

  private static Optional<MonthChoice> month(JsonNode node) {
    String out = node.path("out").asText("");
    if (out.isEmpty()) {
      return Optional.empty();
    }
    List<Path> folders = new ArrayList<>();
    node.path("folders").forEach(each -> folders.add(Path.of(each.asText())));
    Map<MonthText, Path> files = new EnumMap<>(MonthText.class);
    for (MonthText text : MonthText.values()) {
      String file = node.path(fileOf(text)).asText("");
      if (!file.isEmpty()) {
        files.put(text, Path.of(file));
      }
    }
    return Optional.of(
        new MonthChoice(
            folders,
            node.path("month").asText(""),
            files,
            texts(node.path("album")),
            Path.of(out)));
  }

  /** The album file of the newest month that has one, for the next month of the same album. */
  public Optional<Path> albumFile() {
    return months().stream()
        .flatMap(month -> Optional.ofNullable(month.texts().get(MonthText.ALBUM)).stream())
        .filter(Files::isRegularFile)
        .findFirst();
  }

  /**
   * Written whole or not at all.
   *
   * @param asUsual whether later months begin with the same album
   */
  public synchronized void remember(MonthChoice opened, boolean asUsual) throws IOException {
    ObjectNode root = read();
    if (asUsual) {
      ObjectNode album = root.putObject("album");
      opened.album().forEach(album::put);
      album.remove(OF_ONE_MONTH);
    }
    List<MonthChoice> months = new ArrayList<>(months());
    months.removeIf(each -> each.out().equals(opened.out()));
    months.add(0, opened);
    ArrayNode list = root.putArray("months");
    for (MonthChoice month : months.subList(0, Math.min(MOST_MONTHS, months.size()))) {
      ObjectNode node = list.addObject();
      node.put("month", month.month());
      ArrayNode folders = node.putArray("folders");
      month.folders().forEach(each -> folders.add(each.toString()));
      month.texts().forEach((text, file) -> node.put(fileOf(text), file.toString()));
      node.put("out", month.out().toString());
      month.album().forEach(node.putObject("album")::put);
    }
    WholeFile.write(folder().resolve(FILE), json.writeValueAsBytes(root));
  }

  private ObjectNode read() {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return json.createObjectNode();
    }
    try {
      if (json.readTree(SmallFile.bytes(file, MOST_BYTES)) instanceof ObjectNode root) {
        return root;
      }
    } catch (IOException e) {
      // as for a file that holds something else
    }
    try {
      WholeFile.setAside(file, folder.resolve("start-unreadable.json"));
    } catch (IOException e) {
      // it stays, and is replaced by the next month that is opened
    }
    return json.createObjectNode();
  }

  /** "album" is what the album is. */
  private static String fileOf(MonthText text) {
    return text == MonthText.NOTE ? "note" : text.option() + "File";
  }

  private static Map<String, String> texts(JsonNode node) {
    Map<String, String> texts = new LinkedHashMap<>();
    node.properties().forEach(each -> texts.put(each.getKey(), each.getValue().asText()));
    return texts;
  }
}
