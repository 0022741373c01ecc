package org.daymount.image;

import java.awt.color.CMMException;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import org.w3c.dom.NodeList;

/**
 * The colour profile of a PNG (iCCP chunk; W3C PNG Specification, Third Edition, 11.3.2.3), which
 * the JDK's reader hands over but does not use. A profile that is broken or does not fit the
 * picture's colours is ignored. The gAMA and cHRM chunks are not used.
 */
final class PngProfile {
  private static final String NATIVE_METADATA = "javax_imageio_png_1.0";
  private static final int MOST_BYTES = 16_000_000; // a small chunk may inflate to anything

  private PngProfile() {}

  /** The same pixels, known to be in the file's own profile; the picture itself without one. */
  static BufferedImage applied(BufferedImage decoded, IIOMetadata metadata) {
    return profile(metadata).map(profile -> inProfile(decoded, profile)).orElse(decoded);
  }

  private static Optional<ICC_Profile> profile(IIOMetadata metadata) {
    IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(NATIVE_METADATA);
    NodeList nodes = root.getElementsByTagName("iCCP");
    if (nodes.getLength() == 0) {
      return Optional.empty();
    }
    byte[] compressed = (byte[]) ((IIOMetadataNode) nodes.item(0)).getUserObject();
    try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(compressed))) {
      return Optional.of(ICC_Profile.getInstance(in.readNBytes(MOST_BYTES)));
    } catch (IOException | IllegalArgumentException | CMMException e) {
      return Optional.empty();
    }
  }

  private static BufferedImage inProfile(BufferedImage decoded, ICC_Profile profile) {
    ColorModel model = decoded.getColorModel();
    if (model instanceof IndexColorModel palette) {
      return profile.getNumComponents() == 3 ? withPalette(decoded, palette, profile) : decoded;
    }
    if (profile.getNumComponents() != model.getNumColorComponents()) {
      return decoded;
    }
    return new BufferedImage(
        new ComponentColorModel(
            new ICC_ColorSpace(profile),
            model.hasAlpha(),
            model.isAlphaPremultiplied(),
            model.getTransparency(),
            model.getTransferType()),
        decoded.getRaster(),
        model.isAlphaPremultiplied(),
        null);
  }

  /** The indices stay; the palette's colours become sRGB. */
  private static BufferedImage withPalette(
      BufferedImage decoded, IndexColorModel palette, ICC_Profile profile) {
    int[] colours = new int[palette.getMapSize()];
    palette.getRGBs(colours);
    BufferedImage strip = new BufferedImage(colours.length, 1, BufferedImage.TYPE_3BYTE_BGR);
    strip.setRGB(0, 0, colours.length, 1, colours, 0, colours.length);
    int[] srgb = new int[colours.length];
    new SrgbRows(inProfile(strip, profile)).read(0, srgb);
    for (int i = 0; i < srgb.length; i++) {
      srgb[i] = colours[i] & 0xff000000 | srgb[i];
    }
    IndexColorModel converted =
        new IndexColorModel(
            palette.getPixelSize(), srgb.length, srgb, 0, true, -1, palette.getTransferType());
    return new BufferedImage(converted, decoded.getRaster(), false, null);
  }
}
