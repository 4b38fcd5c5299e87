package plumbleaf.web.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbleaf.web.files.JobFiles;

/** Nothing is lost: not by undo, not by two people, not by many at once. The same on every kind of store. */
abstract class JobStoreRules {
    private Database database;
    private JobStore store;
    private JdbcClient sql;

    /** An empty store of the kind under test. */
    abstract String emptyStore();

    @BeforeEach
    void openStore() {
        database = Database.open(emptyStore());
        store = new JobStore(database, Clock.systemUTC());
        sql = database.sql();
    }

    @AfterEach
    void closeStore() {
        database.close();
    }

    JdbcClient sql() {
        return sql;
    }

    @Test
    void aJobRemovedForGoodLeavesNothingAndNoOtherJobLosesAnything() {
        StoredJob other = store.create("Other", "kept", "Wen");
        StoredJob job = store.create("Yard", "1", "Wen");
        saved(store.edit(job.id(), 1, "Yard", "2", "two", "Wen"));
        JobFiles files = new JobFiles(database, Clock.systemUTC());
        for (JobId each : List.of(job.id(), other.id())) {
            files.add(each, "job", "a.txt", "a note".getBytes(StandardCharsets.UTF_8), "Wen");
            sql.sql("insert into customer_link values (?, ?, ?, 1, 'p', 'Wen', 1, 2, null)")
                    .params("l" + each, "t" + each, each.text())
                    .update();
            sql.sql("insert into acceptance (link, name, said_on, made_at) values (?, 'Odalys', '2027-05-03', 1)")
                    .param("l" + each)
                    .update();
            sql.sql("insert into receipt values (?, 's', 'i', 1, 'Wen', 1)")
                    .param(each.text())
                    .update();
        }
        assertThat(store.removeForGood(job.id())).isFalse();
        store.throwAway(job.id(), "Wen");
        assertThat(everything()).contains(job.id().text());
        assertThat(store.removeForGood(job.id())).isTrue();
        assertThat(store.removeForGood(job.id())).isFalse();
        assertThat(everything()).doesNotContain(job.id().text()).contains("t" + other.id());
        assertThat(store.trash()).isEmpty();
        assertThat(store.open(other.id()).orElseThrow().document()).isEqualTo("kept");
        assertThat(files.of(other.id())).hasSize(1);
    }

    /** Every row of every table, as text. */
    private String everything() {
        StringBuilder all = new StringBuilder();
        for (String table : database.tables().names())
            all.append(sql.sql("select * from " + table).query().listOfRows());
        return all.toString();
    }

    @Test
    void aJobInTheTrashKeepsEverythingAndComesBack() {
        StoredJob job = store.create("Yard", "1", "Wen");
        saved(store.edit(job.id(), 1, "Yard", "2", "two", "Wen"));
        assertThat(store.throwAway(job.id(), "Odo")).isTrue();
        assertThat(store.throwAway(job.id(), "Odo")).isFalse();
        assertThat(store.list()).isEmpty();
        assertThat(store.open(job.id())).isEmpty();
        assertThat(store.trash()).extracting(JobLine::id).containsExactly(job.id());
        Saving late = store.edit(job.id(), 3, "Yard", "3", "three", "Wen");
        assertThat(late).isInstanceOf(Saving.Stale.class);
        assertThat(store.takeBack(job.id(), "Wen")).isTrue();
        assertThat(store.takeBack(job.id(), "Wen")).isFalse();
        StoredJob back = store.open(job.id()).orElseThrow();
        assertThat(back.document()).isEqualTo("2");
        assertThat(back.undo()).isTrue();
        assertThat(store.history(job.id())).extracting(Step::kind).containsExactly("restore", "trash", "edit", "new");
        assertThat(store.history(job.id())).extracting(Step::who).containsExactly("Wen", "Odo", "Wen", "Wen");
    }

    @Test
    void anyRevisionCanBeReadAgain() {
        StoredJob job = store.create("Yard", "1", "Wen");
        saved(store.edit(job.id(), 1, "Yard", "2", "two", "Wen"));
        assertThat(store.document(job.id(), 1)).contains("1");
        assertThat(store.document(job.id(), 2)).contains("2");
        assertThat(store.document(job.id(), 3)).isEmpty();
    }

    @Test
    void anEditIsANewRevisionAndTheOldOneStays() {
        StoredJob job = store.create("Yard", "{\"a\":1}", "Wen");
        StoredJob now = saved(store.edit(job.id(), 1, "Yard", "{\"a\":2}", "a 2", "Wen"));
        assertThat(now.document()).isEqualTo("{\"a\":2}");
        assertThat(now.version()).isEqualTo(2);
        assertThat(revisions(job.id())).containsExactly("{\"a\":1}", "{\"a\":2}");
    }

