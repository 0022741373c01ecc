package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.daymount.file.FileBytes;

/**
 * HEIF files put together by the tests (ISO/IEC 14496-12, 8.11; ISO/IEC 23008-12): tiles coded by
 * heif-enc, in whatever grid, turn, mirroring, cut and colours a test wants.
 */
final class HeifFiles {
  /** A picture as heif-enc coded it. */
  record Coded(byte[] configuration, byte[] data, int width, int height) {}

  private final List<Coded> tiles = new ArrayList<>();
  private final List<byte[]> changes = new ArrayList<>();
  private final List<byte[]> colours = new ArrayList<>();
  private int columns = 1;
  private int width;
  private int height;
  private byte[] exif;
  private Coded thumbnail;

  /** Coded without loss but for the colours, which are shared by 2 x 2 pixels, as on phones. */
  static Coded coded(BufferedImage picture, Path folder) throws IOException {
    Path png = folder.resolve("tile.png");
    Path heic = folder.resolve("tile.heic");
    ImageIO.write(picture, "png", png.toFile());
    Tool.orSkip("heif-enc", "--help").run("-q", "95", "-o", heic.toString(), png.toString());
    try (FileBytes bytes = FileBytes.open(heic)) {
      HeifItems items = HeifItems.read(bytes);
      HeifPicture read = HeifPicture.primary(bytes, items);
      HeifItems.Item tile = read.tiles().get(0);
      IsoBoxes.Box configuration = tile.property("hvcC").orElseThrow();
      return new Coded(
          bytes.copy(configuration.body(), (int) configuration.length()),
          items.data(tile, 1 << 24),
          read.tile().width(),
          read.tile().height());
    }
  }

  static HeifFiles single(BufferedImage picture, Path folder) throws IOException {
    HeifFiles file = new HeifFiles();
    Coded coded = coded(picture, folder);
    file.tiles.add(coded);
    file.width = coded.width();
    file.height = coded.height();
    return file;
  }

  /** Tiles of that size laid over the picture; those at its edges are filled up with its edge. */
  static HeifFiles grid(BufferedImage picture, int tile, Path folder) throws IOException {
    HeifFiles file = new HeifFiles();
    file.width = picture.getWidth();
    file.height = picture.getHeight();
    file.columns = (file.width + tile - 1) / tile;
    for (int top = 0; top < file.height; top += tile) {
      for (int left = 0; left < file.width; left += tile) {
        BufferedImage part = new BufferedImage(tile, tile, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < tile; y++) {
          for (int x = 0; x < tile; x++) {
            int fromX = Math.min(left + x, file.width - 1);
            int fromY = Math.min(top + y, file.height - 1);
            part.setRGB(x, y, picture.getRGB(fromX, fromY));
          }
        }
        file.tiles.add(coded(part, folder));
      }
    }
    return file;
  }

  HeifFiles turnedAntiClockwise(int quarters) {
    changes.add(box("irot", new byte[] {(byte) quarters}));
    return this;
  }

  HeifFiles mirrored(int mode) {
    changes.add(box("imir", new byte[] {(byte) mode}));
    return this;
  }

  HeifFiles cut(int cutWidth, int cutHeight) {
    changes.add(
        box(
            "clap",
            numbers(cutWidth, 1, cutHeight, 1, cutWidth - width, 2, cutHeight - height, 2)));
    return this;
  }

  HeifFiles profile(byte[] icc) {
    colours.add(box("colr", join(ascii("prof"), icc)));
    return this;
  }

  HeifFiles colour(int primaries, int transfer, int matrix, boolean full) {
    byte[] points = {
      0, (byte) primaries, 0, (byte) transfer, 0, (byte) matrix, (byte) (full ? 0x80 : 0)
    };
    colours.add(box("colr", join(ascii("nclx"), points)));
    return this;
  }

  HeifFiles exif(byte[] tiff) {
    exif = join(numbers(0), tiff);
    return this;
  }

  HeifFiles thumbnail(Coded small) {
    thumbnail = small;
    return this;
  }

