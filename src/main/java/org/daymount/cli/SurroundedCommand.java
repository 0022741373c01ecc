package org.daymount.cli;

import java.util.concurrent.Callable;

/** A command that is made with its {@link Surroundings}. */
abstract class SurroundedCommand implements Callable<Integer> {
  final Surroundings around;

  SurroundedCommand(Surroundings around) {
    this.around = around;
  }
}
