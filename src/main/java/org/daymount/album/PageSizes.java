package org.daymount.album;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/** Sizes and reveals among words for a page. */
final class PageSizes {
  /** Sizes that are sold in centimetres and named without them. Common practice, no source. */
  private static final Pattern METRIC =
      Pattern.compile(
          "(9 ?x ?13|10 ?x ?13|10 ?x ?15|11 ?x ?15|13 ?x ?18|15 ?x ?10|13 ?x ?9|18 ?x ?13|15 ?x ?20"
              + "|15 ?x ?21|18 ?x ?24|20 ?x ?30)(?:er)?(?! ?(?:in|\"|'|x|[\\d.,/]\\d))");

  private static final Pattern SPELLED =
      Pattern.compile(
          "(three|four|five|six|eight) (?:by|x) (three|four|five|six|eight)s?(?![\\p{L}\\d])");
  private static final Pattern BEFORE_REVEAL = Pattern.compile(" *(?:with (?:an? )?)?");
  private static final Pattern AFTER_REVEAL = Pattern.compile(" +reveal(?![\\p{L}\\d-])");

  private PageSizes() {}

  static Optional<SizeText.Found<PaperSize>> sizeAt(String text, int at) {
    Matcher spelled = SPELLED.matcher(text).region(at, text.length());
    if (spelled.lookingAt()) {
      String digits = PageCounts.of(spelled.group(1)) + "x" + PageCounts.of(spelled.group(2));
      return SizeText.sizeAt(digits, 0)
          .map(size -> new SizeText.Found<>(size.value(), spelled.end()));
    }
    Matcher metric = METRIC.matcher(text).region(at, text.length());
    Optional<SizeText.Found<PaperSize>> inches = SizeText.sizeAt(text, at);
    boolean saidItself =
        metric.lookingAt() && (inches.isEmpty() || inches.get().end() <= metric.end());
    Optional<SizeText.Found<PaperSize>> found =
        saidItself
            ? SizeText.sizeAt(metric.group(1) + "cm", 0)
                .map(size -> new SizeText.Found<>(size.value(), metric.end()))
            : inches;
    return found.filter(size -> SpaceSizes.isPossible(size.value()));
  }

  /** A reveal must carry a unit or be a fraction, or it could be the count of the next spaces. */
  static Optional<SizeText.Found<Length>> revealAt(String text, int from) {
    int at = PageVocabulary.end(BEFORE_REVEAL, text, from);
    if (SizeText.sizeAt(text, at).isPresent()) {
      return Optional.empty();
    }
    return SizeText.lengthAt(text, at)
        .filter(found -> text.substring(at, found.end()).matches(".*[^\\d., ].*"))
        .map(
            found ->
                new SizeText.Found<>(
                    found.value(), PageVocabulary.end(AFTER_REVEAL, text, found.end())));
  }
}
