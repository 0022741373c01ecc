package org.daymount.pipeline;

import java.util.Optional;
import org.daymount.look.cache.Memory;
import org.daymount.output.KeptDrawings;

/** Drawings of earlier runs, as far as the same program made them. */
final class RememberedDrawings implements KeptDrawings {
  private final Memory memory;
  private final String program;

  /**
   * @param program what draws, told so exactly that another one draws anew
   */
  RememberedDrawings(Memory memory, String program) {
    this.memory = memory;
    this.program = program;
  }

  @Override
  public Optional<byte[]> drawn(String recipe) {
    return memory.made(program + " " + recipe);
  }

  @Override
  public void keep(String recipe, byte[] drawn) {
    memory.keepMade(program + " " + recipe, drawn);
  }
}
