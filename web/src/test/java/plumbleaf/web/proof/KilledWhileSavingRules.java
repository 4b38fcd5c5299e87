package plumbleaf.web.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plumbleaf.web.files.JobFiles;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Step;
import plumbleaf.web.store.StoredJob;

/**
 * A process that saves is killed with SIGKILL, again and again on the same store: all it was told is saved is there, and what is there is
 * whole. {@code -Dplumbleaf.kills=1000} is the long form.
 */
abstract class KilledWhileSavingRules {
    private static final int KILLS = Integer.getInteger("plumbleaf.kills", 4);
    private static final long SEED = 815;

    abstract String emptyStore();

    /** Where a server keeps the store: it finishes the statement that it was in the middle of for a process that is gone. */
    void letFinish(String place) throws Exception {}

    @Test
    void nothingThatWasAcknowledgedIsLost() throws Exception {
        String place = emptyStore();
        Database.open(place).close();
        Random random = new Random(SEED);
        long acknowledged = 0;
        for (int i = 0; i < KILLS; i++) {
            try (OtherProcess saver = OtherProcess.start(Saver.class, place)) {
                int first = 3 + random.nextInt(30);
                saver.line(line -> line.endsWith(" " + first));
                Thread.sleep(random.nextInt(60));
                List<String> said = saver.kill();
                letFinish(place);
                acknowledged += check(place, said);
            }
        }
        assertThat(acknowledged).isGreaterThan(KILLS * 5L);
    }

    /** Everything said to be saved is there, and every job's history fits together. */
    static long check(String place, List<String> said) {
        Map<String, Long> versions = new LinkedHashMap<>();
        Map<String, Set<String>> files = new LinkedHashMap<>();
        for (String line : said) {
            String[] words = line.split(" ", -1);
            if (words.length == 2) versions.merge(words[0], Long.parseLong(words[1]), Math::max);
            else files.computeIfAbsent(words[0], job -> new LinkedHashSet<>()).add(words[2]);
        }
        try (Database database = Database.open(place)) {
            JobStore store = new JobStore(database, Clock.systemUTC());
            versions.forEach((id, version) -> {
                StoredJob job = store.open(new JobId(id)).orElseThrow();
                // One more may have been saved and not been said yet.
                assertThat(job.version()).as(id).isBetween(version, version + 1);
                assertThat(job.document()).isEqualTo(Saver.text(job.version()));
                List<Step> steps = store.history(job.id());
                assertThat(steps).hasSize((int) job.version());
                for (long number = 1; number <= job.version(); number++)
                    assertThat(store.document(job.id(), number)).contains(Saver.text(number));
                JobFiles kept = new JobFiles(database, Clock.systemUTC());
                for (String file : files.getOrDefault(id, Set.of()))
                    assertThat(kept.open(job.id(), file)).isPresent();
            });
        }
        return versions.values().stream().mapToLong(Long::longValue).sum();
    }
}
