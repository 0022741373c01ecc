package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.IsoBoxes.Box;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/**
 * The items of a HEIF file: pictures, parts of pictures and blocks of tags, where their bytes lie
 * and what is said of them (ISO/IEC 14496-12:2015, 8.11; ISO/IEC 23008-12). What a file may claim
 * is bounded: the describing box to 16 MiB, the items and their properties to 20,000 each.
 */
final class HeifItems {
  private static final int MOST_ITEMS = 20_000;

  /** A stretch of the file. */
  record Extent(long from, long length) {}

  /**
   * @param type four letters: hvc1, av01, grid, Exif, mime …
   * @param contentType of an item of type mime; empty for others
   * @param properties in the order in which they apply
   */
  record Item(int id, String type, String contentType, List<Extent> extents, List<Box> properties) {

    /** The first property of that name. */
    Optional<Box> property(String name) {
      return properties.stream().filter(property -> property.name().equals(name)).findFirst();
    }

    long length() {
      return extents.stream().mapToLong(Extent::length).sum();
    }
  }

  /** Of one item to others: what it is made of, or what it is about. */
  record Reference(String type, int from, List<Integer> to) {}

  private final FileBytes bytes;
  private final int primary;
  private final Map<Integer, Item> items;
  private final List<Reference> references;

  HeifItems(FileBytes bytes, int primary, Map<Integer, Item> items, List<Reference> references) {
    this.bytes = bytes;
    this.primary = primary;
    this.items = items;
    this.references = references;
  }

  /**
   * @throws EOFException when a box or an item reaches beyond the end
   * @throws UnusablePicture UNREADABLE when there is no still picture in the file
   */
  static HeifItems read(FileBytes bytes) throws IOException {
    IsoBoxes boxes = IsoBoxes.of(bytes);
    for (Box box = boxes.next(); box != null; box = boxes.next()) {
      if (box.name().equals("meta")) {
        return new HeifItemsReader(bytes).read(box);
      }
    }
    throw broken("has no still picture in it");
  }

  static UnusablePicture broken(String fact) {
    return new UnusablePicture(
        Problem.Kind.UNREADABLE, fact + "; copy it again, or save a JPEG copy of it");
  }

  static void refuseCrowd(int count) throws UnusablePicture {
    if (count > MOST_ITEMS) {
      throw broken("claims more parts than a picture has");
    }
  }

  Item primary() throws UnusablePicture {
    return item(primary);
  }

  private Item item(int id) throws UnusablePicture {
    Item item = items.get(id);
    if (item == null) {
      throw broken("names a picture that is not in it");
    }
    return item;
  }

  /** What an item is made of or refers to otherwise, in order. */
  List<Item> referredTo(String type, Item from) throws UnusablePicture {
    List<Item> found = new ArrayList<>();
    for (Reference reference : references) {
      if (reference.type().equals(type) && reference.from() == from.id()) {
        for (int id : reference.to()) {
          found.add(item(id));
          refuseCrowd(found.size());
        }
      }
    }
    return found;
  }

  /** The items that say something about another: its thumbnails (thmb), its tags (cdsc). */
  List<Item> about(String type, Item subject) throws UnusablePicture {
    List<Item> found = new ArrayList<>();
    for (Reference reference : references) {
      if (reference.type().equals(type)
          && reference.to().contains(subject.id())
          && items.containsKey(reference.from())) {
        found.add(items.get(reference.from()));
      }
    }
    return found;
  }

  /**
   * An item's bytes.
   *
   * @throws UnusablePicture when there are more than {@code most}
   */
  byte[] data(Item item, int most) throws IOException {
    if (item.length() > most) {
      throw broken("has a part of impossible length");
    }
    byte[] all = new byte[(int) item.length()];
    int filled = 0;
    for (Extent extent : item.extents()) {
      byte[] part = bytes.copy(extent.from(), (int) extent.length());
      System.arraycopy(part, 0, all, filled, part.length);
      filled += part.length;
    }
    return all;
  }
}
