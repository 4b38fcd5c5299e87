package plumbleaf.web.proof;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Someone with a browser and its cookies, on loopback. A balancer would send each request to any node: so does the test. */
final class Visitor {
    private static final Pattern TOKEN = Pattern.compile("name=\"csrf\" content=\"([^\"]+)\"");

    private final HttpClient http = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .connectTimeout(Duration.ofMinutes(1))
            .build();
    private String token = "";

    HttpResponse<String> get(int port, String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = send(request(port, path).GET());
        Matcher found = TOKEN.matcher(answer.body());
        if (found.find()) token = found.group(1);
        return answer;
    }

    /** A form, with the token of the last page. */
    HttpResponse<String> post(int port, String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        Map<String, String> all = new TreeMap<>(fields);
        all.put("_csrf", token);
        String form = all.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(request(port, path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    }

    HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    static HttpRequest.Builder request(int port, String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .timeout(Duration.ofMinutes(4));
    }
}
