package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.daymount.cli.Shell.Result;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Holds what the commands write to docs/month.schema.json, read by a validator that knows nothing
 * of this program.
 */
@Tag("slow")
class MonthSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path SCHEMA = Path.of("docs/month.schema.json");

  @TempDir static Path home;
  private static Shell shell;

  @BeforeAll
  static void aMonthWithSomethingOfEverything() throws IOException {
    shell = new Shell(home);
    photo("a burst/one.jpg", 1, 1800, 1350, "2026:06:03 10:00:00");
    photo("a burst/two.jpg", 1, 1799, 1350, "2026:06:03 10:00:01");
    photo("tall.jpg", 2, 1350, 1800, "2026:06:04 11:00:00");
    photo("too small.jpg", 3, 300, 200, "2026:06:05 11:00:00");
    photo("other month.jpg", 4, 600, 400, "2026:05:05 11:00:00");
    Path photos = home.resolve("photos");
    byte[] whole = Files.readAllBytes(photos.resolve("tall.jpg"));
    Files.write(photos.resolve("half.jpg"), Arrays.copyOf(whole, whole.length / 2));
    Files.write(photos.resolve("again.jpg"), whole);
    Files.writeString(photos.resolve("not one.jpg"), "a text");
    Files.writeString(
        photos.resolve("note.txt"),
        "June 2026\n3 two 3x4 on mat\nA story.\n4 6x8\n5 4x6\n6 leave out\n7 4x6 on matt\n");
  }

  @Test
  void theWholeMonthFitsTheSchema() throws IOException {
    Result result = run("sheets", "--out", "out", "--cards", "3x4");
    assertEquals(3, result.code(), result.err());
    JsonNode month = JSON.readTree(result.out());
    assertFits(month);
    assertEquals(month, JSON.readTree(home.resolve("out/month.json").toFile()));
    assertFalse(month.get("sheets").isEmpty());
    assertFalse(month.get("warnings").isEmpty());
  }

  @Test
  void whatLookAndDaysPrintFitsIt() throws IOException {
    JsonNode looked = JSON.readTree(run("look").out());
    assertFits(looked);
    assertEquals(8, looked.get("photos").size());
    JsonNode days = JSON.readTree(run("days").out());
    assertFits(days);
    assertFalse(days.get("days").isEmpty());
  }

  @Test
  void aMonthThatIsNotOneDoesNotFit() throws IOException {
    String month = run("days").out();
    for (String[] change :
        new String[][] {
          {"\"schema\" : 1", "\"schema\" : 2"},
          {"\"takenFrom\" : \"original\"", "\"takenFrom\" : \"hearsay\""},
          {"\"day\" : \"2026-06-04\"", "\"day\" : \"4 June\""},
          {"\"used\" : false", "\"used\" : \"no\""},
          {"\"warnings\" :", "\"sheets\" : [], \"warnings\" :"}
        }) {
      assertTrue(month.contains(change[0]), change[0]);
      JsonNode wrong = JSON.readTree(month.replaceFirst(change[0], change[1]));
      assertFalse(errors(wrong, schema()).isEmpty(), change[1]);
    }
  }

  @Test
  void thePageInPlainWordsNamesEveryField() throws IOException {
    String page = Files.readString(Path.of("docs/month-json.md"));
    TreeSet<String> missing = new TreeSet<>();
    for (JsonNode properties : JSON.readTree(SCHEMA.toFile()).findValues("properties")) {
      properties
          .fieldNames()
          .forEachRemaining(
              name -> {
                if (!page.contains("| `" + name + "` |")) {
                  missing.add(name);
                }
              });
    }
    assertEquals(new TreeSet<>(), missing);
  }

  /** Fits as it stands, and names no field that the schema does not describe. */
  private static void assertFits(JsonNode json) throws IOException {
    assertEquals(List.of(), errors(json, schema()));
    JsonNode closed = schema();
    close(closed.at("/$defs"));
    close((ObjectNode) closed);
    assertEquals(List.of(), errors(json, closed), "fields that docs/month.schema.json lacks");
  }

  private static void close(JsonNode definitions) {
    definitions.forEach(
        each -> {
          if (each.isObject()) {
            close((ObjectNode) each);
          }
        });
  }

  private static void close(ObjectNode object) {
    if (object.has("properties") && !object.has("additionalProperties")) {
      object.put("additionalProperties", false);
    }
  }

  private static JsonNode schema() throws IOException {
    return JSON.readTree(SCHEMA.toFile());
  }

  private static List<String> errors(JsonNode json, JsonNode schema) {
    Schema validator =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
    return validator.validate(json).stream().map(Error::toString).toList();
  }

  private static Result run(String command, String... options) {
    List<String> line = new ArrayList<>(List.of(command, home.resolve("photos").toString()));
    line.addAll(List.of(options));
    line.add("--json");
    return shell.run(line.toArray(new String[0]));
  }

  private static void photo(String name, long seed, int width, int height, String taken)
      throws IOException {
    ExifPhoto.painted()
        .picture(Scenes.scene(seed, width, height))
        .original(taken)
        .write(home.resolve("photos").resolve(name));
  }
}
