package org.daymount.image;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.MarkerReader;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.UnusablePicture;

/**
 * The blocks of tags in a JPEG, PNG, WebP, HEIF or AVIF file, cut out but not understood: the EXIF
 * block (a TIFF structure, without its "Exif" heading), the XMP packet and a PNG's texts. At most
 * 16 MiB of each, whatever the file claims, and at most 1 MiB out of each of the first 200
 * compressed texts. What comes after a break in the file is missing, never an error.
 */
public final class TagBlocks {
  private static final int MOST_BYTES = 1 << 24;
  private static final int MOST_TEXT = 1 << 20;
  private static final int MOST_TEXTS = 200;
  private static final String EXIF_HEADING = "Exif\0";
  private static final String XMP_HEADING = "http://ns.adobe.com/xap/1.0/\0";
  private static final String XMP_KEYWORD = "XML:com.adobe.xmp";

  private byte[] exif;
  private byte[] xmp;
  private byte[] lastModified;
  private final Map<String, String> texts = new LinkedHashMap<>();
  private int inflatedTexts;

  private TagBlocks() {}

  /** Other formats give empty blocks. */
  public static TagBlocks read(Path file, PhotoFormat format) throws IOException {
    TagBlocks blocks = new TagBlocks();
    try (FileBytes bytes = FileBytes.open(file)) {
      switch (format) {
        case JPEG -> blocks.readJpeg(bytes);
        case PNG -> blocks.readPng(bytes);
        case WEBP -> blocks.readWebp(bytes);
        case HEIF, AVIF -> blocks.readHeif(bytes);
        default -> {}
      }
    } catch (EOFException | UnusablePicture e) {
      // a file that is cut off still has the blocks before the cut
    }
    return blocks;
  }

  public Optional<byte[]> exif() {
    return Optional.ofNullable(exif);
  }

  public Optional<byte[]> xmp() {
    return Optional.ofNullable(xmp);
  }

  /** The texts of a PNG by their keywords; the first of each keyword. */
  public Map<String, String> texts() {
    return Map.copyOf(texts);
  }

  /**
   * The seven bytes of a PNG's tIME chunk: year (2 bytes, big-endian), month, day, h, m, s, UTC.
   */
  public Optional<byte[]> lastModified() {
    return Optional.ofNullable(lastModified);
  }

  private void readJpeg(FileBytes bytes) throws IOException {
    MarkerReader markers = new MarkerReader(bytes);
    while (markers.advance() && !markers.isScan()) {
      if (markers.marker() != MarkerReader.APP1) {
        continue;
      }
      long body = markers.position();
      int length = (int) Math.min(markers.left(), bytes.size() - body);
      if (exif == null && bytes.has(body, EXIF_HEADING) && length > 6) {
        exif = bytes.copy(body + 6, length - 6);
      } else if (xmp == null && bytes.has(body, XMP_HEADING) && length > XMP_HEADING.length()) {
        xmp = bytes.copy(body + XMP_HEADING.length(), length - XMP_HEADING.length());
      }
    }
  }

  private void readWebp(FileBytes bytes) throws IOException {
    long at = 12;
    while (at + 8 <= bytes.size()) {
      String name = bytes.name(at);
      long length = bytes.u32(at + 4, false);
      if (name.equals("EXIF") && exif == null) {
        int heading = bytes.has(at + 8, EXIF_HEADING) ? 6 : 0; // some writers leave it in
        exif = bounded(bytes, at + 8 + heading, length - heading);
      } else if (name.equals("XMP ") && xmp == null) {
        xmp = bounded(bytes, at + 8, length);
      }
      at += 8 + length + length % 2;
    }
  }

  /** The items that describe the picture (ISO/IEC 23008-12, annex A). */
  private void readHeif(FileBytes bytes) throws IOException {
    HeifItems items = HeifItems.read(bytes);
    for (HeifItems.Item item : items.about("cdsc", items.primary())) {
      if (item.type().equals("Exif") && exif == null) {
        exif = behindOffset(items.data(item, MOST_BYTES));
      } else if (item.contentType().equals("application/rdf+xml") && xmp == null) {
        xmp = items.data(item, MOST_BYTES);
      }
    }
  }

