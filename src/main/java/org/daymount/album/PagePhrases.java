package org.daymount.album;

/** Parts of the patterns of {@link PageVocabulary} that several words share. */
final class PagePhrases {
  static final String PHOTOS =
      "(?:(?:(?:nice|good|single|separate|different) ){0,2}(?:[\\x{1F4F7}\\x{1F4F8}\\x{1F5BC}]|photo'?s?|photographs?|pic'?s?|pix|pictures?|snap(?:shot)?s?|shots?|foto'?s?|fotografias?|fotografie|bild(?:er)?"
          + "|foton|images?|imagen(?:es)?|imagem|imagens|immagin[ei]|zdjecia?|zdjecie|zdjec|תמונ(?:ה|ות|ת)(?: אחת| בודדת)?|צילומ?ים|צילום|صورة(?: واحدة)?|صور|صورتان|صورتين))";
  static final String BEFORE_WAY =
      "(?:(?:in|as|im|als|en|au|au format|a la|na|em|w|i|format|orientation|stehend(?:es)? ) )?";
  static final String TALL =
      BEFORE_WAY
          + "(?:(?<=(?:one|two|three|[1-4]) )up(?= (?:and|one|two|[12]|side(?:ways)?|down)|[,;)+]|$)|portraits?(?: format| style| orientation| way)?|tall|upright|standing(?: up| on end)?|on end|up and down(?: ways)?"
          + "|vertical(?:s|es|i|e|ly)?|verticais|verticales|verticaal|vertikala?|hochformat(?:ig)?"
          + "|hochkant(?:ig)?|hoch|stehend|senkrecht|hauteur|retrato|ritratto|staande?|de pie|ao alto|al alto|en alto"
          + "|em pe|in piedi|vert|lengthways|p(?= *(?:$|[,;|)+]|- |on |mat|x ?\\d))|(?<=\\d)p|pionow[oyea]|pionie|stojac[aey]\\p{L}*|debout|rechtop|parad[oa]s?|staende|ל?אורך|עומד(?:ת|ות|ים)?|אנכית?|(?:بال)?طول(?:ي|ية)?|(?:ال)?عمودي(?:ة|تان|تين|ات)?|واقفة?"
          + "|hojden)";
  static final String WIDE =
      BEFORE_WAY
          + "(?:landscapes?(?: format| style| orientation)?|wide|horizontal(?:s|es|e|ly)?"
          + "|horizontais|horizontaal|horisontell?a?|sideways|querformat(?:ig)?|quer|liegend"
          + "|waagrecht|waagerecht|paysage|largeur|apaisad[oa]s?|paisaje|paisagem"
          + "|deitad[oa]s?|ao baixo|orizzontal[ei]|liggende?|poziom[oyea]|poziomie|liggande|bredden"
          + "|(?<=one )sleeping|sleeping(?= (?:photo|pic|one))|lying(?: down| flat)?(?: ways?)?|tumbad[oa]s?|acostad[oa]s?|echad[oa]s?|couchee?s?|sdraiat[aeio]|lezac[aey]\\p{L}*"
          + "|ל?רוחב|שוכב(?:ת|ות|ים)?|אופקית?|(?:بال)?عرض(?:ي|ية)?|(?:ال)?افقي(?:ة|تان|تين|ات)?|l/s|lscape|horiz|l(?= *(?:$|[,;|)+]|- |on |mat|x ?\\d))|(?<=\\d)l(?! of))";

  static final String CARD_LEAD =
      "(?:(?:with|c/|w/|wel|mit|avec|con|com|met|z|ze|med|עם|مع) )?(?:(?:an?|the|one|eine?|einer|une?|la|una|il"
          + "|een|uma?|en|ett|my) )?(?:(?:little|small|kleine[rn]?|petite) )?";
  static final String CARD_NOUN =
      "(?:card|karte|kartchen|carte|tarjeta|scheda|cartoncino|biglietto|kaart(?:je)?|cartao|kart[aey]|karteczka|kort"
          + "|כרטיס|بطاقة)";
  static final String STORY_CARD =
      "(?:(?:journal(?:l?ing)?|story|text|words?|writing|note) ?cards?|journall?ing"
          + "|(?:text|tekst|story|verhaal|geschichten|berattelse|erzahl|tagebuch|notiz|schreib|schrijf|skriv|journal)-?(?:karte|kartchen|kaart(?:je)?|kort)|כרטיס סיפור|"
          + CARD_NOUN
          + "(?: (?:de|con|col|di|com|met|z|ze|med|mit|a|pour|per|para|fur|voor|for|till))?(?: (?:la|el|a|o|il|het|l'|die|der|einer))?"
          + " ?(?:texte?|texto|testo|tekst(?:em)?|histoire|historia|historie|storia|verhaal|geschichte|escribir|schreiben|scrivere|ecrire|schrijven|escrever|pisania|skriva|racconto|cuento|relato|conto|قصة|نص))";

  private PagePhrases() {}
}
