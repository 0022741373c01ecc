package org.daymount.note;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;

/** How surely words that could be for a page are for the page, and no part of a sentence. */
enum PagePhrase {
  /** {@code two photos}, {@code 4x6 tall}, {@code no photo}, {@code skip}. */
  STRONG,
  /** A single word that stories have too: {@code tall}, {@code none}. */
  WEAK,
  /** More often an answer than a wish: {@code nothing}, {@code empty}. */
  OPEN;

  private static final Pattern ASKS_TO_SKIP =
      Pattern.compile(
          ".*(?:skip|skp|sikp|leave|left|omit|page|seite|weg|aus|uberspr|saut|pagina|saltar"
              + "|overslaan|sla over|pomin|hoppa|pula).*");
  private static final Pattern ANSWER =
      Pattern.compile(
          "(?:x ?\\d+|\\d+ ?x|xx+|no|nope|nah|empty|blank|leer|vide|bianca|vuota|blanco|leeg|pusta|tomt?)");
  private static final Pattern WISH =
      Pattern.compile(
          "(?<!\\p{L})(?:i'?d (?:like|love)|i would like|i want|let'?s have|can (?:i|we) have|reicht|langt"
              + "|ich (?:hatte|mochte)(?: hier| da)?(?: gerne?)?|je voudrais|j'aimerais|suffit|quiero"
              + "|quisiera|basta(?: con)?|vorrei|ik wil(?: graag)?|quero|queria|chce|chcialabym"
              + "|wystarczy|jag vill ha|racker med)$");
  private static final Pattern ASKED =
      Pattern.compile("[+&].*|.* (?:please|pls|plz|bitte|svp|graag|por favor|tack|prosze)");
  private static final Pattern COUNTS_AN_ARTICLE =
      Pattern.compile("(?:an?|the|in|as|un|une|una|ein|eine|en|een|uma?) \\S+");
  private static final Pattern OF_PHOTOS =
      Pattern.compile(
          ".*(?:photo|pic|foto|bild|image|imag|immagin|zdjec|snap|\\x{1F4F7}|\\x{1F4F8}).*");

  /** Without a mark before them these are no sentence's. */
  private static final Pattern NO_SENTENCE =
      Pattern.compile(
          "[+&] ?.*|\\d+ ?(?:x|by|\\*) ?\\d.*|(?:(?:two|three|four|\\d) (?:x )?)\\d+ ?x ?\\d+.*"
              + "|(?:no|kein|keine|sin|sans|pas de|senza|geen|sem|bez|inga|ingen"
              + "|inget) \\p{L}+\\W*|(?:that|this|it|and|so|i)?.*(?:needs|wants|gets|deserves"
              + "|should (?:get|have)|need|want):? .*|(?:one|two|three|four|\\d|an?) (?:(?:small|big|large|wee) )?(?:photo|pic|picture)s?,? (?:tall|wide|landscape|portrait|upright|vertical|horizontal)|full[ -]page|(?:one|two|three|four|\\d|an?) (?:tall|wide"
              + "|landscape|portrait|upright|vertical|horizontal) (?:photo|pic|picture)s?");

  private static final Pattern NEGATIVE =
      Pattern.compile(
          "(?:no|kein|keine|sin|sans|pas de|senza|geen|sem|bez|inga|ingen|inget) \\p{L}+\\W*");

  /** A word before which a wish does not begin, because it goes on to it. */
  private static final Set<String> GO_ON =
      Set.copyOf(
          List.of(
              ("took take takes taking taken has have had having with of the a an my his her our"
                      + " your their its these those this that and or in on at from for to by sent"
                      + " send got get gets made make found find see saw seen show shows showed look"
                      + " looked looks posted printed bought lost deleted is are was were be been"
                      + " being am so too very how as about around over under than only just some any"
                      + " no not but like more less feet foot ft inch inches metre metres meter meters"
                      + " m cm miles mile km yards stood stands stand standing grew grown grow grows"
                      + " twenty thirty forty fifty sixty hundred der die das den ein eine mit und ist"
                      + " war sind habe hat gemacht le la les un une et de des du avec est el los una"
                      + " y con il gli e di het een en van met is was och ett av som o os as um uma"
                      + " com")
                  .split(" ")));

  /**
   * @param said folded, without blanks around it
   */
  static PagePhrase of(String said, PageSpec words) {
    if (ANSWER.matcher(said).matches()) {
      return OPEN;
    }
    boolean several = said.contains(" ") || said.matches(".*\\d.*");
    if (words.kind() == DayPage.Kind.LEFT_OUT) {
      return ASKS_TO_SKIP.matcher(said).matches() ? STRONG : OPEN;
    }
    if (words.storyCard() && ASKED.matcher(said).matches()) {
      return STRONG;
    }
    if (!several && words.form().isEmpty()) {
      return WEAK;
    }
    boolean article = COUNTS_AN_ARTICLE.matcher(said).matches();
    return !several || article && !OF_PHOTOS.matcher(said).matches() ? WEAK : STRONG;
  }

  /** Whether the words mean a page even with no mark before them. */
  static boolean isNoSentence(String said) {
    return NO_SENTENCE.matcher(said).matches();
  }

  /** Whether what stands before asks for the words: {@code I'd like} a tall photo. */
  static boolean isWished(String before) {
    return WISH.matcher(before).find();
  }

  /** Whether what stands before goes on to the words: {@code we took} two photos. */
  static boolean goesOn(String before, String said) {
    String word = before.substring(before.lastIndexOf(' ') + 1).replaceAll("^\\W+|\\W+$", "");
    boolean size = said.matches("\\d+ ?x ?\\d.*");
    boolean pictures = OF_PHOTOS.matcher(said).matches();
    boolean measured =
        word.matches("feet|foot|ft|inch(?:es)?|met(?:re|er)s?|m|cm|miles?|km|yards?");
    return before.isEmpty()
        || word.isEmpty()
        || (word.matches("\\d+") && !pictures)
        || (GO_ON.contains(word)
            && !(size && !word.matches("twenty|thirty|forty|fifty|sixty|hundred"))
            && !(measured && pictures)
            && !(NEGATIVE.matcher(said).matches()
                && word.matches("so|and|but|with|und|et|y|e|en")));
  }
}
