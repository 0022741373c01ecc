package org.daymount.image;

import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_JPEG;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_BE;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_PLANAR;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_FLAG_RGB;
import static org.bytedeco.ffmpeg.global.avutil.av_pix_fmt_desc_get;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.javacpp.BytePointer;

/** A decoded tile in libavcodec's memory; valid until its decoder is given the next. */
final class DecodedFrame {
  private final AVFrame frame;
  private final PlaneLayout layout;

  DecodedFrame(AVFrame frame, long mostPixels) throws IOException {
    this.frame = frame;
    AVPixFmtDescriptor format = av_pix_fmt_desc_get(frame.format());
    if (format == null) {
      throw new IOException("its tiles have unknown samples");
    }
    int planes = format.nb_components();
    boolean rgb = (format.flags() & AV_PIX_FMT_FLAG_RGB) != 0;
    boolean planar = planes == 1 || (format.flags() & AV_PIX_FMT_FLAG_PLANAR) != 0;
    boolean foreign = (format.flags() & AV_PIX_FMT_FLAG_BE) != 0;
    if (!planar || foreign) {
      throw new IOException("its tiles have samples of an unusual kind");
    }
    layout =
        new PlaneLayout(
                frame.width(),
                frame.height(),
                planes,
                format.comp(0).depth(),
                format.log2_chroma_w(),
                format.log2_chroma_h(),
                new Cicp(
                    frame.color_primaries(),
                    frame.color_trc(),
                    rgb ? 0 : frame.colorspace(),
                    rgb || frame.color_range() == AVCOL_RANGE_JPEG))
            .checked(mostPixels);
  }

  PlaneLayout layout() {
    return layout;
  }

  int stride(int plane) {
    return frame.linesize(plane);
  }

  /** The samples where they are. */
  ByteBuffer plane(int plane) {
    return new BytePointer(frame.data(plane))
        .limit(layout.bytes(plane, stride(plane)))
        .asByteBuffer();
  }

  /** The samples in Java's own memory. */
  YuvFrame copied() {
    byte[][] planes = new byte[layout.planes()][];
    int[] strides = new int[layout.planes()];
    for (int i = 0; i < planes.length; i++) {
      ByteBuffer plane = plane(i);
      planes[i] = new byte[plane.remaining()];
      plane.get(planes[i]);
      strides[i] = stride(i);
    }
    return new YuvFrame(layout, planes, strides);
  }
}
