package org.daymount.sample;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes an EXIF block as phones do (CIPA DC-008 and TIFF 6.0, big-endian): IFD0, Exif IFD, GPS
 * IFD, and IFD1 with a thumbnail.
 */
final class Exif {
  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;
  private static final int UNDEFINED = 7;

  private record Entry(int tag, int type, int count, byte[] value) {}

  private final List<Entry> main = new ArrayList<>();
  private final List<Entry> exif = new ArrayList<>();
  private final List<Entry> gps = new ArrayList<>();
  private byte[] thumbnail = {};

  Exif camera(String make, String model, String software) {
    text(main, 0x010f, make);
    text(main, 0x0110, model);
    text(main, 0x0131, software);
    resolution(main);
    number(main, 0x0213, SHORT, 1);
    exif.add(new Entry(0x9101, UNDEFINED, 4, new byte[] {1, 2, 3, 0}));
    exif.add(new Entry(0xa000, UNDEFINED, 4, "0100".getBytes(StandardCharsets.US_ASCII)));
    return this;
  }

  Exif orientation(int value) {
    number(main, 0x0112, SHORT, value);
    return this;
  }

  /** "2026:06:03 18:04:11"; fraction and offset may be empty. */
  Exif taken(String dateTime, String fraction, String offset) {
    text(main, 0x0132, dateTime);
    text(exif, 0x9003, dateTime);
    text(exif, 0x9004, dateTime);
    if (!fraction.isEmpty()) {
      text(exif, 0x9291, fraction);
      text(exif, 0x9292, fraction);
    }
    if (!offset.isEmpty()) {
      text(exif, 0x9010, offset);
      text(exif, 0x9011, offset);
    }
    return this;
  }

  Exif settings(int shutterPer, int fNumberTenths, int iso, int focalHundredths, int equivalent) {
    rational(exif, 0x829a, 1, shutterPer);
    rational(exif, 0x829d, fNumberTenths, 10);
    number(exif, 0x8827, SHORT, iso);
    exif.add(new Entry(0x9000, UNDEFINED, 4, "0232".getBytes(StandardCharsets.US_ASCII)));
    rational(exif, 0x920a, focalHundredths, 100);
    number(exif, 0xa405, SHORT, equivalent);
    return this;
  }

  Exif size(int width, int height, int colourSpace) {
    number(exif, 0xa001, SHORT, colourSpace);
    number(exif, 0xa002, LONG, width);
    number(exif, 0xa003, LONG, height);
    return this;
  }

  /** Degrees; the time is UTC as GPS has it. */
  Exif place(double latitude, double longitude, String utcDate, int utcSeconds) {
    gps.add(new Entry(0, 1, 4, new byte[] {2, 3, 0, 0}));
    text(gps, 1, latitude >= 0 ? "N" : "S");
    gps.add(new Entry(2, RATIONAL, 3, degrees(latitude)));
    text(gps, 3, longitude >= 0 ? "E" : "W");
    gps.add(new Entry(4, RATIONAL, 3, degrees(longitude)));
    ByteArrayOutputStream time = new ByteArrayOutputStream();
    int[] parts = {utcSeconds / 3600, utcSeconds / 60 % 60, utcSeconds % 60};
    for (int part : parts) {
      write(time, part, 4);
      write(time, 1, 4);
    }
    gps.add(new Entry(7, RATIONAL, 3, time.toByteArray()));
    text(gps, 0x1d, utcDate);
    return this;
  }

  Exif thumbnail(byte[] jpeg) {
    thumbnail = jpeg;
    return this;
  }

  /** 72 to the inch: what phones write where nothing is known (CIPA DC-008). */
  private static void resolution(List<Entry> to) {
    rational(to, 0x011a, 72, 1);
    rational(to, 0x011b, 72, 1);
    number(to, 0x0128, SHORT, 2);
  }

  private static byte[] degrees(double value) {
    double d = Math.abs(value);
    int whole = (int) d;
    int minutes = (int) ((d - whole) * 60);
    int hundredths = (int) Math.round(((d - whole) * 60 - minutes) * 6000);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write(out, whole, 4);
    write(out, 1, 4);
    write(out, minutes, 4);
    write(out, 1, 4);
    write(out, hundredths, 4);
    write(out, 100, 4);
    return out.toByteArray();
  }

  private static void text(List<Entry> to, int tag, String text) {
    byte[] value = (text + "\0").getBytes(StandardCharsets.US_ASCII);
    to.add(new Entry(tag, ASCII, value.length, value));
  }

  private static void number(List<Entry> to, int tag, int type, int value) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write(out, value, type == SHORT ? 2 : 4);
    to.add(new Entry(tag, type, 1, out.toByteArray()));
  }

  private static void rational(List<Entry> to, int tag, int over, int under) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write(out, over, 4);
    write(out, under, 4);
    to.add(new Entry(tag, RATIONAL, 1, out.toByteArray()));
  }

  private static void write(ByteArrayOutputStream out, int value, int bytes) {
    for (int shift = (bytes - 1) * 8; shift >= 0; shift -= 8) {
      out.write(value >>> shift & 255);
    }
  }

  private static int size(List<Entry> entries) {
    int size = 2 + 12 * entries.size() + 4;
    for (Entry e : entries) {
      size += e.value.length > 4 ? e.value.length + (e.value.length & 1) : 0;
    }
    return size;
  }

  /** The whole content of an APP1 segment, from "Exif" on. */
  byte[] bytes() {
    List<Entry> first = new ArrayList<>(main);
    number(first, 0x8769, LONG, 0);
    if (!gps.isEmpty()) {
      number(first, 0x8825, LONG, 0);
    }
    int atExif = 8 + size(first);
    int atGps = atExif + size(exif);
    int atSecond = atGps + (gps.isEmpty() ? 0 : size(gps));
    first.removeIf(e -> e.tag == 0x8769 || e.tag == 0x8825);
    number(first, 0x8769, LONG, atExif);
    if (!gps.isEmpty()) {
      number(first, 0x8825, LONG, atGps);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII));
    write(out, 8, 4);
    boolean second = thumbnail.length > 0;
    directory(out, first, 8, second ? atSecond : 0);
    directory(out, exif, atExif, 0);
    if (!gps.isEmpty()) {
      directory(out, gps, atGps, 0);
    }
    if (second) {
      List<Entry> small = new ArrayList<>();
      number(small, 0x0103, SHORT, 6);
      resolution(small);
      number(small, 0x0202, LONG, thumbnail.length);
      number(small, 0x0201, LONG, atSecond + size(small) + 12);
      directory(out, small, atSecond, 0);
      out.writeBytes(thumbnail);
    }
    return out.toByteArray();
  }

  private static void directory(ByteArrayOutputStream out, List<Entry> unsorted, int at, int next) {
    List<Entry> entries = new ArrayList<>(unsorted);
    entries.sort((a, b) -> Integer.compare(a.tag, b.tag));
    ByteArrayOutputStream beyond = new ByteArrayOutputStream();
    int values = at + 2 + 12 * entries.size() + 4;
    write(out, entries.size(), 2);
    for (Entry e : entries) {
      write(out, e.tag, 2);
      write(out, e.type, 2);
      write(out, e.count, 4);
      if (e.value.length <= 4) {
        out.writeBytes(e.value);
        for (int i = e.value.length; i < 4; i++) {
          out.write(0);
        }
      } else {
        write(out, values + beyond.size(), 4);
        beyond.writeBytes(e.value);
        if ((e.value.length & 1) == 1) {
          beyond.write(0);
        }
      }
    }
    write(out, next, 4);
    out.writeBytes(beyond.toByteArray());
  }
}
