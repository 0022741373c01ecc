package org.daymount.sample;

import static org.daymount.sample.Shot.orrery;
import static org.daymount.sample.Shot.tarn;

import java.util.ArrayList;
import java.util.List;
import org.daymount.sample.Shot.Stage;

/**
 * The invented month: what the Quill family took on a tidal island in June 2026. The Orrery 9's
 * clock is an hour ahead all month; times here are what each phone wrote.
 */
final class Scenario {
  private Scenario() {}

  private static final Dye STRIPES = Dye.bands(0xe8e4da, 0x2f4a72, .06);
  private static final Dye MOSS = Dye.plain(0x6a7d5a);
  private static final Dye MUSTARD = Dye.plain(0xd89a24);
  private static final Dye BRICK = Dye.plain(0xa84a3e);
  private static final Dye NAVY = Dye.plain(0x2c4466);
  private static final Dye OAT = Dye.plain(0xcfc0a4);
  private static final Dye RAINCOAT = Dye.plain(0xe8c020, .25);

  private static double[] at(double x, double y, double z) {
    return new double[] {x, y, z};
  }

  private static Mood behind(Mood mood) {
    return mood.sunFrom(-142, Math.max(24, mood.sunHeight()));
  }

  static List<Shot> shots() {
    List<Shot> all = new ArrayList<>();
    firstWeek(all);
    secondWeek(all);
    thirdWeek(all);
    fourthWeek(all);
    return all;
  }

