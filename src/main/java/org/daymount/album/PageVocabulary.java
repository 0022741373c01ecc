package org.daymount.album;

import static java.util.Map.entry;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The usual words of the trade for a page, in English, German, French, Spanish, Italian, Dutch,
 * Portuguese, Polish and Swedish, as {@link NormalizedText} has them (lower case, no accents).
 * Common practice and our own knowledge of the languages; no source.
 */
final class PageVocabulary {
  /** What a word or phrase means for the page. */
  enum Word {
    NO_PHOTO,
    LEAVE_OUT,
    EITHER_WAY,
    PORTRAIT,
    LANDSCAPE,
    MAT,
    ON_SIDE,
    SIDEWAYS,
    FULL_PAGE,
    POCKET_PAGE,
    STORY_CARD,
    /** A card and no photo. */
    CARD_ONLY,
    NO_MAT,
    PHOTO
  }

  private static final String END = "(?![\\p{L}\\d-])";
  private static final String ALONE = "(?= *(?:$|[-.,;:!()\\[\\]|*_+&]))";
  private static final Map<Word, Pattern> PATTERNS =
      Map.ofEntries(
          entry(
              Word.NO_PHOTO,
              pattern(
                  "no(?:photo|pic)s?(?![\\p{L}\\d])|\\x{1F6AB} ?[\\x{1F4F7}\\x{1F4F8}]|(?:no|nae|not an?|without|w/o|w/out|(?:i |we )?(?:took|have|had|got) no"
                      + "|(?:i |we )?(?:didn'?t|did not|don'?t|do not|haven'?t|have not)(?: (?:take|have|get|got|want|need|any|taken))*|zero|keine?n?|ohne|pas de"
                      + "|sans|aucune|sin|senza|nessuna|niente|nada de|ninguna|brak|zadnych|null|noll|nul|s/|geen|zonder|sem|nenhuma|bez|zadnego|inga"
                      + "|inget|ingen|utan) (?:any |an? |une |ein |el |una? )?"
                      + PagePhrases.PHOTOS
                      + END
                      + "|(?:בלי|ללא|אין|בלא) (?:תמונ(?:ה|ות)|צילומ?ים|צילום)|(?:רק|מלל|טקסט) (?:טקסט|מילים|מלל|בלבד|כתב)"
                      + "|(?:بدون|بلا|لا|من دون|دون|ولا) (?:صور[ةه]?|اي صور[ةه]?)|(?:نص|كلمات|كتابة) فقط|فقط (?:نص|كلمات)"
                      + END
                      + "|(?:photos?|pics?|pictures?|fotos?) *[:=]? *(?:none|0|zero|keine?|aucune"
                      + "|geen|nenhuma)"
                      + END
                      + "|0 "
                      + PagePhrases.PHOTOS
                      + END
                      + "|(?:just |only |all )?(?:the )?(?:words?|text|story|writing|journal(?:l?ing)?)(?: only| alone)(?: page)?"
                      + END
                      + "|all (?:words|text|writing)"
                      + END
                      + "|(?:only|just)(?: (?:the|some|my))? (?:words|text|story|writing|journall?ing)"
                      + END
                      + "|(?:nur (?:der |den |mit )?text|texte seul(?:ement)?|(?:seulement|juste|rien que) (?:le |du )?texte|(?:solo|so|apenas|somente) (?:el |o |com )?texto"
                      + "|(?:puras|solo|sin mas que) palabras|solo (?:il )?testo|nur worte|(?:alleen|enkel) (?:de )?tekst|(?:tylko|sam) tekst|(?:bara|endast) text(?:en)?)"
                      + END
                      + "|(?:no|nope|nah)(?= *$)|(?:none(?: today| needed| for (?:today|this))?|no need"
                      + "|(?:i )?needs?:? nothing|np|(?:words?|text)(?= *(?:$|[-|]))|(?:(?:leave"
                      + "|left|keep|stays?)(?: it| this)? )?(?:blank|empty)(?: page| please)?)"
                      + ALONE
                      + "|(?:leere? seite|leer(?: lassen)?|page (?:blanche|vide)|vide|(?:laisser|deixar|dejar|lasciare) (?:vide|em branco|en blanco|(?:in )?bianco)|(?:pagina )?(?:en blanco"
                      + "|em branco|bianca|vuota|blanco)|lege pagina|leeg(?: laten)?|pusta(?: strona)?"
                      + "|tom sida|tomt?)"
                      + ALONE)),
          entry(
              Word.LEAVE_OUT,
              pattern(
                  "leave (?:this|that) (?:day|one|page)(?= *(?:$|[.,;!)]))|(?:left(?= out)|leave|drop|miss|skip|cut|take|keep)(?: (?:it|this|that|the)(?: (?:one|day|page))?)? out(?: of (?:it|the (?:book|album)))?"
                      + END
                      + "|xx+(?= *$)|(?:no page(?: (?:today|needed|for (?:today|this|(?:this|the|that) (?:one|day))))?|n/a|drop (?:it|this|that)(?: one| day| page)?|(?:just |we can |can |please )?(?:skip(?:ped|ping|p)?|skp"
                      + "|sikp|skpi)(?: it| this(?: one| day| page)?| the day| that(?: one| day)?"
                      + "| today| day| please| too| as well|[ ,!]+skip)*|nothing(?: today| here)?|noth?ing?|nil"
                      + "|nada|nothign|notihng|omit(?:ted)?|(?:diesen tag |den tag |bitte )?(?:auslassen|weglassen)"
                      + "|(?:lassen wir )?(?:aus|weg|raus)(?: ?lassen|gelassen)?|uberspr(?:ingen|ungen)|nichts"
                      + "|nix|keine seite|nicht (?:einkleben|rein(?:kleben)?|mit rein)|ne pas (?:mettre|coller|inclure)|a ne pas mettre|laisser de cote|no (?:poner|pegar|incluir)|non (?:mettere|incollare|inserire)|da saltare|lasciare fuori|niet (?:plakken|inplakken|opnemen)|weglaten|laat (?:maar )?weg|nao (?:colocar|por|colar|incluir)|deixar (?:de )?fora|nie (?:wklejac|dawac)|opuscic|ta inte med|utelamna|(?:do not|don't) include|rien|sauter|a sauter|on saute|saute|pas de page|nada"
                      + "|omitir|saltar(?:e|lo)?(?: (?:este|el) dia)?|salta(?:mos)?|sin pagina|niente|nulla|(?:deze dag )?overslaan"
                      + "|overgeslagen|sla over|niets|niks|geen pagina|nic|pomin(?:ac|iete)?"
                      + "|hoppa over|hoppar over|לדלג(?: על (?:זה|היום))?|דלג[וי]?|כלום|تخط[يى]|تجاوز|بدون شيء|اترك[هة]?|لا شيء|ingenting|inget|pular|pula)"
                      + ALONE)),
          entry(
              Word.EITHER_WAY,
              pattern(
                  "(?:(?:"
                      + PagePhrases.TALL
                      + ") (?:or|oder|ou|o|of|lub|eller) (?:"
                      + PagePhrases.WIDE
                      + ")|(?:"
                      + PagePhrases.WIDE
                      + ") (?:or|oder|ou|o|of|lub|eller) (?:"
                      + PagePhrases.TALL
                      + ")|either way)"
                      + END)),
          entry(Word.PORTRAIT, pattern(PagePhrases.TALL + END)),
          entry(Word.LANDSCAPE, pattern(PagePhrases.WIDE + END)),
          entry(
              Word.MAT,
              pattern(
                  "(?:on|with|w/|w|in|has|\\+|&|c/) ?(?:an? |the )?(?:(?:nice|white|black|cream|gr[ae]y|colou?red|dark"
                      + "|light|wide|narrow|thin|thick|red|blue|green) )?mats?(?: (?:a?round|behind|under)(?: (?:it|them|each|both|that))?)?"
                      + END
                      + "|(?:put )?(?:an? |the )?mat (?:on|under|behind|a?round) (?:it|them|each|both|that)"
                      + END
                      + "|mat on"
                      + END
                      + "|mats?(?:"
                      + ALONE
                      + "|(?= \\d))|mounted(?: on (?:an? |the )?mat)?|matting"
                      + END
                      + "|matted"
                      + END
                      + "|(?:(?:auf|mit|avec|sur|sobre|con|su|met|op|com|z|na|no|med|pa|on|with|w/|c/|m\\.) )?(?:an? |un |une |el |il |em |um |einem |ett |een )?"
                      + "(?:passe-?partout|paspatur|paspartu|marialuisa)"
                      + END
                      + "|(?:mit(?: einem)? (?:rahmen|(?:rand(?: aus karton)?|karton))|auf karton|(?:עם )?פספרטו|(?:مع |ب)?(?:باسبارتو|اطار(?: كرتون)?|حاشية)|avec(?: un| une)? (?:cadre|marge)"
                      + "|con(?: un)? (?:marco|cornice)|met(?: een)? (?:rand|lijst)"
                      + "|com(?: uma?)? moldura|z ramka|med ram)"
                      + END)),
          entry(
              Word.FULL_PAGE,
              pattern(
                  "(?:full[- ]?(?:page|p(?:ge?|gae|aeg)|bleed|size page)|whole page|ganze seite|ganzseitig|pleine page|page entiere"
                      + "|pagina (?:completa|entera|intera|inteira)|hele pagina|cala strona"
                      + "|hela sidan|helsida|toda la pagina|toda a pagina|tutta la pagina"
                      + "|toute la page|volle seite|(?:עמוד|דף) (?:מלא|שלם)|صفحة كاملة|pelna strona|pagina cheia|hel sida)"
                      + END)),
          entry(
              Word.POCKET_PAGE,
              pattern(
                  "(?:pocket p(?:age|ge|g)s?|pockets?"
                      + ALONE
                      + "|(?:taschen|hullen|steck|fick)(?:seite|sida|blad)"
                      + "|(?:page|pagina|seite|strona|sida)(?: (?:a|de|con|z|ze|met|med|mit|com|di))?"
                      + " (?:pochettes?|bolsillos?|kieszonk\\p{L}+|taschen|hullen|tasche|taschine|vakjes|zakjes|bolsos?"
                      + "|bolsinhos?|bolsas?|fickor)|(?:insteek|vakjes)(?:pagina|blad)|(?:עמוד|דף) כיסים|صفحة (?:جيوب|الجيوب))"
                      + END)),
          entry(
              Word.STORY_CARD,
              pattern(
                  PagePhrases.CARD_LEAD
                      + "(?:"
                      + PagePhrases.STORY_CARD
                      + END
                      + "|"
                      + PagePhrases.CARD_NOUN
                      + "(?: too| as well| please| auch| aussi| tambien)?(?:"
                      + ALONE
                      + "|(?=,? (?:and |und |et |y |e |en |och |i )?(?:no|without|kein|ohne|pas de|sans|sin|senza|geen|zonder|sem|bez|ingen|utan) )))")),
          entry(
              Word.CARD_ONLY,
              pattern(
                  "(?:just|only|nur|sama|samej|tylko|solo|juste|seulement|rien que|alleen|enkel|bara|endast"
                      + "|apenas|so|somente|רק|فقط) "
                      + PagePhrases.CARD_LEAD
                      + "(?:"
                      + PagePhrases.STORY_CARD
                      + END
                      + "|"
                      + PagePhrases.CARD_NOUN
                      + ALONE
                      + ")|"
                      + PagePhrases.CARD_LEAD
                      + "(?:"
                      + PagePhrases.STORY_CARD
                      + "|"
                      + PagePhrases.CARD_NOUN
                      + ") (?:only|alone|nur|allein|seulement|seule|solo|sola|alleen|apenas|tylko|فقط|בלבד)"
                      + END)),
          entry(
              Word.NO_MAT,
              pattern(
                  "(?:(?:but )?(?:no|without|w/o|ohne|kein|sans|sin|senza|geen|zonder|sem|bez|utan|inget) (?:an? |the |un |une )?(?:mat(?:ting)?|(?<!no )passe-?partout|paspatur|paspartu|marialuisa|rahmen|rand|cadre|marco|cornice)|בלי פספרטו)"
                      + END)),
          entry(Word.PHOTO, pattern("(?:" + PagePhrases.PHOTOS + ")" + END)),
          // a picture that is turned to fit; sideways alone is a direction, as most people write it
          entry(
              Word.ON_SIDE,
              pattern(
                  "(?:(?:lying |laid |turned |put )?(?:(?:on|onto) (?:its|their|the"
                      + "|one) sides?)|(?:turned|rotated|laid) sideways|(?:liegend )?auf d(?:er"
                      + "|ie) seite(?: gelegt)?|(?:couchee?s? )?sur le cote|(?:tumbad[oa]s? )?de lado"
                      + "|(?:coricat[oaie] )?su un fianco|sul fianco|op (?:zijn|de) kant|na boku"
                      + "|pa sidan)"
                      + END)),
          entry(Word.SIDEWAYS, pattern("sideways" + END)));

  private static final Pattern WITHOUT =
      Pattern.compile("(?:no|without|ohne|keine?|pas de|sin|sem) ");

  private PageVocabulary() {}

  private static Pattern pattern(String words) {
    return Pattern.compile(words);
  }

  /** Behind the pattern there; {@code at} when it is not there. */
  static int end(Pattern pattern, String text, int at) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    return matcher.lookingAt() ? matcher.end() : at;
  }

  /** The end of the word there; {@code at} when it is not there. */
  static int end(Word word, String text, int at) {
    Matcher matcher = PATTERNS.get(word).matcher(text).region(at, text.length());
    matcher.useTransparentBounds(true);
    if (matcher.lookingAt()) {
      return matcher.end();
    }
    if (word == Word.NO_PHOTO) {
      Matcher without = WITHOUT.matcher(text).region(at, text.length());
      boolean slipped =
          without.lookingAt()
              && PageSlips.at(text, without.end()).filter(Word.PHOTO::equals).isPresent();
      return slipped ? PageSlips.wordEnd(text, without.end()) : at;
    }
    return PageSlips.at(text, at).filter(word::equals).isPresent()
        ? PageSlips.wordEnd(text, at)
        : at;
  }
}
