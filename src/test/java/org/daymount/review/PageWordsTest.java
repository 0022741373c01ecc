package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** What the program says of an option is said on the page in the words of its question. */
@Tag("slow")
@Isolated
class PageWordsTest {
  /** A sentence in the program's source, outside the commands' own help. */
  private static final Pattern SENTENCE =
      Pattern.compile("\"([^\"\\n]*(?<![\\w-])--[a-z][^\"\\n]*)\"");

  /** Said on no page: to other processes, on printed paper, and by commands the page has not. */
  private static final Pattern ELSEWHERE =
      Pattern.compile("--(help|enable-native-access|port|verbose|draw|card-sheet|no-color|quiet)");

  @TempDir Path home;

  @Test
  void noSentenceWithAnOptionReachesThePageAsItIsInTheTerminal() throws Exception {
    List<String> sentences = sentences();
    assertTrue(sentences.size() > 15, sentences.size() + " sentences");
    try (Browser browser = Browser.start(900, 700);
        RunningReview start = RunningReview.startPage(home)) {
      browser.open(start.address());
      browser.waitForText("h1", "Which month");
      Object said =
          browser.run(
              "const {said} = await import('./words.js');"
                  + "return arguments[0].map(said).filter((each) => /--[a-z]|undefined/.test(each))",
              sentences);
      assertEquals(List.of(), said);
      assertEquals(
          "choose another folder at “The folder everything is written to”",
          said(browser, "choose another folder with --out"));
      assertEquals(
          "“Only these days”: \"often\" is none",
          said(browser, "Invalid value for option '--days' (DAYS): \"often\" is none"));
      assertEquals(
          "“Story cards: where there is a story, as large as its place” makes each fit",
          said(browser, "--cards auto makes each fit"));
      assertEquals("a story -- with dashes", said(browser, "a story -- with dashes"));
    }
  }

  private static Object said(Browser browser, String text) {
    return browser.run("return (await import('./words.js')).said(arguments[0])", text);
  }

  private static List<String> sentences() throws IOException {
    TreeSet<String> found = new TreeSet<>();
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(each -> each.toString().endsWith(".java")).toList()) {
        if (source.toString().matches(".*/cli/\\w+(Options|Command|Daymount)\\.java")) {
          continue;
        }
        Matcher sentence = SENTENCE.matcher(Files.readString(source));
        while (sentence.find()) {
          if (!ELSEWHERE.matcher(sentence.group(1)).find()) {
            found.add(sentence.group(1));
          }
        }
      }
    }
    return new ArrayList<>(found);
  }
}
