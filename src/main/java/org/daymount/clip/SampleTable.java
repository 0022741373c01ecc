package org.daymount.clip;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.problem.UnusablePicture;

/**
 * Where the coded pictures of a track lie and when they are shown (ISO/IEC 14496-12:2015, 8.6.1 to
 * 8.7.5). Read in one pass; a table is believed as far as its own bytes go, and a clip to have two
 * million pictures at most (nine hours at 60 a second).
 */
final class SampleTable {
  private static final long MOST_SAMPLES = 2_000_000;
  private static final int MOST_KEY_FRAMES = 100_000; // a day and more, one a second
  private static final int MOST_CODED = 1 << 26; // bytes of one picture

  private final Box sizes;
  private final boolean compact;
  private final long count;
  private final Box chunks;
  private final boolean wideOffsets;
  private final Box samplesOfChunks;
  private final Optional<Box> sync;
  private final Runs durations;
  private final Optional<Runs> shifts;
  private final long timescale;
  private final long start;

  /**
   * @param timescale units a second
   * @param start of the clip in these units
   */
  SampleTable(Box table, long timescale, long start) throws UnusablePicture {
    this.timescale = timescale;
    this.start = start;
    Optional<Box> plain = table.child("stsz");
    compact = plain.isEmpty();
    sizes = plain.isPresent() ? plain.get() : table.needed("stz2");
    count = sizes.u32(8);
    if (count > MOST_SAMPLES) {
      throw ClipFile.broken("claims more pictures than a clip has");
    }
    Optional<Box> narrow = table.child("stco");
    wideOffsets = narrow.isEmpty();
    chunks = narrow.isPresent() ? narrow.get() : table.needed("co64");
    samplesOfChunks = table.needed("stsc");
    sync = table.child("stss");
    durations = new Runs(table.needed("stts"));
    shifts = table.child("ctts").map(Runs::new);
  }

  boolean isEmpty() {
    return count == 0;
  }

  /**
   * Key frames inside the file, no two in one second.
   *
   * @param fileSize in bytes
   */
  List<KeyFrame> keyFrames(long fileSize) throws UnusablePicture {
    List<KeyFrame> found = new ArrayList<>();
    int offsetSize = wideOffsets ? 8 : 4;
    long chunkCount = Math.min(chunks.u32(4), (chunks.body().limit() - 8) / offsetSize);
    long runs = Math.min(samplesOfChunks.u32(4), (samplesOfChunks.body().limit() - 8) / 12);
    long run = 0;
    long perChunk = 0;
    boolean described = true;
    long sample = 0;
    long decoded = 0; // when, in units of the timescale
    int nextSync = 0;
    long lastSecond = -1;
    for (long chunk = 0; chunk < chunkCount && sample < count; chunk++) {
      while (run < runs && samplesOfChunks.u32(8 + (int) run * 12) <= chunk + 1) {
        perChunk = samplesOfChunks.u32(8 + (int) run * 12 + 4);
        described = samplesOfChunks.u32(8 + (int) run * 12 + 8) == 1;
        run++;
      }
      long from = offset(chunk);
      for (long i = 0; i < perChunk && sample < count; i++) {
        long size = size(sample);
        long shift = shifts.isPresent() ? shifts.get().next() : 0;
        nextSync = firstSyncFrom(nextSync, sample);
        boolean usable = described && size > 0 && size <= MOST_CODED && from >= 0;
        if (usable && isSync(nextSync, sample) && from <= fileSize - size) {
          long at = Math.max(0, Math.round((decoded + shift - start) * 1000.0 / timescale));
          if (at / 1000 != lastSecond) {
            lastSecond = at / 1000;
            found.add(new KeyFrame(Duration.ofMillis(at), from, (int) size));
            refuseCrowd(found);
          }
        }
        decoded += durations.next() & 0xffffffffL;
        from += size;
        sample++;
      }
    }
    return found;
  }

  private static void refuseCrowd(List<KeyFrame> found) throws UnusablePicture {
    if (found.size() > MOST_KEY_FRAMES) {
      throw ClipFile.broken("claims more pictures than a clip has");
    }
  }

  private long offset(long chunk) {
    return wideOffsets
        ? chunks.body().getLong(8 + (int) chunk * 8)
        : chunks.u32(8 + (int) chunk * 4);
  }

  private long size(long sample) {
    if (compact) { // stz2: 4, 8 or 16 bits each
      int bits = sizes.body().get(7);
      return switch (bits) {
        case 4 -> sizes.body().get(12 + (int) sample / 2) >> ((sample & 1) == 0 ? 4 : 0) & 15;
        case 8 -> sizes.body().get(12 + (int) sample) & 0xff;
        default -> sizes.u16(12 + (int) sample * 2);
      };
    }
    long all = sizes.u32(4);
    return all != 0 ? all : sizes.u32(12 + (int) sample * 4);
  }

  /** Index of the first entry of stss at or behind a sample. */
  private int firstSyncFrom(int index, long sample) {
    if (sync.isEmpty()) {
      return index;
    }
    int next = index;
    while (next < syncCount() && sync.get().u32(8 + next * 4) < sample + 1) {
      next++;
    }
    return next;
  }

  private long syncCount() {
    return Math.min(sync.orElseThrow().u32(4), (sync.get().body().limit() - 8) / 4);
  }

  /** Without a table every sample is coded without the others (8.6.2). */
  private boolean isSync(int index, long sample) {
    return sync.isEmpty() || index < syncCount() && sync.get().u32(8 + index * 4) == sample + 1;
  }
}
