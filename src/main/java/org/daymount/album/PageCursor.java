package org.daymount.album;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageVocabulary.Word;
import org.daymount.unit.Orientation;
import org.daymount.unit.SizeText;

/** The text that words for a page are read from; every method gives the end of what it knows. */
final class PageCursor {
  private static final Pattern GAP =
      Pattern.compile(
          "(?:[ ,;&+()=*_|\"{}]++|#(?=\\p{L}))++|(?:and|plus|und|et|och|oraz|y|e|i|en|ve|u|but|aber|mais|pero|ma|maar|mas"
              + "|ale|men|وايضا|וגם|ו|و|with(?= (?:an? )?(?:journ|story c|card))"
              + "|(?:with|w/|in|at|of|a|de|zu|mit|con|avec|met|med|z|com)"
              + "(?= (?:\\d|two|three|four|one photo|one pic|zwei|deux|dos|due|twee|dois|duas|dw[ai]e|dwoma|tva|drei|trois|tres|tre|drie|trz[ye]\\p{L}*|vier|quatre|cuatro|quattro|quatro|fyra) ?))(?![\\p{L}\\d])");

  /** Words that add nothing. */
  private static final Pattern POLITE =
      Pattern.compile(
          "(?:please|pls|plz|bitte|graag|alsjeblieft|aub|svp|s'il (?:te|vous) plait|por favor"
              + "|per favore|prosze|tack|thanks|thx|side by side|next to each other|no card(?=[ .,;]|$)|as well(?= *(?:$|[.,;)!]))|(?:both|beide|les deux|ambas|entrambe|allebei|obie|bada)(?= *(?:$|[.,;)]))|each(?: day| of them)?|je|chacune?|cada|elk"
              + "|(?:in )?(?:any|which ?ever) way(?: (?:a?round|up))?|(?:is|will be) (?:enough|plenty|fine)|will do|reicht|genugt|suffit|es suficiente|is genoeg|chega|wystarczy|racker|for (?:this|that)(?: (?:one|day|page))?"
              + "(?= *(?:$|[-.,;:!()])))(?![\\p{L}\\d'])");

  /** Words that add nothing to the words for a page that follow them. */
  private static final Pattern BEFORE =
      Pattern.compile(
          "(?:let me have|i'?ll have|do it as|make (?:it|that)|we'?ll (?:have|do)|(?:for |on )?(?:each|every) day"
              + "|(?:so|then)(?= (?:just )?(?:one|two|three|no) (?:photo|pic))"
              + "|elke dag|jeden tag|cada dia|chaque jour|ogni giorno|todos los dias|todos os dias|codziennie|varje dag"
              + "|(?:just|only) the(?= (?:one|two|three|\\d) )|(?:today|heute|aujourd'hui|hoy|oggi|vandaag|hoje|dzis|dzisiaj|i dag|idag)"
              + "(?=,? (?:no|kein|keine|pas de|sin|sans|nessuna|senza|niente|geen|sem|nenhuma|bez|zadnych|ingen|inga|inget|nur|only|just|seulement|solo|alleen|so|tylko|bara) )|juste une seule|just|only|nur|solo|seulement|juste|alleen|bara|tylko|apenas|sama|also|auch|too|maybe|perhaps|do|put"
              + "|max(?=\\.? \\d)|about(?= \\d)|(?:up to|at least)(?= (?:\\d|two|three|four))"
              + ")(?![\\p{L}\\d'])");

  /** What may follow where no photo or no page is asked for. */
  private static final Pattern AFTER_KIND =
      Pattern.compile(
          " *(?:(?:(?:needed|necessary|taken|wanted|required|at all|here|tho|though|then|nothing happened"
              + "|for (?:today|this|(?:this|the|that) (?:one|day))|this time|again|i'?m afraid|sorry)"
              + "(?![\\p{L}\\d']) *)+(?=$|[-.,;:!()\\[\\]|*_/])|(?:today|tonight|this morning|heute"
              + "|aujourd'hui|hoy|oggi|vandaag|hoje|dzis|dzisiaj|idag)(?: then)? *(?=[.;!):]|-+ |$))");

  /** Sizes as people name them that know two sizes of pockets. */
  private static final Pattern SMALL =
      Pattern.compile(
          "(?:(?:small|smalls|little|littles|wee|tiny|mini|minis|kleine?[rns]?|petite?s?|pequen[oa]s?"
              + "|chic[oa]s?|chiquit[oa]s?|piccol[aeio]|male|mal[ay]|lilla|sma|liten)(?![\\p{L}\\d]) *){1,2}");

  private static final Pattern LARGE =
      Pattern.compile(
          "(?:big|bigger|large|larger|grosse?[rns]?|grande?s?|grandi|grote?|duz[aye]|duze|stora"
              + "|stor)(?![\\p{L}\\d]) *");

  private final String text;

  PageCursor(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }

  boolean isEnd(int at) {
    return at >= text.length();
  }

  int end(Pattern pattern, int at) {
    return PageVocabulary.end(pattern, text, at);
  }

  int end(Word word, int at) {
    return PageVocabulary.end(word, text, at);
  }

  boolean is(Word word, int at) {
    return end(word, at) > at;
  }

  Matcher matcher(Pattern pattern, int at) {
    return pattern.matcher(text).region(at, text.length());
  }

  int polite(int at) {
    return end(POLITE, at);
  }

  /** Behind words that add nothing, if others follow. */
  int before(int at) {
    return end(BEFORE, at);
  }

  int afterKind(int at) {
    return end(AFTER_KIND, at);
  }

  int small(int at) {
    return withoutBlanks(at, end(SMALL, at));
  }

  int large(int at) {
    return withoutBlanks(at, end(LARGE, at));
  }

  private int withoutBlanks(int from, int end) {
    int at = end;
    while (at > from && text.charAt(at - 1) == ' ') {
      at--;
    }
    return at;
  }

  /** Behind marks, blanks and the words that join. */
  int gaps(int from) {
    int at = from;
    for (int next = end(GAP, at); next > at; next = end(GAP, at)) {
      at = next;
    }
    return at;
  }

  /** The way that is said there, tall or wide. */
  Optional<SizeText.Found<Orientation>> wayAt(int at) {
    int tall = end(Word.PORTRAIT, at);
    if (tall > at) {
      return Optional.of(new SizeText.Found<>(Orientation.PORTRAIT, tall));
    }
    int wide = end(Word.LANDSCAPE, at);
    return wide > at
        ? Optional.of(new SizeText.Found<>(Orientation.LANDSCAPE, wide))
        : Optional.empty();
  }
}
