package org.daymount.image;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.plugins.jpeg.JPEGImageWriteParam;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Baseline JPEG in a JFIF file without any other metadata, by the JDK's own writer.
 *
 * @param quality 0 to 1 on the writer's scale
 * @param fullColour whether colour is kept at full resolution (4:4:4), else at half (4:2:0)
 * @param perInch JFIF density in dots per inch; without it the density is left as 1:1
 * @param withSrgbProfile whether the JDK's sRGB profile is put in (no other: the writer always puts
 *     in the profile of the picture's own colour space)
 */
record JpegEncoder(
    float quality, boolean fullColour, Optional<Integer> perInch, boolean withSrgbProfile) {
  private static final String NATIVE_METADATA = "javax_imageio_jpeg_image_1.0";
  private static final String JDK_WRITERS = "com.sun.imageio.";

  byte[] encode(BufferedImage picture) {
    ImageWriter writer = writer();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam params = params(writer);
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, metadata(writer, picture, params)), params);
    } catch (IOException e) {
      throw new UncheckedIOException("a JPEG could not be written to memory", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static ImageWriter writer() {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("jpeg");
    while (writers.hasNext()) {
      ImageWriter writer = writers.next();
      if (writer.getClass().getName().startsWith(JDK_WRITERS)) {
        return writer;
      }
    }
    throw new IllegalStateException("this Java has no JPEG writer");
  }

  private ImageWriteParam params(ImageWriter writer) {
    ImageWriteParam params = writer.getDefaultWriteParam();
    params.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    params.setCompressionQuality(quality);
    params.setProgressiveMode(ImageWriteParam.MODE_DISABLED);
    ((JPEGImageWriteParam) params).setOptimizeHuffmanTables(true);
    return params;
  }

  private IIOMetadata metadata(ImageWriter writer, BufferedImage picture, ImageWriteParam params)
      throws IOException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(picture), params);
    IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(NATIVE_METADATA);
    Element jfif = (Element) root.getElementsByTagName("app0JFIF").item(0);
    perInch.ifPresent(
        dots -> {
          jfif.setAttribute("resUnits", "1"); // dots per inch
          jfif.setAttribute("Xdensity", dots.toString());
          jfif.setAttribute("Ydensity", dots.toString());
        });
    if (withSrgbProfile) {
      IIOMetadataNode profile = new IIOMetadataNode("app2ICC");
      profile.setUserObject(ICC_Profile.getInstance(ColorSpace.CS_sRGB));
      jfif.appendChild(profile);
    }
    sampleColour(root.getElementsByTagName("componentSpec"));
    metadata.setFromTree(NATIVE_METADATA, root);
    return metadata;
  }

  private void sampleColour(NodeList components) {
    for (int i = 0; i < components.getLength(); i++) {
      String factor = i == 0 && !fullColour ? "2" : "1"; // component 0 is the luma
      Element component = (Element) components.item(i);
      component.setAttribute("HsamplingFactor", factor);
      component.setAttribute("VsamplingFactor", factor);
    }
  }
}
