package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramFilesTest {
  @TempDir Path home;
  private Path classes;
  private Path library;

  @BeforeEach
  void build() throws IOException {
    classes = Files.createDirectories(home.resolve("target/classes"));
    Files.writeString(classes.resolve("One.class"), "one");
    library = Files.writeString(home.resolve("library.jar"), "library");
  }

  private String told(Object... classPath) throws IOException {
    StringBuilder written = new StringBuilder();
    for (Object entry : classPath) {
      written.append(written.isEmpty() ? "" : File.pathSeparator).append(entry);
    }
    return ProgramFiles.fingerprint(classes, written.toString());
  }

  @Test
  void aBuildIsTheSameHoweverItsClassPathIsWritten() throws IOException {
    String absolute = told(classes, library);
    Path here = Path.of("").toAbsolutePath();
    assertEquals(absolute, told(here.relativize(classes), here.relativize(library)));
    assertEquals(absolute, told(library, classes.resolve("../classes"), classes));
    assertEquals(absolute, told(library, home.resolve("missing.jar")));
  }

  @Test
  void aBuildOfTheSameClassesIsTheSameWheneverItWasMade() throws IOException {
    String before = told(classes, library);
    Files.setLastModifiedTime(classes.resolve("One.class"), FileTime.fromMillis(0));
    assertEquals(before, told(classes, library));
  }

  @Test
  void anotherClassOrLibraryIsAnotherBuild() throws IOException {
    String before = told(classes, library);
    Files.writeString(classes.resolve("One.class"), "two"); // as long as it was
    String changed = told(classes, library);
    assertNotEquals(before, changed);
    Files.writeString(library, "another library");
    assertNotEquals(changed, told(classes, library));
  }
}
