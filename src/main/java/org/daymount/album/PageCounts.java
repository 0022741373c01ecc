package org.daymount.album;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Small numbers in words, as people count photos. */
final class PageCounts {
  private static final Map<String, Integer> COUNTS = counts();

  private PageCounts() {}

  private static Map<String, Integer> counts() {
    Map<String, Integer> counts = new HashMap<>();
    List<String> words =
        List.of(
            "a an one another other single ein eine eins eines einen un une una uno een um uma jeden jedno jedna ett en otra otro altra altro outra outro autre andere drugie drugi druga andra andre annan אחת אחד ואחת ואחד واحدة واحد وواحدة",
            "two zwei deux dos due twee dois duas dwa dwie tva שתי שתיים שני שניים ושתי ושתיים ושני اثنتان اثنتين اثنان اثنين واثنتان واثنتين",
            "three drei trois tres tre drie trzy שלוש שלושה ושלוש ثلاث ثلاثة وثلاث",
            "four vier quatre cuatro quattro quatro cztery fyra ארבע ארבעה اربع اربعة",
            "five funf cinq cinco cinque vijf piec fem",
            "six sechs seis sei zes szesc sex",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve");
    for (int i = 0; i < words.size(); i++) {
      for (String word : words.get(i).split(" ")) {
        counts.put(word, i + 1);
      }
    }
    return Map.copyOf(counts);
  }

  /** 0 when the word is not a number. */
  static int of(String word) {
    return COUNTS.getOrDefault(word, 0);
  }
}
