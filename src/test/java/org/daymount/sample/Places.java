package org.daymount.sample;

import java.util.List;

/** The corners of the island that the family's pictures are taken in. */
final class Places {
  private Places() {}

  private static Sky sky(Mood mood, double seed) {
    return new Sky(mood, seed);
  }

  static Scene beach(Mood mood, double seed) {
    Sky sky =
        sky(mood, seed)
            .island(-22, 17, .055, 0x50705a, .45, 3)
            .island(26, 26, .04, 0x4a6660, .62, 5);
    return new Scene(
        mood,
        sky,
        Ground.shore(
            Ground.sand(0xd8c49c, 0xb09468, .6), Ground.sea(0x2f8388, 0x1c4f70, .5), 10, .25));
  }

  static Scene openSea(Mood mood, double seed, double swell) {
    Sky sky =
        sky(mood, seed).island(-14, 13, .05, 0x44605a, .55, 7).island(19, 9, .028, 0x50706a, .7, 8);
    return new Scene(mood, sky, Ground.sea(0x2a747c, 0x173f5e, swell));
  }

  static Scene garden(Mood mood, double seed) {
    Sky sky = sky(mood, seed).island(5, 40, .045, 0x4f6d50, .4, 11);
    Scene scene = new Scene(mood, sky, Ground.grass(0x86a04a, 0x3f6b30));
    for (int i = 0; i < 9; i++) {
      double x = -7 + i * 1.75 + Noise.hash(i, 3, 30);
      scene.add(
          Props.bush(
              x, -.1, 9.2 + Noise.hash(i, 4, 30), 1.8 + Noise.hash(i, 5, 30), 0x7f9c4c, 0x2c4f2a));
    }
    return scene;
  }

  static Scene flowerGarden(Mood mood, double seed) {
    return garden(mood, seed).add(Props.bed(-3.2, 3.2, 4.4, 6.2, 26, (int) (seed * 10)));
  }

  static Scene yard(Mood mood, double seed, double painted) {
    Sky sky =
        sky(mood, seed)
            .island(-30, 16, .06, 0x50705a, .5, 13)
            .island(24, 22, .045, 0x56746a, .6, 14);
    Scene scene =
        new Scene(
            mood,
            sky,
            Ground.shore(
                Ground.cobbles(0xa89c8a, 0x75695c), Ground.sea(0x2f7f86, 0x1c4f70, .35), 13, -.2));
    return scene.add(Props.boat(.5, .55, 5.6, 14, painted, true));
  }

  static Scene kitchen(Mood mood) {
    return new Scene(mood, new Room(0xcfd6c6, 0xeaf2f4, mood.ambient() < .55 ? .6 : .95), null)
        .add(Props.table(0, 1.5, 2.4, 1.1));
  }

  static Scene night(Mood mood, double seed) {
    Sky sky = sky(mood, seed).island(-18, 20, .06, 0x16202c, .2, 17);
    return new Scene(
        mood,
        sky,
        Ground.shore(
            Ground.sand(0x8d806a, 0x5f5442, .3), Ground.sea(0x14303f, 0x0a1a2c, .35), 9, .2));
  }

  /** Lanterns on a line between posts, each a light. */
  static Scene lanterns(Scene scene, double z, double y) {
    int[] colours = {0xffb24a, 0xff7a5a, 0xffd878, 0xf28ab0, 0xffa040, 0x9ad0c0};
    for (int i = 0; i < 6; i++) {
      double x = -2.5 + i;
      double sag = y - .45 + .06 * (x * x);
      scene.add(Props.lantern(x, sag, z, colours[i], 1));
      scene.lamp(x, sag - .1, z - .12, colours[i], 1.15);
    }
    return scene.add(Props.moonlitPost(-3.2, z, y + .4), Props.moonlitPost(3.2, z, y + .4));
  }

  static Scene finds(Mood mood) {
    Scene scene = new Scene(mood, sky(mood, 3), Ground.sand(0xdcc9a2, 0xb59a70, 0));
    scene.add(
        Props.starfish(.02, .52, .105, 20),
        Props.shell(-.20, .40, .060, 0xf0dcc8, 0xc98a68, 25),
        Props.shell(.23, .66, .048, 0xe8d8e0, 0x9a6a80, -70),
        Props.shell(-.13, .70, .040, 0xf2ead8, 0xb8a070, 160),
        Props.bucket(.36, 0, .86, 0xd8402e));
    int[][] stones = {{0x6a7078, 0x3e444c}, {0xa8988a, 0x6f5f52}, {0x8aa8a0, 0x4f7a70}};
    for (int i = 0; i < 12; i++) {
      double x = -.42 + .84 * Noise.hash(i, 7, 40);
      double z = .30 + .60 * Noise.hash(i, 8, 40);
      if (Field.length(x - .02, 0, z - .52) > .14) {
        int[] c = stones[i % 3];
        scene.add(Props.pebble(x, z, .018 + .022 * Noise.hash(i, 9, 40), c[0], c[1], i));
      }
    }
    return scene;
  }

  static Scene pebbles(Mood mood) {
    Scene scene = new Scene(mood, sky(mood, 3), Ground.sand(0xa09078, 0x6f614c, 0));
    int[][] stones = {
      {0x6a7078, 0x3e444c},
      {0xb8a898, 0x7f6f62},
      {0x8aa8a0, 0x4f7a70},
      {0xa86a52, 0x6f3e30},
      {0xd8d0c0, 0xa89a88}
    };
    for (int i = 0; i < 90; i++) {
      int row = i / 9;
      double x = -.56 + (i % 9) * .14 + .07 * (row % 2) + .03 * Noise.hash(i, 1, 44);
      double z = .20 + row * .105 + .03 * Noise.hash(i, 2, 44);
      int[] c = stones[(int) (Noise.hash(i, 3, 44) * 5)];
      scene.add(Props.pebble(x, z, .052 + .024 * Noise.hash(i, 4, 44), c[0], c[1], i));
    }
    return scene;
  }

  static Scene market(Mood mood, double seed) {
    Sky sky = sky(mood, seed).island(0, 40, .05, 0x50705a, .5, 19);
    Scene scene = new Scene(mood, sky, Ground.cobbles(0xb0a494, 0x7f7466));
    scene.add(Props.stall(-1.0, 4.6, 0xc8382e, 0xf4efe4));
    scene.add(Props.stall(3.3, 5.6, 0x2f6f9a, 0xf4efe4));
    return scene.add(Props.cottage(-2, 13, 4));
  }

  static List<Body> hens() {
    return List.of(
        Props.hen(-.9, 3.0, 70, 0xb8703c, true),
        Props.hen(.1, 2.6, 150, 0xe8dcc8, false),
        Props.hen(.9, 3.4, -60, 0x8a4a2a, true),
        Props.hen(1.8, 4.6, 20, 0xb8703c, false));
  }
}
