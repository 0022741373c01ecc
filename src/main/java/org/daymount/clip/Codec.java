package org.daymount.clip;

import java.util.Optional;

/** How a clip's pictures are coded, of the ways that can be decoded. */
public enum Codec {
  H264("avcC"),
  HEVC("hvcC"),
  AV1("av1C");

  private final String configuration;

  Codec(String configuration) {
    this.configuration = configuration;
  }

  /** The box with the decoder configuration record. */
  String configuration() {
    return configuration;
  }

  /**
   * By the name of the sample entry (ISO/IEC 14496-15; AV1 Codec ISO Media File Format Binding,
   * 2.2; dvh1 and dvhe from Dolby Vision Streams within the ISO Base Media File Format, whose base
   * is HEVC).
   */
  static Optional<Codec> of(String sampleEntry) {
    return switch (sampleEntry) {
      case "avc1", "avc3" -> Optional.of(H264);
      case "hvc1", "hev1", "dvh1", "dvhe" -> Optional.of(HEVC);
      case "av01" -> Optional.of(AV1);
      default -> Optional.empty();
    };
  }
}
