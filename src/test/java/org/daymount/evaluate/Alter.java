package org.daymount.evaluate;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.daymount.unit.PixelBox;

/** Makes worse or slightly different pictures out of good ones. Each returns a new picture. */
public final class Alter {
  private Alter() {}

  /** A Gaussian blur. */
  public static BufferedImage blurred(BufferedImage picture, double sigma) {
    int reach = Math.max(1, (int) Math.ceil(3 * sigma));
    float[] taps = new float[2 * reach + 1];
    float sum = 0;
    for (int i = -reach; i <= reach; i++) {
      taps[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
      sum += taps[i + reach];
    }
    for (int i = 0; i < taps.length; i++) {
      taps[i] /= sum;
    }
    return convolved(convolved(picture, taps, taps.length, 1), taps, 1, taps.length);
  }

  /** As if the camera had moved sideways by {@code pixels}. */
  public static BufferedImage shaken(BufferedImage picture, int pixels) {
    float[] taps = new float[pixels];
    Arrays.fill(taps, 1f / pixels);
    return convolved(picture, taps, pixels, 1);
  }

  private static BufferedImage convolved(
      BufferedImage picture, float[] taps, int width, int height) {
    int marginX = width / 2 + 1;
    int marginY = height / 2 + 1;
    BufferedImage wide =
        new BufferedImage(
            picture.getWidth() + 2 * marginX,
            picture.getHeight() + 2 * marginY,
            BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < wide.getHeight(); y++) {
      for (int x = 0; x < wide.getWidth(); x++) {
        int fromX = Math.max(0, Math.min(picture.getWidth() - 1, x - marginX));
        int fromY = Math.max(0, Math.min(picture.getHeight() - 1, y - marginY));
        wide.setRGB(x, y, picture.getRGB(fromX, fromY));
      }
    }
    BufferedImage out =
        new ConvolveOp(new Kernel(width, height, taps), ConvolveOp.EDGE_NO_OP, null)
            .filter(wide, null);
    return EvalSet.rgb(out.getSubimage(marginX, marginY, picture.getWidth(), picture.getHeight()));
  }

  /** Gaussian noise on each channel, in steps of 8-bit values. */
  public static BufferedImage noisy(BufferedImage picture, double sigma, Random random) {
    BufferedImage out = EvalSet.rgb(picture);
    for (int y = 0; y < out.getHeight(); y++) {
      for (int x = 0; x < out.getWidth(); x++) {
        int rgb = out.getRGB(x, y);
        int noisy = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
          double value = ((rgb >> shift) & 0xff) + sigma * random.nextGaussian();
          noisy |= Math.max(0, Math.min(255, (int) Math.round(value))) << shift;
        }
        out.setRGB(x, y, noisy);
      }
    }
    return out;
  }

  /** More or less light, by stops, on linear values (IEC 61966-2-1), clipped at white. */
  public static BufferedImage exposed(BufferedImage picture, double stops) {
    int[] tones = new int[256];
    for (int i = 0; i < 256; i++) {
      double v = i / 255.0;
      double linear = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
      double lit = Math.min(1, linear * Math.pow(2, stops));
      double coded = lit <= 0.0031308 ? 12.92 * lit : 1.055 * Math.pow(lit, 1 / 2.4) - 0.055;
      tones[i] = (int) Math.round(255 * coded);
    }
    BufferedImage out = EvalSet.rgb(picture);
    for (int y = 0; y < out.getHeight(); y++) {
      for (int x = 0; x < out.getWidth(); x++) {
        int rgb = out.getRGB(x, y);
        out.setRGB(
            x,
            y,
            tones[(rgb >> 16) & 0xff] << 16 | tones[(rgb >> 8) & 0xff] << 8 | tones[rgb & 0xff]);
      }
    }
    return out;
  }

  /** The next frame from a hand that moves a little: shifted, turned, nearer, lighter, noisier. */
  public static BufferedImage nextFrame(BufferedImage picture, Random random) {
    double width = picture.getWidth();
    double height = picture.getHeight();
    AffineTransform move = new AffineTransform();
    move.translate(
        width / 2 + width * between(random, -0.03, 0.03),
        height / 2 + height * between(random, -0.03, 0.03));
    move.rotate(Math.toRadians(between(random, -1.5, 1.5)));
    double zoom = 1.10 * between(random, 0.97, 1.03); // so that no corner comes into view
    move.scale(zoom, zoom);
    move.translate(-width / 2, -height / 2);
    BufferedImage out =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = out.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(picture, move, null);
    pen.dispose();
    BufferedImage lit = exposed(out, between(random, -0.25, 0.25));
    BufferedImage soft = random.nextBoolean() ? blurred(lit, between(random, 0.4, 2)) : lit;
    return saved(noisy(soft, between(random, 0, 4), random), 0.85f);
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Smaller, by area. */
  public static BufferedImage smaller(BufferedImage picture, double scale) {
    int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
    BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = out.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(picture, 0, 0, width, height, null);
    pen.dispose();
    return out;
  }

  /** Written as JPEG and read again. */
  public static BufferedImage saved(BufferedImage picture, float quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam settings = writer.getDefaultWriteParam();
      settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      settings.setCompressionQuality(quality);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(picture, null, null), settings);
      stream.flush();
      return EvalSet.rgb(ImageIO.read(new ByteArrayInputStream(bytes.toByteArray())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
  }

  /** A picture with one box of another in it. */
  static BufferedImage pasted(BufferedImage picture, BufferedImage other, PixelBox box) {
    BufferedImage out = EvalSet.rgb(picture);
    for (int y = box.y(); y < box.bottom(); y++) {
      for (int x = box.x(); x < box.right(); x++) {
        out.setRGB(x, y, other.getRGB(x, y));
      }
    }
    return out;
  }

  /** Pixels inside the mask from one picture, the others from another, joined softly. */
  static BufferedImage joined(Mask mask, BufferedImage inside, BufferedImage outside) {
    BufferedImage white =
        new BufferedImage(mask.width(), mask.height(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < mask.height(); y++) {
      for (int x = 0; x < mask.width(); x++) {
        white.setRGB(x, y, mask.at(x, y) ? 0xffffff : 0);
      }
    }
    BufferedImage soft = blurred(white, 2);
    BufferedImage out = EvalSet.rgb(outside);
    for (int y = 0; y < mask.height(); y++) {
      for (int x = 0; x < mask.width(); x++) {
        double share = (soft.getRGB(x, y) & 0xff) / 255.0;
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
          double value =
              share * ((inside.getRGB(x, y) >> shift) & 0xff)
                  + (1 - share) * ((outside.getRGB(x, y) >> shift) & 0xff);
          mixed |= (int) Math.round(value) << shift;
        }
        out.setRGB(x, y, mixed);
      }
    }
    return out;
  }
}
