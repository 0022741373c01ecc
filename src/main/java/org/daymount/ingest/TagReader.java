package org.daymount.ingest;

import com.adobe.internal.xmp.XMPException;
import com.adobe.internal.xmp.XMPMeta;
import com.drew.imaging.tiff.TiffMetadataReader;
import com.drew.imaging.tiff.TiffProcessingException;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.ExifThumbnailDirectory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import com.drew.metadata.xmp.XmpReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.daymount.image.TagBlocks;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.PhotoFormat;

/**
 * Meets metadata-extractor. All blocks but those of TIFF are cut out first and bounded; broken tags
 * give what could be read of them, never an error.
 */
final class TagReader {
  private static final String EXIF = "http://ns.adobe.com/exif/1.0/";
  private static final String PHOTOSHOP = "http://ns.adobe.com/photoshop/1.0/";
  private static final String XMP = "http://ns.adobe.com/xap/1.0/";
  private static final int LONGEST_TEXT = 200;

  Tags read(Path file, PhotoFormat format) throws IOException {
    TagBlocks blocks = TagBlocks.read(file, format);
    Metadata metadata = new Metadata();
    try {
      blocks.exif().ifPresent(exif -> readExif(exif, metadata));
      blocks.xmp().ifPresent(xmp -> new XmpReader().extract(xmp, metadata));
      switch (format) {
        case TIFF, RAW -> addAll(TiffMetadataReader.readMetadata(file.toFile()), metadata);
        default -> {}
      }
    } catch (TiffProcessingException | RuntimeException | StackOverflowError | OutOfMemoryError e) {
      // what was read before the tag that is broken, or claims more than there is, stays
    }
    return tags(metadata, blocks);
  }

  /** The dates of an XMP packet, best first; empty where it cannot be read. */
  Optional<List<String>> xmpDates(byte[] packet) {
    Metadata metadata = new Metadata();
    try {
      new XmpReader().extract(packet, metadata);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      return Optional.empty();
    }
    boolean isRead =
        metadata.getDirectoriesOfType(XmpDirectory.class).stream().noneMatch(Directory::hasErrors);
    return Optional.of(xmpDates(metadata)).filter(dates -> isRead);
  }

  private static void readExif(byte[] exif, Metadata metadata) {
    new ExifReader().extract(new ByteArrayReader(exif), metadata);
  }

  private static void addAll(Metadata from, Metadata to) {
    from.getDirectories().forEach(to::addDirectory);
  }

  private static Tags tags(Metadata metadata, TagBlocks blocks) {
    String anyOffset = text(metadata, ExifDirectoryBase.TAG_TIME_ZONE);
    String originalOffset = text(metadata, ExifDirectoryBase.TAG_TIME_ZONE_ORIGINAL);
    String digitizedOffset = text(metadata, ExifDirectoryBase.TAG_TIME_ZONE_DIGITIZED);
    return new Tags(
        orientation(metadata),
        new Tags.DateTag(
            text(metadata, ExifDirectoryBase.TAG_DATETIME_ORIGINAL),
            text(metadata, ExifDirectoryBase.TAG_SUBSECOND_TIME_ORIGINAL),
            originalOffset),
        new Tags.DateTag(
            text(metadata, ExifDirectoryBase.TAG_DATETIME_DIGITIZED),
            text(metadata, ExifDirectoryBase.TAG_SUBSECOND_TIME_DIGITIZED),
            digitizedOffset),
        xmpDates(metadata),
        Optional.ofNullable(blocks.texts().get("Creation Time")),
        blocks.lastModified().flatMap(TagReader::pngTime),
        gps(metadata),
        Stream.of(originalOffset, digitizedOffset, anyOffset).filter(Objects::nonNull).toList(),
        shortText(text(metadata, ExifDirectoryBase.TAG_MODEL)),
        shortText(description(metadata, ExifDirectoryBase.TAG_USER_COMMENT)),
        BurstTag.in(metadata),
        PairTag.in(metadata),
        hasCameraSettings(metadata));
  }

  /**
   * The first text of that tag outside the thumbnail's directory. A date is in the EXIF directory
   * by the standard, but some writers put it into the first.
   */
  private static String text(Metadata metadata, int tag) {
    Directory directory = directoryWith(metadata, tag);
    return directory == null ? null : directory.getString(tag);
  }

  private static String description(Metadata metadata, int tag) {
    Directory directory = directoryWith(metadata, tag);
    return directory == null ? null : directory.getDescription(tag);
  }

  private static Directory directoryWith(Metadata metadata, int tag) {
    for (Class<? extends ExifDirectoryBase> type :
        List.of(ExifSubIFDDirectory.class, ExifIFD0Directory.class)) {
      for (ExifDirectoryBase directory : metadata.getDirectoriesOfType(type)) {
        if (directory.containsTag(tag) && !(directory instanceof ExifThumbnailDirectory)) {
          return directory;
        }
      }
    }
    return null;
  }

  private static Optional<ExifOrientation> orientation(Metadata metadata) {
    ExifIFD0Directory first = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
    Integer value = first == null ? null : first.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
    return Optional.ofNullable(value).map(ExifOrientation::ofExif);
  }

  /** When the picture was taken comes before when the work or the file was made. */
  private static List<String> xmpDates(Metadata metadata) {
    List<String> dates = new ArrayList<>();
    for (XmpDirectory directory : metadata.getDirectoriesOfType(XmpDirectory.class)) {
      XMPMeta xmp = directory.getXMPMeta();
      add(dates, xmp, EXIF, "DateTimeOriginal");
      add(dates, xmp, PHOTOSHOP, "DateCreated");
      add(dates, xmp, XMP, "CreateDate");
    }
    return dates;
  }

  private static void add(List<String> dates, XMPMeta xmp, String namespace, String name) {
    try {
      String value = xmp.getPropertyString(namespace, name);
      if (value != null) {
        dates.add(value);
      }
    } catch (XMPException e) {
      // a property that is no plain text is no date
    }
  }

  private static Optional<LocalDateTime> pngTime(byte[] time) {
    try {
      return Optional.of(
          LocalDateTime.of(
              (time[0] & 0xff) << 8 | time[1] & 0xff,
              time[2],
              time[3],
              time[4],
              time[5],
              Math.min(time[6], 59))); // 60 is allowed for leap seconds
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<LocalDateTime> gps(Metadata metadata) {
    GpsDirectory directory = metadata.getFirstDirectoryOfType(GpsDirectory.class);
    Date date = directory == null ? null : directory.getGpsDate();
    return Optional.ofNullable(date)
        .map(utc -> LocalDateTime.ofInstant(utc.toInstant(), ZoneOffset.UTC));
  }

  private static boolean hasCameraSettings(Metadata metadata) {
    return IntStream.of(
            ExifDirectoryBase.TAG_EXPOSURE_TIME,
            ExifDirectoryBase.TAG_FNUMBER,
            ExifDirectoryBase.TAG_ISO_EQUIVALENT,
            ExifDirectoryBase.TAG_FOCAL_LENGTH)
        .anyMatch(tag -> directoryWith(metadata, tag) != null);
  }

  private static Optional<String> shortText(String text) {
    return Optional.ofNullable(text)
        .map(t -> t.length() > LONGEST_TEXT ? t.substring(0, LONGEST_TEXT) : t)
        .map(t -> t.replace('\0', ' ').strip())
        .filter(t -> !t.isEmpty());
  }
}
