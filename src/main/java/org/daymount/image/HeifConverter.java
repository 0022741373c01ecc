package org.daymount.image;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * HEIF pictures through libheif's converter, where that is installed and the decoder that comes
 * along does not load. It runs as a process of its own, turns the picture upright itself and keeps
 * its colour profile.
 */
public final class HeifConverter {
  private static final List<String> NAMES = List.of("heif-dec", "heif-convert");
  private static final long MOST_SECONDS = 60;

  private HeifConverter() {}

  private static final class Installed {
    private static final Optional<String> NAME =
        NAMES.stream().filter(HeifConverter::starts).findFirst();
  }

  /** Says why HEIF and AVIF cannot be decoded on this system; empty when they can. */
  public static Optional<UnusablePicture> whyNot(PhotoFormat format) {
    return TileReaders.isAvailable() || Installed.NAME.isPresent()
        ? Optional.empty()
        : Optional.of(notHere(format));
  }

  private static UnusablePicture notHere(PhotoFormat format) {
    return new UnusablePicture(
        Problem.Kind.NOT_YET_READABLE,
        "is "
            + format
            + ", for which there is no decoder on this system; install libheif's converter"
            + " (heif-convert), or save a JPEG copy of it");
  }

  /** The upright picture as a PNG file in a folder of its own, gone when it is closed. */
  record Converted(Photo photo) implements Closeable {
    @Override
    public void close() throws IOException {
      delete(photo.file().folder());
    }
  }

  static Converted convert(Photo photo) throws IOException {
    String name = Installed.NAME.orElseThrow(() -> notHere(photo.format()));
    Path folder = Files.createTempDirectory("daymount-");
    try {
      String from = photo.file().path().toAbsolutePath().toString(); // never taken for an option
      if (run(List.of(name, from, folder.resolve("picture.png").toString())) != 0) {
        throw new IOException(name + " cannot decode it");
      }
      return new Converted(asPng(photo, picture(folder, photo.size())));
    } catch (IOException | RuntimeException e) {
      delete(folder);
      throw e;
    }
  }

  /** Of a file with several pictures, the converter writes all, with numbers in their names. */
  private static Path picture(Path folder, PixelSize size) throws IOException {
    for (Path png : files(folder)) {
      if (new PictureHeaders().read(png).stored().equals(size)) {
        return png;
      }
    }
    throw new IOException("its decoder gives a picture of another size");
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private static void delete(Path folder) throws IOException {
    for (Path file : files(folder)) {
      Files.delete(file);
    }
    Files.delete(folder);
  }

  private static Photo asPng(Photo photo, Path png) throws IOException {
    return new Photo(
        new PhotoFile(png.getParent(), png.getFileName().toString()),
        Files.size(png),
        photo.sha256(),
        PhotoFormat.PNG,
        photo.size(),
        ExifOrientation.TOP_LEFT,
        true,
        photo.taken(),
        photo.model(),
        photo.burst(),
        photo.screenshot());
  }

  private static boolean starts(String name) {
    try {
      run(List.of(name, "--help"));
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static int run(List<String> command) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      process.getOutputStream().close();
      if (process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        return process.exitValue();
      }
      throw new IOException(command.get(0) + " did not end within " + MOST_SECONDS + " s");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted");
    } finally {
      process.destroyForcibly();
    }
  }
}
