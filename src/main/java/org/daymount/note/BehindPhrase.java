package org.daymount.note;

import java.util.regex.Pattern;

/** What may stand behind words for a page that stand in a story. */
final class BehindPhrase {
  static final Pattern CLOSING = Pattern.compile("[ .:;,)\\]!*_\"|-]*");

  static final Pattern POLITE =
      Pattern.compile(
          " *(?:(?:(?:for |on )?(?:that|this|each|every|both|all|all (?:two|three|four)) (?:ones?|days?)|each|definitely|varje dag|cada dia|chaque jour|jeden tag|elke dag|ogni giorno|todos los dias|todos os dias"
              + "|as well|for sure|only|then|again|po|lang|ulit|ja|bitte|please|pls|plz|lol|haha|thanks|thx|today|ok|bitte|svp|graag|of"
              + " (?:it|that|this|them|us)|for (?:it|that|this)(?: one)?|thank god)(?!\\p{L})[ ,]*){0,2}");

  static final Pattern MARK_BEHIND =
      Pattern.compile("[ *_]*(?:$|[!?;,|()•·→\\]\"]|[.:](?!\\d)|-+ |--)");

  static final Pattern GOES_ON =
      Pattern.compile(
          " *(?:of|from|for|with|by|here|please|pls|today|thank|von|vom|mit|van|met|de|du|des|del|della|dos"
              + "|da|do|av|fran|z|ze)(?![\\p{L}\\d])");

  static final Pattern HERE =
      Pattern.compile(
          " *(?:here|please|pls|for (?:this|that)|on this|hier|bitte|ici|aqui|qui|tutaj|har)(?!\\p{L})");

  /** What a person adds for who chooses the photos: {@code (two photos, whichever you like)}. */
  static final Pattern ASIDE = Pattern.compile(" *(?:please|pls|bitte|svp)?[,;][^()]*\\)[ .]*$");

  /** Which photo is meant, behind the words for it: {@code One photo, the one of us two.} */
  static final Pattern WHICH =
      Pattern.compile(
          " *(?:please|pls|bitte|svp|por favor)?[,:;!]* (?:the ones?|that one|the selfie|das (?:bild|foto)|die (?:bilder"
              + "|fotos)|celles? |celui|l[ao]s? de|el de|quell[aoe] |die van|de foto|den med|a da|the [\\p{L}']+ and the)"
              + "(?!\\p{L})[^.!?]{0,60}[.!?) ]*$");

  static final Pattern WHICH_OF_IT =
      Pattern.compile(" of (?:the|us|him|her|them|me|my|our|it) ?[^.!?,]{0,40}$");

  private BehindPhrase() {}
}
