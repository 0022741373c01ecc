package org.daymount.clip;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.problem.UnusablePicture;

/**
 * A box of a clip's description, which lies in memory (ISO/IEC 14496-12, 4.2).
 *
 * @param body behind the box's header; its position is never moved
 */
record Box(String name, ByteBuffer body) {
  private static final int HEADER = 8;
  private static final int MOST_CHILDREN = 10_000;

  static String name(ByteBuffer bytes, int at) {
    byte[] letters = new byte[4];
    bytes.get(at, letters);
    return new String(letters, StandardCharsets.ISO_8859_1);
  }

  /** The boxes in this one, behind {@code skipped} bytes of its body. */
  List<Box> children(int skipped) throws UnusablePicture {
    List<Box> children = new ArrayList<>();
    int at = skipped;
    while (at + HEADER <= body.limit()) { // QuickTime may end a list with four zeros
      long length = body.getInt(at) & 0xffffffffL;
      if (length == 0) { // to the end
        length = body.limit() - at;
      }
      if (length < HEADER || length > body.limit() - at) {
        throw ClipFile.broken("describes itself wrongly");
      }
      if (children.size() == MOST_CHILDREN) {
        throw ClipFile.broken("describes itself in more parts than a clip has");
      }
      children.add(new Box(name(body, at + 4), body.slice(at + HEADER, (int) length - HEADER)));
      at += (int) length;
    }
    return children;
  }

  Optional<Box> child(String wanted) throws UnusablePicture {
    return first(children(0), wanted);
  }

  static Optional<Box> first(List<Box> boxes, String wanted) {
    return boxes.stream().filter(box -> box.name().equals(wanted)).findFirst();
  }

  Box needed(String wanted) throws UnusablePicture {
    return child(wanted)
        .orElseThrow(
            () -> ClipFile.broken("does not say where its pictures lie (no " + wanted + ")"));
  }

  /** Version of a full box. */
  int version() {
    return body.get(0);
  }

  long u32(int at) {
    return body.getInt(at) & 0xffffffffL;
  }

  int u16(int at) {
    return body.getShort(at) & 0xffff;
  }

  byte[] bytes() {
    byte[] all = new byte[body.limit()];
    body.get(0, all);
    return all;
  }

  /** From a position to the end, at most 200 bytes of it. */
  String text(int at) {
    byte[] text = new byte[Math.max(0, Math.min(200, body.limit() - at))];
    if (text.length > 0) {
      body.get(at, text);
    }
    return new String(text, StandardCharsets.UTF_8).replace('\0', ' ').strip();
  }
}
