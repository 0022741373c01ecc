package org.daymount.benchmark;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.daymount.testphoto.ExifPhoto;

/**
 * A folder of photos of one month, painted from a fixed seed: of every ten, eight of 12 megapixels,
 * one of 12 that is progressive and one of 48. Of every three photos two are of one moment, two
 * seconds apart. Some scenes are painted, so many that hardly any returns on a day of 33 photos,
 * and each is used many times with dates of its own, so that every file differs and a large month
 * is quickly made.
 */
final class PaintedMonth {
  /**
   * Of every ten photos the first of this kind; all but {@link #PROGRESSIVE} and {@link #LARGE}.
   */
  static final int BASELINE = 0;

  static final int PROGRESSIVE = 3;
  static final int LARGE = 7;

  private static final int SCENES = 24;
  private static final int SCENES_OF_THE_RARE_KINDS = 4;
  private static final int SECONDS_BETWEEN_FRAMES = 2;
  private static final int WIDTH = 4032;
  private static final int HEIGHT = 3024;
  private static final float QUALITY = 0.9f;
  private static final int DAYS_IN_JUNE = 30;
  private static final int MINUTES_IN_JUNE = DAYS_IN_JUNE * 24 * 60;
  private static final int MINUTES_OF_LIGHT = 12 * 60;
  private static final int FIRST_CASUAL_SEED = 10_000;
  static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("yyyy:MM:dd HH:mm:ss");

  private PaintedMonth() {}

  /** Makes what is not there yet; the names tell the order. */
  static List<Path> make(Path folder, int photos) throws IOException {
    Files.createDirectories(folder);
    List<Path> files = new ArrayList<>();
    Scenes plain = new Scenes(SCENES, 1, false);
    Scenes progressive = new Scenes(SCENES_OF_THE_RARE_KINDS, 1, true);
    Scenes large = new Scenes(SCENES_OF_THE_RARE_KINDS, 2, false);
    for (int i = 0; i < photos; i++) {
      Path file = folder.resolve(String.format("photo-%05d.jpg", i));
      files.add(file);
      int number = i;
      writeIfMissing(
          file,
          out ->
              write(
                  out,
                  switch (number % 10) {
                    case PROGRESSIVE -> progressive.of(number / 10);
                    case LARGE -> large.of(number / 10);
                    default -> plain.of(moment(number));
                  },
                  taken(number, photos),
                  number));
    }
    return files;
  }

