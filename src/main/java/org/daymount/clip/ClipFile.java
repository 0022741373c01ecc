package org.daymount.clip;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/**
 * An MP4, MOV or 3GP file (ISO/IEC 14496-12), read at any place: its description, at most 32 MiB of
 * it, and single coded pictures, never the whole. For one thread.
 */
public final class ClipFile implements Closeable {
  private static final int MOST_DESCRIPTION = 1 << 25;
  private static final int MOST_BOXES = 10_000; // one after the other in a file

  /** From 1904, where the clock of the format begins, to 1970, in seconds. */
  private static final long EPOCH = 2_082_844_800L;

  private final FileChannel channel;
  private final Clip clip;
  private final byte[] configuration;

  private ClipFile(FileChannel channel, Clip clip, byte[] configuration) {
    this.channel = channel;
    this.clip = clip;
    this.configuration = configuration;
  }

  /**
   * @throws UnusablePicture VIDEO for a clip that is not of the kind that is read, UNREADABLE for a
   *     broken one, TOO_LARGE for frames of more than 40 million pixels
   */
  public static ClipFile open(Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      return read(channel);
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      channel.close();
      throw broken("describes itself wrongly");
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  static UnusablePicture broken(String fact) {
    return new UnusablePicture(
        Problem.Kind.UNREADABLE, "is a clip that " + fact + "; copy it again from the phone");
  }

  private static ClipFile read(FileChannel channel) throws IOException {
    Box movie = movie(channel);
    boolean fragmented = movie.child("mvex").isPresent();
    PictureTrack track = track(movie, fragmented);
    Box header = movie.needed("mvhd");
    boolean wide = header.version() == 1;
    long timescale = header.u32(wide ? 20 : 12);
    long units = wide ? header.body().getLong(24) : header.u32(16);
    long created = wide ? header.body().getLong(4) : header.u32(4);
    UserTexts texts = new UserTexts(movie);
    List<KeyFrame> keyFrames = track.samples().keyFrames(channel.size());
    if (keyFrames.isEmpty()) {
      throw broken("holds no picture that can be decoded by itself; it may have been cut off");
    }
    Clip clip =
        new Clip(
            track.codec(),
            track.coded(),
            track.shown(),
            track.orientation(),
            track.colour(),
            length(units, timescale),
            keyFrames,
            new ClipDates(
                texts.metadata("com.apple.quicktime.creationdate"), texts.day(), instant(created)),
            texts.camera(),
            texts.metadata("com.apple.quicktime.content.identifier"));
    return new ClipFile(channel, clip, track.configuration());
  }

  private static Duration length(long units, long timescale) {
    if (timescale == 0 || units < 0 || units / timescale > 1_000_000) {
      return Duration.ZERO; // not told
    }
    return Duration.ofMillis(Math.round(units * 1000.0 / timescale));
  }

  /** Empty for zero, and for what no clock of a camera says. */
  private static Optional<Instant> instant(long since1904) {
    return since1904 > EPOCH && since1904 < 2 * 0xffffffffL
        ? Optional.of(Instant.ofEpochSecond(since1904 - EPOCH))
        : Optional.empty();
  }

  /** The description, wherever it lies: before the pictures or behind them. */
  private static Box movie(FileChannel channel) throws IOException {
    long size = channel.size();
    long at = 0;
    for (int box = 0; box < MOST_BOXES && at + 8 <= size; box++) {
      ByteBuffer head = bytes(channel, at, (int) Math.min(16, size - at));
      long length = head.getInt(0) & 0xffffffffL;
      int header = 8;
      if (length == 1 && head.limit() == 16) {
        length = head.getLong(8);
        header = 16;
      } else if (length == 0) {
        length = size - at;
      }
      if (Box.name(head, 4).equals("moov")) {
        if (length - header > MOST_DESCRIPTION) {
          throw broken("describes itself at impossible length");
        }
        if (length < header || length > size - at) {
          throw broken("was cut off: its description is not whole");
        }
        return new Box("moov", bytes(channel, at + header, (int) length - header));
      }
      if (length < header || length > size - at) {
        break;
      }
      at += length;
    }
    throw broken("has no description of its pictures; its recording or copying was cut off");
  }

  private static PictureTrack track(Box movie, boolean fragmented) throws UnusablePicture {
    UnusablePicture why =
        new UnusablePicture(Problem.Kind.VIDEO, "is a sound recording, there is no picture in it");
    for (Box track : movie.children(0)) {
      if (!track.name().equals("trak") || !PictureTrack.isOne(track)) {
        continue;
      }
      try {
        return PictureTrack.read(track, fragmented);
      } catch (UnusablePicture e) {
        why = e;
      }
    }
    throw why;
  }

  public Clip clip() {
    return clip;
  }

  /** The decoder configuration record: avcC, hvcC or av1C. */
  public byte[] configuration() {
    return configuration.clone();
  }

  /** The coded picture as it lies in the file. */
  public byte[] coded(KeyFrame frame) throws IOException {
    return bytes(channel, frame.from(), frame.length()).array();
  }

  private static ByteBuffer bytes(FileChannel channel, long from, int length) throws IOException {
    if (from < 0 || length < 0 || from > channel.size() - length) {
      throw new EOFException();
    }
    ByteBuffer bytes = ByteBuffer.allocate(length);
    while (bytes.hasRemaining()) {
      if (channel.read(bytes, from + bytes.position()) < 0) {
        throw new EOFException(); // the file shrank while it was read
      }
    }
    return bytes.rewind();
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
