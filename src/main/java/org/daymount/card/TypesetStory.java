package org.daymount.card;

import java.util.List;

/**
 * A day's story on its cards.
 *
 * @param cards at least one
 * @param notes what a person should know, in words without the day: the story runs over, letters
 *     are missing; empty when there is nothing to say
 */
public record TypesetStory(List<StoryCard> cards, List<String> notes) {
  public TypesetStory {
    cards = List.copyOf(cards);
    notes = List.copyOf(notes);
  }
}
