package plumbleaf.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Objects;
import org.openqa.selenium.chrome.ChromeDriver;

/** A page that holds nothing but the engine, under the policy that our own pages have, in a real browser. */
public final class EnginePage implements AutoCloseable {
    private static final String POLICY =
            "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self';" + " worker-src 'self'";
    private static final String PAGE = "<!doctype html><meta charset=\"utf-8\"><title>engine</title>";
    private static final Path MADE = Path.of("target", "classes", "plumbleaf", "browser");

    private static final String ASK = """
            const [verb, texts, done] = arguments;
            (async () => {
                window.engine ??= import("/engine.js").then((script) => script.engineFrom((file, how) => fetch("/" + file, how)));
                return (await window.engine)[verb](...texts);
            })().then((text) => done("=" + text), (fault) => done("!" + fault.message + "\\n" + fault.stack));
            """;

    private final HttpServer server;
    private final ChromeDriver browser;

    private EnginePage(HttpServer server, ChromeDriver browser) {
        this.server = server;
        this.browser = browser;
    }

    public static EnginePage open() throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", EnginePage::answer);
        server.start();
        ChromeDriver browser = Chromium.open(800, 600);
        browser.manage().timeouts().scriptTimeout(Duration.ofMinutes(10));
        browser.get("http://127.0.0.1:" + server.getAddress().getPort() + "/");
        return new EnginePage(server, browser);
    }

    /** What the engine in the page answers; a fault there is a fault here. */
    String ask(String verb, String... texts) {
        String answer = String.valueOf(Objects.requireNonNull(browser.executeAsyncScript(ASK, verb, texts)));
        if (answer.startsWith("!")) throw new AssertionError("In the browser: " + answer.substring(1));
        return answer.substring(1);
    }

    /** What the page says to a line of script. */
    public Object run(String script) {
        return Objects.requireNonNull(browser.executeAsyncScript(script));
    }

    private static void answer(HttpExchange asked) throws IOException {
        String path = asked.getRequestURI().getPath();
        Path made = path.equals("/engine.wasm") || path.equals("/faults.wasm")
                ? Path.of("target", "module", path.substring(1))
                : MADE.resolve(path.substring(1));
        byte[] body = Files.isRegularFile(made) ? Files.readAllBytes(made) : PAGE.getBytes(StandardCharsets.UTF_8);
        String kind = path.endsWith(".js")
                ? "text/javascript"
                : path.startsWith("/engine.") || path.endsWith(".wasm") ? "application/octet-stream" : "text/html";
        asked.getResponseHeaders().set("Content-Type", kind);
        asked.getResponseHeaders().set("Content-Security-Policy", POLICY);
        asked.sendResponseHeaders(200, body.length);
        asked.getResponseBody().write(body);
        asked.close();
    }

    @Override
    public void close() {
        browser.quit();
        server.stop(0);
    }
}
