package plumbleaf.web.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.web.Trial;
import plumbleaf.web.TrialPostgres;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Step;

/** Two nodes on one PostgreSQL with no sticky sessions: whoever signed in at one is known at the other, and one may die mid-load. */
@Tag("slow")
class TwoNodesTest {
    private static final String PASSWORD = "four plain garden words";
    private static final Pattern KEY = Pattern.compile("<code>(plf_[^<]+)</code>");
    private static final long UNDER_WAY_MS = 150;
    private static final int WRITERS = 3;
    private static final int BEFORE_THE_KILL = 20;

    private final Visitor wen = new Visitor();

    @Test
    void oneOfTwoNodesIsKilledMidLoadAndNothingAcknowledgedIsLost() throws Exception {
        String place = TrialPostgres.emptyStore();
        try (OtherProcess first = OtherProcess.start(ServedNode.class, place)) {
            int a = port(first);
            String key;
            try (OtherProcess second = OtherProcess.start(ServedNode.class, place)) {
                int b = port(second);
                String code = first.line(line -> line.startsWith("code ")).substring(5);
                assertThat(second.line(line -> line.startsWith("code "))).isEqualTo("code " + code);
                makeOwner(b, code);
                key = signInAtOneAndMakeAKeyAtTheOther(a, b);
                List<String> acknowledged = loadWhileOneDies(List.of(a, b), second, key);
                assertThat(wen.get(a, "/").statusCode()).isEqualTo(200);
                check(place, acknowledged);
                assertThat(new Visitor().get(a, "/actuator/health/readiness").body())
                        .contains("UP");
            }
            drainsWhenAskedToEnd(first, a, key);
        }
    }

    private void makeOwner(int port, String code) throws IOException, InterruptedException {
        wen.get(port, "/first-owner");
        HttpResponse<String> made = wen.post(
                port,
                "/first-owner",
                Map.of("code", code, "name", "Wen Hallow", "signIn", "wen", "password", PASSWORD));
        assertThat(made.statusCode()).isEqualTo(303);
    }

    private String signInAtOneAndMakeAKeyAtTheOther(int a, int b) throws IOException, InterruptedException {
        wen.get(a, "/sign-in");
        assertThat(wen.post(a, "/sign-in", Map.of("signIn", "wen", "password", PASSWORD))
                        .statusCode())
                .isEqualTo(302);
        assertThat(wen.get(b, "/me").body()).contains("Wen Hallow");
        HttpResponse<String> made = wen.post(b, "/me/keys", Map.of("label", "the load"));
        Matcher key = KEY.matcher(made.body());
        assertThat(key.find()).isTrue();
        return key.group(1);
    }

    /** Each writer makes a job and then changes it, each time at the next node; a node that is gone is tried no more. */
    private static List<String> loadWhileOneDies(List<Integer> nodes, OtherProcess toDie, String key) throws Exception {
        List<String> acknowledged = new ArrayList<>();
        AtomicBoolean stop = new AtomicBoolean();
        List<CompletableFuture<Void>> writers = new ArrayList<>();
        for (int i = 0; i < WRITERS; i++)
            writers.add(CompletableFuture.runAsync(() -> write(nodes, key, acknowledged, stop)));
        while (size(acknowledged) < BEFORE_THE_KILL) Thread.sleep(20);
        toDie.kill();
        int then = size(acknowledged);
        while (size(acknowledged) < then + BEFORE_THE_KILL) Thread.sleep(20);
        stop.set(true);
        for (CompletableFuture<Void> writer : writers) writer.get();
        return acknowledged;
    }

    private static void write(List<Integer> nodes, String key, List<String> acknowledged, AtomicBoolean stop) {
        Visitor program = new Visitor();
        String job = "";
        long version = 0;
        for (int i = 0; !stop.get(); i++) {
            String title = "Yard " + i;
            String text = Trial.yard().replace("Kiln yard", title);
            int port = nodes.get(i % nodes.size());
            HttpRequest.Builder request = Visitor.request(port, "/api/v1/jobs" + (job.isEmpty() ? "" : "/" + job))
                    .header("Authorization", "Bearer " + key)
                    .header("Content-Type", "application/json");
            HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofString(text);
            request = job.isEmpty()
                    ? request.POST(body)
                    : request.header("If-Match", "\"" + version + "\"").PUT(body);
            try {
                HttpResponse<String> answer = program.send(request);
                if (answer.statusCode() == 409) version++; // It was saved, but the node died before it could say so.
                if (answer.statusCode() / 100 != 2) continue;
                String tag = answer.headers().firstValue("ETag").orElseThrow();
                version = Long.parseLong(tag.replace("\"", ""));
                if (job.isEmpty()) job = answer.body().replaceAll("(?s).*\"id\": \"([^\"]+)\".*", "$1");
                synchronized (acknowledged) {
                    acknowledged.add(job + " " + version);
                }
            } catch (IOException nodeGone) {
                // The next turn goes to the other node.
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private static int size(List<String> list) {
        synchronized (list) {
            return list.size();
        }
    }

    private static void check(String place, List<String> acknowledged) {
        try (Database database = Database.open(place)) {
            JobStore store = new JobStore(database, Clock.systemUTC());
            for (String line : new TreeSet<>(acknowledged)) {
                String[] words = line.split(" ", -1);
                long version = Long.parseLong(words[1]);
                assertThat(store.history(new JobId(words[0])))
                        .extracting(Step::version)
                        .as(line)
                        .contains(version);
            }
        }
    }

    /** Asked to end, a node answers what it was asked, takes nothing new, and ends by itself. */
    private static void drainsWhenAskedToEnd(OtherProcess node, int port, String key) throws Exception {
        Visitor program = new Visitor();
        HttpRequest.Builder make = Visitor.request(port, "/api/v1/jobs")
                .header("Authorization", "Bearer " + key)
                .header("Content-Type", "application/json");
        String job = program.send(make.POST(HttpRequest.BodyPublishers.ofString(Trial.yard())))
                .body()
                .replaceAll("(?s).*\"id\": \"([^\"]+)\".*", "$1");
        // Papers of a job that nobody asked for before: it takes a while, and the end is asked for meanwhile.
        HttpRequest.Builder papers =
                Visitor.request(port, "/api/v1/jobs/" + job + "/papers").header("Authorization", "Bearer " + key);
        CompletableFuture<HttpResponse<String>> underWay = CompletableFuture.supplyAsync(() -> {
            try {
                return program.send(papers.GET());
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        Thread.sleep(UNDER_WAY_MS);
        boolean early = !underWay.isDone();
        assertThat(node.end()).isEqualTo(143);
        assertThat(early).isTrue();
        assertThat(underWay.get().statusCode()).isEqualTo(200);
        assertThat(underWay.get().body()).contains("packet.pdf");
        assertThat(node.isAlive()).isFalse();
    }

    private static int port(OtherProcess node) throws InterruptedException {
        return Integer.parseInt(node.line(line -> line.startsWith("port ")).substring(5));
    }
}
