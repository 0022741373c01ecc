package org.daymount.sample;

import java.util.ArrayList;
import java.util.List;

/** One of the family: a head with looks and a clothed body whose limbs can be placed. */
final class Person {
  private final Head.Looks looks;
  private final double tall;
  private final Dye shirt;
  private final Dye trousers;
  private double x;
  private double z;
  private double yaw;
  private double base;
  private double headYaw;
  private double headPitch;
  private double headRoll;
  private double smile = .5;
  private Head.Hat hat = Head.Hat.NONE;
  private double hip = .92;
  private double[] leftHand = {.27, .80, .08};
  private double[] rightHand = {-.27, .80, .08};
  private double[] leftFoot = {.11, .04, .03};
  private double[] rightFoot = {-.11, .04, .03};
  private double lean;

  private Person(Head.Looks looks, double tall, Dye shirt, Dye trousers) {
    this.looks = looks;
    this.tall = tall;
    this.shirt = shirt;
    this.trousers = trousers;
  }

  /** Nora Quill. */
  static Person mother(Dye shirt) {
    return new Person(
        new Head.Looks(0xe0aa8a, 0x5a3420, Head.Hair.LONG, .95, 1.0, 0, 0x5f7f52),
        1.0,
        shirt,
        Dye.plain(0x39506e));
  }

  /** Tam Quill. */
  static Person father(Dye shirt) {
    return new Person(
        new Head.Looks(0xcf9a78, 0x2e2018, Head.Hair.SHORT, 1.07, .92, .6, 0x4a3626),
        1.07,
        shirt,
        Dye.plain(0x4b4a44));
  }

  /** Wren Quill, eight. */
  static Person child(Dye shirt) {
    return new Person(
        new Head.Looks(0xe8b598, 0x9a5a30, Head.Hair.BOB, .97, 1.18, 0, 0x4d6f8c),
        .76,
        shirt,
        Dye.plain(0x5d7c94));
  }

  Person at(double newX, double newZ, double newYaw) {
    x = newX;
    z = newZ;
    yaw = newYaw;
    return this;
  }

  Person raised(double metres) {
    base = metres;
    return this;
  }

  /** Relative to the body: yaw to its left, pitch down. */
  Person looking(double newYaw, double pitch, double roll) {
    headYaw = newYaw;
    headPitch = pitch;
    headRoll = roll;
    return this;
  }

  Person smiling(double amount) {
    smile = amount;
    return this;
  }

  Person wearing(Head.Hat newHat) {
    hat = newHat;
    return this;
  }

  Person hands(double[] left, double[] right) {
    leftHand = left;
    rightHand = right;
    return this;
  }

  Person feet(double[] left, double[] right) {
    leftFoot = left;
    rightFoot = right;
    return this;
  }

  Person hip(double height) {
    hip = height;
    return this;
  }

  Person leaning(double forward) {
    lean = forward;
    return this;
  }

  List<Body> bodies() {
    double c = StrictMath.cos(StrictMath.toRadians(yaw));
    double s = StrictMath.sin(StrictMath.toRadians(yaw));
    double headScale = tall < .9 ? .105 : .114 * tall;
    double neck = hip + .50;
    double hz = lean * .55 + .03;
    double hy = neck * tall + headScale * 1.72;
    double wz = hz * tall;
    Head head =
        new Head(
            looks,
            hat,
            smile,
            new double[] {x + s * wz, base + hy, z + c * wz},
            headScale,
            yaw + headYaw,
            headPitch,
            headRoll);
    List<Body> all = new ArrayList<>();
    all.add(figure());
    all.add(head);
    return all;
  }

  private static double[] knee(double[] from, double[] to, double length, double[] way) {
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double dz = to[2] - from[2];
    double far = Field.length(dx, dy, dz);
    double out = Math.sqrt(Math.max(0, length * length - far * far / 4));
    double along = (way[0] * dx + way[1] * dy + way[2] * dz) / (far * far + 1e-9);
    double wx = way[0] - along * dx;
    double wy = way[1] - along * dy;
    double wz = way[2] - along * dz;
    double l = Field.length(wx, wy, wz) + 1e-9;
    return new double[] {
      from[0] + dx / 2 + wx / l * out,
      from[1] + dy / 2 + wy / l * out,
      from[2] + dz / 2 + wz / l * out
    };
  }

