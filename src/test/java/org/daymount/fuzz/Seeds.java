package org.daymount.fuzz;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;

/**
 * Whole pictures to damage, by kind: those of the test jars on the class path (at most 60 kB each,
 * so that thousands can be tried) and, where heif-enc is installed, some it makes.
 */
final class Seeds {
  private static final long LARGEST = 60_000;
  private static final Map<String, String> KINDS =
      Map.ofEntries(
          Map.entry("jpg", "jpeg"),
          Map.entry("jpeg", "jpeg"),
          Map.entry("png", "png"),
          Map.entry("webp", "webp"),
          Map.entry("tif", "tiff"),
          Map.entry("tiff", "tiff"),
          Map.entry("heic", "heif"),
          Map.entry("heif", "heif"),
          Map.entry("avif", "heif"),
          Map.entry("gif", "gif"),
          Map.entry("bmp", "bmp"));

  private Seeds() {}

  /** In order of kind and name. */
  static Map<String, List<byte[]>> find(String classPath, Path work) throws IOException {
    Map<String, List<byte[]>> seeds = new TreeMap<>();
    for (String part : classPath.split(File.pathSeparator)) {
      if (part.endsWith("-tests.jar")) {
        addJar(Path.of(part), seeds);
      }
    }
    addPainted(work, seeds);
    return seeds;
  }

  private static void addJar(Path jar, Map<String, List<byte[]>> seeds) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      List<? extends ZipEntry> entries =
          zip.stream().sorted((a, b) -> a.getName().compareTo(b.getName())).toList();
      for (ZipEntry entry : entries) {
        String kind = kind(entry.getName());
        if (kind != null && entry.getSize() > 0 && entry.getSize() <= LARGEST) {
          try (InputStream in = zip.getInputStream(entry)) {
            add(seeds, kind, in.readAllBytes());
          }
        }
      }
    }
  }

  private static String kind(String name) {
    int dot = name.lastIndexOf('.');
    return dot < 0 ? null : KINDS.get(name.substring(dot + 1).toLowerCase(Locale.ROOT));
  }

  private static void add(Map<String, List<byte[]>> seeds, String kind, byte[] bytes) {
    seeds.computeIfAbsent(kind, k -> new ArrayList<>()).add(bytes);
  }

  /** Small ones, and one whose size is odd, which heif-enc lays out as a grid and cuts. */
  private static void addPainted(Path work, Map<String, List<byte[]>> seeds) throws IOException {
    for (int side : new int[] {64, 131}) {
      BufferedImage painted = new BufferedImage(side, side - 2, BufferedImage.TYPE_INT_RGB);
      Graphics2D brush = painted.createGraphics();
      brush.setPaint(new GradientPaint(0, 0, Color.RED, side, side, Color.BLUE));
      brush.fillRect(0, 0, side, side);
      brush.dispose();
      Path png = work.resolve("seed.png");
      ImageIO.write(painted, "png", png.toFile());
      add(seeds, "png", Files.readAllBytes(png));
      for (String ending : List.of("heic", "avif")) {
        Path coded = work.resolve("seed." + ending);
        if (encodes(png, coded)) {
          add(seeds, "heif", Files.readAllBytes(coded));
        }
      }
    }
  }

  private static boolean encodes(Path png, Path coded) throws IOException {
    try {
      Process process =
          new ProcessBuilder("heif-enc", "-t", "32", "-o", coded.toString(), png.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor() == 0;
    } catch (IOException e) {
      return false; // not installed
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
