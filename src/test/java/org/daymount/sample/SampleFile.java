package org.daymount.sample;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One file of the folder: its name and how its bytes come about. */
interface SampleFile {
  /** The copy that came back through a chat: smaller, coded again, without EXIF. */
  String CHAT_COPY = "IMG-20260612-WA0003.jpg";

  /** What the chat copy was made from. */
  String CHAT_ORIGINAL = "20260612_211408.jpg";

  /** Copied from the phone only in part. */
  String CUT_OFF = "20260618_184011.jpg";

  /** In a phone's wide gamut, with its profile. */
  String WIDE_GAMUT = "20260618_102245.jpg";

  String name();

  byte[] paint() throws IOException;

  /** Every picture of the month, in order of name. */
  static List<SampleFile> all() {
    List<SampleFile> files = new ArrayList<>();
    for (Shot shot : Scenario.shots()) {
      files.add(of(shot.name(), () -> photo(shot)));
      if (shot.name().equals(CHAT_ORIGINAL)) {
        files.add(of(CHAT_COPY, () -> chatCopy(shot)));
      }
    }
    files.add(of(Screenshot.NAME, Screenshot::png));
    files.sort((a, b) -> a.name().compareTo(b.name()));
    return files;
  }

  /** Bytes that may fail to be written. */
  @FunctionalInterface
  interface Bytes {
    byte[] get() throws IOException;
  }

  private static SampleFile of(String name, Bytes bytes) {
    return new SampleFile() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public byte[] paint() throws IOException {
        return bytes.get();
      }
    };
  }

  private static byte[] chatCopy(Shot shot) throws IOException {
    BufferedImage upright = Studio.take(shot, 1);
    return Jpeg.encode(Jpeg.scaled(upright, 1280, 960), .7);
  }

  private static byte[] photo(Shot shot) throws IOException {
    BufferedImage upright = Studio.take(shot, 1);
    boolean wide = shot.name().equals(WIDE_GAMUT);
    if (wide) {
      WideGamut.convert(upright);
    }
    BufferedImage stored = Jpeg.stored(upright, shot.orientation());
    byte[] jpeg = Jpeg.encode(stored, .84);
    byte[] icc = wide ? WideGamut.profile() : new byte[0];
    byte[] whole = Jpeg.with(jpeg, exif(shot, stored, wide), icc);
    return shot.name().equals(CUT_OFF) ? Arrays.copyOf(whole, whole.length * 3 / 5) : whole;
  }

  private static byte[] exif(Shot shot, BufferedImage stored, boolean wide) throws IOException {
    Shot.Phone phone = shot.phone();
    String clock = shot.clock().replace('-', ':').replace('T', ' ');
    boolean dark = shot.grain() > 1.2;
    Exif exif =
        new Exif()
            .camera(phone.make, phone.model, phone.software)
            .orientation(shot.orientation())
            .taken(clock, shot.fraction(), shot.offset())
            .settings(
                dark ? 15 : 640,
                phone.fNumberTenths,
                dark ? 1600 : 64,
                phone.focalHundredths,
                phone.equivalent)
            .size(stored.getWidth(), stored.getHeight(), wide ? 0xffff : 1);
    if (shot.place()) {
      // open sea, nobody's home: an invented spot in the North Atlantic
      int hours = Integer.parseInt(shot.clock().substring(11, 13));
      int minutes = Integer.parseInt(shot.clock().substring(14, 16));
      int ahead = phone == Shot.Phone.TARN ? 1 : 2;
      exif.place(
          52.5 + hours * .001,
          -28.25 - minutes * .0005,
          clock.substring(0, 10),
          (hours - ahead) * 3600 + minutes * 60 + 11);
    }
    if (shot.thumbnail()) {
      boolean tall = stored.getHeight() > stored.getWidth();
      exif.thumbnail(Jpeg.encode(Jpeg.scaled(stored, tall ? 120 : 160, tall ? 160 : 120), .7));
    }
    return exif.bytes();
  }
}
