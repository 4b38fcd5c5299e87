package plumbleaf.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import plumbleaf.web.Workspace;

/** A newer make of the field book comes while its page is open and changes wait: the page goes on, the next one is new, and nothing that was held is lost. */
@Tag("browser")
class NewerFieldBookTest {
    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final Set<String> PASSED_ON = Set.of("content-type", "content-security-policy", "cache-control");
    private static final String STYLES = "/field-book/book.css";
    private static final String NEWER = "/* a newer make */";

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder = Path.of("");

    private final HttpClient client = HttpClient.newHttpClient();
    private Workspace.Running server = new Workspace.Running(0, "", "", () -> {});
    private volatile boolean newer;

    @BeforeEach
    void start() {
        server = Workspace.start(
                Workspace.Settings.alone(0, folder.resolve("jobs.db").toString(), true));
    }

    @AfterEach
    void end() {
        server.end().run();
    }

    @Test
    void aNewerMakeComesWhileThePageIsOpenAndChangesWait() throws IOException {
        HttpServer desk = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        desk.createContext("/", this::passOn);
        desk.start();
        String book = "http://127.0.0.1:" + desk.getAddress().getPort() + "/field-book/";
        ChromeDriver device = Chromium.open(folder.resolve("phone"));
        try {
            device.manage().timeouts().scriptTimeout(PATIENCE);
            device.get(book + "#take=" + server.demoJob());
            until(device, "document.body.dataset.step === 'priced' && document.body.dataset.kept === 'yes'");
            String before = makes(device);
            // Nothing goes up from here on: what is changed waits.
            device.executeScript("Object.defineProperty(navigator, 'onLine', { get: () => false })");
            page(device, "numbers");
            device.executeScript("const field = document.querySelector(\"[data-path='gates[G1].opening']\");"
                    + "field.value = \"4' 2\\\"\"; field.dispatchEvent(new Event('change'))");
            until(device, "document.getElementById('line').textContent.includes('1 change is kept')");

            newer = true;
            device.executeAsyncScript("const done = arguments[0];"
                    + "navigator.serviceWorker.addEventListener('controllerchange', () => done(), { once: true });"
                    + "navigator.serviceWorker.ready.then((kept) => kept.update());");
            until(device, "document.body.dataset.page === 'numbers'");
            // The older one is thrown away once the newer has taken over.
            new WebDriverWait(device, PATIENCE)
                    .withMessage("the newer make alone is kept")
                    .until(page -> makes(device).equals(before + "-newer"));
            page(device, "findings");
            // The page that was open goes on.
            until(device, "document.querySelectorAll('.findings li').length > 0");
        } finally {
            desk.stop(0);
        }
        // The signal is gone and the page is opened anew: it is the newer one, and what waited still waits.
        try {
            device.get(book + "#" + server.demoJob() + "/numbers");
            device.navigate().refresh();
            until(device, "document.body.dataset.page === 'numbers'");
            assertThat(device.executeScript("return document.querySelector(\"[data-path='gates[G1].opening']\").value"))
                    .isEqualTo("4' 2\"");
            assertThat(text(device)).contains("1 change is kept");
            assertThat(device.executeAsyncScript("const done = arguments[0];"
                            + "fetch('/field-book/book.css').then((answer) => answer.text()).then(done)"))
                    .asString()
                    .contains(NEWER);
        } finally {
            device.quit();
        }
    }

    private static void page(ChromeDriver device, String page) {
        device.executeScript("location.hash = location.hash.replace(/[^/]+$/, arguments[0])", page);
        until(device, "document.body.dataset.page === '" + page + "'");
    }

    private static String text(ChromeDriver device) {
        until(device, "!document.getElementById('line').hidden");
        return String.valueOf(device.executeScript("return document.getElementById('line').textContent"));
    }

    /** The names of all makes of the page that are kept; the engine unpacked on this device has a shelf of its own. */
    private static String makes(ChromeDriver device) {
        return String.valueOf(device.executeAsyncScript("const done = arguments[0]; caches.keys().then((names) =>"
                + " done(names.filter((name) => name.startsWith('plumbleaf-field-book-')).join()))"));
    }

    private static void until(ChromeDriver device, String condition) {
        new WebDriverWait(device, PATIENCE)
                .withMessage(condition)
                // A page that is being left answers no script.
                .ignoring(JavascriptException.class)
                .until(page -> Boolean.TRUE.equals(device.executeScript("return Boolean(" + condition + ")")));
    }

    /** The workspace, read through; once a newer make is out, its styles and its worker are others. */
    private void passOn(HttpExchange asked) throws IOException {
        HttpResponse<byte[]> answer = asTheServerHasIt(asked.getRequestURI().toString());
        byte[] body = newer ? newer(asked.getRequestURI().getPath(), answer.body()) : answer.body();
        answer.headers().map().forEach((name, values) -> {
            if (PASSED_ON.contains(name)) asked.getResponseHeaders().put(name, List.copyOf(values));
        });
        asked.sendResponseHeaders(answer.statusCode(), body.length == 0 ? -1 : body.length);
        asked.getResponseBody().write(body);
        asked.close();
    }

    private HttpResponse<byte[]> asTheServerHasIt(String path) throws IOException {
        try {
            URI there = URI.create("http://127.0.0.1:" + server.port() + path);
            return client.send(HttpRequest.newBuilder(there).build(), HttpResponse.BodyHandlers.ofByteArray());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new UncheckedIOException(new IOException("Stopped while asking", e));
        }
    }

    private byte[] newer(String path, byte[] body) throws IOException {
        if (path.equals(STYLES)) return newerStyles(body);
        if (!path.equals("/field-book/worker.js")) return body;
        return new String(body, StandardCharsets.UTF_8)
                .replaceFirst("plumbleaf-field-book-([0-9a-f]+)", "plumbleaf-field-book-$1-newer")
                .replaceFirst(
                        "(" + STYLES + "\", \")[0-9a-f]+",
                        "$1" + sum(newerStyles(asTheServerHasIt(STYLES).body())))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] newerStyles(byte[] styles) {
        return (new String(styles, StandardCharsets.UTF_8) + NEWER).getBytes(StandardCharsets.UTF_8);
    }

    private static String sum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