  private static void firstWeek(List<Shot> all) {
    all.add(
        tarn(
                "20260601_171240.jpg",
                "2026-06-01T17:12:40",
                () ->
                    new Stage(
                        Places.openSea(Mood.afternoon().sunFrom(-120, 34), 1, .4)
                            .subject(Props.ferry(-3, 44, 200)),
                        View.from(0, 3.2, 0).at(-1, 4.2, 44).angle(56)))
            .placed());
    all.add(
        tarn(
                "20260601_181502.jpg",
                "2026-06-01T18:15:02",
                () ->
                    new Stage(
                        Places.beach(Mood.evening().sunFrom(-150, 47), 2)
                            .subject(
                                Person.mother(STRIPES)
                                    .at(-.34, 1.75, 172)
                                    .smiling(.8)
                                    .looking(8, 2, 5)
                                    .bodies())
                            .subject(
                                Person.father(MOSS)
                                    .at(.36, 1.85, 186)
                                    .smiling(.9)
                                    .looking(-6, 4, -6)
                                    .bodies())
                            .subject(
                                Person.child(MUSTARD)
                                    .at(.02, 1.30, 180)
                                    .raised(.14)
                                    .smiling(1)
                                    .looking(3, -4, 3)
                                    .bodies()),
                        View.from(0, 1.55, 0).at(0, 1.40, 1.7).angle(54).focus(1.6, 3)))
            .turned(2)
            .fraction("043"));
    all.add(
        orrery(
                "OR9_0411.JPG",
                "2026-06-01T20:02:17",
                () ->
                    new Stage(
                        Places.beach(Mood.evening().sunFrom(-70, 12), 4)
                            .add(Props.bush(3.5, -1.2, 34, 6.5, 0x6f6a5c, 0x35332c))
                            .subject(Props.lighthouse(3.5, 34, 19)),
                        View.from(0, 1.6, 0).at(2.2, 8.6, 34).angle(58)))
            .tall()
            .turned(6));
    all.add(
        tarn(
                "20260602_094410.jpg",
                "2026-06-02T09:44:10",
                () ->
                    new Stage(
                        Places.flowerGarden(Mood.morning().sunFrom(-95, 32), 1)
                            .subject(
                                Person.child(BRICK)
                                    .at(-.25, 2.1, 168)
                                    .smiling(.9)
                                    .wearing(Head.Hat.STRAW)
                                    .hands(at(.12, 1.12, .26), at(-.10, 1.10, .26))
                                    .looking(6, 4, 2)
                                    .bodies())
                            .subject(Props.bowl(-.20, .86, 1.90, 0xd02c36)),
                        View.from(0, 1.35, 0).at(-.2, 1.03, 2.1).angle(33).focus(2, 9)))
            .tall()
            .turned(6)
            .placed());
    all.add(
        tarn(
            "20260602_095102.jpg",
            "2026-06-02T09:51:02",
            () ->
                new Stage(
                    Places.flowerGarden(Mood.morning().sunFrom(-95, 32), 2)
                        .add(Props.bed(-2, 2, 2.4, 4, 14, 77)),
                    View.from(0, 1.0, 0).at(.2, .9, 4).angle(58).focus(3, 5))));
    biscuit(all);
    all.add(
        tarn(
                "20260604_160533.jpg",
                "2026-06-04T16:05:33",
                () ->
                    new Stage(
                        Places.yard(Mood.afternoon().sunFrom(-125, 36), 3, -.2)
                            .subject(
                                Person.father(OAT)
                                    .at(-1.5, 4.6, 150)
                                    .smiling(.6)
                                    .hands(at(.30, 1.15, .25), at(-.26, .82, .06))
                                    .looking(20, 0, 0)
                                    .bodies()),
                        View.from(.3, 1.5, 0).at(-.3, 1.0, 5).angle(50)))
            .placed()
            .turned(3));
    all.add(
        tarn(
                "20260605_101120.jpg",
                "2026-06-05T10:11:20",
                () ->
                    new Stage(
                        Places.flowerGarden(behind(Mood.morning()), 3)
                            .subject(
                                Person.mother(BRICK)
                                    .at(.05, 1.25, 176)
                                    .smiling(.55)
                                    .wearing(Head.Hat.STRAW)
                                    .looking(6, 0, 4)
                                    .bodies()),
                        View.from(0, 1.6, 0).at(.03, 1.53, 1.25).angle(47).focus(1.2, 12)))
            .tall()
            .turned(8));
    all.add(
        orrery(
                "OR9_0420.JPG",
                "2026-06-05T12:40:09",
                () ->
                    new Stage(
                        Places.garden(Mood.noon().sunFrom(-110, 48), 4)
                            .subject(
                                Props.spire(.0, 1.1, 1.25, 0xb85aa4, 5),
                                Props.spire(.28, 1.35, 1.05, 0xe0a0bc, 6),
                                Props.spire(-.3, 1.5, 1.15, 0x8c4a9c, 9)),
                        View.from(0, .85, 0).at(0, .78, 1.1).angle(58).focus(1.15, 12)))
            .tall()
            .placed());
    all.add(
        tarn(
                "20260605_201544.jpg",
                "2026-06-05T20:15:44",
                () ->
                    new Stage(
                        Places.openSea(Mood.sunset().sunFrom(18, 7), 6, .4)
                            .add(Props.bush(-4, -1.4, 40, 7, 0x4f4a44, 0x2a2826))
                            .subject(Props.lighthouse(-4, 40, 18)),
                        View.from(0, 2.4, 0).at(-1, 8.5, 40).angle(58)))
            .tall()
            .turned(7));
    birthday(all);
    all.add(
        tarn(
                "20260607_134512.jpg",
                "2026-06-07T13:45:12",
                () ->
                    new Stage(
                        Places.flowerGarden(Mood.overcast(), 5),
                        View.from(0, 1.4, 0).at(0, 1.0, 5).angle(58)))
            .rainy());
    all.add(
        tarn(
                "20260607_151930.jpg",
                "2026-06-07T15:19:30",
                () ->
                    new Stage(
                        Places.kitchen(Mood.indoors())
                            .subject(
                                Props.mug(-.16, .745, 1.22, 0x3f7f8c, 20),
                                Props.mug(.10, .745, 1.30, 0xe0b040, 200),
                                Props.loaf(.34, .745, 1.55, 30))
                            .add(
                                Props.jar(-.38, .745, 1.55, 0xa8202c),
                                Props.jar(-.27, .745, 1.66, 0xd87a1e)),
                        View.from(0, 1.08, .4).at(-.02, .83, 1.4).angle(44).focus(.95, 14)))
            .tall()
            .turned(6)
            .fraction("007"));
  }

  private static void biscuit(List<Shot> all) {
    double[][] frames = {{16, 5, 2}, {-9, 12, 3}, {0, 0, 0}, {24, -4, 2}};
    for (int i = 0; i < 4; i++) {
      int n = i;
      Shot shot =
          tarn(
                  "20260603_18041" + (1 + i / 2) + (i % 2 == 0 ? "" : "_1") + ".jpg",
                  "2026-06-03T18:04:1" + (1 + i / 2),
                  () ->
                      new Stage(
                          Places.garden(Mood.evening().sunFrom(-128, 20), 7)
                              .add(Props.fence(0, 6.5, 5))
                              .subject(Dog.sitting(.03, 1.55, 184 + n * 2, .5 + .1 * n)),
                          View.from(0, .72, 0)
                              .at(.0, .44, 1.5)
                              .angle(54)
                              .focus(1.4, n == 2 ? 9 : 4)
                              .nudged(.004 * n, .003 * n)))
              .fraction(i % 2 == 0 ? "090" : "540");
      all.add(shot.smeared(frames[i][0], frames[i][1], frames[i][2]));
    }
  }

