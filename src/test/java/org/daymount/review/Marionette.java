package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.remote.Command;
import org.openqa.selenium.remote.CommandExecutor;
import org.openqa.selenium.remote.DriverCommand;
import org.openqa.selenium.remote.Response;
import org.openqa.selenium.remote.codec.w3c.W3CHttpCommandCodec;
import org.openqa.selenium.remote.codec.w3c.W3CHttpResponseCodec;
import org.openqa.selenium.remote.http.Contents;
import org.openqa.selenium.remote.http.HttpRequest;
import org.openqa.selenium.remote.http.HttpResponse;

/**
 * Speaks to Firefox itself, where no driver stands between: WebDriver's commands (W3C) by the names
 * they have in Firefox's own protocol, Marionette, as numbered JSON with its length before it
 * (Firefox source docs, "Marionette: Protocol"). Knows the commands that our tests give.
 */
final class Marionette implements CommandExecutor, AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern ADDRESS =
      Pattern.compile("/session/[^/]+(/element/(?!active)([^/]+))?(/.*)?");

  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("DELETE ", "WebDriver:DeleteSession"),
          Map.entry("POST /url", "WebDriver:Navigate"),
          Map.entry("GET /url", "WebDriver:GetCurrentURL"),
          Map.entry("GET /source", "WebDriver:GetPageSource"),
          Map.entry("POST /element", "WebDriver:FindElement"),
          Map.entry("POST /elements", "WebDriver:FindElements"),
          Map.entry("GET /element/active", "WebDriver:GetActiveElement"),
          Map.entry("POST /click", "WebDriver:ElementClick"),
          Map.entry("POST /value", "WebDriver:ElementSendKeys"),
          Map.entry("GET /text", "WebDriver:GetElementText"),
          Map.entry("POST /execute/sync", "WebDriver:ExecuteScript"),
          Map.entry("POST /execute/async", "WebDriver:ExecuteAsyncScript"),
          Map.entry("POST /timeouts", "WebDriver:SetTimeouts"),
          Map.entry("POST /window/rect", "WebDriver:SetWindowRect"),
          Map.entry("POST /actions", "WebDriver:PerformActions"),
          Map.entry("GET /screenshot", "WebDriver:TakeScreenshot"));

  private final W3CHttpCommandCodec commands = new W3CHttpCommandCodec();
  private final W3CHttpResponseCodec responses = new W3CHttpResponseCodec();
  private final Socket socket;
  private int number;

  /** Once Firefox listens there. */
  Marionette(int port) throws IOException {
    this.socket = new Socket("127.0.0.1", port);
    JsonNode hello = read();
    if (hello.path("marionetteProtocol").asInt() != 3) {
      throw new IOException("not the protocol of this test: " + hello);
    }
  }

  @Override
  public synchronized Response execute(Command command) throws IOException {
    if (command.getName().equals(DriverCommand.NEW_SESSION)) {
      JsonNode session = ask("WebDriver:NewSession", JSON.createObjectNode());
      Response begun = responses.decode(said(session));
      begun.setSessionId(session.at("/3/sessionId").asText());
      begun.setValue(JSON.convertValue(session.at("/3/capabilities"), Map.class));
      return begun;
    }
    HttpRequest asked = commands.encode(command);
    Matcher address = ADDRESS.matcher(asked.getUri());
    String rest = address.matches() && address.group(3) != null ? address.group(3) : "";
    String name = NAMES.get(asked.getMethod() + " " + rest);
    if (name == null) {
      throw new WebDriverException(asked + " is not known to this test's " + getClass());
    }
    String body = asked.contentAsString();
    ObjectNode given = body.isEmpty() ? JSON.createObjectNode() : (ObjectNode) JSON.readTree(body);
    if (address.group(2) != null) {
      given.put(rest.startsWith("/element") ? "element" : "id", address.group(2));
    }
    if (name.endsWith("TakeScreenshot")) {
      given.put("full", false);
    }
    Response reply = responses.decode(said(ask(name, given)));
    reply.setSessionId(command.getSessionId().toString());
    return reply;
  }

  /** As a driver would have answered. */
  private static HttpResponse said(JsonNode message) throws IOException {
    JsonNode error = message.get(2);
    JsonNode result = message.get(3);
    ObjectNode body = JSON.createObjectNode();
    body.set("value", !error.isNull() ? error : result.has("value") ? result.get("value") : result);
    return new HttpResponse()
        .setStatus(error.isNull() ? 200 : 500)
        .addHeader("Content-Type", "application/json; charset=utf-8")
        .setContent(Contents.bytes(JSON.writeValueAsBytes(body)));
  }

  private JsonNode ask(String name, ObjectNode given) throws IOException {
    ArrayNode message = JSON.createArrayNode().add(0).add(++number).add(name).add(given);
    byte[] bytes = JSON.writeValueAsBytes(message);
    socket.getOutputStream().write((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
    socket.getOutputStream().write(bytes);
    return read();
  }

  private JsonNode read() throws IOException {
    InputStream in = socket.getInputStream();
    int length = 0;
    for (int digit = in.read(); digit != ':'; digit = in.read()) {
      if (digit < '0' || digit > '9') {
        throw new EOFException("Firefox has ended");
      }
      length = 10 * length + digit - '0';
    }
    return JSON.readTree(in.readNBytes(length));
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
