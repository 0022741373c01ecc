package org.daymount.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.problem.UnusablePicture;

/**
 * Texts that go with a clip: QuickTime's metadata by key, and user data (QuickTime File Format,
 * Metadata and User Data Atoms). What cannot be read there is no fault of the pictures.
 */
final class UserTexts {
  private final Box movie;

  UserTexts(Box movie) {
    this.movie = movie;
  }

  /** A value of the metadata, by its key: com.apple.quicktime.… */
  Optional<String> metadata(String key) {
    try {
      Optional<Box> user = movie.child("udta"); // where some programs put what QuickTime puts above
      Optional<String> above = metadata(movie, key);
      return above.isPresent() || user.isEmpty() ? above : metadata(user.get(), key);
    } catch (UnusablePicture | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> metadata(Box around, String key) throws UnusablePicture {
    Optional<Box> meta = around.child("meta");
    if (meta.isEmpty()) {
      return Optional.empty();
    }
    List<Box> parts = meta.get().children(start(meta.get()));
    Optional<Box> keys = Box.first(parts, "keys");
    Optional<Box> values = Box.first(parts, "ilst");
    if (keys.isEmpty() || values.isEmpty()) {
      return Optional.empty();
    }
    int index = keys(keys.get()).indexOf(key) + 1;
    for (Box value : values.get().children(0)) {
      if (index > 0 && number(value.name()) == index) {
        return data(value);
      }
    }
    return Optional.empty();
  }

  /** What the clip was taken with, if it says so. */
  Optional<String> camera() {
    return metadata("com.apple.quicktime.model")
        .or(() -> metadata("com.android.model"))
        .or(() -> userData("\u00a9mod"));
  }

  /** ©day. */
  Optional<String> day() {
    return userData("\u00a9day");
  }

  /** In QuickTime's form (length, language, text), or as a list of values has it. */
  private Optional<String> userData(String name) {
    try {
      Optional<Box> user = movie.child("udta");
      if (user.isEmpty()) {
        return Optional.empty();
      }
      List<Box> parts = user.get().children(0);
      Optional<Box> plain = Box.first(parts, name);
      if (plain.isPresent()) {
        return Optional.of(plain.get().text(4)).filter(text -> !text.isEmpty());
      }
      Optional<Box> meta = Box.first(parts, "meta");
      Optional<Box> list =
          meta.isEmpty()
              ? Optional.empty()
              : Box.first(meta.get().children(start(meta.get())), "ilst");
      Optional<Box> listed = list.isEmpty() ? Optional.empty() : list.get().child(name);
      return listed.isEmpty() ? Optional.empty() : data(listed.get());
    } catch (UnusablePicture | RuntimeException e) {
      return Optional.empty();
    }
  }

  /** In QuickTime the box has no version and flags, in ISO files it has. */
  private static int start(Box meta) {
    return Box.name(meta.body(), 4).equals("hdlr") ? 0 : 4;
  }

  private static List<String> keys(Box box) {
    List<String> keys = new ArrayList<>();
    int at = 8;
    while (at + 8 <= box.body().limit()) {
      long length = box.u32(at);
      if (length < 8 || length > box.body().limit() - at) {
        break;
      }
      keys.add(new Box("", box.body().slice(at + 8, (int) length - 8)).text(0));
      at += (int) length;
    }
    return keys;
  }

  private static long number(String name) {
    long number = 0;
    for (int i = 0; i < 4; i++) {
      number = number << 8 | name.charAt(i);
    }
    return number;
  }

  /** Behind the kind of value and the language. */
  private static Optional<String> data(Box value) throws UnusablePicture {
    return value.child("data").map(data -> data.text(8)).filter(text -> !text.isEmpty());
  }
}
