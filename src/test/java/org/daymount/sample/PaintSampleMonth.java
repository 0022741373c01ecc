package org.daymount.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Paints the sample month into a folder: {@code mvn -q test-compile exec:java -Psample}. */
public final class PaintSampleMonth {
  private PaintSampleMonth() {}

  /**
   * @param args the folder, and optionally words; only files whose name holds one are painted
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    List<String> wanted = List.of(args).subList(1, args.length);
    Files.createDirectories(folder);
    for (SampleFile file : SampleFile.all()) {
      if (wanted.isEmpty() || wanted.stream().anyMatch(file.name()::contains)) {
        Files.write(folder.resolve(file.name()), file.paint());
        System.out.println("painted " + file.name());
      }
    }
  }
}
