package org.leat.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A headless browser of the machine, driven over the WebDriver protocol (W3C) by the driver that comes with it. */
final class RealBrowser implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path BROWSER = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Pattern PORT = Pattern.compile("successfully on port (\\d+)");
    private static final List<String> ALONE = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--hide-scrollbars");

    private final Process driver;
    private final Path profile;
    private final String session;

    private RealBrowser(Process driver, Path profile, String session) {
        this.driver = driver;
        this.profile = profile;
        this.session = session;
    }

    static boolean isThere() {
        return Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
    }

    static RealBrowser start() throws IOException {
        Process driver = new ProcessBuilder(DRIVER.toString(), "--port=0")
                .redirectErrorStream(true)
                .start();
        try {
            String driverAddress = "http://127.0.0.1:" + port(driver);
            Path profile = Files.createTempDirectory("browser");
            ObjectNode options = JSON.createObjectNode().put("binary", BROWSER.toString());
            Stream.concat(ALONE.stream(), Stream.of("--user-data-dir=" + profile))
                    .forEach(options.withArray("args")::add);
            ObjectNode wanted = JSON.createObjectNode();
            ((ObjectNode) wanted.withObject("/capabilities/alwaysMatch").put("browserName", "chrome"))
                    .set("goog:chromeOptions", options);
            JsonNode made = ask("POST", driverAddress + "/session", wanted);
            return new RealBrowser(
                    driver,
                    profile,
                    driverAddress + "/session/" + made.path("sessionId").asText());
        } catch (IOException | RuntimeException e) {
            driver.destroy();
            throw e;
        }
    }

    private static String port(Process driver) throws IOException {
        BufferedReader said =
                new BufferedReader(new InputStreamReader(driver.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher m = PORT.matcher(line);
            if (m.find()) {
                return m.group(1);
            }
        }
        throw new IOException("the browser's driver does not start");
    }

    /** Shows a page in a window so wide, as on a phone below 500. */
    void show(Path page, int width, String scheme) throws IOException {
        ObjectNode metrics = JSON.createObjectNode()
                .put("width", width)
                .put("height", 800)
                .put("deviceScaleFactor", 1)
                .put("mobile", width < 500);
        tools("Emulation.setDeviceMetricsOverride", metrics);
        ObjectNode media = JSON.createObjectNode();
        media.withArray("features")
                .addObject()
                .put("name", "prefers-color-scheme")
                .put("value", scheme);
        tools("Emulation.setEmulatedMedia", media);
        ask(
                "POST",
                session + "/url",
                JSON.createObjectNode().put("url", page.toUri().toString()));
    }

    /** {@return what a function's body returns, run beside the page} */
    JsonNode run(String body) throws IOException {
        ObjectNode call = JSON.createObjectNode().put("script", body);
        call.putArray("args");
        return ask("POST", session + "/execute/sync", call);
    }

    /** {@return what a function's body hands to its last argument} */
    JsonNode await(String body) throws IOException {
        ObjectNode call = JSON.createObjectNode().put("script", body);
        call.putArray("args");
        return ask("POST", session + "/execute/async", call);
    }

    /** Presses a key: WebDriver's code for it. */
    void press(char key) throws IOException {
        ObjectNode actions = JSON.createObjectNode();
        ObjectNode keyboard =
                actions.withArray("actions").addObject().put("type", "key").put("id", "keyboard");
        keyboard.withArray("actions").addObject().put("type", "keyDown").put("value", String.valueOf(key));
        keyboard.withArray("actions").addObject().put("type", "keyUp").put("value", String.valueOf(key));
        ask("POST", session + "/actions", actions);
    }

    /** {@return the page as printed, in Base64} */
    String printed() throws IOException {
        return tools("Page.printToPDF", JSON.createObjectNode().put("preferCSSPageSize", true))
                .path("data")
                .asText();
    }

    private JsonNode tools(String command, ObjectNode parameters) throws IOException {
        ObjectNode call = JSON.createObjectNode().put("cmd", command);
        call.set("params", parameters);
        return ask("POST", session + "/goog/cdp/execute", call);
    }

    private static JsonNode ask(String method, String address, JsonNode body) throws IOException {
        HttpURLConnection call = (HttpURLConnection) URI.create(address).toURL().openConnection();
        call.setRequestMethod(method);
        if (method.equals("POST")) {
            call.setDoOutput(true);
            call.setRequestProperty("Content-Type", "application/json");
            call.getOutputStream().write(JSON.writeValueAsBytes(body));
        }
        try (InputStream answer = call.getResponseCode() < 400 ? call.getInputStream() : call.getErrorStream()) {
            JsonNode value = JSON.readTree(answer).path("value");
            if (call.getResponseCode() >= 400) {
                throw new IOException(value.toString());
            }
            return value;
        }
    }

    @Override
    public void close() throws IOException {
        try {
            ask("DELETE", session, JSON.createObjectNode());
        } finally {
            driver.destroy();
        }
        try (Stream<Path> left = Files.walk(profile)) {
            for (Path file : left.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