  /**
   * The month that most people have: photos of 12 megapixels, 3 to 4 MB each, no two of one scene,
   * some four a day.
   */
  static List<Path> makeCasual(Path folder, int photos) throws IOException {
    Files.createDirectories(folder);
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < photos; i++) {
      Path file = folder.resolve(String.format("photo-%05d.jpg", i));
      files.add(file);
      int number = i;
      writeIfMissing(
          file,
          out ->
              write(
                  out,
                  jpeg(scene(WIDTH, HEIGHT, FIRST_CASUAL_SEED + number), false),
                  casuallyTaken(number, photos),
                  number));
    }
    return files;
  }

  /** Spread evenly over June, by day: from 09:00 on. */
  private static LocalDateTime casuallyTaken(int photo, int photos) {
    int perDay = Math.max(1, (photos + DAYS_IN_JUNE - 1) / DAYS_IN_JUNE);
    return LocalDateTime.of(2026, 6, 1, 9, 0)
        .plusDays(photo / perDay)
        .plusMinutes((long) photo % perDay * (MINUTES_OF_LIGHT / perDay));
  }

  /** Scenes of one kind as JPEGs, each painted when it is first asked for. */
  private static final class Scenes {
    private final byte[][] painted;
    private final int scale;
    private final boolean progressive;

    Scenes(int count, int scale, boolean progressive) {
      this.painted = new byte[count][];
      this.scale = scale;
      this.progressive = progressive;
    }

    byte[] of(int moment) throws IOException {
      int scene = moment % painted.length;
      if (painted[scene] == null) {
        int seed = 100 * scale + (progressive ? 50 : 0) + scene;
        painted[scene] = jpeg(scene(scale * WIDTH, scale * HEIGHT, seed), progressive);
      }
      return painted[scene];
    }
  }

  private static int moment(int photo) {
    return photo * 2 / 3;
  }

  /** One of the scenes, 12 megapixels. */
  static void writePlain(Path file, int scene, LocalDateTime taken) throws IOException {
    byte[] picture = jpeg(scene(WIDTH, HEIGHT, scene), false);
    writeIfMissing(file, out -> write(out, picture, taken, 0));
  }

  /** The moments are spread evenly over June. */
  static LocalDateTime taken(int photo, int photos) {
    int moments = moment(photos - 1) + 1;
    boolean again = photo > 0 && moment(photo) == moment(photo - 1);
    return LocalDateTime.of(2026, 6, 1, 0, 0)
        .plusMinutes((long) moment(photo) * MINUTES_IN_JUNE / moments)
        .plusSeconds(again ? SECONDS_BETWEEN_FRAMES : 0);
  }

  /** What makes a file. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Whole or not at all, so that a run that was stopped leaves no half photo to the next. */
  static void writeIfMissing(Path file, Content content) throws IOException {
    if (Files.exists(file)) {
      return;
    }
    Path unfinished = file.resolveSibling(file.getFileName() + ".part");
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(unfinished))) {
      content.writeTo(out);
    }
    Files.move(unfinished, file);
  }

  /**
   * @param commentLength lets files of the same scene differ in length, as photos do
   */
  private static void write(OutputStream out, byte[] jpeg, LocalDateTime taken, int commentLength)
      throws IOException {
    byte[] exif =
        ExifPhoto.painted()
            .model("Tarn T4")
            .orientation(1)
            .original(EXIF.format(taken))
            .exifBlock();
    int length = exif.length + 8;
    out.write(jpeg, 0, 2); // SOI
    out.write(new byte[] {(byte) 0xff, (byte) 0xe1, (byte) (length >> 8), (byte) length});
    out.write(new byte[] {'E', 'x', 'i', 'f', 0, 0});
    out.write(exif);
    int comment = 2 + commentLength;
    out.write(new byte[] {(byte) 0xff, (byte) 0xfe, (byte) (comment >> 8), (byte) comment});
    out.write(new byte[commentLength]);
    out.write(jpeg, 2, jpeg.length - 2);
  }

  /** Shapes on a slope of colour, with the grain of a sensor. */
  private static BufferedImage scene(int width, int height, long seed) {
    Random chance = new Random(seed);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setPaint(
        new GradientPaint(
            0,
            0,
            new Color(chance.nextInt(1 << 24)),
            width,
            height,
            new Color(chance.nextInt(1 << 24))));
    pen.fillRect(0, 0, width, height);
    for (int i = 0; i < 600; i++) {
      pen.setColor(new Color(chance.nextInt(256), chance.nextInt(256), chance.nextInt(256), 110));
      int side = 12 + chance.nextInt(width / 9);
      int x = chance.nextInt(width);
      int y = chance.nextInt(height);
      if (i % 2 == 0) {
        pen.fillOval(x, y, side, side);
      } else {
        pen.fillRect(x, y, side, side / 3);
      }
    }
    pen.dispose();
    int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    int[] grain = chance.ints(1 << 16, -7, 8).toArray();
    for (int i = 0; i < pixels.length; i++) {
      int noise = grain[(i * 31 ^ i >> 11) & 0xffff];
      pixels[i] =
          level((pixels[i] >> 16 & 255) + noise) << 16
              | level((pixels[i] >> 8 & 255) + noise) << 8
              | level((pixels[i] & 255) + noise);
    }
    return picture;
  }

  private static int level(int value) {
    return Math.max(0, Math.min(255, value));
  }

  private static byte[] jpeg(BufferedImage picture, boolean progressive) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam params = writer.getDefaultWriteParam();
    params.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    params.setCompressionQuality(QUALITY);
    params.setProgressiveMode(
        progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), params);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
