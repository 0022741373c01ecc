package org.daymount.cli;

import java.util.concurrent.Callable;

/** A command that is made with its {@link CommandContext}. */
abstract class ContextCommand implements Callable<Integer> {
  final CommandContext context;

  ContextCommand(CommandContext context) {
    this.context = context;
  }
}
