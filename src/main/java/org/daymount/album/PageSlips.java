package org.daymount.album;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageVocabulary.Word;

/** Words for a page with one letter wrong. */
final class PageSlips {
  /** Words that a slip of one letter leaves recognisable, and that no common word is close to. */
  private static final Map<String, Word> SLIPS =
      Map.ofEntries(
          entry("portrait", Word.PORTRAIT),
          entry("landscape", Word.LANDSCAPE),
          entry("upright", Word.PORTRAIT),
          entry("vertical", Word.PORTRAIT),
          entry("horizontal", Word.LANDSCAPE),
          entry("hochformat", Word.PORTRAIT),
          entry("querformat", Word.LANDSCAPE),
          entry("paysage", Word.LANDSCAPE),
          entry("matted", Word.MAT),
          entry("photos", Word.PHOTO),
          entry("fotos", Word.PHOTO),
          entry("photo", Word.PHOTO),
          entry("pictures", Word.PHOTO),
          entry("picture", Word.PHOTO));

  private static final Set<String> REAL_WORDS =
      Set.of("landscaped", "landscaper", "pictured", "photon", "mattes", "matter", "pasture");
  private static final Pattern WORD = Pattern.compile("\\p{L}{4,12}(?![\\p{L}\\d])");

  private PageSlips() {}

  /** The word that was meant. */
  static Optional<Word> at(String text, int at) {
    int end = wordEnd(text, at);
    String typed = text.substring(at, end);
    if (end == at || REAL_WORDS.contains(typed)) {
      return Optional.empty();
    }
    return SLIPS.entrySet().stream()
        .filter(known -> known.getKey().charAt(0) == typed.charAt(0))
        .filter(known -> isOneSlip(known.getKey(), typed))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** Behind the letters there. */
  static int wordEnd(String text, int at) {
    Matcher word = WORD.matcher(text).region(at, text.length());
    return word.lookingAt() ? word.end() : at;
  }

  /** One letter missing, too many, wrong, or two neighbours the wrong way round. */
  static boolean isOneSlip(String known, String typed) {
    int start = 0;
    int shorter = Math.min(known.length(), typed.length());
    while (start < shorter && known.charAt(start) == typed.charAt(start)) {
      start++;
    }
    int tail = 0;
    while (tail < shorter - start
        && known.charAt(known.length() - 1 - tail) == typed.charAt(typed.length() - 1 - tail)) {
      tail++;
    }
    int left = known.length() - start - tail;
    int right = typed.length() - start - tail;
    boolean swapped =
        left == 2
            && right == 2
            && known.charAt(start) == typed.charAt(start + 1)
            && known.charAt(start + 1) == typed.charAt(start);
    return swapped || (left <= 1 && right <= 1 && left + right > 0);
  }
}