  byte[] bytes() {
    boolean grid = tiles.size() > 1;
    int primary = grid ? tiles.size() + 1 : 1;
    List<byte[]> data = new ArrayList<>();
    List<String> types = new ArrayList<>();
    List<byte[]> references = new ArrayList<>();
    List<byte[]> properties = new ArrayList<>();
    List<int[]> used = new ArrayList<>(); // of each item, its properties by number
    for (Coded tile : tiles) {
      data.add(tile.data());
      types.add("hvc1");
      used.add(own(tile, properties));
    }
    if (grid) {
      data.add(
          new byte[] {
            0,
            0,
            (byte) (tiles.size() / columns - 1),
            (byte) (columns - 1),
            (byte) (width >> 8),
            (byte) width,
            (byte) (height >> 8),
            (byte) height
          });
      types.add("grid");
      properties.add(box("ispe", numbers(0, width, height)));
      used.add(new int[] {properties.size()});
      references.add(reference("dimg", primary, tiles.size()));
    }
    List<byte[]> more = new ArrayList<>(colours);
    more.addAll(changes);
    for (byte[] property : more) {
      properties.add(property);
      used.set(primary - 1, with(used.get(primary - 1), properties.size()));
    }
    if (exif != null) {
      data.add(exif);
      types.add("Exif");
      used.add(new int[0]);
      references.add(box("cdsc", shorts(data.size(), 1, primary)));
    }
    if (thumbnail != null) {
      data.add(thumbnail.data());
      types.add("hvc1");
      int[] all = own(thumbnail, properties);
      for (byte[] change : changes) {
        properties.add(change);
        all = with(all, properties.size());
      }
      used.add(all);
      references.add(box("thmb", shorts(data.size(), 1, primary)));
    }
    byte[] head = box("ftyp", join(ascii("heic"), numbers(0), ascii("mif1"), ascii("heic")));
    int length = meta(primary, data, types, references, properties, used, 0).length;
    int start = head.length + length + 8;
    byte[] meta = meta(primary, data, types, references, properties, used, start);
    return join(head, meta, box("mdat", join(data.toArray(byte[][]::new))));
  }

  private static int[] own(Coded tile, List<byte[]> properties) {
    properties.add(box("hvcC", tile.configuration()));
    properties.add(box("ispe", numbers(0, tile.width(), tile.height())));
    return new int[] {properties.size() - 1, properties.size()};
  }

  private static int[] with(int[] numbers, int one) {
    int[] more = java.util.Arrays.copyOf(numbers, numbers.length + 1);
    more[numbers.length] = one;
    return more;
  }

  private static byte[] reference(String name, int from, int upTo) {
    int[] numbers = new int[upTo + 2];
    numbers[0] = from;
    numbers[1] = upTo;
    for (int i = 1; i <= upTo; i++) {
      numbers[i + 1] = i;
    }
    return box(name, shorts(numbers));
  }

  private static byte[] meta(
      int primary,
      List<byte[]> data,
      List<String> types,
      List<byte[]> references,
      List<byte[]> properties,
      List<int[]> used,
      int start) {
    byte[] names = join(numbers(0), shorts(data.size()));
    byte[] places = join(numbers(0), new byte[] {0x44, 0}, shorts(data.size()));
    byte[] owners = numbers(0, data.size());
    int at = start;
    for (int i = 0; i < data.size(); i++) {
      int hidden = i + 1 < primary ? 1 : 0; // tiles are no pictures of their own
      byte[] name =
          join(numbers(2 << 24 | hidden), shorts(i + 1, 0), ascii(types.get(i)), new byte[1]);
      names = join(names, box("infe", name));
      places = join(places, shorts(i + 1, 0, 1), numbers(at, data.get(i).length));
      at += data.get(i).length;
      owners = join(owners, shorts(i + 1), new byte[] {(byte) used.get(i).length});
      for (int property : used.get(i)) {
        owners = join(owners, new byte[] {(byte) property});
      }
    }
    byte[] handler = join(numbers(0, 0), ascii("pict"), new byte[13]);
    return box(
        "meta",
        join(
            numbers(0),
            box("hdlr", handler),
            box("pitm", join(numbers(0), shorts(primary))),
            box("iinf", names),
            box("iloc", places),
            box("iref", join(numbers(0), join(references.toArray(byte[][]::new)))),
            box(
                "iprp",
                join(box("ipco", join(properties.toArray(byte[][]::new))), box("ipma", owners)))));
  }

  private static byte[] box(String name, byte[] body) {
    return join(numbers(body.length + 8), ascii(name), body);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] numbers(int... values) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (DataOutputStream data = new DataOutputStream(out)) {
      for (int value : values) {
        data.writeInt(value);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static byte[] shorts(int... values) {
    byte[] bytes = new byte[2 * values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[2 * i] = (byte) (values[i] >> 8);
      bytes[2 * i + 1] = (byte) values[i];
    }
    return bytes;
  }

  private static byte[] join(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }

  Path write(Path file) throws IOException {
    return Files.write(file, bytes());
  }
}
