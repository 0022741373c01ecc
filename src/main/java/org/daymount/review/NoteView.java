package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.daymount.file.Sha256;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteDay;
import org.daymount.note.NoteMender;
import org.daymount.note.NoteRemark;
import org.daymount.note.NoteTable;
import org.daymount.pipeline.NoteInUse;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.UserFiles;

/**
 * The month note as it was typed, and what was read in it. {@code GET note}; {@code POST note/read}
 * reads a text and keeps nothing, {@code note/keep} keeps it beside the output, {@code note/mend}
 * changes one line and keeps that, {@code note/stop} ends the album behind the last day, {@code
 * note/back} goes by the person's own file again, {@code note/own} writes over it, {@code
 * note/aside} keeps a text under a name of its own and uses it for nothing. What changes something
 * says which version of the person's own file it was typed over: when another program has written
 * that since, nothing is done.
 */
final class NoteView implements ViewApi {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private interface Reply {
    ObjectNode to(NoteView note, String text, JsonNode body) throws HttpException, IOException;
  }

  private static final Map<String, Reply> POSTED =
      Map.of(
          "read", (note, text, body) -> note.shown(text, true),
          "keep", (note, text, body) -> note.keep(text),
          "mend", (note, text, body) -> note.keep(note.mended(text, body)),
          "stop", (note, text, body) -> note.keep(note.mender.stopped(text)),
          "back", (note, text, body) -> note.takeBack(),
          "own", (note, text, body) -> note.writeOver(text),
          "aside", (note, text, body) -> note.aside(text));

  /** What changes nothing that the note's own file may have to say. */
  private static final Set<String> FREE = Set.of("read", "aside");

  private final Request request;
  private final YearMonth month;
  private final NoteMender mender;

  NoteView(Request request, YearMonth month) {
    this.request = request;
    this.month = month;
    this.mender = new NoteMender(text -> NoteInUse.read(text, request, month));
  }

  /** What is posted below {@code note/}. */
  static Set<String> posted() {
    return POSTED.keySet();
  }

  @Override
  public ObjectNode show(String rest, Editing.Now now) throws HttpException {
    if (!rest.isEmpty()) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such page");
    }
    return shown();
  }

  @Override
  public synchronized ObjectNode change(String rest, JsonNode body, Editing.Now now)
      throws HttpException, IOException {
    Reply reply = POSTED.get(rest);
    if (reply == null) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such page");
    }
    if (!FREE.contains(rest)) {
      checkSeen(body.path("seen").asText());
    }
    return reply.to(this, body.path("text").asText(), body);
  }

  private ObjectNode keep(String text) throws IOException {
    NoteInUse.keep(request, month, text);
    return shown();
  }

  private ObjectNode aside(String text) throws IOException {
    String kept = NoteInUse.aside(request, month, text).toString();
    return shown().put("aside", kept);
  }

  private ObjectNode takeBack() throws IOException {
    NoteInUse.takeBack(request, month);
    return shown();
  }

  /** Neither text may be lost: the one on the page is still there, and the file is as it is. */
  private void checkSeen(String seen) throws HttpException {
    if (!seen.equals(seen())) {
      throw new HttpException(
          HttpException.CONFLICT,
          request.note().map(file -> file.getFileName().toString()).orElse("The note")
              + " was edited in another program after this page read it. Nothing was changed; what"
              + " you typed is still here. Keep one of the two below.");
    }
  }

  /** A word for the person's own file as it is now. */
  private String seen() {
    return request
        .note()
        .map(UserFiles::note)
        .map(text -> Sha256.hex(text.getBytes(StandardCharsets.UTF_8)))
        .orElse("none");
  }

  private String mended(String text, JsonNode body) throws HttpException {
    int line = body.path("line").asInt();
    Optional<String> mended =
        switch (body.path("as").asText()) {
          case "story" -> mender.asStory(text, line);
          case "printed" -> mender.asPrinted(text, line);
          default -> mender.asDay(text, line, body.path("day").asInt());
        };
    return mended.orElseThrow(
        () ->
            new HttpException(
                HttpException.BAD_REQUEST,
                "line " + line + " cannot be mended with one click; change it on the left"));
  }

  private ObjectNode writeOver(String text) throws HttpException, IOException {
    try {
      NoteInUse.writeOver(request, month, text);
      return shown();
    } catch (RunFailed noNote) {
      throw new HttpException(HttpException.BAD_REQUEST, noNote.getMessage());
    }
  }

  private ObjectNode shown() {
    Optional<NoteInUse> note = NoteInUse.of(request, month);
    return shown(note.map(NoteInUse::text).orElse(""), note.filter(NoteInUse::mended).isPresent());
  }

  private ObjectNode shown(String text, boolean mended) {
    MonthNote note = NoteInUse.read(text, request, month);
    ObjectNode root = NODES.objectNode();
    root.put("text", text);
    root.put("mended", mended);
    root.put("seen", seen());
    root.put("file", request.note().map(file -> file.getFileName().toString()).orElse(null));
    root.put("kept", request.out().name(month).resolve(NoteInUse.MENDED).toString());
    root.put("stops", !note.ending().isEmpty());
    note.lastDay(month)
        .filter(last -> note.ending().isEmpty() && last.isBefore(month.atEndOfMonth()))
        .ifPresent(last -> root.put("lastDay", last.getDayOfMonth()));
    ArrayNode days = root.putArray("days");
    for (NoteTable.Row row : NoteTable.rows(note)) {
      ObjectNode day = days.addObject();
      day.put("days", row.days());
      day.put("line", row.line());
      day.put("page", row.pageInWords());
      day.put("story", row.story());
      ArrayNode taken = day.putArray("notPrinted");
      row.taken().forEach(taken::add);
      day.put(
          "printable", !row.taken().isEmpty() && mender.asPrinted(text, row.line()).isPresent());
    }
    ArrayNode remarks = root.putArray("remarks");
    note.remarks().forEach(remark -> remarks.add(remark(remark, note, text)));
    return root;
  }

  private ObjectNode remark(NoteRemark remark, MonthNote note, String text) {
    ObjectNode node = NODES.objectNode();
    node.put("line", remark.line());
    node.put("text", remark.text());
    int line = remark.line();
    Optional<NoteDay> day = note.days().stream().filter(each -> each.line() == line).findFirst();
    OptionalInt number =
        day.filter(each -> each.more().isEmpty())
            .map(each -> OptionalInt.of(each.name().day()))
            .orElse(remark.couldBe());
    if (number.isPresent() && settles(mender.asDay(text, line, number.getAsInt()), line)) {
      node.put("day", number.getAsInt());
    }
    boolean first = !note.days().isEmpty() && line <= note.days().get(0).line();
    node.put("story", !first && settles(mender.asStory(text, line), line));
    return node;
  }

  /** Whether nothing is left to be said of the line. */
  private boolean settles(Optional<String> mended, int line) {
    return mended
        .filter(
            text ->
                NoteInUse.read(text, request, month).remarks().stream()
                    .noneMatch(remark -> remark.line() == line))
        .isPresent();
  }
}
