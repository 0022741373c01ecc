package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The browser is really launched, with an address that is worth nothing to whoever reads it. */
@Tag("slow")
class OpenInTheBrowserTest {
  @TempDir Path home;

  @BeforeAll
  static void aShell() {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no /bin/sh: no command to stand in");
  }

  @Test
  void xdgOpenIsGivenAnAddressThatLetsInOnceAndNeverTheToken() throws Exception {
    DoubleClicked program = new DoubleClicked(home);
    program.opener("xdg-open", 0);
    Process daymount = program.start();
    try {
      String address = program.opened();
      assertTrue(address.matches("http://127\\.0\\.0\\.1:\\d+/#ticket-[0-9a-f]{32}"), address);
      String origin = address.substring(0, address.indexOf("/#"));
      HttpResponse<String> entered = enter(address);
      assertEquals(200, entered.statusCode(), entered.body());
      String token = entered.body().replaceAll(".*\"token\":\"([0-9a-f]{32})\".*", "$1");
      assertFalse(address.contains(token));
      assertEquals(200, ask(origin, token).statusCode(), "the token that was given for it is good");
      HttpResponse<String> again = enter(address);
      assertEquals(403, again.statusCode(), "whoever read the command line comes too late");
      assertTrue(again.body().contains("start Daymount again"), again.body());

      Process second = program.start("open");
      String other = program.opened();
      assertEquals(0, second.waitFor(), "the second start ends");
      assertTrue(other.startsWith(origin + "/#ticket-"), "it opens the running one: " + other);
      assertFalse(other.equals(address), "with a ticket of its own");
      assertEquals(200, enter(other).statusCode());
      HttpRequest quit =
          HttpRequest.newBuilder(URI.create(origin + "/api/start/quit"))
              .header("X-Review-Token", token)
              .POST(BodyPublishers.ofString("{}"))
              .build();
      assertEquals(200, send(quit).statusCode());
      assertEquals(0, daymount.waitFor());
      program.said(1, origin + "/#" + token); // the address is printed too
    } finally {
      daymount.destroy();
    }
  }

  /** Two double-clicks in a hurry, three times. */
  @Test
  void ofTwoStartedAtOnceOneRunsAndBothOpenIt() throws Exception {
    for (int round = 0; round < 3; round++) {
      DoubleClicked program = new DoubleClicked(Files.createDirectories(home.resolve("" + round)));
      program.opener("xdg-open", 0);
      Process first = program.start();
      Process second = program.start();
      try {
        String one = addressIn(program.said(1, "/#"));
        String other = addressIn(program.said(2, "/#"));
        assertEquals(one, other, "one server, which both tell of");
        CompletableFuture.anyOf(first.onExit(), second.onExit()).get(60, TimeUnit.SECONDS);
        assertTrue(first.isAlive() != second.isAlive(), "one ended, one serves");
        Process ended = first.isAlive() ? second : first;
        assertEquals(0, ended.exitValue());
        int at = one.indexOf("/#");
        assertEquals(200, ask(one.substring(0, at), one.substring(at + 2)).statusCode());
      } finally {
        first.destroy();
        second.destroy();
      }
    }
  }

  private static String addressIn(String said) {
    return said.replaceAll("(?s).*(http://127\\.0\\.0\\.1:\\d+/#[0-9a-f]{32}).*", "$1");
  }

  @Test
  void aCommandThatFindsNoBrowserIsToldToThePerson() throws Exception {
    DoubleClicked program = new DoubleClicked(home);
    program.opener("xdg-open", 3); // as xdg-open(1) ends when it found no tool
    Process daymount = program.start("open");
    try {
      program.opened();
      program.said(1, "no browser could be opened; copy the address into one");
    } finally {
      daymount.destroy();
    }
  }

  @Test
  void onAMacItIsTheCommandOpenAndOnWindowsTheUrlHandler() throws Exception {
    DoubleClicked program = new DoubleClicked(home);
    program.opener("open", 0);
    Process asked = program.java(OpenInTheBrowserTest.class, "Mac OS X", "http://127.0.0.1:1/");
    assertEquals(0, asked.waitFor());
    assertEquals("http://127.0.0.1:1/", program.opened());
    assertEquals(
        List.of("rundll32", "url.dll,FileProtocolHandler", "http://127.0.0.1:1/"),
        new SystemOpener("Windows 11").command("http://127.0.0.1:1/"));
  }

  /** In a process of its own, whose PATH is ours: opens the second argument as on the first. */
  public static void main(String[] arguments) {
    System.exit(new SystemOpener(arguments[0]).open(arguments[1]) ? 0 : 1);
  }

  private static HttpResponse<String> enter(String address) throws Exception {
    int at = address.indexOf("/#ticket-");
    String ticket = address.substring(at + "/#ticket-".length());
    return send(
        HttpRequest.newBuilder(URI.create(address.substring(0, at) + "/api/enter"))
            .POST(BodyPublishers.ofString("{\"ticket\":\"" + ticket + "\"}"))
            .build());
  }

  private static HttpResponse<String> ask(String origin, String token) throws Exception {
    return send(
        HttpRequest.newBuilder(URI.create(origin + "/api/start"))
            .header("X-Review-Token", token)
            .build());
  }

  private static HttpResponse<String> send(HttpRequest request) throws Exception {
    return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
  }
}
