package org.daymount.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.daymount.benchmark.Contender.Input;

/** All contenders that can run here, in the order in which they take turns. */
final class Contenders {
  private static final String EACH_JPEG = "for f in \"$1\"/*.jpg; do ";
  private static final String VIPS =
      "VIPS_CONCURRENCY=2 vipsthumbnail --size 1000 -o \"$3\"/%s.v.jpg ";

  /** With {@link #HEAP}, how the app image starts the program. */
  private static final String POOLS = "MALLOC_ARENA_MAX=2 ";

  private static final String HEAP =
      "-Xms112m -Xmn48m -Xmx512m -XX:+UseSerialGC"
          + " -XX:MinHeapFreeRatio=25 -XX:MaxHeapFreeRatio=40"
          + " -XX:+IgnoreUnrecognizedVMOptions -XX:TrimNativeHeapInterval=2000"
          + " -XX:CompileThresholdScaling=3 ";
  private static final String OUT = "\"$3\"/out";
  private static final String OUT_ONE = "\"$3\"/out-one";
  private static final String OUT_READY = "\"$3\"/out-ready";

  /** What mvn -Pdist package leaves on Linux. */
  private static final Path READY =
      Path.of("target/dist/image/daymount/bin/daymount").toAbsolutePath();

  private final List<Contender> all = new ArrayList<>();
  private final String java =
      "\"" + ProcessHandle.current().info().command().orElse("java") + "\" -cp \"$2\" ";
  private final boolean withHeic;

  private Contenders(boolean withHeic) {
    this.withHeic = withHeic;
  }

  /**
   * @param withHeic whether there are HEIC files
   */
  static List<Contender> installed(boolean withHeic) throws IOException, InterruptedException {
    Contenders contenders = new Contenders(withHeic);
    contenders.addOnJpeg();
    if (withHeic) {
      contenders.addOnHeic();
    }
    contenders.addOnAll();
    return contenders.all;
  }

  private void addOnJpeg() throws IOException, InterruptedException {
    String reference = Input.JPEG.reference();
    addIfInstalled(
        "djpeg", new Contender(reference, Input.JPEG, EACH_JPEG + reference + " \"$f\"; done"));
    add("reduced decoder, 1/8", Input.JPEG, ours("ReducedDecode \"$1\" EIGHTH"));
    add("reduced decoder, 1/4", Input.JPEG, ours("ReducedDecode \"$1\" QUARTER"));
    add("analysis, one thread", Input.JPEG, ours("FirstLook \"$1\" 1"));
    add("analysis, two threads", Input.JPEG, ours("FirstLook \"$1\" 2"));
    addIfInstalled(
        "convert",
        new Contender(
            "ImageMagick, 1000 pixels",
            Input.JPEG,
            EACH_JPEG
                + "convert -define jpeg:size=2000x2000 \"$f\" -resize 1000x1000"
                + " \"$3\"/magick.jpg; done"));
  }

  private void addOnHeic() throws IOException, InterruptedException {
    addIfInstalled(
        "vipsthumbnail", new Contender(Input.HEIC.reference(), Input.HEIC, VIPS + "\"$4\"/*.heic"));
    add("HEIC analysis, one thread", Input.HEIC, ours("FirstLook \"$4\" 1"));
    add("HEIC analysis, two threads", Input.HEIC, ours("FirstLook \"$4\" 2"));
  }

  /** Our threads are two where vipsthumbnail's are. */
  private void addOnAll() throws IOException, InterruptedException {
    String files = "\"$1\"/*.jpg" + (withHeic ? " \"$4\"/*.heic" : "");
    addIfInstalled("vipsthumbnail", new Contender(Input.ALL.reference(), Input.ALL, VIPS + files));
    String folders = "\"$1\"" + (withHeic ? " \"$4\"" : "");
    String sheets =
        POOLS + java + HEAP + "org.daymount.Main sheets " + folders + " --quiet --jobs ";
    String two = sheets + "2 --out " + OUT;
    add("daymount days", Input.ALL, java + "org.daymount.Main days --jobs 2 " + folders);
    add("daymount sheets, first run", Input.ALL, "rm -rf " + OUT + "; " + two);
    add("daymount sheets, second run", Input.ALL, "test -d " + OUT + " && " + two);
    add(
        "daymount sheets, one thread",
        Input.ALL,
        "rm -rf " + OUT_ONE + "; " + sheets + "1 --out " + OUT_ONE);
    add("daymount --help", Input.NOTHING, java + "org.daymount.Main --help");
    if (Files.isExecutable(READY)) {
      addReadyProgram(folders);
    } else {
      System.out.println("left out: the program with its own Java, because it is not built");
    }
  }

  /** With class data of its own, which a plain class path cannot have. */
  private void addReadyProgram(String folders) {
    String ready = "\"" + READY + "\" ";
    String sheets = ready + "sheets " + folders + " --quiet --jobs 2 --out " + OUT_READY;
    add("daymount, own Java, first run", Input.ALL, "rm -rf " + OUT_READY + "; " + sheets);
    add("daymount, own Java, second run", Input.ALL, "test -d " + OUT_READY + " && " + sheets);
    add("daymount, own Java, --help", Input.NOTHING, ready + "--help");
  }

  private String ours(String program) {
    return java + "org.daymount.benchmark." + program;
  }

  private void add(String name, Input input, String script) {
    all.add(new Contender(name, input, script));
  }

  private void addIfInstalled(String program, Contender contender)
      throws IOException, InterruptedException {
    if (MeasuredProcess.isInstalled(program)) {
      all.add(contender);
    } else {
      System.out.println(
          "left out: " + contender.name() + ", because " + program + " is not installed");
    }
  }
}
