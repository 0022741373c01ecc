package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.JpegCheck;
import org.daymount.image.jpeg.JpegRefused;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;

/** What is wrong with a photo's coded data where they are those of a JPEG, whoever decodes them. */
final class JpegDamage {
  private static final int BYTES_PER_BLOCK = 8; // of a progressive picture, see ProgressiveBlocks

  private JpegDamage() {}

  /** Empty for other formats. */
  static Optional<String> in(Photo photo) throws IOException {
    if (photo.format() != PhotoFormat.JPEG && photo.format() != PhotoFormat.RAW) {
      return Optional.empty();
    }
    try (FileBytes bytes = FileBytes.open(photo.file().path())) {
      long from = 0;
      long length = bytes.size();
      if (photo.format() == PhotoFormat.RAW) {
        RawPreview preview = RawPreview.find(bytes);
        from = preview.from();
        length = preview.length();
      }
      FileBytes jpeg = bytes.part(from, length);
      return MemoryBudget.with(need(jpeg), () -> JpegCheck.damage(jpeg));
    }
  }

  private static long need(FileBytes jpeg) throws IOException {
    try {
      Optional<JpegFrame> frame = JpegFrame.read(jpeg);
      if (frame.isPresent()) {
        frame.get().refuseEndlessScans();
        return frame.get().progressive() ? BYTES_PER_BLOCK * frame.get().blocks() : 0;
      }
      return 0;
    } catch (EOFException | JpegRefused e) {
      return 0; // the check says so
    }
  }
}
