package org.undercall.session;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A real browser without a window, driven by the W3C WebDriver protocol. */
public final class Browser implements AutoCloseable {
  /** Where the browser is. */
  public static final Path CHROMIUM = Path.of("/usr/bin/chromium");

  /** Where its driver is. */
  public static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern STARTED = Pattern.compile("started successfully on port (\\d+)");

  private final HttpClient client = HttpClient.newHttpClient();
  private final Process driver;
  private final String base;

  private Browser(Process driver, int port, Path profile) throws Exception {
    this.driver = driver;
    String root = "http://127.0.0.1:" + port + "/session";
    ObjectNode body = JSON.createObjectNode();
    ObjectNode options =
        body.putObject("capabilities").putObject("alwaysMatch").putObject("goog:chromeOptions");
    options.put("binary", CHROMIUM.toString());
    ArrayNode arguments = options.putArray("args");
    List.of("headless=new", "no-sandbox", "disable-gpu", "disable-quic", "no-first-run")
        .forEach(argument -> arguments.add("--" + argument));
    List.of("background-networking", "component-update", "sync", "dev-shm-usage")
        .forEach(argument -> arguments.add("--disable-" + argument));
    arguments.add("--user-data-dir=" + profile).add("--window-size=1920,1080");
    this.base = root + "/" + send("POST", root, body).path("sessionId").asText();
  }

  /** Whether the browser and its driver are there. */
  public static boolean present() {
    return Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
  }

  /** Starts a browser with a new profile in this folder. */
  public static Browser start(Path folder) throws Exception {
    Process driver =
        new ProcessBuilder(DRIVER.toString(), "--port=0").redirectErrorStream(true).start();
    BufferedReader out = driver.inputReader(StandardCharsets.UTF_8);
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      Matcher started = STARTED.matcher(line);
      if (started.find()) {
        return new Browser(driver, Integer.parseInt(started.group(1)), folder);
      }
    }
    throw new IOException("the browser's driver did not start");
  }

  /** Opens an address. */
  public void open(String address) throws Exception {
    send("POST", base + "/url", JSON.createObjectNode().put("url", address));
  }

  /** Loads the page anew. */
  public void reload() throws Exception {
    send("POST", base + "/refresh", JSON.createObjectNode());
  }

  /** The value of an expression in the page. */
  public JsonNode eval(String expression) throws Exception {
    return script("sync", "return " + expression);
  }

  /** Lets the page wait until an expression is true. */
  public void until(String expression) throws Exception {
    script(
        "async",
        "const done = arguments[0]; const look = () => {"
            + "let is = false; try { is = "
            + expression
            + "; } catch (e) { is = false; }"
            + "if (is) done(true); else setTimeout(look, 50); }; look();");
  }

  /** Presses keys where the focus is. */
  public void keys(String... keys) throws Exception {
    ObjectNode body = JSON.createObjectNode();
    ObjectNode keyboard = body.putArray("actions").addObject();
    keyboard.put("type", "key").put("id", "keyboard");
    ArrayNode actions = keyboard.putArray("actions");
    for (String key : keys) {
      actions.addObject().put("type", "keyDown").put("value", key);
      actions.addObject().put("type", "keyUp").put("value", key);
    }
    send("POST", base + "/actions", body);
  }

  /** Presses keys together, the first before the others, and lets them go. */
  public void chord(String... keys) throws Exception {
    ObjectNode body = JSON.createObjectNode();
    ObjectNode keyboard = body.putArray("actions").addObject();
    keyboard.put("type", "key").put("id", "keyboard");
    ArrayNode actions = keyboard.putArray("actions");
    for (String key : keys) {
      actions.addObject().put("type", "keyDown").put("value", key);
    }
    for (int i = keys.length - 1; i >= 0; i--) {
      actions.addObject().put("type", "keyUp").put("value", keys[i]);
    }
    send("POST", base + "/actions", body);
  }

  /** Types a text where the focus is. */
  public void type(String text) throws Exception {
    keys(text.codePoints().mapToObj(Character::toString).toArray(String[]::new));
  }

  /** Gives the page a size in CSS pixels, whatever the window has. */
  public void size(int across, int down) throws Exception {
    ObjectNode size = JSON.createObjectNode().put("width", across).put("height", down);
    tool(
        "Emulation.setDeviceMetricsOverride",
        size.put("deviceScaleFactor", 1).put("mobile", false));
  }

  /** Sets a preference of whoever looks, such as {@code prefers-color-scheme}. */
  public void prefers(String feature, String value) throws Exception {
    ObjectNode media = JSON.createObjectNode();
    media.putArray("features").addObject().put("name", feature).put("value", value);
    tool("Emulation.setEmulatedMedia", media);
  }

  /** Runs a text in every page that is opened from now on, before its own scripts. */
  public void before(String text) throws Exception {
    tool("Page.addScriptToEvaluateOnNewDocument", JSON.createObjectNode().put("source", text));
  }

  /** What is to be seen, as PNG. */
  public byte[] picture() throws Exception {
    String answer =
        client
            .send(
                HttpRequest.newBuilder(URI.create(base + "/screenshot")).build(),
                HttpResponse.BodyHandlers.ofString())
            .body();
    return Base64.getDecoder().decode(JSON.readTree(answer).path("value").asText());
  }

  private void tool(String command, ObjectNode parameters) throws Exception {
    ObjectNode body = JSON.createObjectNode().put("cmd", command);
    body.set("params", parameters);
    send("POST", base + "/goog/cdp/execute", body);
  }

  private JsonNode script(String how, String text) throws Exception {
    ObjectNode body = JSON.createObjectNode().put("script", text);
    body.putArray("args");
    return send("POST", base + "/execute/" + how, body);
  }

  private JsonNode send(String method, String address, JsonNode body) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address))
            .header("Content-Type", "application/json")
            .method(method, HttpRequest.BodyPublishers.ofString(body.toString()))
            .build();
    HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
    JsonNode value = JSON.readTree(answer.body()).path("value");
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(body + " gave " + value);
    }
    return value;
  }

  @Override
  public void close() {
    try {
      send("DELETE", base, JSON.createObjectNode());
    } catch (Exception e) {
      throw new IllegalStateException("the browser did not end", e);
    } finally {
      driver.destroy();
    }
  }
}