  private static void birthday(List<Shot> all) {
    all.add(
        tarn(
            "20260606_160220.jpg",
            "2026-06-06T16:02:20",
            () ->
                new Stage(
                    Places.kitchen(Mood.indoors())
                        .subject(Props.cake(0, .755, 1.35, 8, true))
                        .add(
                            Props.mug(-.42, .745, 1.5, 0xd8603c, 20),
                            Props.jar(.44, .745, 1.62, 0xa8202c)),
                    View.from(0, 1.10, .62).at(0, .83, 1.35).angle(48).focus(.78, 16))));
    all.add(
        orrery(
                "OR9_0426.JPG",
                "2026-06-06T17:06:41",
                () -> {
                  Scene scene =
                      Places.kitchen(Mood.indoors())
                          .subject(
                              Person.child(Dye.plain(0x3f8a8c))
                                  .at(0, 1.9, 180)
                                  .smiling(1)
                                  .wearing(Head.Hat.PARTY)
                                  .hands(at(.3, 1.1, .3), at(-.3, 1.1, .3))
                                  .looking(0, 6, 4)
                                  .bodies())
                          .subject(
                              Person.mother(STRIPES)
                                  .at(-.55, 2.2, 165)
                                  .smiling(.8)
                                  .looking(4, 6, 4)
                                  .bodies())
                          .subject(Props.cake(.0, .755, 1.35, 8, true));
                  for (int i = 0; i < 3; i++) {
                    scene.lamp(-.06 + .06 * i, 1.0, 1.33, 0xffb860, .035);
                  }
                  return new Stage(
                      scene, View.from(0, 1.28, .1).at(-.08, 1.12, 1.9).angle(56).focus(1.7, 8));
                })
            .fraction("250"));
    all.add(
        tarn(
                "20260607_004715.jpg",
                "2026-06-07T00:47:15",
                () ->
                    new Stage(
                        Places.lanterns(Places.night(Mood.moonlight(), 3), 4.4, 2.3)
                            .subject(Person.mother(OAT).at(-.65, 3.7, 172).smiling(.7).bodies())
                            .subject(Person.father(NAVY).at(.55, 3.8, 190).smiling(.7).bodies())
                            .lamp(.0, 1.9, 2.3, 0xffb870, 1.6),
                        View.from(0, 1.5, 0).at(-.05, 1.5, 4).angle(44)))
            .grainy(1.7));
    all.add(
        orrery(
                "OR9_0431.JPG",
                "2026-06-07T02:31:58",
                () ->
                    new Stage(
                        Places.openSea(Mood.moonlight(), 5, .35),
                        View.from(0, 2.2, 0).at(2, 6.2, 20).angle(62)))
            .tall()
            .turned(6)
            .grainy(1.7));
  }

