package org.daymount.ingest;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.image.PictureHeader;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.unit.PixelSize;

/**
 * Facts of a file to bytes and back, for being kept from run to run. What could tell of the person
 * stays out: of the camera's model it is kept only that there is one, of a comment nothing but that
 * it says screenshot.
 */
final class FileFactsCodec {
  /** In place of the model of a camera. */
  static final String UNNAMED = "";

  private FileFactsCodec() {}

  static byte[] bytes(FileFacts facts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    text(out, facts.header().format().name());
    out.writeInt(facts.header().stored().width());
    out.writeInt(facts.header().stored().height());
    optional(out, facts.header().turned().map(ExifOrientation::name));
    tags(out, facts.tags());
    text(out, facts.sha256());
    optional(out, facts.damage().map(Problem.Kind::name));
    text(out, facts.damageText());
    optional(out, facts.colourRemark());
    return bytes.toByteArray();
  }

  private static void tags(DataOutputStream out, Tags tags) throws IOException {
    optional(out, tags.orientation().map(ExifOrientation::name));
    date(out, tags.original());
    date(out, tags.digitized());
    list(out, tags.xmp());
    optional(out, tags.pngCreation());
    optional(out, tags.pngModified().map(LocalDateTime::toString));
    optional(out, tags.gpsUtc().map(LocalDateTime::toString));
    list(out, tags.offsets());
    optional(out, tags.model().map(model -> UNNAMED));
    optional(out, tags.userComment().filter(ScreenshotEvidence::saysSo));
    optional(out, tags.burst());
    optional(out, tags.pair());
    out.writeBoolean(tags.cameraSettings());
  }

  private static void date(DataOutputStream out, Tags.DateTag tag) throws IOException {
    optional(out, Optional.ofNullable(tag.dateTime()));
    optional(out, Optional.ofNullable(tag.subSeconds()));
    optional(out, Optional.ofNullable(tag.offset()));
  }

  private static void list(DataOutputStream out, List<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      text(out, text);
    }
  }

  private static void optional(DataOutputStream out, Optional<String> text) throws IOException {
    out.writeBoolean(text.isPresent());
    if (text.isPresent()) {
      text(out, text.get());
    }
  }

  private static void text(DataOutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /** Empty when these are no bytes of ours. */
  static Optional<FileFacts> facts(byte[] bytes) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      PictureHeader header =
          new PictureHeader(
              PhotoFormat.valueOf(text(in)),
              new PixelSize(in.readInt(), in.readInt()),
              optional(in).map(ExifOrientation::valueOf));
      FileFacts facts =
          new FileFacts(
              header,
              tags(in),
              text(in),
              optional(in).map(Problem.Kind::valueOf),
              text(in),
              optional(in));
      return in.read() < 0 ? Optional.of(facts) : Optional.empty();
    } catch (IOException | IllegalArgumentException | DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Tags tags(DataInputStream in) throws IOException {
    return new Tags(
        optional(in).map(ExifOrientation::valueOf),
        date(in),
        date(in),
        list(in),
        optional(in),
        optional(in).map(LocalDateTime::parse),
        optional(in).map(LocalDateTime::parse),
        list(in),
        optional(in),
        optional(in),
        optional(in),
        optional(in),
        in.readBoolean());
  }

  private static Tags.DateTag date(DataInputStream in) throws IOException {
    return new Tags.DateTag(
        optional(in).orElse(null), optional(in).orElse(null), optional(in).orElse(null));
  }

  private static List<String> list(DataInputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      texts.add(text(in));
    }
    return List.copyOf(texts);
  }

  private static Optional<String> optional(DataInputStream in) throws IOException {
    return in.readBoolean() ? Optional.of(text(in)) : Optional.empty();
  }

  private static String text(DataInputStream in) throws IOException {
    int length = in.readInt();
    if (length < 0 || length > in.available()) {
      throw new IOException("a length that cannot be");
    }
    return new String(in.readNBytes(length), StandardCharsets.UTF_8);
  }
}
