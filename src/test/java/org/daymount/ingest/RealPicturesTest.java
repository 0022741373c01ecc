package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.daymount.day.DayStart;
import org.daymount.photo.Photo;
import org.daymount.photo.TakenFrom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Real pictures from the test jars of three libraries, against what exiftool says of them: once as
 * measured beforehand (picture-facts.tsv, see the README beside it), once asked anew where it is
 * installed.
 */
@Tag("slow")
class RealPicturesTest {
  private static final Path FORENSICS = Path.of("/usr/share/forensics-samples/original-files");

  /** Each jar by the name in the facts, and a file that only this jar has. */
  private static final Map<String, String> JARS =
      Map.of(
          "commons-imaging", "IMAGING-136/1402522741337.jpg",
          "imageio-jpeg", "jpeg/cmm-exception-srgb.jpg",
          "tika-image", "test-documents/testJPEG_GEO_2.jpg");

  /** Where we differ on purpose, and why. */
  private static final Map<String, String> DIFFERENT =
      Map.of(
          "broken-jpeg/broken-bogus-data-prepended-real-jfif-start-at-4801.jpg",
          "no decoder finds a picture behind the stray bytes (libjpeg: contains no image), so"
              + " its date is of no use",
          "images/jpeg/oss-fuzz-33458/clusterfuzz-testcase-minimized-ImagingJpegFuzzer-"
              + "4548690447564800",
          "named too large");

  /**
   * Files whose size in the facts is the one that their EXIF block still tells from before they
   * were made smaller; what counts is the frame header, and the JDK's own reader agrees.
   */
  private static final Set<String> SHRUNK =
      Set.of(
          "commons-imaging/images/jpeg/photoshop/IMAGING-246/FallHarvestKitKat_07610.jpg",
          "imageio-jpeg/jpeg/cmyk-sample-multiple-chunk-icc.jpg",
          "tika-image/test-documents/testJPEG_EXIF.jpg",
          "tika-image/test-documents/testJPEG_GEO.jpg",
          "tika-image/test-documents/testJPEG_GEO_2.jpg");

  private record Fact(
      String source, String file, String midnight, String four, String tag, String w, String h) {
    String name() {
      return source + "/" + file;
    }
  }

  @TempDir static Path folder;
  private static final Map<String, Photo> READ = new HashMap<>();
  private static Ingested ingested;

  @BeforeAll
  static void unpackAndRead() throws IOException, URISyntaxException {
    for (var jar : JARS.entrySet()) {
      unpack(jarHolding(jar.getValue()), folder.resolve(jar.getKey()));
    }
    ingested = Reading.all(folder);
    ingested.photos().forEach(photo -> READ.put(photo.file().name(), photo));
    ingested.unusable().forEach(photo -> READ.put(photo.file().name(), photo));
  }

  private static Path jarHolding(String file) throws URISyntaxException {
    var url = RealPicturesTest.class.getResource("/" + file);
    String jar = url.toString().replaceFirst("^jar:(.*)!.*$", "$1");
    return Path.of(new URI(jar));
  }