  private static void secondWeek(List<Shot> all) {
    all.add(
        tarn(
                "20260608_103108.jpg",
                "2026-06-08T10:31:08",
                () ->
                    new Stage(
                        Places.market(Mood.morning().sunFrom(-130, 38), 3),
                        View.from(0, 1.6, 0).at(-.4, 1.35, 5).angle(58)))
            .placed());
    all.add(
        orrery(
                "OR9_0440.JPG",
                "2026-06-08T11:36:50",
                () ->
                    new Stage(
                        Places.market(Mood.morning().sunFrom(-130, 38), 3)
                            .subject(
                                Person.mother(STRIPES)
                                    .at(-.1, 2.3, 178)
                                    .smiling(.7)
                                    .wearing(Head.Hat.STRAW)
                                    .hands(at(.12, 1.2, .25), at(-.12, 1.2, .25))
                                    .looking(4, 2, 0)
                                    .bodies())
                            .subject(Props.bowl(-.1, 1.21, 2.0, 0xd02c36)),
                        View.from(0, 1.5, 0).at(-.08, 1.38, 2.3).angle(34).focus(2.2, 8)))
            .tall());
    all.add(
        tarn(
            "20260610_112203.jpg",
            "2026-06-10T11:22:03",
            () ->
                new Stage(
                    Places.finds(Mood.noon().sunFrom(-60, 42)),
                    View.from(0, .62, .05).at(.02, 0, .55).angle(58))));
    all.add(
        tarn(
                "20260610_113519.jpg",
                "2026-06-10T11:35:19",
                () ->
                    new Stage(
                        Places.beach(Mood.noon().sunFrom(-110, 42), 6)
                            .subject(Props.castle(.0, 2.3, 1.0))
                            .add(Props.bucket(.8, 0, 2.0, 0x2f7fb8)),
                        View.from(0, 1.05, 0).at(0, .42, 2.3).angle(58).focus(2.2, 5)))
            .tall()
            .turned(6));
    double[][] frames = {{34, 2, 2}, {26, -8, 3}, {0, 0, 0}, {40, 6, 2}};
    for (int i = 0; i < 4; i++) {
      int n = i;
      all.add(
          tarn(
                  "20260611_15302" + i + ".jpg",
                  "2026-06-11T15:30:2" + i,
                  () ->
                      new Stage(
                          Places.beach(Mood.afternoon().sunFrom(-130, 38), 8)
                              .subject(
                                  Person.child(MUSTARD)
                                      .at(.45 - .14 * n, 2.9, 200)
                                      .raised(.10)
                                      .smiling(1)
                                      .hands(at(.48, 1.45, .12), at(-.46, 1.35, .1))
                                      .feet(at(.14, .30, -.38), at(-.12, .05, .34))
                                      .leaning(.14)
                                      .looking(-14, 2, 3)
                                      .bodies())
                              .subject(Dog.running(1.15 - .12 * n, .04, 3.3, 250, .16)),
                          View.from(0, 1.05, 0).at(.35 - .1 * n, .80, 3).angle(52)))
              .fraction(i == 0 ? "004" : "7" + i + "0")
              .smeared(frames[i][0], frames[i][1], frames[i][2]));
    }
    all.add(
        tarn(
                "20260612_211408.jpg",
                "2026-06-12T21:14:08",
                () ->
                    new Stage(
                        Places.openSea(Mood.sunset(), 9, .45)
                            .subject(Props.boat(4, -.25, 17, 62, 1, false)),
                        View.from(0, 2.1, 0).at(1.5, 2.6, 20).angle(60)))
            .sized(2080, 1560)
            .placed());
    all.add(
        orrery(
            "OR9_0457.JPG",
            "2026-06-12T22:20:31",
            () ->
                new Stage(
                    Places.beach(Mood.dusk(), 10)
                        .subject(Person.father(MOSS).at(-.35, 4.2, 15).looking(-8, 0, 0).bodies())
                        .subject(
                            Person.child(MUSTARD)
                                .at(.35, 4.1, -8)
                                .hands(at(.2, .8, .05), at(-.36, 1.05, 0))
                                .bodies())
                        .subject(Dog.sitting(1.05, 4.4, 10, 0)),
                    View.from(0, 1.5, 0).at(.2, 1.5, 4).angle(58))));
    all.add(
        tarn(
                "20260613_084015.jpg",
                "2026-06-13T08:40:15",
                () ->
                    new Stage(
                        new Scene(
                            Mood.morning(),
                            new Sky(Mood.morning(), 12)
                                .island(8, 20, .075, 0x55745a, .25, 21)
                                .island(-28, 15, .04, 0x50706a, .6, 23),
                            Ground.sand(0xc0ac8a, 0x8a775a, 1.6)),
                        View.from(0, 1.7, 0).at(.4, 1.9, 8).angle(64)))
            .placed());
    all.add(
        tarn(
                "20260613_091822.jpg",
                "2026-06-13T09:18:22",
                () ->
                    new Stage(
                        Places.garden(Mood.morning().sunFrom(-110, 30), 13)
                            .add(Props.fence(0, 6.2, 5))
                            .subject(Places.hens()),
                        View.from(0, .85, 0).at(.3, .45, 3.2).angle(52).focus(3, 6)))
            .turned(4));
    all.add(
        orrery(
            "OR9_0462.JPG",
            "2026-06-13T18:50:44",
            () ->
                new Stage(
                    new Scene(
                        Mood.evening().sunFrom(172, 16),
                        new Sky(Mood.evening().sunFrom(172, 16), 15)
                            .withRainbow()
                            .island(-10, 24, .045, 0x50705a, .4, 25),
                        Ground.sea(0x3a7478, 0x24485c, .5)),
                    View.from(0, 2, 0).at(0, 5, 20).angle(72))));
    all.add(
        tarn(
            "20260614_073302.jpg",
            "2026-06-14T07:33:02",
            () ->
                new Stage(
                    new Scene(
                            Mood.fog(), new Sky(Mood.fog(), 2), Ground.sea(0x5f7f84, 0x3f5c68, .25))
                        .subject(Props.ferry(5, 46, 24)),
                    View.from(0, 2.6, 0).at(1.5, 4.0, 40).angle(56))));
    all.add(
        orrery(
                "OR9_0466.JPG",
                "2026-06-14T09:02:20",
                () ->
                    new Stage(
                        Places.beach(Mood.fog(), 2)
                            .subject(
                                Person.child(RAINCOAT)
                                    .at(.1, 2.5, 178)
                                    .smiling(.5)
                                    .wearing(Head.Hat.WOOL)
                                    .looking(4, 0, 0)
                                    .bodies()),
                        View.from(0, 1.25, 0).at(.08, 1.0, 2.5).angle(36).focus(2.4, 5)))
            .tall()
            .turned(5));
  }

