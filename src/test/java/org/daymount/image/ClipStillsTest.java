package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.daymount.clip.Clip;
import org.daymount.clip.ClipFile;
import org.daymount.clip.KeyFrame;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.photo.Taken;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stills from clips that ffmpeg makes, against what ffmpeg itself shows of them. */
@Tag("slow")
class ClipStillsTest {
  private static final String PATTERN = "testsrc2=size=320x180:rate=10:duration=3";

  @TempDir Path folder;

  private Path clip(String name, String... coding) throws IOException {
    return made(name, PATTERN, coding);
  }

  private Path made(String name, String source, String... coding) throws IOException {
    Path file = folder.resolve(name);
    List<String> command =
        new ArrayList<>(List.of("-y", "-v", "error", "-f", "lavfi", "-i", source));
    command.addAll(List.of(coding));
    command.add(file.toString());
    Tool.orSkip("ffmpeg", "-version").run(command.toArray(String[]::new));
    assertTrue(Files.size(file) > 0, "ffmpeg made no clip");
    return file;
  }

  private static Photo still(Path file, int index) throws IOException {
    try (ClipFile opened = ClipFile.open(file)) {
      Clip clip = opened.clip();
      return new Photo(
          new PhotoFile(file.getParent(), file.getFileName().toString())
              .still(clip.keyFrames().get(index).at()),
          Files.size(file),
          "00",
          PhotoFormat.CLIP,
          clip.orientation().upright(clip.shown()),
          clip.orientation(),
          true,
          Taken.UNKNOWN,
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
  }

  static BufferedImage shown(Path file) throws IOException {
    Photo photo = still(file, 0);
    return new Pictures().part(photo, photo.size().whole(), photo.size());
  }

  /** The first frame as ffmpeg shows it: turned upright, in sRGB's numbers. */
  private BufferedImage ffmpegs(Path file, String... filters) throws IOException {
    Path png = folder.resolve("frame.png");
    String chain = String.join(",", filters);
    Tool.orSkip("ffmpeg", "-version")
        .run(
            "-y",
            "-v",
            "error",
            "-i",
            file.toString(),
            "-frames:v",
            "1",
            "-vf",
            chain.isEmpty() ? "null" : chain,
            "-pix_fmt",
            "rgb24",
            png.toString());
    return ImageIO.read(png.toFile());
  }

  @ParameterizedTest
  @CsvSource({
    "h264.mp4,libx264,yuv420p",
    "h264.mov,libx264,yuvj420p",
    "h264.3gp,libx264,yuv420p",
    "hevc.mp4,libx265,yuv420p",
    "hevc10.mov,libx265,yuv420p10le",
    "av1.mp4,libsvtav1,yuv420p",
    "aom.mp4,libaom-av1,yuv420p"
  })
  void theFirstKeyFramesLumaIsFfmpegsToTheBit(String name, String coder, String samples)
      throws IOException {
    Path file = clip(name, coding(coder, samples));
    Path raw = folder.resolve("frame.raw");
    new Tool("ffmpeg")
        .run(
            "-y",
            "-v",
            "error",
            "-i",
            file.toString(),
            "-frames:v",
            "1",
            "-f",
            "rawvideo",
            "-pix_fmt",
            samples,
            raw.toString());
    byte[] expected = Files.readAllBytes(raw);
    int width = samples.endsWith("10le") ? 2 : 1;
    try (ClipFile opened = ClipFile.open(file)) {
      Clip clip = opened.clip();
      assertEquals(new PixelSize(320, 180), clip.coded());
      KeyFrame first = clip.keyFrames().get(0);
      assertEquals(Duration.ZERO, first.at());
      String type =
          switch (clip.codec()) {
            case H264 -> "avc1";
            case HEVC -> "hvc1";
            case AV1 -> "av01";
          };
      TileCoding coding = new TileCoding(type, opened.configuration(), clip.coded());
      try (TileReader reader = TileReader.here()) {
        YuvFrame planes = reader.decode(coding, opened.coded(first));
        int[] row = new int[320];
        for (int y = 0; y < 180; y++) {
          planes.row(0, y, row);
          int[] wanted = new int[320];
          for (int x = 0; x < 320; x++) {
            int at = (y * 320 + x) * width;
            wanted[x] =
                width == 1
                    ? expected[at] & 0xff
                    : expected[at] & 0xff | (expected[at + 1] & 0xff) << 8;
          }
          assertArrayEquals(wanted, row, "row " + y);
        }
      }
    }
  }

  private static String[] coding(String coder, String samples) {
    List<String> coding = new ArrayList<>(List.of("-c:v", coder, "-g", "10", "-pix_fmt", samples));
    switch (coder) {
      case "libx264" -> coding.addAll(List.of("-preset", "veryfast"));
      case "libx265" ->
          coding.addAll(List.of("-preset", "ultrafast", "-x265-params", "log-level=error"));
      case "libaom-av1" -> coding.addAll(List.of("-cpu-used", "8"));
      default -> coding.addAll(List.of("-preset", "12"));
    }
    return coding.toArray(String[]::new);
  }

  @Test
  void keyFramesLieWhereTheyWereAskedFor() throws IOException {
    Path file = clip("clip.mp4", coding("libx264", "yuv420p"));
    try (ClipFile opened = ClipFile.open(file)) {
      assertEquals(
          List.of(Duration.ZERO, Duration.ofSeconds(1), Duration.ofSeconds(2)),
          opened.clip().keyFrames().stream().map(KeyFrame::at).toList());
      assertEquals(Duration.ofSeconds(3), opened.clip().length());
    }
  }

  /** Seven flat bars: where colours do not change, only their numbers' meaning matters. */
  @ParameterizedTest
  @CsvSource({
    "bt709,bt709,tv",
    "smpte170m,smpte170m,tv",
    "bt709,bt709,pc",
    "smpte170m,smpte170m,pc",
    "bt2020,bt2020nc,tv"
  })
  void coloursFollowMatrixAndRange(String matrix, String space, String range) throws IOException {
    Path file =
        made(
            "bars.mp4",
            "smptebars=size=560x160:rate=1:duration=1",
            "-vf",
            "scale=out_color_matrix=" + matrix + ":out_range=" + range + ",format=yuv420p",
            "-c:v",
            "libx264",
            "-qp",
            "1",
            "-colorspace",
            space,
            "-color_range",
            range);
    BufferedImage ours = shown(file);
    BufferedImage theirs =
        ffmpegs(
            file,
            "scale=in_color_matrix=" + matrix + ":in_range=" + range + ":flags=accurate_rnd",
            "format=gbrp");
    for (int bar = 0; bar < 7; bar++) {
      assertNear(theirs.getRGB(40 + 80 * bar, 40), ours.getRGB(40 + 80 * bar, 40), 2, "bar " + bar);
    }
  }

  private static void assertNear(int expected, int actual, int tolerance, String what) {
    for (int shift = 0; shift <= 16; shift += 8) {
      assertEquals(expected >> shift & 0xff, actual >> shift & 0xff, tolerance, what);
    }
  }

  /** ffmpeg turns by the track's matrix as well (a, b, c, d of ISO/IEC 14496-12, 8.3.2). */
  @ParameterizedTest
  @CsvSource({"0 1 -1 0,RIGHT_TOP", "0 -1 1 0,LEFT_BOTTOM", "-1 0 0 -1,BOTTOM_RIGHT"})
  void aClipIsUprightByItsTracksMatrix(String matrix, ExifOrientation expected) throws IOException {
    byte[] bytes = Files.readAllBytes(clip("flat.mp4", coding("libx264", "yuv420p")));
    int header = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("tkhd") + 4;
    int[] places = {40, 44, 52, 56};
    String[] numbers = matrix.split(" ");
    for (int i = 0; i < 4; i++) {
      ByteBuffer.wrap(bytes).putInt(header + places[i], Integer.parseInt(numbers[i]) << 16);
    }
    Path turned = folder.resolve("turned.mp4");
    Files.write(turned, bytes);
    assertEquals(expected, still(turned, 0).orientation());
    BufferedImage ours = shown(turned);
    BufferedImage theirs = ffmpegs(turned, "scale=flags=accurate_rnd+full_chroma_int");
    assertEquals(theirs.getWidth(), ours.getWidth());
    assertEquals(theirs.getHeight(), ours.getHeight());
    assertTrue(psnr(theirs, ours) > 30, "turned otherwise: " + psnr(theirs, ours) + " dB");
  }

  private static double psnr(BufferedImage a, BufferedImage b) {
    double sum = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        int difference = (a.getRGB(x, y) >> 8 & 0xff) - (b.getRGB(x, y) >> 8 & 0xff);
        sum += difference * difference;
      }
    }
    return 10 * Math.log10(255 * 255 / Math.max(1e-9, sum / a.getWidth() / a.getHeight()));
  }

