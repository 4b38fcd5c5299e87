package plumbleaf.web.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.FutureTask;
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

    /** Asked to end, a node takes nothing new, answers what it was asked before, of which half is still on its way, and ends by itself. */
    private static void drainsWhenAskedToEnd(OtherProcess node, int port, String key) throws Exception {
        byte[] job = Trial.yard().getBytes(StandardCharsets.UTF_8);
        String head = "POST /api/v1/jobs HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nAuthorization: Bearer " + key
                + "\r\nContent-Type: application/json\r\nContent-Length: " + job.length
                + "\r\nExpect: 100-continue\r\nConnection: close\r\n\r\n";
        try (Socket asking = new Socket(InetAddress.getLoopbackAddress(), port)) {
            OutputStream out = asking.getOutputStream();
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(asking.getInputStream(), StandardCharsets.UTF_8));
            out.write(head.getBytes(StandardCharsets.US_ASCII));
            // It says so where what is asked has come to those who answer it.
            assertThat(in.readLine()).isEqualTo("HTTP/1.1 100 ");
            out.write(job, 0, job.length / 2);
            FutureTask<Integer> end = new FutureTask<>(node::end);
            new Thread(end).start();
            while (!end.isDone() && takes(port)) Thread.sleep(20);
            assertThat(node.isAlive()).isTrue();
            out.write(job, job.length / 2, job.length - job.length / 2);
            assertThat(in.lines().toList()).contains("HTTP/1.1 201 ").anyMatch(line -> line.startsWith("ETag: \"1\""));
            assertThat(end.get()).isEqualTo(143);
        }
    }

    private static boolean takes(int port) {
        try (Socket another = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return another.isConnected();
        } catch (IOException refused) {
            return false;
        }
    }

    private static int port(OtherProcess node) throws InterruptedException {
        return Integer.parseInt(node.line(line -> line.startsWith("port ")).substring(5));
    }
}
