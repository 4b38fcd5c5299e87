package plumbleaf.web.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.web.Trial;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

class BackupTest extends BackupRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }

    /** The first released store, filled by its own SQL, is brought up to date where it stands, and from a backup made with it. */
    @Test
    void aStoreOfVersionOneIsBroughtUpToDate() throws Exception {
        String place = Trial.store();
        Path backup = folder.resolve("one.backup");
        try (Database one = Database.openAt(place, "1")) {
            assertThat(one.version()).isEqualTo("1");
            for (String line : List.of(
                    "insert into job values ('kilnyard', 'Kiln yard', 'priced', 2, 2, 1000, null)",
                    "insert into revision values ('kilnyard', 1, 0, '{\"a\":1}', 'started the job', 'Wen', 900)",
                    "insert into revision values ('kilnyard', 2, 1, '{\"a\":2}', 'a 2', 'Wen', 1000)",
                    "insert into move values ('kilnyard', 1, 1, 'new', 'Wen', 900)",
                    "insert into move values ('kilnyard', 2, 2, 'edit', 'Wen', 1000)",
                    "insert into person values ('1', 'wen', 'Wen', 'owner', 'hash', 800)"))
                one.sql().sql(line).update();
            Backup.write(one, backup, Clock.systemUTC());
        }
        String other = Trial.store();
        Backup.restore(backup, other, false);
        for (String at : List.of(place, other)) {
            try (Database now = Database.open(at)) {
                assertThat(Integer.parseInt(now.version())).isGreaterThan(1);
                StoredJob job = new JobStore(now, Clock.systemUTC())
                        .open(new JobId("kilnyard"))
                        .orElseThrow();
                assertThat(job.document()).isEqualTo("{\"a\":2}");
                assertThat(job.undo()).isTrue();
                assertThat(now.sql()
                                .sql("select closed_at is null from person")
                                .query(Boolean.class)
                                .single())
                        .isTrue();
            }
        }
    }
}
