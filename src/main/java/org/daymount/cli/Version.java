package org.daymount.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version the build wrote into the program. */
final class Version implements IVersionProvider {
  static String tool() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream("/org/daymount/version.properties")) {
      properties.load(in);
    } catch (IOException e) {
      return "daymount";
    }
    return "daymount " + properties.getProperty("version");
  }

  /** With the Java it runs on, whose decoders may differ in the last bit from another's. */
  static String withJava() {
    return tool() + " on " + System.getProperty("java.vendor") + " Java " + Runtime.version();
  }

  @Override
  public String[] getVersion() {
    return new String[] {tool()};
  }
}
