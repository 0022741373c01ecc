package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daymount.file.FileBytes;
import org.daymount.image.HeifItems.Extent;
import org.daymount.image.HeifItems.Item;
import org.daymount.image.HeifItems.Reference;
import org.daymount.image.IsoBoxes.Box;

/** Reads the box that describes a HEIF file's items; for one file. */
final class HeifItemsReader {
  private static final long MOST_DESCRIPTION = 1 << 24;

  private final FileBytes bytes;
  private final Map<Integer, String> types = new HashMap<>();
  private final Map<Integer, String> contentTypes = new HashMap<>();
  private final Map<Integer, List<Extent>> extents = new HashMap<>();
  private final Map<Integer, List<Integer>> associations = new HashMap<>();
  private final List<Box> properties = new ArrayList<>();
  private final List<Reference> references = new ArrayList<>();
  private int primary = -1;
  private Box itemData;

  HeifItemsReader(FileBytes bytes) {
    this.bytes = bytes;
  }

  /**
   * @throws EOFException when a box or an item reaches beyond the end
   */
  HeifItems read(Box meta) throws IOException {
    if (meta.length() > MOST_DESCRIPTION) {
      throw HeifItems.broken("describes itself at impossible length");
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
        case "pitm" -> primary = new BoxCursor(bytes, box).versioned().id(0);
        case "iinf" -> readItemNames(box);
        case "iloc" -> readPlaces(box);
        case "iref" -> readReferences(box);
        case "iprp" -> readProperties(box);
        default -> {}
      }
    }
    return new HeifItems(bytes, primary, items(), references);
  }

  private Map<Integer, Item> items() {
    Map<Integer, Item> items = new HashMap<>();
    extents.forEach(
        (id, places) -> {
          String type = types.get(id);
          if (type != null) {
            String contentType = contentTypes.getOrDefault(id, "");
            items.put(id, new Item(id, type, contentType, places, propertiesOf(id)));
          }
        });
    return items;
  }

  private List<Box> propertiesOf(int item) {
    return associations.getOrDefault(item, List.of()).stream()
        .filter(index -> index >= 0 && index < properties.size())
        .map(properties::get)
        .toList();
  }

  private void readItemNames(Box box) throws IOException {
    BoxCursor head = new BoxCursor(bytes, box).versioned();
    head.unsigned(head.version() == 0 ? 2 : 4); // how many; the boxes themselves are counted
    IsoBoxes entries = new IsoBoxes(bytes, head.at(), box.end());
    for (Box entry = entries.next(); entry != null; entry = entries.next()) {
      if (!entry.name().equals("infe")) {
        continue;
      }
      BoxCursor cursor = new BoxCursor(bytes, entry).versioned();
      if (cursor.version() < 2) {
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
      HeifItems.refuseCrowd(types.size());
    }
  }

  /** iloc, 8.11.3. */
  private void readPlaces(Box box) throws IOException {
    BoxCursor cursor = new BoxCursor(bytes, box).versioned();
    int sizes = (int) cursor.unsigned(2);
    int offsetSize = sizes >> 12;
    int lengthSize = sizes >> 8 & 15;
    int baseSize = sizes >> 4 & 15;
    int indexSize = cursor.version() == 0 ? 0 : sizes & 15;
    long count = cursor.unsigned(cursor.version() < 2 ? 2 : 4);
    int all = 0;
    for (long i = 0; i < count; i++) {
      int id = cursor.id(1);
      int method = cursor.version() == 0 ? 0 : (int) cursor.unsigned(2) & 15;
      cursor.unsigned(2); // which file: always this one
      long base = cursor.unsigned(baseSize);
      int pieces = (int) cursor.unsigned(2);
      all += Math.max(1, pieces);
      HeifItems.refuseCrowd(all);
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
    BoxCursor head = new BoxCursor(bytes, box).versioned();
    int width = head.version() == 0 ? 2 : 4;
    IsoBoxes entries = new IsoBoxes(bytes, head.at(), box.end());
    for (Box entry = entries.next(); entry != null; entry = entries.next()) {
      BoxCursor cursor = new BoxCursor(bytes, entry);
      int from = (int) cursor.unsigned(width);
      int count = (int) cursor.unsigned(2);
      List<Integer> to = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        to.add((int) cursor.unsigned(width));
      }
      references.add(new Reference(entry.name(), from, to));
      HeifItems.refuseCrowd(references.size());
    }
  }

  private void readProperties(Box box) throws IOException {
    IsoBoxes boxes = new IsoBoxes(bytes, box.body(), box.end());
    for (Box part = boxes.next(); part != null; part = boxes.next()) {
      if (part.name().equals("ipco")) {
        IsoBoxes each = new IsoBoxes(bytes, part.body(), part.end());
        for (Box property = each.next(); property != null; property = each.next()) {
          properties.add(property);
          HeifItems.refuseCrowd(properties.size());
        }
      } else if (part.name().equals("ipma")) {
        readAssociations(part);
      }
    }
  }

  /** ipma, ISO/IEC 23008-12, 9.3: one byte or two for each, the top bit says "essential". */
  private void readAssociations(Box box) throws IOException {
    BoxCursor cursor = new BoxCursor(bytes, box).versioned();
    boolean wide = (cursor.flags() & 1) == 1;
    long count = cursor.unsigned(4);
    int all = 0;
    for (long i = 0; i < count; i++) {
      int id = cursor.version() == 0 ? (int) cursor.unsigned(2) : (int) cursor.unsigned(4);
      int here = (int) cursor.unsigned(1);
      all += Math.max(1, here);
      HeifItems.refuseCrowd(all / 8);
      List<Integer> indexes = new ArrayList<>();
      for (int j = 0; j < here; j++) {
        int index = (int) (wide ? cursor.unsigned(2) & 0x7fff : cursor.unsigned(1) & 0x7f);
        indexes.add(index - 1); // 0 means none
      }
      associations.put(id, indexes);
    }
  }
}