  /** ffmpeg's area filter gives means of pixels too (libswscale, flags=area). */
  @ParameterizedTest
  @CsvSource({"libx264,yuv420p,2", "libx264,yuv444p,4", "libx265,yuv420p10le,4"})
  void forLookingAFrameIsTheMeansOfItsPixels(String coder, String samples, int times)
      throws IOException {
    Path file =
        made(
            "large.mp4",
            "testsrc2=size=1280x720:rate=1:duration=1",
            "-vf",
            "scale=out_color_matrix=bt709:out_range=tv,format=" + samples,
            "-c:v",
            coder,
            "-pix_fmt",
            samples,
            "-colorspace",
            "bt709");
    Photo photo = still(file, 0);
    BufferedImage ours = new Pictures().examined(photo, 1280 / times).picture();
    assertEquals(1280 / times, ours.getWidth());
    assertEquals(720 / times, ours.getHeight());
    BufferedImage theirs =
        ffmpegs(
            file,
            "scale="
                + (1280 / times)
                + ":-1:in_color_matrix=bt709:in_range=tv"
                + ":flags=area+accurate_rnd+full_chroma_int",
            "format=gbrp");
    assertTrue(psnr(theirs, ours) > 33, "reduced otherwise: " + psnr(theirs, ours) + " dB");
  }

