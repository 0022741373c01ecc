package org.daymount.image;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Transparency in a TIFF: with "associated alpha" (ExtraSamples 1; TIFF 6.0, section 18) the
 * colours are already multiplied by it, which TwelveMonkeys says in the metadata but not in the
 * picture.
 */
final class TiffAlpha {
  private TiffAlpha() {}

  /** The same pixels, known to be multiplied where they are. */
  static BufferedImage applied(BufferedImage decoded, IIOMetadata metadata) {
    ColorModel model = decoded.getColorModel();
    if (!(model instanceof ComponentColorModel)
        || !model.hasAlpha()
        || model.isAlphaPremultiplied()
        || !isAssociated(metadata)) {
      return decoded;
    }
    ColorModel multiplied =
        new ComponentColorModel(
            model.getColorSpace(), true, true, model.getTransparency(), model.getTransferType());
    return new BufferedImage(multiplied, decoded.getRaster(), true, null);
  }

  private static boolean isAssociated(IIOMetadata metadata) {
    IIOMetadataNode root =
        (IIOMetadataNode) metadata.getAsTree(IIOMetadataFormatImpl.standardMetadataFormatName);
    NodeList alpha = root.getElementsByTagName("Alpha");
    return alpha.getLength() > 0
        && ((Element) alpha.item(0)).getAttribute("value").equals("premultiplied");
  }
}