  /** Four bytes say how far behind them the TIFF header stands. */
  private static byte[] behindOffset(byte[] item) {
    if (item.length < 4) {
      return new byte[0];
    }
    long start = 4 + Integer.toUnsignedLong(ByteBuffer.wrap(item).getInt());
    return start >= item.length ? new byte[0] : Arrays.copyOfRange(item, (int) start, item.length);
  }

  private void readPng(FileBytes bytes) throws IOException {
    long at = 8;
    while (at + 8 <= bytes.size()) {
      long length = bytes.u32(at);
      long body = at + 8;
      switch (bytes.name(at + 4)) {
        case "eXIf" -> exif = exif == null ? bounded(bytes, body, length) : exif;
        case "tIME" -> lastModified = length == 7 ? bounded(bytes, body, length) : lastModified;
        case "tEXt" -> addText(bounded(bytes, body, length), 1, false);
        case "zTXt" -> addText(bounded(bytes, body, length), 2, true);
        case "iTXt" -> addInternationalText(bounded(bytes, body, length));
        case "IEND" -> {
          return;
        }
        default -> {}
      }
      at = body + length + 4;
    }
  }

  /** Keyword, zero byte, for zTXt a method byte, then Latin-1 text (PNG 3rd edition, 11.3.3). */
  private void addText(byte[] chunk, int afterKeyword, boolean compressed) {
    int keyword = zeroAt(chunk, 0);
    if (keyword > 0 && keyword + afterKeyword <= chunk.length) {
      byte[] text = Arrays.copyOfRange(chunk, keyword + afterKeyword, chunk.length);
      add(chunk, keyword, compressed ? inflated(text) : text, StandardCharsets.ISO_8859_1);
    }
  }

  /** Keyword, 0, compressed or not, method, language, 0, translated keyword, 0, UTF-8 text. */
  private void addInternationalText(byte[] chunk) {
    int keyword = zeroAt(chunk, 0);
    int language = keyword < 0 ? -1 : zeroAt(chunk, keyword + 3);
    int translated = language < 0 ? -1 : zeroAt(chunk, language + 1);
    if (translated > 0) {
      byte[] text = Arrays.copyOfRange(chunk, translated + 1, chunk.length);
      boolean compressed = chunk[keyword + 1] == 1;
      add(chunk, keyword, compressed ? inflated(text) : text, StandardCharsets.UTF_8);
    }
  }

  private void add(byte[] chunk, int keywordLength, byte[] text, Charset charset) {
    String keyword = new String(chunk, 0, keywordLength, StandardCharsets.ISO_8859_1);
    if (keyword.equals(XMP_KEYWORD)) {
      xmp = xmp == null ? text : xmp;
    } else if (texts.size() < MOST_TEXTS) {
      texts.putIfAbsent(keyword, new String(text, 0, Math.min(text.length, MOST_TEXT), charset));
    }
  }

  private static int zeroAt(byte[] chunk, int from) {
    for (int i = from; i < chunk.length; i++) {
      if (chunk[i] == 0) {
        return i;
      }
    }
    return -1;
  }

  /** Only so many: a small chunk may unpack to a megabyte, and a file holds many chunks. */
  private byte[] inflated(byte[] compressed) {
    if (inflatedTexts++ >= MOST_TEXTS) {
      return new byte[0];
    }
    try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(compressed))) {
      return in.readNBytes(MOST_TEXT);
    } catch (IOException e) {
      return new byte[0];
    }
  }

  private static byte[] bounded(FileBytes bytes, long from, long length) throws IOException {
    long there = Math.max(0, Math.min(length, bytes.size() - from));
    return there > MOST_BYTES ? new byte[0] : bytes.copy(from, (int) there);
  }
}