  private static void unpack(Path jar, Path target) throws IOException {
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(jar))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        Path file = target.resolve(entry.getName()).normalize();
        if (!entry.isDirectory() && !entry.getName().endsWith(".class")) {
          assertTrue(file.startsWith(target), entry.getName());
          Files.createDirectories(file.getParent());
          Files.copy(zip, file);
        }
      }
    }
  }

  private static List<Fact> facts() throws IOException {
    List<Fact> facts = new ArrayList<>();
    try (InputStream in = RealPicturesTest.class.getResourceAsStream("picture-facts.tsv")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (String line : text.lines().skip(1).toList()) {
        String[] f = line.split("\t", -1);
        facts.add(new Fact(f[0], f[1], f[2], f[3], f[4], f[5], f[6]));
      }
    }
    return facts;
  }

  @Test
  void everyDayIsTheOneExiftoolMeasuredFromMidnightAndFromFour() throws IOException {
    int compared = 0;
    for (Fact fact : facts()) {
      if (fact.midnight().isEmpty() || DIFFERENT.containsKey(fact.file())) {
        continue;
      }
      Photo photo = READ.get(fact.name());
      assertFalse(photo == null, fact.name());
      assertEquals(fact.midnight(), DayStart.MIDNIGHT.dayOf(photo.taken()).toString(), fact.name());
      assertEquals(fact.four(), DayStart.FOUR.dayOf(photo.taken()).toString(), fact.name());
      compared++;
    }
    assertEquals(28, compared); // of 29, one explained above
  }

  @Test
  void aFileWithoutAnExifDateGetsNoneFromUs() throws IOException {
    for (Fact fact : facts()) {
      Photo photo = READ.get(fact.name());
      if (fact.midnight().isEmpty() && photo != null) {
        assertFalse(photo.taken().from() == TakenFrom.ORIGINAL, fact.name());
      }
    }
  }

  @Test
  void everyUprightSizeAndOrientationIsTheOneExiftoolMeasured() throws IOException {
    int compared = 0;
    TreeMap<String, String> differing = new TreeMap<>();
    for (Fact fact : facts()) {
      if (fact.w().isEmpty() || DIFFERENT.containsKey(fact.file())) {
        continue;
      }
      Photo photo = READ.get(fact.name());
      if (photo == null) {
        differing.put(fact.name(), "not read");
        continue;
      }
      String ours = photo.size().width() + "x" + photo.size().height();
      String theirs =
          SHRUNK.contains(fact.name())
              ? frameSize(folder.resolve(fact.name()))
              : fact.w() + "x" + fact.h();
      boolean turned = photo.orientation().exif() != 1;
      boolean said = !fact.tag().isEmpty() && !fact.tag().equals("0") && !fact.tag().equals("1");
      if (!ours.equals(theirs) || turned != said) {
        differing.put(fact.name(), ours + " " + photo.orientation() + ", expected " + fact);
      }
      compared++;
    }
    assertEquals(Map.of(), differing);
    assertTrue(compared > 180, "compared " + compared);
  }

  private static String frameSize(Path jpeg) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(jpeg.toFile())) {
      reader.setInput(in);
      return reader.getWidth(0) + "x" + reader.getHeight(0);
    } finally {
      reader.dispose();
    }
  }

  @Test
  void exiftoolAskedNowGivesTheSameDays() throws Exception {
    List<String> lines = exiftool(folder);
    Set<String> named =
        ingested.problems().stream().map(p -> p.file().name()).collect(Collectors.toSet());
    int compared = 0;
    for (String line : lines) {
      String[] fields = line.split("\t", -1);
      String name = folder.relativize(Path.of(fields[0])).toString();
      String time = fields[1].equals("-") ? fields[2] : fields[1];
      Photo photo = READ.get(name);
      if (photo == null && !named.contains(name)) {
        continue; // a format that is no photo here, such as PSD
      }
      boolean exif =
          photo != null
              && (photo.taken().from() == TakenFrom.ORIGINAL
                  || photo.taken().from() == TakenFrom.DIGITIZED);
      if (DIFFERENT.keySet().stream().anyMatch(name::endsWith) || !time.matches("[12]\\d{3}:.*")) {
        assertFalse(exif, name);
        continue;
      }
      assertTrue(exif, name + " " + line);
      LocalDate day = LocalDate.parse(time.substring(0, 10).replace(':', '-'));
      assertEquals(day, photo.taken().local().orElseThrow().toLocalDate(), name);
      compared++;
    }
    assertTrue(compared >= 29, "compared " + compared);
  }

  /** One call: path, DateTimeOriginal and DateTimeDigitized of the EXIF block alone. */
  private static List<String> exiftool(Path where) throws Exception {
    Process process;
    try {
      process =
          new ProcessBuilder(
                  "exiftool",
                  "-q",
                  "-r",
                  "-f",
                  "-p",
                  "$directory/$filename\t$EXIF:DateTimeOriginal\t$EXIF:CreateDate",
                  where.toString())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException e) {
      assumeTrue(false, "exiftool is not installed, so nothing is compared with it");
      return List.of();
    }
    List<String> lines;
    try (InputStream out = process.getInputStream()) {
      lines = new String(out.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
    process.waitFor();
    return lines;
  }

  /**
   * Phone photos whose satellites say the next day in UTC (Debian's forensics-samples-files): the
   * wall clock wins. The expected times are those in the files' own names, give or take a second.
   */
  @Test
  void lateNightPhonePhotosStayOnTheirEvening() {
    assumeTrue(
        Files.isDirectory(FORENSICS), "the package forensics-samples-files is not installed");
    Ingested samples = Reading.all(FORENSICS);
    Map<String, String> expected =
        Map.of(
            "pic1/IMG_20200827_231612.jpg", "2020-08-27T23:16:12.007419",
            "pic2/IMG_20191224_234846.jpg", "2019-12-24T23:48:46.519928",
            "pic2/IMG_20200124_231153.jpg", "2020-01-24T23:11:53.332084",
            "pic2/IMG_20200608_111614.jpg", "2020-06-08T11:16:13.868104");
    int compared = 0;
    for (Photo photo : samples.photos()) {
      String local = expected.get(photo.file().name());
      if (local != null) {
        assertEquals(LocalDateTime.parse(local), photo.taken().local().orElseThrow());
        assertEquals(TakenFrom.ORIGINAL, photo.taken().from());
        compared++;
      }
    }
    assertEquals(4, compared);
  }
}