  private static void thirdWeek(List<Shot> all) {
    all.add(
        tarn(
                "20260615_143640.jpg",
                "2026-06-15T14:36:40",
                () ->
                    new Stage(
                        Places.yard(Mood.noon().sunFrom(-130, 46), 4, .52)
                            .subject(
                                Person.father(OAT)
                                    .at(-1.15, 4.0, 160)
                                    .smiling(.85)
                                    .hands(at(.42, 1.12, .10), at(-.26, .82, .06))
                                    .looking(2, 3, 3)
                                    .bodies())
                            .add(Props.paintPot(-.55, 3.3)),
                        View.from(.5, 1.45, 0).at(.45, .98, 5).angle(50)))
            .placed());
    all.add(
        tarn(
                "20260615_144815.jpg",
                "2026-06-15T14:48:15",
                () ->
                    new Stage(
                        Places.yard(Mood.noon().sunFrom(-120, 46), 4, .6)
                            .subject(Props.paintPot(-.05, 1.0)),
                        View.from(0, .62, .3).at(.0, .14, 1.05).angle(54).focus(.86, 9)))
            .tall()
            .turned(8));
    all.add(
        orrery(
            "OR9_0471.JPG",
            "2026-06-16T17:25:05",
            () ->
                new Stage(
                    Places.flowerGarden(Mood.afternoon().sunFrom(-128, 36), 6)
                        .add(Props.bench(-.2, 2.9, 180))
                        .subject(
                            Person.mother(MUSTARD)
                                .at(-.35, 2.75, 174)
                                .hip(.56)
                                .feet(at(.12, .04, .5), at(-.1, .04, .46))
                                .hands(at(.1, .72, .34), at(-.12, .72, .34))
                                .smiling(.6)
                                .looking(6, 4, 4)
                                .bodies())
                        .subject(Dog.sitting(.62, 2.35, 192, .4)),
                    View.from(0, 1.2, 0).at(.05, .82, 2.8).angle(54).focus(2.6, 7))));
    all.add(
        orrery(
                "OR9_0478.JPG",
                "2026-06-17T13:10:00",
                () ->
                    new Stage(
                        Places.beach(Mood.noon(), 17).subject(Props.kite(.4, 5.4, 9, .9)),
                        View.from(0, 1.5, 0).at(.5, 4.2, 9).angle(60)))
            .sized(320, 240));
    all.add(
        tarn(
            "20260618_102245.jpg",
            "2026-06-18T10:22:45",
            () ->
                new Stage(
                    Places.garden(Mood.morning().sunFrom(-120, 40), 18)
                        .subject(Props.bloom(-.03, .62, .78, .34, 5, 0xd8301e, 0x1c1418, 188))
                        .subject(Props.bloom(.30, .50, 1.05, .30, 6, 0xe04a24, 0x1c1418, 170))
                        .subject(Props.bloom(-.34, .46, 1.2, .30, 5, 0xc82a2a, 0x1c1418, 200)),
                    View.from(0, .74, 0).at(0, .56, .9).angle(56).focus(.76, 14))));
    all.add(
        tarn(
                "20260618_184011.jpg",
                "2026-06-18T18:40:11",
                () ->
                    new Stage(
                        Places.openSea(Mood.evening().sunFrom(30, 16), 19, .6),
                        View.from(0, 2.2, 0).at(0, 3.2, 20).angle(62)))
            .fraction("018"));
    midsummer(all);
    all.add(
        tarn(
                "20260620_112650.jpg",
                "2026-06-20T11:26:50",
                () ->
                    new Stage(
                        new Scene(
                                Mood.indoors(),
                                new Room(0xd8c8b0, 0xeaf2f4, .9),
                                Ground.boards(0xb88a5a, 0x7a5434, .16, .2))
                            .subject(Dog.sitting(0, 1.35, 172, 0)),
                        View.from(.05, .86, 0).at(0, .46, 1.35).angle(50).focus(1.25, 7)))
            .tall()
            .turned(6));
    all.add(
        tarn(
            "20260620_121204.jpg",
            "2026-06-20T12:12:04",
            () ->
                new Stage(
                    Places.kitchen(Mood.indoors())
                        .subject(
                            Props.bowl(-.12, .745, 1.3, 0xd02c36), Props.loaf(.22, .745, 1.42, -25))
                        .add(
                            Props.mug(-.36, .745, 1.5, 0x3f7f8c, 20),
                            Props.jar(.02, .745, 1.62, 0xd87a1e),
                            Props.mug(.42, .745, 1.2, 0xf0ece2, 140)),
                    View.from(0, 1.22, .55).at(.02, .78, 1.38).angle(50).focus(.9, 12))));
  }