    @Test
    void ofTwoPeopleTheSecondIsToldWhatTheFirstDid() {
        StoredJob job = store.create("Yard", "{\"a\":1}", "Wen");
        saved(store.edit(job.id(), 1, "Yard", "{\"a\":2}", "a 2", "Wen"));
        Saving second = store.edit(job.id(), 1, "Yard", "{\"a\":3}", "a 3", "Odo");
        Saving.Stale stale = second.match(
                saved -> {
                    throw new AssertionError("The second edit overwrote the first");
                },
                left -> left);
        assertThat(stale.who()).isEqualTo("Wen");
        assertThat(stale.what()).isEqualTo("a 2");
        assertThat(stale.now().document()).isEqualTo("{\"a\":2}");
        assertThat(revisions(job.id())).hasSize(2);
    }

    @Test
    void aChangeThatComesTwiceUnderOneNameIsMadeOnceWhateverBecameOfTheJobSince() {
        StoredJob job = store.create("Yard", "1", "Wen");
        Maker phone = Maker.of("Wen").sending("mh3k2p-4f6g");
        saved(store.edit(job.id(), 1, "Yard", "2", "two", phone));
        saved(store.edit(job.id(), 2, "Yard", "3", "three", "Odo"));
        assertThat(saved(store.edit(job.id(), 1, "Yard", "2", "two", phone)).document())
                .isEqualTo("3");
        assertThat(saved(store.edit(job.id(), 3, "Yard", "2", "two", phone)).version())
                .isEqualTo(3);
        assertThat(saved(store.undo(job.id(), 3, phone)).version()).isEqualTo(3);
        assertThat(store.come(job.id(), List.of("mh3k2p-4f6g", "another"))).containsExactly("mh3k2p-4f6g");
        StoredJob other = store.create("Other", "1", "Wen");
        assertThat(saved(store.edit(other.id(), 1, "Other", "2", "two", phone)).document())
                .as("a name is of one job")
                .isEqualTo("2");
        assertThat(Maker.of("Wen").sending("no 'such").sending()).isEmpty();
    }

    @Test
    void undoAndRedoWalkTheWholeHistoryAndAreHistoryThemselves() {
        StoredJob job = store.create("Yard", "1", "Wen");
        saved(store.edit(job.id(), 1, "Yard", "2", "two", "Wen"));
        saved(store.edit(job.id(), 2, "Yard", "3", "three", "Wen"));
        StoredJob back = saved(store.undo(job.id(), 3, Maker.of("Wen")));
        assertThat(back.document()).isEqualTo("2");
        assertThat(back.redo()).isTrue();
        StoredJob first = saved(store.undo(job.id(), 4, Maker.of("Wen")));
        assertThat(first.document()).isEqualTo("1");
        assertThat(first.undo()).isFalse();
        assertThat(saved(store.undo(job.id(), 5, Maker.of("Wen"))).document()).isEqualTo("1");
        assertThat(saved(store.redo(job.id(), 6, Maker.of("Wen"))).document()).isEqualTo("2");
        StoredJob other = saved(store.edit(job.id(), 7, "Yard", "4", "four", "Wen"));
        assertThat(other.redo()).isFalse();
        assertThat(saved(store.undo(job.id(), 8, Maker.of("Wen"))).document()).isEqualTo("2");
        assertThat(saved(store.redo(job.id(), 9, Maker.of("Wen"))).document()).isEqualTo("4");
        assertThat(revisions(job.id())).containsExactly("1", "2", "3", "4");
        assertThat(store.history(job.id()))
                .extracting(Step::kind)
                .containsExactly("redo", "undo", "edit", "redo", "undo", "undo", "undo", "edit", "edit", "new");
    }

    @Test
    void manyAtOnceLoseNothing() throws Exception {
        int people = 8;
        int editsEach = 25;
        StoredJob job = store.create("Yard", "0", "start");
        ExecutorService all = Executors.newFixedThreadPool(people);
        try {
            List<Callable<Integer>> work = new ArrayList<>();
            for (int p = 0; p < people; p++) {
                String who = "person " + p;
                work.add(() -> editUntilKept(job.id(), who, editsEach));
            }
            int kept = 0;
            for (Future<Integer> one : all.invokeAll(work)) kept += one.get();
            assertThat(kept).isEqualTo(people * editsEach);
        } finally {
            all.shutdownNow();
        }
        assertThat(revisions(job.id())).hasSize(people * editsEach + 1).doesNotHaveDuplicates();
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(people * editsEach + 1);
    }

    private int editUntilKept(JobId id, String who, int edits) {
        int kept = 0;
        while (kept < edits) {
            StoredJob now = store.open(id).orElseThrow();
            String next = who + " edit " + kept;
            boolean mine =
                    store.edit(id, now.version(), "Yard", next, next, who).match(saved -> true, stale -> false);
            if (mine) kept++;
        }
        return kept;
    }

    private List<String> revisions(JobId id) {
        return sql.sql("select document from revision where job = ? order by number")
                .param(id.text())
                .query(String.class)
                .list();
    }

    private static StoredJob saved(Saving saving) {
        return saving.match(Saving.Saved::now, stale -> {
            throw new AssertionError("Not saved: " + stale);
        });
    }
}
