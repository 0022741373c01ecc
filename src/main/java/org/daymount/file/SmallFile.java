package org.daymount.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * Files that ought to be small and to hold words: whatever stands in their place, a folder, a pipe
 * that never ends or a file of gigabytes, costs no more than the most that may be.
 */
public final class SmallFile {
  private static final int MARK = 2; // bytes of UTF-16's byte order mark

  private SmallFile() {}

  /**
   * @param most bytes
   * @throws Odd when there is no such file, or it is none of that kind
   */
  public static byte[] bytes(Path file, int most) throws Odd {
    if (!Files.isRegularFile(file)) {
      throw new Odd(what(file));
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] read = in.readNBytes(most + 1);
      if (read.length > most) {
        throw new Odd("is larger than " + size(most) + "; is it another file?");
      }
      return read;
    } catch (Odd e) {
      throw e;
    } catch (IOException e) {
      throw new Odd("cannot be read; check that it may be opened");
    }
  }

  /**
   * Whether the file holds just these bytes; no more of it is read than can tell. What cannot be
   * read holds something else.
   */
  public static boolean holds(Path file, byte[] bytes) {
    try {
      return Arrays.equals(bytes(file, bytes.length), bytes);
    } catch (Odd e) {
      return false;
    }
  }

  /**
   * UTF-8, or UTF-16 with its mark, as some editors and spreadsheets save it.
   *
   * @return empty when the bytes are something else
   */
  public static Optional<String> unicode(byte[] bytes) {
    try {
      return Optional.of(charset(bytes).newDecoder().decode(ByteBuffer.wrap(bytes)).toString())
          .map(text -> text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /**
   * As {@link #unicode}; what is not that is taken for Windows-1252, as old editors save it.
   *
   * @throws Odd when it is no text at all
   */
  public static String text(Path file, int most) throws Odd {
    byte[] bytes = bytes(file, most);
    String text =
        unicode(bytes).orElseGet(() -> new String(bytes, Charset.forName("windows-1252")));
    if (text.indexOf('\0') >= 0 || text.startsWith("{\\rtf")) {
      throw new Odd("is no plain text; save it as plain text (.txt) in the program it is from");
    }
    return text;
  }

  private static Charset charset(byte[] bytes) {
    int mark = bytes.length < MARK ? 0 : (bytes[0] & 0xff) << 8 | bytes[1] & 0xff;
    return mark == 0xfeff || mark == 0xfffe ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
  }

  private static String what(Path file) {
    if (Files.isDirectory(file)) {
      return "is a folder; move it away, or name another file";
    }
    if (Files.isSymbolicLink(file) && !Files.exists(file)) {
      return "is a link that leads to nothing; put back what it led to, or remove the link";
    }
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        ? "is no ordinary file (a pipe or a device); move it away, or name another file"
        : "is not there; look at its spelling";
  }

  private static String size(int bytes) {
    return bytes < 1_000_000 ? bytes / 1000 + " kB" : bytes / 1_000_000 + " MB";
  }

  /** Something else than what belongs there; the message follows the file's name. */
  public static final class Odd extends IOException {
    private static final long serialVersionUID = 1L;

    Odd(String what) {
      super(what);
    }
  }
}
