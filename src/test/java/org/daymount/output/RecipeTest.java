package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.time.Duration;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.look.SaliencyMap;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.Settings.Paper;
import org.junit.jupiter.api.Test;

class RecipeTest {
  private static final List<Class<?>> KNOWN =
      List.of(
          List.class,
          Optional.class,
          Map.class,
          SaliencyMap.class,
          byte[].class,
          CharSequence.class,
          Number.class,
          Boolean.class,
          Enum.class,
          Path.class,
          TemporalAccessor.class,
          Duration.class);

  private record Pair(String left, Optional<Integer> right) {}

  @Test
  void theSameMonthMadeTwiceHasTheSameRecipe() throws Exception {
    assertEquals(
        Recipe.of("month", TestMonths.month(Paper.A4)),
        Recipe.of("month", TestMonths.month(Paper.A4)));
    assertEquals(64, Recipe.of("month", TestMonths.month(Paper.A4)).length());
  }

  @Test
  void anotherStoryOrPaperOrKindIsAnotherRecipe() throws Exception {
    Month month = TestMonths.month(Paper.A4);
    String recipe = Recipe.of("month", month);
    assertNotEquals(recipe, Recipe.of("month", TestMonths.month(Paper.LETTER)));
    assertNotEquals(recipe, Recipe.of("another", month));
    List<MonthDay> days =
        month.days().stream()
            .map(d -> new MonthDay(d.day(), d.state(), Optional.of("It rained."), d.spaces()))
            .toList();
    assertNotEquals(
        recipe,
        Recipe.of(
            "month",
            new Month(
                month.month(),
                month.settings(),
                month.photos(),
                days,
                month.sheets(),
                month.album(),
                month.warnings())));
  }

  @Test
  void whereOnePartEndsAndTheNextBeginsMatters() {
    assertNotEquals(Recipe.of("x", "ab", "c"), Recipe.of("x", "a", "bc"));
    assertNotEquals(Recipe.of("x", List.of("a"), "b"), Recipe.of("x", List.of("a", "b")));
    assertNotEquals(Recipe.of("x", 1), Recipe.of("x", "1"));
    assertNotEquals(
        Recipe.of("x", new Pair("a", Optional.empty())),
        Recipe.of("x", new Pair("a", Optional.of(0))));
    assertNotEquals(Recipe.of("x", Map.of("a", 1)), Recipe.of("x", Map.of("a", 2)));
    assertNotEquals(
        Recipe.of("x", new SaliencyMap(2, 1, new float[] {1, 2})),
        Recipe.of("x", new SaliencyMap(1, 2, new float[] {1, 2})));
    assertNotEquals(Recipe.of("x", new byte[] {1, 2}), Recipe.of("x", new byte[] {1, 3}));
  }

  @Test
  void whatCannotBeToldApartIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Recipe.of("x", new Object()));
  }

  /** Also of what the months of the tests do not hold: a still of a clip, a page of one's own. */
  @Test
  void aRecipeCanBeMadeOfEverythingThatAMonthMayHold() {
    Set<Class<?>> seen = new HashSet<>();
    Deque<Type> left = new ArrayDeque<>(List.of(Month.class));
    while (!left.isEmpty()) {
      Type type = left.pop();
      if (type instanceof ParameterizedType parameterized) {
        left.push(parameterized.getRawType());
        left.addAll(List.of(parameterized.getActualTypeArguments()));
      } else if (type instanceof Class<?> one && seen.add(one)) {
        if (one.isRecord()) {
          for (RecordComponent component : one.getRecordComponents()) {
            left.push(component.getGenericType());
          }
        } else if (one.isSealed()) {
          left.addAll(List.of(one.getPermittedSubclasses()));
        } else {
          assertTrue(
              one.isPrimitive() || KNOWN.stream().anyMatch(known -> known.isAssignableFrom(one)),
              "a month may hold " + one);
        }
      }
    }
    assertTrue(seen.contains(Duration.class), "the time of a still is not reached");
  }
}
