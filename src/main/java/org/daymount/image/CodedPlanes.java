package org.daymount.image;

import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_JPEG;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_BE;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_PLANAR;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_RGB;
import static org.bytedeco.ffmpeg.global.avutil.av_pix_fmt_desc_get;

import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.javacpp.BytePointer;

/** A decoded tile as its coding has it: a plane of luma and, unless it is grey, two of colour. */
final class CodedPlanes {
  private static final int MOST_BITS = 12;

  private final AVFrame frame;
  private final int planes;
  private final int bits;
  private final int chromaAcross; // log2 of how many pixels share a colour
  private final int chromaDown;
  private final boolean rgb;
  private final byte[] line;

  CodedPlanes(AVFrame frame) throws IOException {
    this.frame = frame;
    AVPixFmtDescriptor format = av_pix_fmt_desc_get(frame.format());
    if (format == null) {
      throw new IOException("its tiles have unknown samples");
    }
    planes = format.nb_components();
    bits = format.comp(0).depth();
    chromaAcross = format.log2_chroma_w();
    chromaDown = format.log2_chroma_h();
    rgb = (format.flags() & AV_PIX_FMT_FLAG_RGB) != 0;
    boolean planar = planes == 1 || (format.flags() & AV_PIX_FMT_FLAG_PLANAR) != 0;
    boolean foreign = (format.flags() & AV_PIX_FMT_FLAG_BE) != 0;
    if (!planar || foreign || bits < 8 || bits > MOST_BITS || (planes != 1 && planes != 3)) {
      throw new IOException("its tiles have samples of an unusual kind");
    }
    line = new byte[width() * (bits > 8 ? 2 : 1)];
  }

  int width() {
    return frame.width();
  }

  int height() {
    return frame.height();
  }

  int bits() {
    return bits;
  }

  boolean isGrey() {
    return planes == 1;
  }

  int chromaAcross() {
    return chromaAcross;
  }

  int chromaDown() {
    return chromaDown;
  }

  int chromaWidth() {
    return (width() + (1 << chromaAcross) - 1) >> chromaAcross;
  }

  int chromaHeight() {
    return (height() + (1 << chromaDown) - 1) >> chromaDown;
  }

  /** What the coded tile itself says of its colours. */
  CodedColour colour() {
    return new CodedColour(
        frame.color_primaries(),
        frame.color_trc(),
        rgb ? 0 : frame.colorspace(),
        rgb || frame.color_range() == AVCOL_RANGE_JPEG);
  }

  /** One row of plane 0 (luma), 1 or 2 (colour differences). */
  void row(int plane, int y, int[] samples) {
    int width = plane == 0 ? width() : chromaWidth();
    int length = bits > 8 ? 2 * width : width;
    BytePointer data = new BytePointer(frame.data(plane));
    data.position((long) y * frame.linesize(plane)).get(line, 0, length);
    if (bits == 8) {
      for (int x = 0; x < width; x++) {
        samples[x] = line[x] & 0xff;
      }
    } else {
      int most = (1 << bits) - 1;
      for (int x = 0; x < width; x++) {
        samples[x] = Math.min(most, line[2 * x] & 0xff | (line[2 * x + 1] & 0xff) << 8);
      }
    }
  }
}
