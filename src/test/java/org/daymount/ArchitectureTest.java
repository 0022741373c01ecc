package org.daymount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds the code to the package table in DEVELOPERS.md: the table is read, not repeated here. */
class ArchitectureTest {
  private static final String ROOT = "org.daymount";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  /** A row of the table: packages of one height, and the libraries they alone may meet. */
  private record Row(List<String> packages, List<String> libraries) {}

  @Test
  void eachPackageImportsOnlyWhatStandsBelowIt() throws IOException {
    Map<String, Integer> height = heights();
    TreeSet<String> wrong = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      String from = home(type.getPackageName());
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String to = dependency.getTargetClass().getBaseComponentType().getPackageName();
        if (to.startsWith(ROOT) && !home(to).equals(from)) {
          if (height.get(home(to)) <= height.get(from)) {
            wrong.add(from + " imports " + home(to));
          }
        }
      }
    }
    assertEquals(new TreeSet<>(), wrong);
  }

  @Test
  void everyPackageStandsInTheTableAndTheTableNamesNoOther() throws IOException {
    TreeSet<String> inCode = new TreeSet<>();
    CLASSES.forEach(type -> inCode.add(home(type.getPackageName())));
    assertEquals(inCode, new TreeSet<>(heights().keySet()));
  }

  @Test
  void eachLibraryIsMetInItsOwnPackagesOnly() throws IOException {
    Map<String, List<String>> allowed = new LinkedHashMap<>();
    for (Row row : table()) {
      for (String library : row.libraries()) {
        allowed.computeIfAbsent(library, any -> new ArrayList<>()).addAll(row.packages());
      }
    }
    assertTrue(allowed.size() >= 8, "the table lists the libraries");
    TreeSet<String> wrong = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String to = dependency.getTargetClass().getBaseComponentType().getPackageName();
        boolean plainJava = to.startsWith("java.") || to.isEmpty();
        if (to.startsWith(ROOT) || plainJava) {
          continue;
        }
        boolean fine =
            allowed.entrySet().stream()
                .anyMatch(
                    e ->
                        (to + ".").startsWith(e.getKey() + ".")
                            && e.getValue().contains(home(type.getPackageName())));
        if (!fine) {
          wrong.add(home(type.getPackageName()) + " meets " + to);
        }
      }
    }
    assertEquals(new TreeSet<>(), wrong);
  }

  /** The top package below the root: sub-packages belong to their stage. */
  private static String home(String packageName) {
    if (packageName.equals(ROOT)) {
      return "Main";
    }
    String rest = packageName.substring(ROOT.length() + 1);
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }

  private static Map<String, Integer> heights() throws IOException {
    Map<String, Integer> heights = new LinkedHashMap<>();
    int height = 0;
    for (Row row : table()) {
      for (String name : row.packages()) {
        heights.put(name, height++);
      }
    }
    return heights;
  }

  /** Rows look like {@code | `pick` | purpose | `org.jgrapht` |}, highest first. */
  private static List<Row> table() throws IOException {
    List<Row> rows = new ArrayList<>();
    boolean inside = false;
    for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
      if (line.startsWith("| package ")) {
        inside = true;
      } else if (inside && !line.startsWith("|")) {
        break;
      } else if (inside && !line.startsWith("| ---")) {
        String[] cells = line.split("\\|");
        rows.add(new Row(quoted(cells[1]), cells.length > 3 ? quoted(cells[3]) : List.of()));
      }
    }
    return rows;
  }

  private static List<String> quoted(String cell) {
    List<String> names = new ArrayList<>();
    String[] parts = cell.split("`");
    for (int i = 1; i < parts.length; i += 2) {
      names.add(parts[i]);
    }
    return names;
  }
}
