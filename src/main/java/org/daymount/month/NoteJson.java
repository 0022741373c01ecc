package org.daymount.month;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.YearMonth;
import org.daymount.album.PageSpecParser;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteDay;
import org.daymount.note.PartialDate;

/** What was read in a month note, as data: a day line each, and the remarks. */
public final class NoteJson {
  private static final int SCHEMA = 1;

  private NoteJson() {}

  /** One document, indented, with a version field; fields are added, never renamed. */
  public static String of(MonthNote note) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("schema", SCHEMA);
    root.put("month", note.month().map(YearMonth::toString).orElse(null));
    ArrayNode days = root.putArray("days");
    for (NoteDay day : note.days()) {
      ObjectNode node = days.addObject();
      ArrayNode numbers = node.putArray("days");
      day.names().stream().map(PartialDate::day).forEach(numbers::add);
      node.put("name", day.name().toString());
      node.put("line", day.line());
      node.put("page", PageSpecParser.text(day.words()));
      node.put("story", day.story().orElse(null));
      ArrayNode taken = node.putArray("notPrinted");
      day.taken().forEach(taken::add);
    }
    ArrayNode remarks = root.putArray("remarks");
    note.remarks()
        .forEach(
            remark -> {
              ObjectNode node = remarks.addObject();
              node.put("line", remark.line());
              node.put("column", remark.column());
              node.put("text", remark.text());
            });
    root.put("stops", !note.ending().isEmpty());
    return root.toPrettyString();
  }
}
