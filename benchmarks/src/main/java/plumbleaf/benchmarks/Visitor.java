package plumbleaf.benchmarks;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Somebody with a browser, as far as a server can tell: one request after the other, each timed. */
final class Visitor {
    private final HttpClient client = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .cookieHandler(new CookieManager())
            .connectTimeout(Duration.ofSeconds(2))
            .build();
    private final String base;

    Visitor(int port) {
        this.base = "http://127.0.0.1:" + port;
    }

    HttpResponse<String> get(String path) throws IOException {
        return answered(HttpRequest.newBuilder(URI.create(base + path)).GET());
    }

    /** As a page's script posts: what comes back is the inside of the room. */
    HttpResponse<String> live(String path, Map<String, String> fields) throws IOException {
        List<String> form = new ArrayList<>();
        fields.forEach((key, value) -> form.add(key + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8)));
        return answered(HttpRequest.newBuilder(URI.create(base + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", base)
                .header("X-Live", "1")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", form))));
    }

    private HttpResponse<String> answered(HttpRequest.Builder request) throws IOException {
        try {
            return client.send(request.timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofString());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Stopped while asking", e);
        }
    }

    /** How long a page takes, asked for again and again after some rounds that are not counted. */
    Figure times(String name, String path, int rounds) throws IOException {
        List<Double> millis = new ArrayList<>();
        for (int i = -rounds / 2; i < rounds; i++) {
            long start = System.nanoTime();
            HttpResponse<String> answer = get(path);
            double took = (System.nanoTime() - start) / 1e6;
            if (answer.statusCode() != 200)
                throw new IllegalStateException(path + " was answered with " + answer.statusCode());
            if (i >= 0) millis.add(took);
        }
        return Figure.of(name, "ms", millis);
    }
}
