package org.daymount.look.detect;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * The eighty kinds of the COCO dataset (Lin et al. 2014), in the dataset's order, which is the
 * order of CenterNet's heat maps.
 */
enum ThingKind {
  PERSON,
  BICYCLE,
  CAR,
  MOTORCYCLE,
  AIRPLANE("plane"),
  BUS,
  TRAIN,
  TRUCK,
  BOAT,
  TRAFFIC_LIGHT,
  FIRE_HYDRANT,
  STOP_SIGN,
  PARKING_METER,
  BENCH,
  BIRD,
  CAT,
  DOG,
  HORSE,
  SHEEP,
  COW,
  ELEPHANT,
  BEAR,
  ZEBRA,
  GIRAFFE,
  BACKPACK,
  UMBRELLA,
  HANDBAG,
  TIE,
  SUITCASE,
  FRISBEE,
  SKIS,
  SNOWBOARD,
  SPORTS_BALL("ball"),
  KITE,
  BASEBALL_BAT,
  BASEBALL_GLOVE,
  SKATEBOARD,
  SURFBOARD,
  TENNIS_RACKET,
  BOTTLE,
  WINE_GLASS,
  CUP,
  FORK,
  KNIFE,
  SPOON,
  BOWL,
  BANANA,
  APPLE,
  SANDWICH,
  ORANGE,
  BROCCOLI,
  CARROT,
  HOT_DOG,
  PIZZA,
  DONUT,
  CAKE,
  CHAIR,
  COUCH,
  POTTED_PLANT("plant"),
  BED,
  DINING_TABLE("table"),
  TOILET,
  TV("television"),
  LAPTOP,
  MOUSE("computer mouse"),
  REMOTE("remote control"),
  KEYBOARD,
  CELL_PHONE("phone"),
  MICROWAVE,
  OVEN,
  TOASTER,
  SINK,
  REFRIGERATOR,
  BOOK,
  CLOCK,
  VASE,
  SCISSORS,
  TEDDY_BEAR,
  HAIR_DRIER("hair dryer"),
  TOOTHBRUSH;

  /** Living and toy things whose faces a face detector takes for a person's. */
  private static final Set<ThingKind> WITH_A_FACE =
      EnumSet.of(BIRD, CAT, DOG, HORSE, SHEEP, COW, ELEPHANT, BEAR, ZEBRA, GIRAFFE, TEDDY_BEAR);

  private final String word;

  ThingKind() {
    this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  ThingKind(String word) {
    this.word = word;
  }

  /** In a person's words. */
  String word() {
    return word;
  }

  boolean hasFaceOfItsOwn() {
    return WITH_A_FACE.contains(this);
  }
}
