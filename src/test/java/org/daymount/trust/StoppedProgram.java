package org.daymount.trust;

import java.util.Arrays;
import org.daymount.Main;
import org.daymount.file.StopAt;

/** The whole program, which stops dead before one of its moves: STEP ARGUMENTS… */
final class StoppedProgram {
  private StoppedProgram() {}

  public static void main(String[] arguments) {
    StopAt.step(Integer.parseInt(arguments[0]));
    Main.main(Arrays.copyOfRange(arguments, 1, arguments.length));
  }
}
