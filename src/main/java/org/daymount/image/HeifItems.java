package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private static final long MOST_DESCRIPTION = 1 << 24;

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

  private record Reference(String type, int from, List<Integer> to) {}

  private final FileBytes bytes;
  private final Map<Integer, String> types = new HashMap<>();
  private final Map<Integer, String> contentTypes = new HashMap<>();
  private final Map<Integer, List<Extent>> extents = new HashMap<>();
  private final Map<Integer, List<Integer>> associations = new HashMap<>();
  private final List<Box> properties = new ArrayList<>();
  private final List<Reference> references = new ArrayList<>();
  private int primary = -1;
  private Box itemData;

  private HeifItems(FileBytes bytes) {
    this.bytes = bytes;
  }

  /**
   * @throws EOFException when a box or an item reaches beyond the end
   * @throws UnusablePicture UNREADABLE when there is no still picture in the file
   */
  static HeifItems read(FileBytes bytes) throws IOException {
    HeifItems items = new HeifItems(bytes);
    IsoBoxes boxes = IsoBoxes.of(bytes);
    for (Box box = boxes.next(); box != null; box = boxes.next()) {
      if (box.name().equals("meta")) {
        items.readDescription(box);
        return items;
      }
    }
    throw broken("has no still picture in it");
  }

  static UnusablePicture broken(String fact) {
    return new UnusablePicture(
        Problem.Kind.UNREADABLE, fact + "; copy it again, or save a JPEG copy of it");
  }

  private void readDescription(Box meta) throws IOException {
    if (meta.length() > MOST_DESCRIPTION) {
      throw broken("describes itself at impossible length");
    }
    List<Box> parts = new ArrayList<>();
    IsoBoxes boxes = new IsoBoxes(bytes, meta.body() + 4, meta.end());
    for (Box box = boxes.next(); box != null; box = boxes.next()) {
      parts.add(box);
      if (box.name().equals("idat")) {
        itemData = box;
      }
    }
    for (Box box : parts) {
      switch (box.name()) {
        case "pitm" -> primary = new Cursor(bytes, box).versioned().id(0);
        case "iinf" -> readItemNames(box);
        case "iloc" -> readPlaces(box);
        case "iref" -> readReferences(box);
        case "iprp" -> readProperties(box);
        default -> {}
      }
    }
  }

  private void readItemNames(Box box) throws IOException {
    Cursor head = new Cursor(bytes, box).versioned();
    head.unsigned(head.version == 0 ? 2 : 4); // how many; the boxes themselves are counted
    IsoBoxes entries = new IsoBoxes(bytes, head.at, box.end());
    for (Box entry = entries.next(); entry != null; entry = entries.next()) {
      if (!entry.name().equals("infe")) {
        continue;
      }
      Cursor cursor = new Cursor(bytes, entry).versioned();
      if (cursor.version < 2) {
        continue; // without a type it is no picture
      }
      int id = cursor.id(2);
      cursor.unsigned(2); // protection
      String type = cursor.name();
      types.put(id, type);
      if (type.equals("mime")) {
        cursor.text(); // the item's name
        contentTypes.put(id, cursor.text());
      }
      refuseCrowd(types.size());
    }
  }

  private static void refuseCrowd(int count) throws UnusablePicture {
    if (count > MOST_ITEMS) {
      throw broken("claims more parts than a picture has");
    }
  }

  /** iloc, 8.11.3. */
  private void readPlaces(Box box) throws IOException {
    Cursor cursor = new Cursor(bytes, box).versioned();
    int sizes = (int) cursor.unsigned(2);
    int offsetSize = sizes >> 12;
    int lengthSize = sizes >> 8 & 15;
    int baseSize = sizes >> 4 & 15;
    int indexSize = cursor.version == 0 ? 0 : sizes & 15;
    long count = cursor.unsigned(cursor.version < 2 ? 2 : 4);
    int all = 0;
    for (long i = 0; i < count; i++) {
      int id = cursor.id(1);
      int method = cursor.version == 0 ? 0 : (int) cursor.unsigned(2) & 15;
      cursor.unsigned(2); // which file: always this one
      long base = cursor.unsigned(baseSize);
      int pieces = (int) cursor.unsigned(2);
      all += Math.max(1, pieces);
      refuseCrowd(all);
      List<Extent> places = new ArrayList<>();
      for (int piece = 0; piece < pieces; piece++) {
        cursor.unsigned(indexSize);
        long from = base + cursor.unsigned(offsetSize);
        long length = cursor.unsigned(lengthSize);
        places.add(place(method, from, length));
      }
      if (method <= 1) { // an item made of other items is no picture of a phone
        extents.put(id, places);
      }
    }
  }

  private Extent place(int method, long from, long length) throws IOException {
    long start = from;
    if (method == 1 && itemData != null) {
      start += itemData.body();
    }
    long end = method == 1 && itemData != null ? itemData.end() : bytes.size();
    long actual = length == 0 ? end - start : length;
    if (method <= 1 && (start < 0 || actual < 0 || actual > end - start)) {
      throw new EOFException();
    }
    return new Extent(start, actual);
  }

  private void readReferences(Box box) throws IOException {
    Cursor head = new Cursor(bytes, box).versioned();
    int width = head.version == 0 ? 2 : 4;
    IsoBoxes entries = new IsoBoxes(bytes, head.at, box.end());
    for (Box entry = entries.next(); entry != null; entry = entries.next()) {
      Cursor cursor = new Cursor(bytes, entry);
      int from = (int) cursor.unsigned(width);
      int count = (int) cursor.unsigned(2);
      List<Integer> to = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        to.add((int) cursor.unsigned(width));
      }
      references.add(new Reference(entry.name(), from, to));
      refuseCrowd(references.size());
    }
  }

  private void readProperties(Box box) throws IOException {
    IsoBoxes boxes = new IsoBoxes(bytes, box.body(), box.end());
    for (Box part = boxes.next(); part != null; part = boxes.next()) {
      if (part.name().equals("ipco")) {
        IsoBoxes each = new IsoBoxes(bytes, part.body(), part.end());
        for (Box property = each.next(); property != null; property = each.next()) {
          properties.add(property);
          refuseCrowd(properties.size());
        }
      } else if (part.name().equals("ipma")) {
        readAssociations(part);
      }
    }
  }

  /** ipma, ISO/IEC 23008-12, 9.3: one byte or two for each, the top bit says "essential". */
  private void readAssociations(Box box) throws IOException {
    Cursor cursor = new Cursor(bytes, box).versioned();
    boolean wide = (cursor.flags & 1) == 1;
    long count = cursor.unsigned(4);
    int all = 0;
    for (long i = 0; i < count; i++) {
      int id = cursor.version == 0 ? (int) cursor.unsigned(2) : (int) cursor.unsigned(4);
      int here = (int) cursor.unsigned(1);
      all += Math.max(1, here);
      refuseCrowd(all / 8);
      List<Integer> indexes = new ArrayList<>();
      for (int j = 0; j < here; j++) {
        int index = (int) (wide ? cursor.unsigned(2) & 0x7fff : cursor.unsigned(1) & 0x7f);
        indexes.add(index - 1); // 0 means none
      }
      associations.put(id, indexes);
    }
  }

  Item primary() throws UnusablePicture {
    return item(primary);
  }

  private Item item(int id) throws UnusablePicture {
    String type = types.get(id);
    if (type == null || !extents.containsKey(id)) {
      throw broken("names a picture that is not in it");
    }
    List<Box> own = new ArrayList<>();
    for (int index : associations.getOrDefault(id, List.of())) {
      if (index >= 0 && index < properties.size()) {
        own.add(properties.get(index));
      }
    }
    return new Item(id, type, contentTypes.getOrDefault(id, ""), extents.get(id), own);
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
          && types.containsKey(reference.from())
          && extents.containsKey(reference.from())) {
        found.add(item(reference.from()));
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

  /** Reads on from a position, inside one box. */
  static final class Cursor {
    private final FileBytes bytes;
    private final long end;
    private long at;
    private int version;
    private int flags;

    Cursor(FileBytes bytes, Box box) {
      this.bytes = bytes;
      this.at = box.body();
      this.end = box.end();
    }

    /** Past the version and flags of a full box. */
    Cursor versioned() throws IOException {
      version = (int) unsigned(1);
      flags = (int) unsigned(3);
      return this;
    }

    long unsigned(int width) throws IOException {
      if (at + width > end) {
        throw new EOFException();
      }
      long value = 0;
      for (int i = 0; i < width; i++) {
        value = value << 8 | bytes.u8(at++);
      }
      return value;
    }

    /** An item's number: two bytes up to that version of the box, four above it. */
    int id(int lastNarrowVersion) throws IOException {
      return (int) unsigned(version <= lastNarrowVersion ? 2 : 4);
    }

    String name() throws IOException {
      String name = bytes.name(at);
      unsigned(4);
      return name;
    }

    /** Up to a zero byte; at most 200 characters are kept. */
    String text() throws IOException {
      StringBuilder text = new StringBuilder();
      while (at < end) {
        int c = (int) unsigned(1);
        if (c == 0) {
          break;
        }
        if (text.length() < 200) {
          text.append((char) c);
        }
      }
      return text.toString();
    }
  }
}
