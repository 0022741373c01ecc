package org.daymount.ingest;

import com.adobe.internal.xmp.XMPException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.makernotes.AppleMakernoteDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.daymount.file.Sha256;

/**
 * What some phones mark the frames of one burst with: BurstUUID (tag 0x000b) of one maker's note,
 * or BurstID in the camera namespace of XMP. Only a digest is handed on, so that nothing the phone
 * wrote is kept.
 */
final class BurstTag {
  private static final String CAMERA = "http://ns.google.com/photos/1.0/camera/";
  private static final int DIGEST_BYTES = 8; // of a month's bursts no two will be the same

  private BurstTag() {}

  static Optional<String> in(Metadata metadata) {
    Stream<String> notes =
        metadata.getDirectoriesOfType(AppleMakernoteDirectory.class).stream()
            .map(note -> note.getString(AppleMakernoteDirectory.TAG_BURST_UUID));
    Stream<String> packets =
        metadata.getDirectoriesOfType(XmpDirectory.class).stream().map(BurstTag::burstId);
    return Stream.concat(notes, packets)
        .filter(Objects::nonNull)
        .map(String::strip)
        .filter(id -> !id.isEmpty())
        .findFirst()
        .map(BurstTag::digest);
  }

  private static String burstId(XmpDirectory packet) {
    try {
      return packet.getXMPMeta().getPropertyString(CAMERA, "BurstID");
    } catch (XMPException e) {
      return null; // a property that is no plain text marks nothing
    }
  }

  static String digest(String id) {
    byte[] sum = Sha256.digest().digest(id.getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(sum, 0, DIGEST_BYTES);
  }
}