  @Test
  void aFrameAtItsOwnSizeIsNotFiltered() throws IOException {
    Path file = clip("clip.mp4", coding("libx264", "yuv420p"));
    Photo photo = still(file, 0);
    BufferedImage whole = new Pictures().whole(photo, 320);
    BufferedImage part = shown(file);
    BufferedImage corner =
        new Pictures().part(photo, new PixelBox(64, 32, 128, 96), new PixelSize(128, 96));
    for (int y = 0; y < 96; y++) {
      for (int x = 0; x < 128; x++) {
        assertEquals(whole.getRGB(64 + x, 32 + y), corner.getRGB(x, y), x + "," + y);
        assertEquals(whole.getRGB(x, y), part.getRGB(x, y), x + "," + y);
      }
    }
  }

  @Test
  void pixelsThatAreNotSquareAreMadeSo() throws IOException {
    Path file =
        made(
            "wide.mp4",
            "testsrc2=size=240x192:rate=1:duration=1",
            "-vf",
            "setsar=4/3",
            "-c:v",
            "libx264",
            "-pix_fmt",
            "yuv420p");
    assertEquals(new PixelSize(320, 192), still(file, 0).size());
    assertEquals(320, shown(file).getWidth());
  }

  @ParameterizedTest
  @ValueSource(strings = {"mpeg4", "h263"})
  void otherCodingsAreNamedWithTheReason(String coder) throws IOException {
    Path file = made("old.3gp", "testsrc2=size=352x288:rate=10:duration=1", "-c:v", coder);
    UnusablePicture why = assertThrows(UnusablePicture.class, () -> ClipFile.open(file));
    assertEquals(Problem.Kind.VIDEO, why.kind());
    assertTrue(why.getMessage().contains(coder.equals("h263") ? "H.263" : "MPEG-4 part 2"));
  }

  @Test
  void aClipInFragmentsIsNamed() throws IOException {
    Path file = clip("parts.mp4", "-c:v", "libx264", "-movflags", "frag_keyframe+empty_moov");
    UnusablePicture why = assertThrows(UnusablePicture.class, () -> ClipFile.open(file));
    assertTrue(why.getMessage().contains("fragments"), why.getMessage());
  }

  @Test
  void ofAClipThatWasCutOffTheFramesThatAreThereAreUsed() throws IOException {
    Path file = clip("clip.mp4", "-c:v", "libx264", "-g", "10", "-movflags", "faststart");
    byte[] whole = Files.readAllBytes(file);
    Path half = folder.resolve("half.mp4");
    Files.write(half, Arrays.copyOf(whole, whole.length * 7 / 10));
    try (ClipFile opened = ClipFile.open(half)) {
      int left = opened.clip().keyFrames().size();
      assertTrue(left > 0 && left < 3, left + " left of 3");
    }
    assertEquals(320, shown(half).getWidth());
  }
}
