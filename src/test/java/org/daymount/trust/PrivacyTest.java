package org.daymount.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class PrivacyTest {
  /** Planted in every photo; tag numbers from CIPA DC-008. */
  private static final List<String> SECRETS =
      List.of(
          "Wren Quill", // Artist
          "(c) Quill family", // Copyright
          "SN-77301-Q", // serial number, in a text tag of the first directory
          "Tarn T4 phone", // Model
          "Tarn Optical Works", // Make
          "tea with the ferryman", // UserComment
          "Quillhaven pier"); // XMP

  /** GPS 57° 31' 17", 6° 43' 29": as numbers and as a program may print them. */
  private static final List<String> PLACE = List.of("57.52", "57,52", "57°", "6.72", "GPS");

  private static final Pattern PICTURE =
      Pattern.compile("data:image/jpeg;base64,([A-Za-z0-9+/=]+)");

  @TempDir Path folder;

  private static ExifPhoto planted(int number) {
    return Runs.photo(number)
        .original("2026:06:03 14:2" + number + ":30")
        .make("Tarn Optical Works")
        .model("Tarn T4 phone")
        .text(0x013b, "Wren Quill")
        .text(0x8298, "(c) Quill family")
        .text(0xc62f, "SN-77301-Q") // CameraSerialNumber (DNG)
        .userComment("tea with the ferryman")
        .xmp("photoshop:City=\"Quillhaven pier\" photoshop:Credit=\"Wren Quill\"")
        .gpsPlace(new int[] {57, 31, 17}, new int[] {6, 43, 29})
        .gpsTime("2026:06:03", 12, 20, 30);
  }

  @Test
  void nothingOfPlacePersonOrCameraIsInAnyFileThatIsWritten() throws Exception {
    Path photos = folder.resolve("photos");
    for (int i = 0; i < 3; i++) {
      planted(i).write(photos.resolve("IMG_" + i + ".jpg"));
    }
    addHeic(photos);
    Path out = folder.resolve("out");
    Runs.Ended ended = Runs.here(Runs.arguments(photos, out));
    assertEquals(0, ended.code(), ended.text());
    Map<String, byte[]> files = Runs.files(out);
    assertTrue(
        files.keySet().containsAll(List.of("index.html", "sheets.pdf", "guide.pdf", "month.json")),
        files.keySet().toString());
    assertTrue(files.keySet().stream().anyMatch(name -> name.endsWith(".jpg")), "no sheet");
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      for (String secret : SECRETS) {
        assertFalse(holds(file.getValue(), secret), file.getKey() + " holds \"" + secret + "\"");
      }
      String text = readable(file.getKey(), file.getValue());
      for (String place : PLACE) {
        assertFalse(text.contains(place), file.getKey() + " says \"" + place + "\"");
      }
      if (file.getKey().endsWith(".jpg")) {
        assertFalse(holds(file.getValue(), "Exif\0"), file.getKey() + " has an EXIF block");
        assertFalse(holds(file.getValue(), "ns.adobe.com/xap"), file.getKey() + " has XMP");
      }
    }
  }

  /** The way to a folder often holds its owner's name; two folders of one name are told apart. */
  @Test
  void noFileTellsWhereThePhotosLay() throws Exception {
    Path secret = Files.createDirectories(folder.resolve("Users/Wrenna Quillfeather"));
    Path one = secret.resolve("phone/June");
    Path other = secret.resolve("camera/June");
    planted(1).write(one.resolve("IMG_1.jpg"));
    planted(2).write(other.resolve("IMG_2.jpg"));
    Files.write(one.resolve("cut.jpg"), new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF});
    Files.writeString(one.resolve("note.txt"), "June 2026\n\n3 two 4x6 on zebra\nA story.\n");
    Path out = secret.resolve("out");
    Files.createDirectories(out);
    Files.writeString(out.resolve("choices.json"), "{\"schema\":1,\"dayz\":1}");
    List<String> arguments = new ArrayList<>(Runs.arguments(one, out, "--json", "--quiet"));
    arguments.add(other.toString());
    Runs.Ended ended = Runs.here(arguments);
    assertTrue(ended.code() == 0 || ended.code() == 3, ended.text());
    assertFalse(ended.text().contains("Quillfeather"), "month.json on standard output");
    Map<String, byte[]> files = Runs.files(out);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      for (String part : List.of("Quillfeather", folder.getFileName().toString())) {
        assertFalse(holds(file.getValue(), part), file.getKey() + " holds \"" + part + "\"");
      }
    }
    String record = new String(files.get("month.json"), StandardCharsets.UTF_8);
    assertTrue(record.contains("\"folder\" : \"June\""), record);
    assertTrue(record.contains("\"folder\" : \"June (2)\""), record);
    arguments.add("--verbose-record");
    assertTrue(Runs.here(arguments).text().contains("Quillfeather/phone/June"), "as typed");
  }

  @Test
  void theModelOfTheCameraIsRecordedOnlyWhereThatIsAskedFor() throws Exception {
    Path photos = folder.resolve("photos");
    planted(0).write(photos.resolve("IMG_0.jpg"));
    Path out = folder.resolve("out");
    List<String> arguments = new ArrayList<>(Runs.arguments(photos, out));
    arguments.add("--verbose-record");
    assertEquals(0, Runs.here(arguments).code());
    String record = Files.readString(out.resolve("month.json"));
    assertTrue(record.contains("\"camera\" : \"Tarn T4 phone\""), record);
    for (String secret : SECRETS) {
      assertEquals(secret.equals("Tarn T4 phone"), record.contains(secret), secret);
    }
    assertFalse(holds(Files.readAllBytes(out.resolve("index.html")), "Tarn T4"), "the page");
  }

  /** What is kept from run to run names no model, but a clock is put right by it all the same. */
  @Test
  void aClockIsPutRightAfterARunThatDidNotKeepTheModel() throws Exception {
    Path photos = folder.resolve("photos");
    planted(0).write(photos.resolve("IMG_0.jpg"));
    Path out = folder.resolve("out");
    List<String> arguments = new ArrayList<>(Runs.arguments(photos, out));
    assertEquals(0, Runs.here(arguments).code());
    assertTrue(Files.readString(out.resolve("month.json")).contains("\"2026-06-03T14:20:30\""));
    arguments.addAll(List.of("--clock", "Tarn T4 phone=+14h"));
    Runs.Ended again = Runs.here(arguments);
    assertEquals(0, again.code(), again.text());
    assertTrue(Files.readString(out.resolve("month.json")).contains("\"2026-06-04T04:20:30\""));
  }

  /** One of them as HEIC too, with its tags, where heif-enc is installed. */
  private void addHeic(Path photos) throws Exception {
    Path twin = planted(5).write(folder.resolve("twin.jpg"));
    Path heic = photos.resolve("IMG_5.heic");
    try {
      new ProcessBuilder("heif-enc", "-q", "80", "-o", heic.toString(), twin.toString())
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
    } catch (IOException e) {
      return; // the other photos are looked at all the same
    }
    assertTrue(holds(Files.readAllBytes(heic), "Wren Quill"), "heif-enc kept the tags");
  }

  /** The secrets are really there to be found. */
  @Test
  void thePlantedPhotosHoldThem() {
    byte[] bytes = planted(0).bytes();
    for (String secret : SECRETS) {
      assertTrue(holds(bytes, secret), secret);
    }
  }

  /**
   * In the bytes as they are, unpacked from the streams of a PDF, or in a page's pictures, in 8 or
   * 16 bits.
   */
  private static boolean holds(byte[] bytes, String secret) {
    List<byte[]> layers = new ArrayList<>(List.of(bytes));
    layers.addAll(unpacked(bytes));
    layers.addAll(embedded(bytes));
    for (byte[] layer : layers) {
      String text = new String(layer, StandardCharsets.ISO_8859_1);
      for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16BE)) {
        String coded = new String(secret.getBytes(charset), StandardCharsets.ISO_8859_1);
        if (text.contains(coded)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Zlib streams begin with 0x78 (RFC 1950); what does not unpack is none. */
  private static List<byte[]> unpacked(byte[] bytes) {
    List<byte[]> found = new ArrayList<>();
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    for (int at = text.indexOf("stream\n"); at >= 0; at = text.indexOf("stream\n", at + 1)) {
      add(found, bytes, at + 7);
    }
    for (int at = text.indexOf("stream\r\n"); at >= 0; at = text.indexOf("stream\r\n", at + 1)) {
      add(found, bytes, at + 8);
    }
    return found;
  }

  /** The pictures that index.html carries. */
  private static List<byte[]> embedded(byte[] bytes) {
    return PICTURE
        .matcher(new String(bytes, StandardCharsets.ISO_8859_1))
        .results()
        .map(found -> Base64.getDecoder().decode(found.group(1)))
        .toList();
  }

  private static void add(List<byte[]> found, byte[] bytes, int from) {
    Inflater inflater = new Inflater();
    inflater.setInput(bytes, from, bytes.length - from);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    try {
      for (int n = inflater.inflate(buffer); n > 0; n = inflater.inflate(buffer)) {
        out.write(buffer, 0, n);
      }
      found.add(out.toByteArray());
    } catch (DataFormatException e) {
      // not a packed stream
    } finally {
      inflater.end();
    }
  }

  /** The text files whole, without the pictures that index.html carries. */
  private static String readable(String name, byte[] bytes) {
    if (!name.toLowerCase(Locale.ROOT).matches(".*\\.(html|json)")) {
      return "";
    }
    return new String(bytes, StandardCharsets.UTF_8)
        .replaceAll("data:image/jpeg;base64,[A-Za-z0-9+/=]+", "");
  }

  @Test
  void namesAreShownNeverObeyed() throws IOException {
    List<String> names =
        List.of(
            "<script>alert(1)<\u2044script>.jpg",
            "\"><img src=x onerror=alert(2)>.jpg",
            "evil\u202Egpj.exe.jpg",
            "'); alert(3);--.jpg");
    Path photos = folder.resolve("photos");
    for (int i = 0; i < names.size(); i++) {
      try {
        planted(i).write(photos.resolve(names.get(i)));
      } catch (InvalidPathException e) {
        assumeTrue(false, "this system cannot spell such names: " + e.getMessage());
      }
    }
    Path out = folder.resolve("out");
    Runs.Ended ended = Runs.here(Runs.arguments(photos, out));
    assertEquals(0, ended.code(), ended.text());
    String page = readable("index.html", Files.readAllBytes(out.resolve("index.html")));
    assertFalse(page.contains("<script>alert"), "a script of a file's name");
    assertFalse(page.contains("<img src=x"), "an element of a file's name");
    assertFalse(page.contains("\u202E"), "a mark that turns the line around");
    assertTrue(page.contains("evil[U+202E]gpj.exe.jpg"), "the name is not shown");
    String json = Files.readString(out.resolve("month.json"));
    assertTrue(json.contains("\\\"><img src=x onerror=alert(2)>.jpg"), "not as JSON spells it");
  }
}