  private Body figure() {
    double shoulder = hip + .46;
    double[] leftShoulder = {.145, shoulder, lean * .5};
    double[] rightShoulder = {-.145, shoulder, lean * .5};
    double[] leftElbow = knee(leftShoulder, leftHand, .285, new double[] {.7, -.5, -.6});
    double[] rightElbow = knee(rightShoulder, rightHand, .285, new double[] {-.7, -.5, -.6});
    double[] leftHip = {.09, hip, 0};
    double[] rightHip = {-.09, hip, 0};
    double[] leftKnee = knee(leftHip, leftFoot, .46, new double[] {.15, .2, 1});
    double[] rightKnee = knee(rightHip, rightFoot, .46, new double[] {-.15, .2, 1});
    double[] pelvis = {0, hip - .01, 0};
    double[] chest = {0, shoulder - .14, lean * .42};
    double[] leftWrist = shortOf(leftElbow, leftHand);
    double[] rightWrist = shortOf(rightElbow, rightHand);
    double[] nape = {0, shoulder - .02, lean * .5};
    double[] throat = {0, shoulder + .065, lean * .53};
    Field torso =
        (px, py, pz) -> {
          double d = Field.rod(px * .9, py, pz * 1.22, pelvis, chest, .138, .140);
          double yoke = Field.rod(px, py, pz, leftShoulder, rightShoulder, .062, .062);
          d = Field.join(d, yoke, .08);
          double collar = Field.rod(px, py, pz, nape, throat, .085, .062);
          d = Field.join(d, collar, .06);
          double upper = Field.rod(px, py, pz, leftShoulder, leftElbow, .062, .05);
          upper = Math.min(upper, Field.rod(px, py, pz, rightShoulder, rightElbow, .062, .05));
          double fore = Field.rod(px, py, pz, leftElbow, leftWrist, .05, .042);
          fore = Math.min(fore, Field.rod(px, py, pz, rightElbow, rightWrist, .05, .042));
          d = Field.join(d, Field.join(upper, fore, .03), .05);
          if (d > .06) {
            return d - .01;
          }
          double folds = Noise.cloud(px * 9 + py * 5, py * 15, pz * 9, 2);
          return d - .012 * folds + .006;
        };
    Field hands =
        (px, py, pz) -> {
          double d = Field.rod(px, py, pz, leftWrist, leftHand, .032, .040);
          return Math.min(d, Field.rod(px, py, pz, rightWrist, rightHand, .032, .040));
        };
    Field legs =
        (px, py, pz) -> {
          if (py > hip + .7) {
            return py - hip - .2;
          }
          double d = Field.rod(px, py, pz, leftHip, leftKnee, .098, .072);
          d = Math.min(d, Field.rod(px, py, pz, rightHip, rightKnee, .098, .072));
          double low = Field.rod(px, py, pz, leftKnee, leftFoot, .07, .058);
          low = Math.min(low, Field.rod(px, py, pz, rightKnee, rightFoot, .07, .058));
          d = Field.join(d, low, .04);
          d = Field.join(d, Field.ellipsoid(px, py - hip + .03, pz, .165, .12, .115), .05);
          return d > .05 ? d - .01 : d - .01 * Noise.cloud(px * 10, py * 14, pz * 10, 2);
        };
    Field shoes =
        (px, py, pz) ->
            Math.min(
                Field.ellipsoid(
                    px - leftFoot[0],
                    py - leftFoot[1] + .01,
                    pz - leftFoot[2] - .06,
                    .06,
                    .055,
                    .14),
                Field.ellipsoid(
                    px - rightFoot[0],
                    py - rightFoot[1] + .01,
                    pz - rightFoot[2] - .06,
                    .06,
                    .055,
                    .14));
    Model model = new Model(x, base, z, yaw, tall, hip * .85, 1.12);
    return model
        .careful(.9)
        .with(torso, shirt)
        .with(hands, Dye.plain(looks.skin(), .05).soft(.5))
        .with(legs, trousers)
        .with(shoes, Dye.plain(0x3a332e, .2));
  }

  private static double[] shortOf(double[] elbow, double[] hand) {
    double k = .80;
    return new double[] {
      elbow[0] + (hand[0] - elbow[0]) * k,
      elbow[1] + (hand[1] - elbow[1]) * k,
      elbow[2] + (hand[2] - elbow[2]) * k
    };
  }
}
