package plumbleaf.benchmarks;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The workspace as it is served, from {@code ./plumbleaf serve} to the page in the visitor's hand, and beside it a server that does nothing but answer. */
final class Served implements AutoCloseable {
    private static final double FIRST_PAGE_GOAL_MS = 3000;
    private static final double HEAP_GOAL_MB = 256;
    private static final double EDIT_GOAL_MS = 16;

    /** Counted, after as many that are not. */
    private static final int EDITS = 300;

    private static final int MOST_SECONDS = 120;
    private static final Pattern JOB = Pattern.compile("/jobs/([A-Za-z0-9_-]{6,})");
    private static final Pattern LIVE = Pattern.compile("Total\\s+\\d+\\s+(\\d+)");

    private final Process process;
    private final Visitor visitor;
    private final double firstPageMs;

    private Served(Process process, Visitor visitor, double firstPageMs) {
        this.process = process;
        this.visitor = visitor;
        this.firstPageMs = firstPageMs;
    }

    static Served on(Path store) throws IOException {
        int port = freePort();
        ProcessBuilder builder =
                new ProcessBuilder("./plumbleaf", "serve", "--port", "" + port, "--store", store.toString());
        builder.environment().put("JAVA_TOOL_OPTIONS", "-Xmx" + Math.round(HEAP_GOAL_MB) + "m");
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        long start = System.nanoTime();
        Process process = builder.start();
        Visitor visitor = new Visitor(port);
        while ((System.nanoTime() - start) / 1e9 < MOST_SECONDS && process.isAlive()) {
            try {
                if (visitor.get("/").statusCode() == 200)
                    return new Served(process, visitor, (System.nanoTime() - start) / 1e6);
            } catch (IOException notYet) {
                pause();
            }
        }
        process.destroy();
        throw new IllegalStateException("The workspace did not answer");
    }

    /** @param jobs in its store */
    static List<String> rows(Path store, int jobs, int rounds) throws IOException {
        List<String> rows = new ArrayList<>(List.of(Figure.heading()));
        List<Double> firsts = new ArrayList<>();
        // The first start makes the shared archive of classes and is not counted.
        for (int i = 0; i < 3; i++) {
            try (Served served = on(store)) {
                if (i > 0) firsts.add(served.firstPageMs);
            }
        }
        try (Served served = on(store)) {
            firsts.add(served.firstPageMs);
            rows.add(Figure.of("start to first page, " + jobs + " jobs", "ms", firsts)
                    .upTo(FIRST_PAGE_GOAL_MS)
                    .row());
            Visitor visitor = served.visitor;
            String job = jobOf(visitor.get("/").body());
            rows.add(visitor.times("the desk of " + jobs + " jobs", "/", rounds).row());
            rows.add(visitor.times("the desk, those that say \"kiln\"", "/?find=kiln", rounds)
                    .row());
            rows.add(visitor.times("the room Gates, unchanged", "/jobs/" + job + "/gates", rounds)
                    .row());
            String ground = "/jobs/" + job + "/ground";
            String gates = "/jobs/" + job + "/gates";
            rows.add(edits("a shot edited, its room", visitor, ground, "ground.shots[2].elevation", "-10.#\"", EDITS)
                    .row());
            rows.add(edits("a gate's opening edited, its room", visitor, gates, "gates[0].opening", "47.#\"", EDITS)
                    .row());
            served.live()
                    .ifPresent(mb -> rows.add(Figure.of("held in memory, " + jobs + " jobs", "MB", List.of(mb))
                            .upTo(HEAP_GOAL_MB)
                            .row()));
        }
        rows.add(bare(rounds).row());
        rows.add("\nThe workspace ran in a heap of at most " + Math.round(HEAP_GOAL_MB)
                + " MB. The last row is the ceiling: the JDK's own server answering as many bytes without any work.");
        return rows;
    }

    /**
     * One value edited again and again, never to one it had before, as a room's page sends it: read, saved, designed, drawn and answered.
     *
     * @param value with {@code #} where the digits go that are another each time
     */
    private static Figure edits(String name, Visitor visitor, String room, String path, String value, int rounds)
            throws IOException {
        List<Double> millis = new ArrayList<>();
        String page = visitor.get(room).body();
        for (int i = -rounds; i < rounds; i++) {
            Matcher version =
                    Pattern.compile("name=\"version\" value=\"(\\d+)\"").matcher(page);
            Matcher token = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"").matcher(page);
            if (!version.find() || !token.find()) throw new IllegalStateException("No version or token on the page");
            Map<String, String> change = Map.of(
                    "_csrf",
                    token.group(1),
                    "version",
                    version.group(1),
                    "path",
                    path,
                    "unit",
                    "WORDS",
                    "value",
                    value.replace("#", Integer.toString(1000 + i)));
            long start = System.nanoTime();
            HttpResponse<String> answer = visitor.live(room + "/edit", change);
            double took = (System.nanoTime() - start) / 1e6;
            if (answer.statusCode() != 200)
                throw new IllegalStateException("The edit was answered with " + answer.statusCode());
            if (i >= 0) millis.add(took);
            page = answer.body();
        }
        return Figure.of(name, "ms", millis).upTo(EDIT_GOAL_MS);
    }

    /** Megabytes that stay after a full collection. */
    private Optional<Double> live() {
        String tool = System.getProperty("java.home") + "/bin/jcmd";
        long pid = process.toHandle().pid();
        return Program.run(List.of(tool, "" + pid, "GC.class_histogram"), MOST_SECONDS)
                .map(run -> LIVE.matcher(run.output()))
                .filter(Matcher::find)
                .map(found -> Double.parseDouble(found.group(1)) / 1e6);
    }

    private static Figure bare(int rounds) throws IOException {
        byte[] page = "x".repeat(20_000).getBytes(StandardCharsets.US_ASCII);
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(Executors.newFixedThreadPool(2));
        server.createContext("/", exchange -> {
            exchange.sendResponseHeaders(200, page.length);
            try (OutputStream out = exchange.getResponseBody()) {
                out.write(page);
            }
        });
        server.start();
        try {
            return new Visitor(server.getAddress().getPort()).times("a bare server, 20 kB", "/", 10 * rounds);
        } finally {
            server.stop(0);
        }
    }

    private static String jobOf(String page) {
        Matcher job = JOB.matcher(page);
        if (!job.find()) throw new IllegalStateException("No job on the desk");
        return job.group(1);
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(10);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Stopped while waiting for a page", e);
        }
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) process.destroyForcibly();
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
