package org.daymount.image;

import java.awt.color.CMMException;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.IndexColorModel;
import java.nio.ByteBuffer;
import java.util.Optional;

/** Pictures that are in the colours of a profile of their own. */
final class Profiles {
  private static final int PROFILE_CLASS = 12; // where it stands: ICC.1:2010, 7.2
  private static final int P3 = 12; // ITU-T H.273, table 2: SMPTE EG 432-1

  private Profiles() {}

  /** Empty when it is broken. */
  static Optional<ICC_Profile> read(byte[] profile) {
    try {
      return Optional.of(ICC_Profile.getInstance(profile));
    } catch (IllegalArgumentException | CMMException e) {
      return Optional.empty();
    }
  }

  /** For colours told by code points; empty for those of sRGB and for those not known here. */
  static Optional<ICC_Profile> of(Cicp colour) {
    return colour.primaries() == P3 && !WideToSrgb.isNeeded(colour)
        ? Optional.of(MatrixProfile.displayP3())
        : Optional.empty();
  }

  /** The same pixels, known to be in that profile; as they were when it does not fit them. */
  static BufferedImage applied(BufferedImage decoded, ICC_Profile profile) {
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

  /**
   * The same pixels, with a printer's profile made out to be a screen's, which is the same table of
   * colours: Java would convert from a printer's profile by measured colour (so that the black of
   * four inks becomes grey) and from a screen's perceptually, as the JPEG reader does for four
   * inks.
   */
  static BufferedImage forScreen(BufferedImage decoded) {
    ColorModel model = decoded.getColorModel();
    if (!(model.getColorSpace() instanceof ICC_ColorSpace space)
        || model instanceof IndexColorModel
        || space.getProfile().getProfileClass() != ICC_Profile.CLASS_OUTPUT
        || decoded.getRaster().getNumBands() != model.getNumComponents()) {
      return decoded;
    }
    byte[] profile = space.getProfile().getData();
    ByteBuffer.wrap(profile).putInt(PROFILE_CLASS, ICC_Profile.icSigDisplayClass);
    return read(profile).map(screens -> applied(decoded, screens)).orElse(decoded);
  }

  /** The indices stay; the palette's colours become sRGB. */
  private static BufferedImage withPalette(
      BufferedImage decoded, IndexColorModel palette, ICC_Profile profile) {
    int[] colours = new int[palette.getMapSize()];
    palette.getRGBs(colours);
    BufferedImage strip = new BufferedImage(colours.length, 1, BufferedImage.TYPE_3BYTE_BGR);
    strip.setRGB(0, 0, colours.length, 1, colours, 0, colours.length);
    int[] srgb = new int[colours.length];
    new SrgbRows(applied(strip, profile)).read(0, srgb);
    for (int i = 0; i < srgb.length; i++) {
      srgb[i] = colours[i] & 0xff000000 | srgb[i];
    }
    IndexColorModel converted =
        new IndexColorModel(
            palette.getPixelSize(), srgb.length, srgb, 0, true, -1, palette.getTransferType());
    return new BufferedImage(converted, decoded.getRaster(), false, null);
  }
}
