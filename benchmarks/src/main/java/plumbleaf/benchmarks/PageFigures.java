package plumbleaf.benchmarks;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import plumbleaf.documents.plot.svg.SvgStyle;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.web.fieldbook.BookFiles;

/** The engine in a browser: how large it is, when it is ready, what an edit of a yard costs there. */
final class PageFigures {
    private static final double READY_GOAL_MS = 1000;
    private static final double EDIT_GOAL_MS = 16;
    private static final double SIZE_GOAL_KB = 500;
    private static final int MOST_SECONDS = 180;
    private static final String PRICE_BOOK = "example-2027";

    /** What of the field book draws on a page, and how that looks there. */
    private static final List<String> BOOK = List.of("figures.js", "words.js", "book.css");

    /** A page of a phone's size, which is less than any window may be. */
    private static final String PAGE =
            "<!doctype html><meta charset=\"utf-8\"><iframe src=\"phone\" width=\"390\" height=\"844\"></iframe>";

    private static final String PHONE = """
            <!doctype html><meta charset="utf-8">
            <link rel="stylesheet" href="plumbleaf.css"><link rel="stylesheet" href="drawing.css"><link rel="stylesheet" href="book.css">
            <body class="book"><main id="content"></main><script type="module" src="page.js"></script>
            """;

    private PageFigures() {}

    static List<String> rows() throws IOException {
        List<String> rows = new ArrayList<>();
        rows.add(
                "Every time is the page's, with what passes between it and the engine's thread. The page is as large as a"
                        + " phone's, and what it shows of the drawings is what the field book would.\n");
        rows.add("| what | median | 99 of 100 within | goal |\n| --- | ---: | ---: | --- |");
        long fetched = 0;
        for (String file : BookFiles.OF_THE_ENGINE) fetched += served(file, bytes("/plumbleaf/browser/" + file));
        rows.add(row("engine and its scripts, as they are fetched", List.of(fetched / 1000.0), "KB", SIZE_GOAL_KB));
        Optional<String> browser = List.of("chromium", "chromium-browser", "google-chrome").stream()
                .filter(Program::isThere)
                .findFirst();
        if (browser.isEmpty()) {
            rows.add("| no Chromium on this machine | | | |");
            return rows;
        }
        String said = measured(browser.get());
        if (said.isEmpty()) {
            rows.add("| Chromium said nothing in " + MOST_SECONDS + " s | | | |");
            return rows;
        }
        rows.add(row("kiln-yard.json, from nothing to ready", numbers(said, "open"), "ms", READY_GOAL_MS));
        rows.add(row("of such a visit, by itself: fetched", numbers(said, "fetched"), "ms", 0));
        rows.add(row("unpacked", numbers(said, "unpacked"), "ms", 0));
        rows.add(row("compiled and started", numbers(said, "started"), "ms", 0));
        rows.add(row("tables and price book read", numbers(said, "read"), "ms", 0));
        rows.add(row("the longest that the page answers nothing meanwhile", numbers(said, "longest"), "ms", 0));
        rows.add(row("ready on the next visit, unpacked before", numbers(said, "again"), "ms", READY_GOAL_MS));
        rows.add(row("its first design", numbers(said, "first"), "ms", READY_GOAL_MS));
        rows.add(row(
                "an edit of a shot, laid out and drawn as far as the screen shows it",
                numbers(said, "shots"),
                "ms",
                EDIT_GOAL_MS));
        rows.add(row("the same of the gate's place", numbers(said, "gates"), "ms", EDIT_GOAL_MS));
        rows.add(row("the same of a post that a finger moves", numbers(said, "moves"), "ms", EDIT_GOAL_MS));
        rows.add(row("from an edit to loads, gates and findings", numbers(said, "designed"), "ms", 0));
        rows.add(row("what the screen does not show, drawn after them", numbers(said, "rest"), "ms", 0));
        rows.add(row("from an edit to the price of every remedy", numbers(said, "priced"), "ms", 0));
        return rows;
    }

