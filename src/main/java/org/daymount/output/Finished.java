package org.daymount.output;

import java.util.List;

/**
 * What a run did to its folder.
 *
 * @param changed names of the files that are new or changed, in the order they were staged
 * @param notes what became of files that a person had changed, a sentence each
 */
public record Finished(List<String> changed, List<String> notes) {
  public Finished {
    changed = List.copyOf(changed);
    notes = List.copyOf(notes);
  }
}
