package org.daymount.output;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * Puts JPEG files into a PDF as they are, not compressed again, in the colour space of their own
 * profile. Pictures with the same profile share one copy of it.
 */
final class PdfPictures {
  private final PDDocument document;
  private final Map<ByteBuffer, PDICCBased> profiles = new HashMap<>();

  PdfPictures(PDDocument document) {
    this.document = document;
  }

  /**
   * @param jpeg three channels; without a profile it is taken for sRGB, which is what sheets are
   */
  PDImageXObject embed(byte[] jpeg) throws IOException {
    PDImageXObject image = JPEGFactory.createFromStream(document, new ByteArrayInputStream(jpeg));
    if (image.getColorSpace().getNumberOfComponents() == 3) {
      byte[] profile = JpegProfile.of(jpeg).orElseGet(PdfPictures::srgb);
      image.setColorSpace(colourSpace(profile));
    }
    return image;
  }

  private static byte[] srgb() {
    return ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
  }

  private PDICCBased colourSpace(byte[] profile) throws IOException {
    ByteBuffer key = ByteBuffer.wrap(profile);
    PDICCBased known = profiles.get(key);
    if (known != null) {
      return known;
    }
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(profile);
    }
    stream.getCOSObject().setInt(COSName.N, 3);
    stream.getCOSObject().setItem(COSName.ALTERNATE, COSName.DEVICERGB);
    COSArray array = new COSArray();
    array.add(COSName.ICCBASED);
    array.add(stream);
    PDICCBased space = PDICCBased.create(array, null);
    profiles.put(key, space);
    return space;
  }
}
