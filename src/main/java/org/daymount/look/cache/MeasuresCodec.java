package org.daymount.look.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.look.Fingerprint;
import org.daymount.look.MainLook;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.SaliencyMap;
import org.daymount.look.Subject;
import org.daymount.unit.PixelBox;

/**
 * Measures to bytes and back, every number bit for bit as it was. What no measuring gives (a number
 * that is none, a confidence over 1) is not read: it is measured again.
 */
final class MeasuresCodec {
  private MeasuresCodec() {}

  /** Something that is written or read field by field. */
  @FunctionalInterface
  private interface Writing {
    void to(DataOutputStream out) throws IOException;
  }

  @FunctionalInterface
  private interface Reading<T> {
    T from(DataInputStream in) throws IOException;
  }

  /** All but the close look. */
  static byte[] firstLook(Measures measures) {
    return written(
        out -> {
          out.writeDouble(measures.sharpness());
          out.writeDouble(measures.clarity());
          out.writeDouble(measures.exposure());
          Fingerprint fingerprint = measures.fingerprint();
          out.writeLong(fingerprint.horizontal());
          out.writeLong(fingerprint.vertical());
          out.writeInt(fingerprint.moments().size());
          for (float moment : fingerprint.moments()) {
            out.writeFloat(moment);
          }
          SaliencyMap map = measures.map();
          out.writeInt(map.columns());
          out.writeInt(map.rows());
          for (float share : map.shares()) {
            out.writeFloat(share);
          }
          out.writeUTF(measures.damage().orElse(""));
        });
  }

  /** Empty when these are not the bytes of a first look. */
  static Optional<Measures> firstLook(byte[] bytes) {
    return read(
        bytes,
        in -> {
          double sharpness = number(in);
          double clarity = number(in);
          double exposure = number(in);
          long horizontal = in.readLong();
          long vertical = in.readLong();
          List<Float> moments = new ArrayList<>();
          for (int left = count(in, bytes.length); left > 0; left--) {
            moments.add((float) finite(in.readFloat()));
          }
          int columns = count(in, bytes.length);
          int rows = count(in, bytes.length);
          if ((long) columns * rows > bytes.length) {
            throw new IOException("a map larger than its bytes");
          }
          float[] shares = new float[columns * rows];
          for (int i = 0; i < shares.length; i++) {
            shares[i] = (float) finite(in.readFloat());
          }
          return new Measures(
              sharpness,
              clarity,
              exposure,
              new Fingerprint(horizontal, vertical, moments),
              SaliencyMap.ofShares(columns, rows, shares),
              Optional.empty(),
              Optional.of(in.readUTF()).filter(damage -> !damage.isEmpty()));
        });
  }

  static byte[] closeLooks(List<Optional<CloseLook>> looks) {
    return written(
        out -> {
          out.writeInt(looks.size());
          for (Optional<CloseLook> look : looks) {
            out.writeBoolean(look.isPresent());
            if (look.isPresent()) {
              write(look.get(), out);
            }
          }
        });
  }

  private static void write(CloseLook look, DataOutputStream out) throws IOException {
    out.writeInt(look.faces().size());
    for (Face face : look.faces()) {
      write(face.box(), out);
      out.writeDouble(face.confidence());
      out.writeDouble(face.facing());
    }
    out.writeInt(look.subjects().size());
    for (Subject subject : look.subjects()) {
      write(subject.box(), out);
      out.writeUTF(subject.what());
      out.writeDouble(subject.confidence());
    }
    out.writeDouble(look.sharpnessThere());
    out.writeBoolean(look.main().isPresent());
    if (look.main().isPresent()) {
      out.writeDouble(look.main().get().clarity());
      out.writeDouble(look.main().get().exposure());
      out.writeDouble(look.main().get().highlights());
    }
  }

  private static void write(PixelBox box, DataOutputStream out) throws IOException {
    out.writeInt(box.x());
    out.writeInt(box.y());
    out.writeInt(box.width());
    out.writeInt(box.height());
  }

  /** Empty when these are not the bytes of close looks. */
  static Optional<List<Optional<CloseLook>>> closeLooks(byte[] bytes) {
    return read(
        bytes,
        in -> {
          List<Optional<CloseLook>> looks = new ArrayList<>();
          for (int left = count(in, bytes.length); left > 0; left--) {
            looks.add(
                in.readBoolean() ? Optional.of(closeLook(in, bytes.length)) : Optional.empty());
          }
          return looks;
        });
  }

  private static CloseLook closeLook(DataInputStream in, int most) throws IOException {
    List<Face> faces = new ArrayList<>();
    for (int left = count(in, most); left > 0; left--) {
      faces.add(new Face(box(in), share(in), share(in)));
    }
    List<Subject> subjects = new ArrayList<>();
    for (int left = count(in, most); left > 0; left--) {
      subjects.add(new Subject(box(in), in.readUTF(), share(in)));
    }
    double sharpness = number(in);
    Optional<MainLook> main =
        in.readBoolean()
            ? Optional.of(new MainLook(number(in), number(in), number(in)))
            : Optional.empty();
    return new CloseLook(faces, subjects, sharpness, main);
  }

  private static double number(DataInputStream in) throws IOException {
    return finite(in.readDouble());
  }

  private static double finite(double value) throws IOException {
    if (!Double.isFinite(value)) {
      throw new IOException("a number that is none");
    }
    return value;
  }

  /** 0 to 1. */
  private static double share(DataInputStream in) throws IOException {
    double value = number(in);
    if (value < 0 || value > 1) {
      throw new IOException("a confidence that cannot be");
    }
    return value;
  }

  private static PixelBox box(DataInputStream in) throws IOException {
    return new PixelBox(in.readInt(), in.readInt(), in.readInt(), in.readInt());
  }

  /** Each thing counted takes a byte at least. */
  private static int count(DataInputStream in, int most) throws IOException {
    int count = in.readInt();
    if (count < 0 || count > most) {
      throw new IOException("a count that cannot be");
    }
    return count;
  }

  private static byte[] written(Writing writing) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      writing.to(out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot be written", e);
    }
    return bytes.toByteArray();
  }

  private static <T> Optional<T> read(byte[] bytes, Reading<T> reading) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      T value = reading.from(in);
      return in.read() < 0 ? Optional.of(value) : Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
