package plumbleaf.web.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import plumbleaf.web.Trial;
import plumbleaf.web.files.JobFiles;
import plumbleaf.web.link.CustomerLinks;
import plumbleaf.web.people.Audit;
import plumbleaf.web.people.People;
import plumbleaf.web.store.CannotOpen;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Maker;
import plumbleaf.web.store.StoredJob;
import plumbleaf.web.store.Tables;

/**
 * A store of every version there ever was, with a row in each of its tables, is brought up to date where it stands and from a backup made
 * with it, into either kind of store: nothing is lost and the present program works on it.
 */
abstract class UpgradeRules {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-04-19T10:15:30Z"), ZoneOffset.UTC);
    private static final BCryptPasswordEncoder PASSWORDS = new BCryptPasswordEncoder(4);

    @TempDir
    Path folder = Path.of("");

    abstract String emptyStore();

    static Stream<Integer> versions() throws IOException {
        return OldStore.versions().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("versions")
    void aStoreOfAnyVersionIsBroughtUpToDateWithAllItHolds(int version) throws Exception {
        String place = emptyStore();
        Path backup = folder.resolve("old.backup");
        Tables then;
        Map<String, List<String>> content;
        try (Database old =
                OldStore.make(place, version, Objects.requireNonNull(PASSWORDS.encode("four plain garden words")))) {
            assertThat(old.version()).isEqualTo(String.valueOf(version));
            then = old.tables();
            content = OldStore.content(old, then);
            Backup.write(old, backup, CLOCK);
        }
        assertThat(content.values()).as("a table without a row proves nothing").noneMatch(List::isEmpty);

        String asFile = Trial.store();
        String asItWas = emptyStore();
        Backup.restore(backup, asFile, false);
        Backup.restore(backup, asItWas, false);
        for (String at : List.of(place, asFile, asItWas))
            try (Database now = Database.open(at)) {
                assertThat(Integer.parseInt(now.version()))
                        .isEqualTo(OldStore.versions().lastKey());
                assertThat(OldStore.content(now, then)).isEqualTo(content);
                works(now, version);
            }
    }

    /** What a person does first after bringing the program up to date. */
    private static void works(Database now, int version) {
        Audit audit = new Audit(now, CLOCK);
        JobStore store = new JobStore(now, CLOCK);
        JobId id = new JobId("kilnyardkilnyard");
        StoredJob job = store.open(id).orElseThrow();
        assertThat(job.document()).isEqualTo("{\"a\":1}");
        assertThat(job.redo()).isTrue();
        assertThat(store.history(id)).hasSize(3);
        assertThat(store.trash()).hasSize(1);
        People people = new People(now, CLOCK, PASSWORDS, audit);
        assertThat(people.nobodyYet()).isFalse();
        assertThat(PASSWORDS.matches(
                        "four plain garden words",
                        people.loadUserByUsername("wen").getPassword()))
                .isTrue();
        JobFiles files = new JobFiles(now, CLOCK);
        if (version >= 2) {
            assertThat(files.open(id, "file1file1file1f").orElseThrow().bytes())
                    .containsExactly('h', 'e', 'l', 'l', 'o');
            assertThat(new CustomerLinks(now, CLOCK, audit).of(id).get(0).acceptedBy())
                    .isEqualTo("Odalys Venn");
        }

        store.redo(id, job.version(), Maker.of("Wen Hallow"));
        assertThat(store.open(id).orElseThrow().document()).isEqualTo("{\"a\":2}");
        store.edit(id, job.version() + 1, "Kiln yard", "{\"a\":3}", "a 2 \u2192 3", "Wen Hallow");
        assertThat(store.open(id).orElseThrow().document()).isEqualTo("{\"a\":3}");
        files.add(id, "job", "pixel.png", Trial.pixel(), "Wen Hallow");
        assertThat(store.takeBack(new JobId("oldyardoldyardol"), "Wen Hallow")).isTrue();
        assertThat(store.throwAway(id, "Wen Hallow")).isTrue();
        assertThat(store.removeForGood(id)).isTrue();
    }

    /** Flyway would refuse a store whose migration reads otherwise today; this says so before anybody has such a store. */
    @Test
    void aMigrationThatWasReleasedIsNeverChanged() throws IOException {
        for (Map.Entry<Integer, String> version : OldStore.versions().entrySet())
            assertThat(OldStore.rows(version.getKey()).lines().findFirst().orElse(""))
                    .as("migration " + version.getKey())
                    .endsWith(version.getValue());
    }

    @Test
    void aStoreOfANewerProgramIsLeftAlone() throws Exception {
        String place = emptyStore();
        try (Database store = Database.open(place)) {
            store.sql()
                    .sql("insert into flyway_schema_history (installed_rank, version, description, type, script,"
                            + " checksum, installed_by, execution_time, success)"
                            + " values (9999, '9999', 'tomorrow', 'SQL', 'V9999__tomorrow.sql', 1, 'x', 1, true)")
                    .update();
        }
        assertThatThrownBy(() -> Database.open(place))
                .isInstanceOf(CannotOpen.class)
                .hasMessage("a newer Plumbleaf keeps its jobs there (version 9999 of the store, this program knows "
                        + OldStore.versions().lastKey()
                        + "); bring this program up to date");
    }
}
