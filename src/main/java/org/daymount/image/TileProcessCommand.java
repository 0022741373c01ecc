package org.daymount.image;

import java.io.File;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bytedeco.javacpp.Loader;

/**
 * How a process that decodes tiles is started: with the Java that runs this program, or, where the
 * program came with a Java that has no command of its own, with the program's own launcher.
 *
 * @param server the class whose main method serves
 * @param options for Java, after the usual ones
 * @param patience how long a tile may take
 */
record TileProcessCommand(Class<?> server, List<String> options, Duration patience) {
  private static final Duration USUAL_PATIENCE = Duration.ofSeconds(60);

  /** Little of Java's own memory, nothing left behind by a crash, and no time for good code. */
  private static final List<String> JAVA_OPTIONS =
      List.of(
          "-Xms4m",
          "-Xmx300m",
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-XX:-UsePerfData",
          "-XX:+SuppressFatalErrorMessage",
          "-XX:-CreateCoredumpOnCrash",
          "-Djava.awt.headless=true");

  static TileProcessCommand usual() {
    return new TileProcessCommand(TileServer.class, List.of(), USUAL_PATIENCE);
  }

  Process start() throws IOException {
    List<String> java = new ArrayList<>(JAVA_OPTIONS);
    if (Runtime.version().feature() >= 22) {
      java.add("--enable-native-access=ALL-UNNAMED");
    }
    for (Map.Entry<Object, Object> property : System.getProperties().entrySet()) {
      String name = property.getKey().toString();
      if (name.startsWith("org.bytedeco.")
          || List.of("java.io.tmpdir", "user.home").contains(name)) {
        java.add("-D" + name + "=" + property.getValue());
      }
    }
    java.addAll(options);
    ProcessBuilder builder = builder(java);
    builder.environment().putIfAbsent("MALLOC_ARENA_MAX", "1"); // glibc: one thread asks for memory
    return builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  private ProcessBuilder builder(List<String> javaOptions) throws IOException {
    Path bin = Path.of(System.getProperty("java.home"), "bin");
    for (String name : List.of("java", "java.exe")) {
      if (Files.isExecutable(bin.resolve(name))) {
        List<String> command = new ArrayList<>(List.of(bin.resolve(name).toString()));
        command.addAll(javaOptions);
        command.addAll(List.of("-cp", classPath(), server.getName()));
        return new ProcessBuilder(command);
      }
    }
    String launcher = System.getProperty("jpackage.app-path"); // set by the launcher itself
    if (launcher == null) {
      throw new IOException("no Java command, and no launcher, to start a process with");
    }
    ProcessBuilder builder = new ProcessBuilder(launcher, TileServer.COMMAND);
    builder.environment().put("JAVA_TOOL_OPTIONS", quoted(javaOptions));
    return builder;
  }

  /** Java splits them at blanks, and takes quotation marks away. */
  private static String quoted(List<String> options) {
    StringBuilder line = new StringBuilder();
    for (String option : options) {
      line.append(line.isEmpty() ? "" : " ");
      line.append(option.contains(" ") ? '"' + option + '"' : option);
    }
    return line.toString();
  }

  /** Where the classes are that the process needs, however this program was started. */
  private String classPath() throws IOException {
    Set<Path> places = new LinkedHashSet<>();
    for (Class<?> needed :
        List.of(server, TileServer.class, Loader.class, org.bytedeco.ffmpeg.global.avcodec.class)) {
      add(places, "/" + needed.getName().replace('.', '/') + ".class");
    }
    String platform = Loader.getPlatform();
    add(places, "/org/bytedeco/javacpp/" + platform + "/" + System.mapLibraryName("jnijavacpp"));
    add(places, "/org/bytedeco/ffmpeg/" + platform + "/" + System.mapLibraryName("jniavcodec"));
    List<String> names = new ArrayList<>();
    for (Path place : places) {
      if (place.toString().contains(File.pathSeparator)) {
        throw new IOException("a class path cannot hold " + place);
      }
      names.add(place.toString());
    }
    return String.join(File.pathSeparator, names);
  }

  private static void add(Set<Path> places, String resource) throws IOException {
    URL url = TileProcessCommand.class.getResource(resource);
    if (url == null) {
      return; // as on a system for which nothing came along
    }
    places.add(place(url, resource).toRealPath());
  }

  private static Path place(URL url, String resource) throws IOException {
    try {
      if (url.getProtocol().equals("jar")) {
        return Path.of(((JarURLConnection) url.openConnection()).getJarFileURL().toURI());
      }
      String whole = url.toURI().toString();
      return Path.of(URI.create(whole.substring(0, whole.length() - resource.length() + 1)));
    } catch (URISyntaxException | IllegalArgumentException e) {
      throw new IOException(e);
    }
  }
}