    /** Bytes that go over the line: scripts and what unpacks the engine go by gzip, the engine is packed already. */
    private static int served(String file, byte[] bytes) throws IOException {
        if (file.endsWith(".packed")) return bytes.length;
        ByteArrayOutputStream zipped = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(zipped)) {
            zip.write(bytes);
        }
        return zipped.size();
    }

    private static String row(String name, List<Double> values, String unit, double goal) {
        Figure figure = Figure.of(name, unit, values);
        double slow = figure.values().get((int) (0.99 * (figure.values().size() - 1)));
        String wanted =
                goal == 0 ? "" : "at most " + Figure.text(goal) + " " + unit + (slow <= goal ? "" : ", **not met**");
        return "| " + name + " | " + Figure.text(figure.median()) + " " + unit + " | " + Figure.text(slow) + " " + unit
                + " | " + wanted + " |";
    }

    /** What the page says of itself, as JSON; empty where it said nothing in time. */
    private static String measured(String browser) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        CompletableFuture<String> said = new CompletableFuture<>();
        server.createContext("/", PageFigures::answer);
        server.createContext("/said", asked -> {
            said.complete(new String(asked.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
            asked.sendResponseHeaders(204, -1);
            asked.close();
        });
        server.start();
        Path profile = Files.createTempDirectory("measured");
        List<String> words = new ArrayList<>(List.of(
                browser,
                "--headless=new",
                "--disable-gpu",
                "--no-first-run",
                "--window-size=500,900",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile));
        if ("root".equals(System.getProperty("user.name"))) words.add("--no-sandbox");
        words.add("http://127.0.0.1:" + server.getAddress().getPort() + "/");
        Process process = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            return said.completeOnTimeout("", MOST_SECONDS, TimeUnit.SECONDS).join();
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().onExit().join();
            server.stop(0);
            Commands.delete(profile);
        }
    }

    private static void answer(HttpExchange asked) throws IOException {
        String path = asked.getRequestURI().getPath();
        byte[] body = switch (path) {
            case "/page.js" -> bytes("/plumbleaf/benchmarks/page.js");
            case "/job.json" -> Files.readAllBytes(Path.of("examples", "kiln-yard.json"));
            case "/kit.json" -> kit().getBytes(StandardCharsets.UTF_8);
            case "/phone" -> PHONE.getBytes(StandardCharsets.UTF_8);
            case "/plumbleaf.css" -> bytes("/plumbleaf/web/assets/plumbleaf.css");
            case "/drawing.css" -> SvgStyle.forPages().getBytes(StandardCharsets.UTF_8);
            default ->
                BookFiles.OF_THE_ENGINE.contains(path.substring(1))
                        ? bytes("/plumbleaf/browser" + path)
                        : BOOK.contains(path.substring(1))
                                ? bytes("/plumbleaf/web/fieldbook" + path)
                                : PAGE.getBytes(StandardCharsets.UTF_8);
        };
        asked.getResponseHeaders().set("Content-Type", kind(path));
        asked.sendResponseHeaders(200, body.length);
        asked.getResponseBody().write(body);
        asked.close();
    }

    /** What the job brings along of its house: the price book that it names. */
    private static String kit() {
        Json.Members book = Json.object().put("id", PRICE_BOOK);
        for (PriceBooks.Source table : PriceBooks.tables(PRICE_BOOK))
            book.put(table.file().replace(".csv", ""), table.text());
        return JsonWriter.write(Json.object().put("book", book).build());
    }

    private static String kind(String path) {
        if (path.endsWith(".js")) return "text/javascript";
        if (path.endsWith(".css")) return "text/css";
        return path.endsWith(".packed") || path.endsWith(".wasm")
                ? "application/octet-stream"
                : "text/html;charset=utf-8";
    }

    private static byte[] bytes(String name) throws IOException {
        try (InputStream in = PageFigures.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("Not built in: " + name);
            return in.readAllBytes();
        }
    }

    /** The numbers under a key: one, or a list of them; zero where the browser said nothing. */
    private static List<Double> numbers(String json, String key) {
        Matcher found = Pattern.compile("\"" + key + "\":\\[?([0-9.,eE-]+)").matcher(json);
        if (!found.find()) return List.of(0.0);
        List<Double> numbers = new ArrayList<>();
        for (String number : found.group(1).split(",", -1))
            if (!number.isEmpty()) numbers.add(Double.parseDouble(number));
        return numbers;
    }
}
