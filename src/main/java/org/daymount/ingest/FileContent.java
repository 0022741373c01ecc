package org.daymount.ingest;

import java.util.Optional;
import org.daymount.problem.Problem;

/**
 * What can only be known of a file by reading all of it.
 *
 * @param sha256 of the whole file, lower case hexadecimal
 * @param damage why it is not whole; empty when it is
 * @param damageText the fact and the next step; empty when it is whole
 */
public record FileContent(String sha256, Optional<Problem.Kind> damage, String damageText) {

  public static FileContent whole(String sha256) {
    return new FileContent(sha256, Optional.empty(), "");
  }
}
