package org.undercall.command.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The server of the desk")
@Timeout(120)
class DeskServerTest {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  @TempDir Path folder;
  private ServedDesk desk;

  @BeforeEach
  void start() throws Exception {
    Files.copy(Path.of("shared/procedures/demo-lateral-link.json"), folder.resolve("own.json"));
    Files.writeString(folder.resolve("other.json"), "{\"title\": \"another file\"}");
    desk = ServedDesk.of(folder.resolve("own.json"));
  }

  @AfterEach
  void stop() {
    desk.close();
  }

  private URI uri(String path) {
    return URI.create("http://localhost:" + desk.port() + path);
  }

  private String cookie() {
    return "undercall-desk-" + desk.port() + "=" + desk.secret();
  }

  private HttpResponse<String> get(String path, String... headers) throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(uri(path));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String path, String body, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(uri(path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<String> own(String path, String body) throws Exception {
    return post(path, body, "Cookie", cookie(), "Origin", "http://localhost:" + desk.port());
  }

  @Test
  @DisplayName("gives its page to the browser that has the secret, without inline code")
  void page() throws Exception {
    HttpResponse<String> opened = get("/open/" + desk.secret());
    assertEquals(303, opened.statusCode());
    String set = opened.headers().firstValue("Set-Cookie").orElseThrow();
    assertTrue(set.contains("HttpOnly") && set.contains("SameSite=Strict"), set);
    HttpResponse<String> page = get("/", "Cookie", cookie());
    assertEquals(200, page.statusCode());
    String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
    assertTrue(policy.startsWith("default-src 'none'; script-src 'self'"), policy);
    assertFalse(page.body().contains("<script>") || page.body().contains("style="), page.body());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/desk.js", "/schema.json", "/open/", "/open/x", "/open"})
  @DisplayName("gives nothing without the secret")
  void noSecret(String path) throws Exception {
    assertEquals(401, get(path).statusCode());
    String wrong = cookie().substring(0, cookie().length() - 1) + "!";
    assertEquals(401, get(path, "Cookie", wrong).statusCode());
  }

  @ParameterizedTest
  @CsvSource({
    "http://evil.example, 403",
    "http://localhost:1, 403",
    "null, 403",
    "OWN, 200",
  })
  @DisplayName("does nothing for a page from elsewhere, even with the cookie")
  void origin(String origin, int status) throws Exception {
    String from = origin.equals("OWN") ? "http://localhost:" + desk.port() : origin;
    assertEquals(status, post("/read", "{}", "Cookie", cookie(), "Origin", from).statusCode());
    String own = "http://localhost:" + desk.port();
    assertEquals(403, post("/read", "{}", "Cookie", cookie()).statusCode(), "no origin");
    assertEquals(401, post("/save", "{}", "Origin", own).statusCode(), "no cookie");
    assertEquals(
        403,
        post("/save", "{}", "Cookie", cookie(), "Origin", own, "Sec-Fetch-Site", "cross-site")
            .statusCode());
  }

  @Test
  @DisplayName("is not called by another name")
  void host() throws Exception {
    try (java.net.Socket socket = new java.net.Socket("localhost", desk.port())) {
      String request = "GET / HTTP/1.1\r\nHost: evil.example:" + desk.port() + "\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(java.nio.charset.StandardCharsets.UTF_8));
      byte[] answer = socket.getInputStream().readNBytes(12);
      assertEquals("HTTP/1.1 421", new String(answer, java.nio.charset.StandardCharsets.UTF_8));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"{|400", "[]|400", "\"x\"|400", "{}|409", "{\"tree\":[]}|409", "{\"tree\":7}|409"})
  @DisplayName("refuses a body that is no procedure, and writes nothing")
  void malformed(String body, int status) throws Exception {
    for (String path : List.of("/judge", "/save", "/beside", "/begin")) {
      HttpResponse<String> answer = own(path, body);
      assertEquals(status, answer.statusCode(), path + answer.body());
      assertTrue(status == 400 || answer.body().contains("DSK-005"), answer.body());
    }
    assertEquals(2, folder.toFile().list().length);
  }

  @Test
  @DisplayName("refuses a body that is too large, and one that is nested too deep, with its code")
  void large() throws Exception {
    String big = "{\"tree\":{\"title\":\"" + "x".repeat(3 * 1024 * 1024) + "\"}}";
    assertEquals(413, own("/save", big).statusCode());
    String deep = "{\"tree\":" + "{\"a\":".repeat(400) + "1" + "}".repeat(400) + "}";
    HttpResponse<String> answer = own("/judge", deep);
    assertEquals(200, answer.statusCode());
    assertTrue(answer.body().contains("PRO-006"), answer.body());
    HttpResponse<String> saved =
        own("/save", deep.replaceFirst("\\{", "{\"draft\":true,\"comments\":true,\"base\":\"\","));
    assertEquals(409, saved.statusCode());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/other.json", "/own.json", "/../other.json", "/%2e%2e/other.json", "/save?a=1"})
  @DisplayName("never looks a path up as a file")
  void paths(String path) throws Exception {
    HttpResponse<String> answer = get(path, "Cookie", cookie());
    assertEquals(404, answer.statusCode());
    assertFalse(answer.body().contains("another file"));
    assertEquals(404, own(path.equals("/save?a=1") ? "/other.json" : path, "{}").statusCode());
  }

  @Test
  @DisplayName("takes no path of a file from the page: it reads and writes its own alone")
  void ownFile() throws Exception {
    String other = folder.resolve("other.json").toString().replace("\\", "/");
    HttpResponse<String> read =
        own("/read", "{\"path\":\"" + other + "\",\"name\":\"other.json\",\"file\":\"x\"}");
    assertTrue(read.body().contains("Lateral link, short demonstration"), read.body());
    own("/save", "{\"tree\":{},\"path\":\"" + other + "\",\"draft\":true,\"base\":\"\"}");
    assertEquals("{\"title\": \"another file\"}", Files.readString(folder.resolve("other.json")));
  }

  @Test
  @DisplayName("rehearses without keeping anything")
  void practice() throws Exception {
    String tree = Files.readString(folder.resolve("own.json"));
    String begun = own("/begin", "{\"tree\":" + tree + "}").body();
    assertTrue(begun.contains("Never work under a jack alone"), begun);
    String said =
        own("/say", "{\"number\":1,\"phrase\":\"cautions understood\",\"from\":1}").body();
    assertTrue(said.contains("centre to arch") || said.contains("Measure"), said);
    assertTrue(own("/say", "{\"number\":1,\"phrase\":\"\"}").body().contains("DSK-005"));
    assertTrue(own("/say", "{\"number\":9,\"phrase\":\"x\"}").body().contains("DSK-006"));
    assertTrue(own("/begin", "{\"tree\":{}}").body().contains("DSK-006"));
    assertEquals(2, folder.toFile().list().length);
  }

  @Test
  @DisplayName(
      "serves files without markup made from texts, inline code and anything from elsewhere")
  void inert() throws Exception {
    try (var files = Files.list(Path.of("src/main/resources/org/undercall/adapter/desk"))) {
      List<Path> all = files.toList();
      assertTrue(all.size() >= 14, all.toString());
      for (Path file : all) {
        String name = "/" + file.getFileName();
        String served = get(name.equals("/desk.html") ? "/" : name, "Cookie", cookie()).body();
        assertEquals(Files.readString(file), served, name + " is served as it is");
        for (String bad :
            List.of(
                "innerHTML", "outerHTML", "insertAdjacent", "eval(", "document.write", "https:")) {
          assertFalse(served.contains(bad), name + " " + bad);
        }
      }
    }
  }
}