  private static void midsummer(List<Shot> all) {
    all.add(
        tarn(
                "20260619_232018.jpg",
                "2026-06-19T23:20:18",
                () ->
                    new Stage(
                        Places.night(Mood.moonlight().exposed(.9), 7)
                            .add(Props.fire(0, 3.4, 1.0))
                            .lamp(0, .75, 3.2, 0xff8a3c, 3.4)
                            .lamp(0, 1.2, 2.4, 0xff9a4c, 1.6)
                            .subject(
                                Person.father(MOSS)
                                    .at(-1.15, 3.7, 150)
                                    .smiling(.7)
                                    .hands(at(.3, 1.1, .25), at(-.2, 1.05, .25))
                                    .looking(14, 2, 0)
                                    .bodies())
                            .subject(
                                Person.child(BRICK)
                                    .at(1.0, 3.3, 205)
                                    .smiling(1)
                                    .looking(-12, 2, 0)
                                    .bodies())
                            .subject(Dog.sitting(1.6, 3.1, 215, 0)),
                        View.from(0, 1.35, 0).at(.1, .95, 3.4).angle(58)))
            .grainy(1.7));
    all.add(
        tarn(
                "20260620_005241.jpg",
                "2026-06-20T00:52:41",
                () ->
                    new Stage(
                        Places.night(Mood.moonlight(), 8)
                            .subject(Props.fire(0, 2.2, 1.0))
                            .lamp(0, .7, 2.0, 0xff8a3c, 2.6),
                        View.from(0, 1.2, 0).at(0, .75, 2.2).angle(58)))
            .tall()
            .turned(6)
            .grainy(1.7));
    all.add(
        tarn(
                "20260620_022416.jpg",
                "2026-06-20T02:24:16",
                () ->
                    new Stage(
                        Places.openSea(Mood.moonlight().sunFrom(-8, 17), 11, .3)
                            .subject(Props.boat(-3, -.25, 11, 25, .8, false)),
                        View.from(0, 1.9, 0).at(-1.2, 2.6, 12).angle(60)))
            .grainy(1.7));
    all.add(
        orrery(
                "OR9_0490.JPG",
                "2026-06-20T04:10:37", // truly 03:10: still the night of the 19th
                () ->
                    new Stage(
                        Places.beach(Mood.dusk().sunFrom(-20, 8), 20),
                        View.from(0, 1.6, 0).at(-1, 2.4, 10).angle(62)))
            .grainy(1.4)
            .placed());
  }

