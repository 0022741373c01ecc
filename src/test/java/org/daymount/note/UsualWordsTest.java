package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.daymount.album.PageSpecParser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The usual words for a page in the nine languages the manual names, on a day's line, as thumbs
 * type them. The words are common practice and our own knowledge of the languages; no source.
 */
class UsualWordsTest {
  private static final List<UnaryOperator<String>> HANDS =
      List.of(
          words -> "3 " + words,
          words -> "3. " + words,
          words -> "3 - " + words.toUpperCase(Locale.ROOT),
          words -> "3) " + words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1),
          words -> "#3 " + words + ".",
          words -> "* 3: (" + words + ")",
          words -> "3 → " + words + "  ",
          words -> "3 = " + words);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "photo | one photo; a photo; ein Foto; ein Bild; une photo; una foto; een foto; uma foto;"
            + " jedno zdjęcie; en bild; ett foto",
        "photo, photo | two photos; 2 pics; zwei Fotos; zwei Bilder; 2 Bilder; deux photos; 2 photos;"
            + " dos fotos; due foto; twee foto's; 2 foto's; duas fotos; dwa zdjęcia; 2 zdjęcia;"
            + " två bilder; två foton",
        "photo, photo, photo | three pics; drei Fotos; trois photos; tres fotos; tre foto;"
            + " drie foto's; três fotos; trzy zdjęcia; tre bilder",
        "portrait | photo portrait; portrait; upright; tall; one tall photo; hochkant; Hochformat;"
            + " Foto hochkant; photo verticale; verticale; foto vertical; vertical; verticale;"
            + " foto verticale; staand; staande foto; foto na vertical; retrato; pionowe;"
            + " pionowe zdjęcie; stående; stående bild; potrait",
        "landscape | landscape photo; pic wide; wide; quer; Querformat; Foto quer;"
            + " photo horizontale; paysage; foto horizontal; apaisada; orizzontale;"
            + " foto orizzontale; liggend; liggende foto; paisagem; foto na horizontal; poziome;"
            + " poziome zdjęcie; liggande; liggande bild; landscpe; lanscape",
        "photo portrait, photo portrait | 2 pics, both tall; two tall photos; zwei Fotos hochkant;"
            + " zwei Bilder, beide hochkant; deux photos verticales; dos fotos verticales;"
            + " due foto verticali; twee staande foto's; duas fotos verticais;"
            + " dwa pionowe zdjęcia; två stående bilder",
        "photo portrait, photo landscape | 1 tall 1 wide; one tall, one wide; one tall and one wide;"
            + " eins hochkant, eins quer; une verticale et une horizontale;"
            + " una vertical y una horizontal; una verticale e una orizzontale;"
            + " een staand, een liggend; uma vertical e uma horizontal;"
            + " jedno pionowe, jedno poziome",
        "on mat | matted; with a mat; on the mat; photo on a mat; mit Passepartout;"
            + " avec passe-partout; con passepartout; con paspartú; met passe-partout;"
            + " com passe-partout; z passe-partout; med passepartout",
        "4x6 | 4\" x 6\"; 4 by 6; 4x6; 4 x 6; 4*6; 6x4; 4×6",
        "3x4, 3x4, 3x4 | three pics (3x4); three 3x4s; 3 3x4",
        "3x4, 3x4 | two 3x4's; 2 x 3x4; two 3x4; 2x 3x4; zwei 3x4; deux 3x4; dos 3x4; due 3x4;"
            + " twee 3x4; duas 3x4; dwa 3x4; två 3x4",
        "full page | full page; whole page; ganze Seite; pleine page; página completa;"
            + " página entera; pagina intera; hele pagina; página inteira; cała strona; hela sidan;"
            + " full pgae",
        "no photo | words only; no pic; no photos; text only; blank; nur Text; kein Foto;"
            + " keine Fotos; ohne Bild; pas de photo; sans photo; texte seul; sin foto; sin fotos;"
            + " solo texto; senza foto; nessuna foto; solo testo; geen foto; alleen tekst;"
            + " sem foto; só texto; bez zdjęcia; tylko tekst; ingen bild; inga bilder; bara text;"
            + " utan bild; no phtoo",
        "leave out | skip; nothing; skip this one; auslassen; weglassen; überspringen; nichts;"
            + " rien; à sauter; sauter; nada; saltar; omitir; niente; saltare; overslaan; niets;"
            + " pular; pomiń; pominąć; nic; hoppa över; inget; skpi",
        "photo, journaling card | photo + journaling card; one photo and a journaling card;"
            + " 1 pic & journal card",
      })
  void areReadInEveryLanguageAndBySeveralHands(String page, String phrases) {
    List<String> wrong = new ArrayList<>();
    for (String phrase : phrases.split(";")) {
      for (UnaryOperator<String> hand : HANDS) {
        String line = hand.apply(phrase.strip());
        String read = pageOf(line);
        if (!page.equals(read)) {
          wrong.add("\n" + line + " -> " + read);
        }
      }
    }
    assertEquals(List.of(), wrong, page);
  }

  private static String pageOf(String line) {
    MonthNote note =
        NoteParser.parse(
            "June 2026\n2: Rain.\n" + line + "\nFog.\n4: Sun.\n",
            Set.of(),
            Optional.of(YearMonth.of(2026, 6)),
            Locale.ENGLISH);
    if (note.days().size() != 3) {
      return note.days().size() + " days";
    }
    NoteDay day = note.days().get(1);
    String story = day.story().orElse("none");
    String words = PageSpecParser.text(day.words());
    return story.equals("Fog.") ? words : words + " with the story " + story;
  }
}
