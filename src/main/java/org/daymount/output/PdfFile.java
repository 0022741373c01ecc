package org.daymount.output;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.daymount.file.Sha256;

/**
 * A PDF being written, with everything that would otherwise come from the clock fixed: the dates
 * are the start of the month, the document id follows from the content.
 */
final class PdfFile implements AutoCloseable {
  private final PDDocument document = new PDDocument();
  private final MessageDigest content = Sha256.digest();

  PdfFile(YearMonth month, String title) {
    PDDocumentInformation info = document.getDocumentInformation();
    info.setTitle(title);
    info.setProducer("Daymount");
    info.setCreator("Daymount");
    info.setCreationDate(start(month));
    info.setModificationDate(start(month));
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(Locale.ENGLISH.toLanguageTag());
    PDViewerPreferences preferences =
        new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    preferences.setDisplayDocTitle(true);
    // A viewer that respects this offers "actual size" first (ISO 32000-1, table 150).
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
    dependsOn(title.getBytes(StandardCharsets.UTF_8));
  }

  PDDocument document() {
    return document;
  }

  /** Bytes that make this document another one when they change. */
  void dependsOn(byte[] bytes) {
    content.update(bytes);
  }

  byte[] bytes() throws IOException {
    document.setDocumentId(ByteBuffer.wrap(content.digest()).getLong());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    // Plain objects: every program and printer that reads PDF at all can read them.
    document.save(out, CompressParameters.NO_COMPRESSION);
    return out.toByteArray();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }

  private static Calendar start(YearMonth month) {
    Calendar start = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    start.setTimeInMillis(month.atDay(1).atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli());
    return start;
  }
}