  private static void fourthWeek(List<Shot> all) {
    all.add(
        tarn(
                "20260622_152133.jpg",
                "2026-06-22T15:21:33",
                () ->
                    new Stage(
                        Places.beach(Mood.afternoon().sunFrom(-125, 40), 21)
                            .subject(
                                Person.child(BRICK)
                                    .at(-.5, 3.4, 186)
                                    .smiling(1)
                                    .hands(at(.25, 1.55, .2), at(-.1, 1.45, .25))
                                    .looking(-4, -4, 0)
                                    .bodies())
                            .subject(Props.kite(1.3, 3.9, 6.2, .62)),
                        View.from(0, 1.2, 0).at(.1, 1.9, 4).angle(54)))
            .tall()
            .placed());
    all.add(
        tarn(
            "20260622_161010.jpg",
            "2026-06-22T16:10:10",
            () ->
                new Stage(
                    Places.beach(Mood.afternoon().sunFrom(-115, 34), 22)
                        .add(Props.castle(.55, 2.5, .9))
                        .subject(
                            Person.father(NAVY)
                                .at(-.55, 2.75, 160)
                                .hip(.45)
                                .feet(at(.16, .04, .42), at(-.14, .04, .34))
                                .hands(at(.34, .42, .35), at(-.1, .55, .36))
                                .leaning(.10)
                                .smiling(.7)
                                .looking(14, 0, 0)
                                .bodies()),
                    View.from(0, 1.1, 0).at(0, .62, 2.6).angle(54).focus(2.5, 5))));
    all.add(
        tarn(
            "20260623_101755.jpg",
            "2026-06-23T10:17:55",
            () -> {
              Scene scene = Places.garden(Mood.morning().sunFrom(-110, 44), 23);
              double[][] at = {
                {-.05, .44, .72},
                {.26, .38, .86},
                {-.32, .36, .9},
                {.1, .34, 1.2},
                {-.5, .4, 1.35},
                {.55, .36, 1.3}
              };
              for (int i = 0; i < at.length; i++) {
                scene.subject(
                    Props.bloom(
                        at[i][0],
                        at[i][1],
                        at[i][2],
                        .25,
                        17,
                        0xf6f4ee,
                        0xe8b020,
                        175 + 9 * (i % 4)));
              }
              return new Stage(scene, View.from(0, .58, 0).at(0, .42, .85).angle(56).focus(.7, 14));
            }));
    all.add(
        orrery(
                "OR9_0502.JPG",
                "2026-06-23T12:05:12",
                () ->
                    new Stage(
                        Places.garden(Mood.noon().sunFrom(-120, 46), 24)
                            .subject(Props.hen(.0, 1.15, 148, 0xb8703c, false)),
                        View.from(0, .52, 0).at(0, .27, 1.15).angle(42).focus(1.1, 9)))
            .tall()
            .turned(6));
    all.add(
        tarn(
                "20260624_140902.jpg",
                "2026-06-24T14:09:02",
                () ->
                    new Stage(
                        Places.garden(Mood.overcast(), 25)
                            .subject(Props.cottage(.4, 10, -12))
                            .add(Props.fence(0, 5.4, 6))
                            .add(Props.bed(-4, 4, 5.8, 6.8, 16, 42)),
                        View.from(-.4, 1.6, -1).at(.2, 1.9, 10).angle(58)))
            .placed());
    all.add(
        orrery(
                "OR9_0510.JPG",
                "2026-06-25T16:44:26",
                () ->
                    new Stage(
                        Places.beach(behind(Mood.afternoon()), 26)
                            .subject(
                                Person.father(NAVY)
                                    .at(-.16, 1.0, 172)
                                    .smiling(.9)
                                    .looking(6, 0, 6)
                                    .bodies())
                            .subject(
                                Person.child(MUSTARD)
                                    .at(.20, .85, 188)
                                    .raised(.30)
                                    .smiling(1)
                                    .looking(-6, -2, -8)
                                    .bodies()),
                        View.from(0, 1.62, 0).at(.0, 1.58, 1.0).angle(66).focus(.9, 8)))
            .tall()
            .turned(2)
            .fraction("061"));
    double[][] soft = {{0, 0, 7}, {0, 0, 0}, {8, 3, 5}};
    for (int i = 0; i < 3; i++) {
      int n = i;
      all.add(
          tarn(
                  "20260626_17551" + i + ".jpg",
                  "2026-06-26T17:55:1" + i,
                  () ->
                      new Stage(
                          Places.yard(Mood.evening().sunFrom(-132, 24), 6, 1.2)
                              .subject(
                                  Person.mother(STRIPES)
                                      .at(-.62, 3.3, 174)
                                      .smiling(.85)
                                      .hands(at(.3, 1.0, .1), at(-.26, .82, .06))
                                      .looking(4, 2 + n, 3)
                                      .bodies())
                              .subject(
                                  Person.father(OAT)
                                      .at(.32, 3.4, 186)
                                      .smiling(.9)
                                      .looking(-4, 3, -3 - n)
                                      .bodies()),
                          View.from(0, 1.45, 0)
                              .at(-.12, 1.15, 3.4)
                              .angle(46)
                              .nudged(.006 * n, .004 * n)))
              .smeared(soft[i][0], soft[i][1], soft[i][2]));
    }
    all.add(
        tarn(
                "20260627_093714.jpg",
                "2026-06-27T09:37:14",
                () ->
                    new Stage(
                        Places.pebbles(Mood.overcast()),
                        View.from(0, .62, .1).at(0, 0, .66).angle(56)))
            .tall());
    all.add(
        tarn(
            "20260627_194520.jpg",
            "2026-06-27T19:45:20",
            () ->
                new Stage(
                    Places.openSea(Mood.overcast().exposed(.85), 27, .95)
                        .subject(Props.ferry(6, 70, 165)),
                    View.from(0, 2.4, 0).at(1, 4, 40).angle(58))));
    all.add(
        tarn(
                "20260628_120133.jpg",
                "2026-06-28T12:01:33",
                () ->
                    new Stage(
                        Places.yard(Mood.noon(), 8, 1.2),
                        View.from(0, 1.3, 0).at(-1.5, .3, 2).angle(60).roll(18)))
            .shaken(60, 34, 5));
    all.add(
        orrery(
                "OR9_0533.JPG",
                "2026-06-29T12:15:30",
                () ->
                    new Stage(
                        Places.market(Mood.noon().sunFrom(-135, 44), 9),
                        View.from(-1.0, 1.7, 2.0).at(-1.0, 1.05, 4.5).angle(58)))
            .tall()
            .turned(8));
    all.add(
        tarn(
            "20260629_134421.jpg",
            "2026-06-29T13:44:21",
            () ->
                new Stage(
                    Places.kitchen(Mood.indoors())
                        .subject(
                            Person.child(MOSS)
                                .at(.12, 2.05, 184)
                                .smiling(.9)
                                .hands(at(.24, 1.12, .34), at(-.24, 1.12, .34))
                                .looking(-2, 6, 4)
                                .bodies())
                        .subject(Props.bowl(.05, .745, 1.42, 0xd02c36))
                        .add(Props.loaf(-.46, .745, 1.5, 20), Props.jar(.48, .745, 1.5, 0xa8202c)),
                    View.from(0, 1.26, .2).at(.06, 1.02, 1.9).angle(52).focus(1.75, 8))));
    all.add(
        tarn(
                "20260630_173055.jpg",
                "2026-06-30T17:30:55",
                () ->
                    new Stage(
                        Places.openSea(Mood.afternoon().sunFrom(-125, 34), 28, .35)
                            .subject(Props.boat(0, -.22, 6.4, -12, 1.2, false))
                            .subject(
                                Person.father(MOSS)
                                    .at(-.95, 6.55, 168)
                                    .hip(.62)
                                    .feet(at(.1, .3, .4), at(-.1, .3, .4))
                                    .raised(-.1)
                                    .smiling(.8)
                                    .bodies())
                            .subject(
                                Person.mother(STRIPES)
                                    .at(.25, 6.4, 178)
                                    .hip(.62)
                                    .feet(at(.1, .3, .4), at(-.1, .3, .4))
                                    .raised(-.1)
                                    .smiling(.8)
                                    .bodies())
                            .subject(
                                Person.child(RAINCOAT)
                                    .at(1.05, 6.2, 184)
                                    .hip(.66)
                                    .feet(at(.1, .3, .4), at(-.1, .3, .4))
                                    .raised(.05)
                                    .smiling(1)
                                    .hands(at(.4, 1.5, .1), at(-.2, .8, .2))
                                    .bodies()),
                        View.from(0, 1.5, 0).at(.05, .85, 6.4).angle(48)))
            .placed()
            .fraction("009"));
    all.add(
        tarn(
                "20260630_191204.jpg",
                "2026-06-30T19:12:04",
                () ->
                    new Stage(
                        Places.beach(Mood.evening().sunFrom(-138, 24), 29)
                            .subject(
                                Person.mother(STRIPES)
                                    .at(-.48, 2.5, 174)
                                    .smiling(.9)
                                    .looking(4, 2, 4)
                                    .bodies())
                            .subject(
                                Person.father(MOSS)
                                    .at(.42, 2.6, 187)
                                    .smiling(.9)
                                    .looking(-5, 3, -3)
                                    .bodies())
                            .subject(
                                Person.child(MUSTARD)
                                    .at(-.05, 2.1, 180)
                                    .smiling(1)
                                    .looking(2, 0, 2)
                                    .bodies())
                            .subject(Dog.sitting(.68, 2.0, 192, .6)),
                        View.from(0, 1.35, 0).at(.08, .92, 2.4).angle(60).focus(2.3, 5)))
            .sized(2080, 1560));
    all.add(
        tarn(
                "20260630_212847.jpg",
                "2026-06-30T21:28:47",
                () ->
                    new Stage(
                        Places.openSea(Mood.sunset().sunFrom(4, 4), 30, .35)
                            .subject(Props.boat(1.2, -.25, 9, 30, 1.2, false)),
                        View.from(0, 1.8, 0).at(.8, 3.2, 12).angle(60)))
            .tall()
            .turned(6));
  }
}
