package org.daymount.note;

import java.util.regex.Pattern;

/** How people say that a day comes later than its turn, because they had forgotten it. */
final class Afterthought {
  private static final String OPENING =
      "(?:(?:and|oh|ah|oops|whoops|ups|sorry|wait|also|edit|p\\.?s\\.?|und|ach(?: ja)?|et|y|e|ed|en|i|och|ay|ai|aj)"
          + "[ ,:.!-]+){0,4}";

  private static final String WHO =
      "(?:(?:i|i'?ve|i'?d|we|just|nearly|almost|totally|completely|have|had|one|ich|hab[e']?|hatte|ganz|fast|noch"
          + "|was|j'ai|j'avais|on a|presque|se|me|nos|he|habia|casi|ho|avevo|mi|sono|ero|quasi|ik|was|ben"
          + "|nog|bijna|eu|quase|ja|jeszcze|prawie|jag|hade|nastan)[ ,]+){0,4}";

  private static final String FORGOT =
      "(?:forgot(?:ten)?|missed|left out|also|add(?:ed|ing)|late (?:addition|entry)|p\\.?s\\.?|tmrw|tomorrow"
          + "|nachtrage?|nachgetragen|vergessen|vergass|oubli(?:e|ais|s)?|ajout|olvid(?:e|o|aba|ado)"
          + "|dimentica(?:to|ta|vo)|scorda(?:to|ta|vo)|vergeten|vergat|esquec(?:i|eu|emos|ido)(?:-me)?"
          + "|faltou|zapomnial[ae]m|zapomnielismy|dopisuje|glom(?:de|t)(?: bort)?|tillagg)";

  private static final String WHAT =
      "(?: (?:one|this one|that one|it|about|on|for|from|to (?:say|write|add|mention|put)|late|later|day|einen"
          + "|zum|vom|fur|une?|uno|una|een|um|uma|en|jeden|o|di|de|att skriva|bort|nog|noch|ancora))*";

  private static final String ARTICLE =
      "(?:(?:the|le|el|il|l'|o|den|dem|der|am|vom|zum|du|del|dal|do|ao|van|de) ?(?:dia |day )?)?";

  private static final Pattern INTRODUCTION =
      Pattern.compile(OPENING + WHO + FORGOT + WHAT + "[ ,:=.-]+(?:on )?" + ARTICLE);

  private static final Pattern ALONE =
      Pattern.compile("[ (*_-]*" + OPENING + WHO + FORGOT + WHAT + "[ .,:;!)*_-]*");

  /** {@code 4th (I left it out):}, {@code 4th I left out.} */
  private static final Pattern BEHIND =
      Pattern.compile(
          " *(?:\\([^)]{0,20}(?:forgot|missed|left (?:(?:it|this|that) )?out|out of order|vergess|nachtrag"
              + "|oubli|olvid|dimentic|vergeten|esquec|zapomn|glomd)[^)]{0,20}\\)"
              + "|[ ,-]*(?:i(?:'d)? )?(?:left (?:(?:it|this|that) )?out(?<= i .{0,20})"
              + "|(?:forgot|missed) (?:this|that)(?: one)?)(?: earlier)?[.:!])");

  private static final Pattern ORDINAL = Pattern.compile("(?:st|nd|rd|th|er|:e|º|ª)$");
  private static final Pattern ONE_DAY =
      Pattern.compile("(?<!\\p{L})(?:le|el|il|den|zum|vom|del|du|dal|do) (?:dia )?$");
  private static final Pattern MARK = Pattern.compile(" *(?:$|[.:,;=|>→)-])");

  private Afterthought() {}

  /** Where the day's name begins behind such words; {@code from} where there are none. */
  static int end(String line, int from) {
    return DayNameReader.end(INTRODUCTION, line, from);
  }

  /** Behind such words in brackets that follow the day's name. */
  static int endBehind(String line, int from) {
    return DayNameReader.end(BEHIND, line, from);
  }

  /** Whether the whole line is such words, so that the day stands on the next. */
  static boolean isAlone(String line) {
    return ALONE.matcher(line).matches();
  }

  /** Whether such words are meant of a day: "forgot 3 bags" is not. */
  static boolean isOf(DayName name, String line, int from) {
    return name.month().isPresent()
        || name.weekday().isPresent()
        || MARK.matcher(line).region(name.end(), line.length()).lookingAt()
        || ORDINAL.matcher(line).region(from, name.end()).find()
        || SpelledNumbers.ordinalAt(line, from).isPresent()
        || ONE_DAY.matcher(line).region(0, from).find();
  }
}
