package org.daymount.image;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AV1;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_HEVC;
import static org.bytedeco.ffmpeg.global.avcodec.AV_EF_CRCCHECK;
import static org.bytedeco.ffmpeg.global.avcodec.AV_EF_EXPLODE;
import static org.bytedeco.ffmpeg.global.avcodec.AV_INPUT_BUFFER_PADDING_SIZE;
import static org.bytedeco.ffmpeg.global.avcodec.av_new_packet;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_decoder;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_flush_buffers;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_frame;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_packet;
import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;
import static org.bytedeco.ffmpeg.global.avutil.av_mallocz;

import java.io.Closeable;
import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.Loader;
import org.daymount.unpack.Unpacked;

/**
 * Decodes tiles and key frames of HEVC, AV1 or H.264 with ffmpeg's libavcodec, one after the other;
 * the file's boxes are never shown to native code. For one thread. The native library is unpacked
 * and loaded when the first decoder is made.
 */
final class TileDecoder implements Closeable {
  private static final String UNPACKED_TO = "org.bytedeco.javacpp.cachedir"; // JavaCPP's

  private final TileCoding coding;
  private final AVCodecContext context;
  private final AVPacket packet;
  private final AVFrame frame;

  /** Whether the native library is there and loads; asked once. */
  private static final class Library {
    private static final boolean LOADED = loaded();

    private static boolean loaded() {
      try {
        withLibrary(() -> Loader.load(org.bytedeco.ffmpeg.global.avcodec.class));
        av_log_set_level(AV_LOG_QUIET);
        return true;
      } catch (IOException | LinkageError | RuntimeException e) {
        return false;
      }
    }
  }

  /** Something that loads the library, here or in a process that is given this one's properties. */
  @FunctionalInterface
  interface Use<T> {
    T run() throws IOException;
  }

  /**
   * Its files are compared with the program's own once in a run, which costs more than to start a
   * process: by whoever is first, for all processes that are started afterwards.
   */
  static <T> T withLibrary(Use<T> use) throws IOException {
    if (System.getProperty(UNPACKED_TO) != null) {
      return use.run();
    }
    return Unpacked.ofThisUser()
        .byItself(
            "ffmpeg",
            folder -> {
              System.setProperty(UNPACKED_TO, folder.toString());
              return use.run();
            });
  }

  static boolean isAvailable() {
    return Library.LOADED;
  }

  TileDecoder(TileCoding coding) throws IOException {
    this.coding = coding;
    if (!isAvailable()) {
      throw new IOException("no decoder for it on this system");
    }
    AVCodec codec = avcodec_find_decoder(codec(coding.type()));
    if (codec == null) {
      throw new IOException("no decoder for " + coding.type());
    }
    context = avcodec_alloc_context3(codec);
    packet = av_packet_alloc();
    frame = av_frame_alloc();
    byte[] configuration = coding.configuration();
    BytePointer extra =
        new BytePointer(av_mallocz(configuration.length + (long) AV_INPUT_BUFFER_PADDING_SIZE));
    extra.put(configuration, 0, configuration.length);
    context.extradata(extra).extradata_size(configuration.length);
    context.thread_count(1);
    context.err_recognition(AV_EF_EXPLODE | AV_EF_CRCCHECK);
    context.max_pixels(coding.mostPixels());
    if (avcodec_open2(context, codec, (AVDictionary) null) < 0) {
      close();
      throw new IOException("its decoder does not start");
    }
  }

  TileCoding coding() {
    return coding;
  }

  private static int codec(String type) {
    return switch (type) {
      case "avc1" -> AV_CODEC_ID_H264;
      case "hvc1" -> AV_CODEC_ID_HEVC;
      default -> AV_CODEC_ID_AV1;
    };
  }

  /** Valid until the next call. */
  DecodedFrame decode(byte[] coded) throws IOException {
    av_frame_unref(frame);
    if (av_new_packet(packet, coded.length) < 0) {
      throw new IOException("no memory for its coded tile");
    }
    packet.data().put(coded, 0, coded.length);
    int sent = avcodec_send_packet(context, packet);
    org.bytedeco.ffmpeg.global.avcodec.av_packet_unref(packet);
    if (sent < 0) {
      throw new IOException("a tile of it is damaged");
    }
    avcodec_send_packet(context, (AVPacket) null); // nothing follows: give out what there is
    int received = avcodec_receive_frame(context, frame);
    avcodec_flush_buffers(context);
    if (received < 0 || frame.decode_error_flags() != 0) {
      throw new IOException("a tile of it is damaged");
    }
    return new DecodedFrame(frame, coding.mostPixels());
  }

  @Override
  public void close() {
    av_frame_free(frame);
    av_packet_free(packet);
    avcodec_free_context(context); // with the configuration
  }
}
