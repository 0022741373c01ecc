package org.daymount.look.detect;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Analysis;
import org.daymount.photo.PhotoFile;

/**
 * What is known after the close look.
 *
 * @param groups frames that were looked at together, by their files, with what was seen
 * @param without why faces and subjects were not looked for, if they were not
 */
public record CloseLooks(
    Map<List<PhotoFile>, List<AnalysedPhoto>> groups, Optional<String> without) {
  public CloseLooks {
    groups = Map.copyOf(groups);
  }

  /** These frames with what was seen in them; as they were where nobody looked. */
  public List<AnalysedPhoto> frames(List<AnalysedPhoto> group) {
    return groups.getOrDefault(files(group), group);
  }

  CloseLooks and(CloseLooks more) {
    Map<List<PhotoFile>, List<AnalysedPhoto>> all = new HashMap<>(groups);
    all.putAll(more.groups);
    return new CloseLooks(all, without.or(more::without));
  }

  /** All that were looked at, each with the most that is known of it. */
  public Map<PhotoFile, AnalysedPhoto> over(Analysis firstLook) {
    Map<PhotoFile, AnalysedPhoto> all = new HashMap<>();
    firstLook.looked().forEach(one -> all.put(one.photo().file(), one));
    groups.values().stream()
        .flatMap(List::stream)
        .filter(one -> one.measures().close().isPresent())
        .forEach(one -> all.put(one.photo().file(), one));
    return all;
  }

  static List<PhotoFile> files(List<AnalysedPhoto> group) {
    return group.stream().map(one -> one.photo().file()).toList();
  }
}
