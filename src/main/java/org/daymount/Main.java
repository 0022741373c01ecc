package org.daymount;

/** The program's door: the only place that ends the process. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {}
}
