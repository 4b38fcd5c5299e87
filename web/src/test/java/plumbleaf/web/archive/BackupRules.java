package plumbleaf.web.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import plumbleaf.jobfile.json.Json;
import plumbleaf.web.Mutations;
import plumbleaf.web.Trial;
import plumbleaf.web.files.JobFiles;
import plumbleaf.web.link.CustomerLinks;
import plumbleaf.web.people.Audit;
import plumbleaf.web.people.People;
import plumbleaf.web.people.Role;
import plumbleaf.web.people.Secret;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobLine;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Maker;
import plumbleaf.web.store.StoredJob;
import plumbleaf.web.store.Tables;

/** What was saved comes back whole, on either kind of store and from one to the other; what is damaged is refused whole. */
abstract class BackupRules {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-04-19T10:15:30Z"), ZoneOffset.UTC);
    private static final long SEED = 20270419;
    private static final int MUTATIONS = Integer.getInteger("plumbleaf.mutations", 300);

    @TempDir
    Path folder = Path.of("");

    private Database database;
    private JobStore store;

    abstract String emptyStore();

    @BeforeEach
    void fillStore() {
        database = Database.open(emptyStore());
        store = new JobStore(database, CLOCK);
        Audit audit = new Audit(database, CLOCK);
        People people = new People(database, CLOCK, new BCryptPasswordEncoder(4), audit);
        people.makeFirstOwner("wen", "Wen Hallow", "four plain garden words");
        people.add("cora", "Cora Pike", Role.CREW, "Wen Hallow");
        StoredJob job = store.create("Kiln yard \u2713 \ud83c\udf3f", Trial.yard(), "Wen Hallow");
        store.edit(job.id(), 1, "Kiln yard", Trial.yard().replace("4'", "5'"), "gate \"wider\"\n", "Wen Hallow");
        store.undo(job.id(), 2, Maker.of("Cora Pike"));
        JobId gone = store.create("Old yard", "{}", "Wen Hallow").id();
        store.throwAway(gone, "Wen Hallow");
        new JobFiles(database, CLOCK).add(job.id(), "G1", "gate.png", Trial.pixel(), "Cora Pike");
        CustomerLinks links = new CustomerLinks(database, CLOCK, audit);
        Secret link = links.make(store.open(job.id()).orElseThrow(), List.of("proposal.pdf"), 14, "Wen Hallow");
        links.accept(link, "Odalys Venn", LocalDate.of(2027, 4, 19), "");
    }

    @AfterEach
    void closeStore() {
        database.close();
    }

    @Test
    void aBackupComesBackWholeInEitherKindOfStore() throws Exception {
        Path file = folder.resolve("yard.backup");
        Backup.Content content = Backup.write(database, file, CLOCK);
        assertThat(content.jobs()).isEqualTo(2);
        for (String place : List.of(Trial.store(), emptyStore())) {
            Backup.restore(file, place, false);
            try (Database back = Database.open(place)) {
                assertThat(sums(back)).isEqualTo(sums(database));
                assertThat(new JobStore(back, CLOCK).list()).isEqualTo(store.list());
                assertThat(new JobStore(back, CLOCK).trash()).hasSize(1);
            }
        }
    }

    @Test
    void aStoreThatHoldsSomethingIsReplacedOnlyWhenToldTo() throws Exception {
        Path file = folder.resolve("yard.backup");
        Backup.write(database, file, CLOCK);
        String place = emptyStore();
        try (Database other = Database.open(place)) {
            new JobStore(other, CLOCK).create("Other", "{}", "Odo");
            Map<String, Backup.Sum> before = sums(other);
            assertThatThrownBy(() -> Backup.restore(file, place, false))
                    .isInstanceOf(NotTaken.class)
                    .hasMessageContaining("add --over");
            assertThat(sums(other)).isEqualTo(before);
            Backup.restore(file, place, true);
            assertThat(sums(other)).isEqualTo(sums(database));
        }
    }

    @Test
    void aBackupTakenWhilePeopleSaveIsOneMoment() throws Exception {
        StoredJob job = store.list().stream()
                .map(JobLine::id)
                .map(id -> store.open(id).orElseThrow())
                .findFirst()
                .orElseThrow();
        AtomicBoolean stop = new AtomicBoolean();
        CountDownLatch begun = new CountDownLatch(1);
        CompletableFuture<Long> saving = CompletableFuture.supplyAsync(() -> {
            long version = job.version();
            while (!stop.get()) {
                store.edit(job.id(), version, "Yard", "{\"v\":" + version + "}", "edit", "Odo");
                version++;
                begun.countDown();
            }
            return version;
        });
        assertThat(begun.await(1, TimeUnit.MINUTES)).isTrue();
        Path file = folder.resolve("live.backup");
        for (int i = 0; i < 5; i++) Backup.write(database, file, CLOCK);
        stop.set(true);
        assertThat(saving.get()).isGreaterThan(job.version());
        String place = Trial.store();
        Backup.restore(file, place, false);
        try (Database back = Database.open(place)) {
            long version = back.sql()
                    .sql("select version from job where id = ?")
                    .param(job.id().text())
                    .query(Long.class)
                    .single();
            long moves = back.sql()
                    .sql("select count(*) from move where job = ?")
                    .param(job.id().text())
                    .query(Long.class)
                    .single();
            assertThat(moves).isEqualTo(version);
            assertThat(new JobStore(back, CLOCK).open(job.id()).orElseThrow().document())
                    .contains("\"v\":" + (version - 1));
        }
    }

    @Test
    void aDamagedBackupIsRefusedWhole() throws Exception {
        Path file = folder.resolve("yard.backup");
        Backup.write(database, file, CLOCK);
        byte[] good = Files.readAllBytes(file);
        List<Integer> packed = packed(file);
        String place = Trial.store();
        try (Database target = Database.open(place)) {
            Map<String, Backup.Sum> empty = sums(target);
            Random random = new Random(SEED);
            for (int i = 0; i < 30; i++) {
                assertRefused(Arrays.copyOf(good, random.nextInt(good.length)), place);
                assertRefused(flipped(good, packed.get(random.nextInt(packed.size()))), place);
            }
            assertThat(sums(target)).isEqualTo(empty);
        }
    }

    private void assertRefused(byte[] bad, String place) throws IOException {
        Path damaged = Files.write(folder.resolve("bad"), bad);
        assertThatThrownBy(() -> Backup.restore(damaged, place, false)).isInstanceOf(NotTaken.class);
    }

    @Test
    void damageThatIsNotRefusedMetNothingThatIsRead() throws Exception {
        Path file = folder.resolve("yard.backup");
        Backup.write(database, file, CLOCK);
        byte[] good = Files.readAllBytes(file);
        Random random = new Random(SEED);
        for (int i = 0; i < 30; i++) {
            Path damaged = Files.write(folder.resolve("bad"), flipped(good, random.nextInt(good.length)));
            String place = Trial.store();
            try {
                Backup.restore(damaged, place, false);
            } catch (NotTaken refused) {
                continue;
            }
            // A time in a header of the zip, say.
            try (Database back = Database.open(place)) {
                assertThat(sums(back)).as("damage " + i).isEqualTo(sums(database));
            }
        }
    }

    /** Where in the file the bytes of its entries are, packed; the rest are headers, of which not all is read. */
    private static List<Integer> packed(Path file) throws IOException {
        String all = Files.readString(file, StandardCharsets.ISO_8859_1);
        List<Integer> packed = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                int named = all.indexOf(entry.getName());
                // A local header gives the length of its extra field just before the name (PKWARE APPNOTE 6.3.10,
                // 4.3.7).
                int extra = all.charAt(named - 2) + 256 * all.charAt(named - 1);
                int begin = named + entry.getName().length() + extra;
                for (int i = 0; i < entry.getCompressedSize(); i++) packed.add(begin + i);
            }
        }
        return packed;
    }

    private static byte[] flipped(byte[] good, int at) {
        byte[] bad = good.clone();
        bad[at] ^= 0x41;
        return bad;
    }

    @Test
    void whatIsNoBackupIsRefused() throws Exception {
        String place = Trial.store();
        Path archive = folder.resolve("yard.zip");
        Archive.write(database, archive);
        assertThatThrownBy(() -> Backup.restore(archive, place, false))
                .isInstanceOf(NotTaken.class)
                .hasMessage("this is not a plumbleaf-backup file");
        assertThatThrownBy(() -> Backup.restore(Files.write(folder.resolve("none"), new byte[0]), place, false))
                .isInstanceOf(NotTaken.class);
        assertThatThrownBy(() -> Backup.restore(zip(Map.of("../../evil", "x")), place, false))
                .isInstanceOf(NotTaken.class);
        assertThatThrownBy(() ->
                        Backup.restore(resealed("../evil", "x".getBytes(StandardCharsets.UTF_8)), place, false))
                .isInstanceOf(NotTaken.class)
                .hasMessageContaining("name that is not allowed");
        assertThatThrownBy(() -> Backup.restore(resealed("tables/job.jsonl", new byte[50_000_000]), place, false))
                .isInstanceOf(NotTaken.class)
                .hasMessageContaining("more than it may");
        assertThatThrownBy(() -> Backup.restore(folder.resolve("missing"), place, false))
                .isInstanceOf(NotTaken.class);
    }

    @Test
    void anArchiveRoundTripsToTheByte() throws Exception {
        Path first = folder.resolve("first.zip");
        Path second = folder.resolve("second.zip");
        assertThat(Archive.write(database, first)).isEqualTo(new Archive.Content(2, 0));
        try (Database other = Database.open(emptyStore())) {
            assertThat(Archive.read(first, other)).isEqualTo(new Archive.Content(2, 0));
            Archive.write(other, second);
            assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
            // Where a job stands on the desk is worked out, not told.
            other.sql().sql("update job set stage = 'offer'").update();
            assertThat(Archive.read(first, other)).isEqualTo(new Archive.Content(0, 2));
            People people = new People(other, CLOCK, new BCryptPasswordEncoder(4), new Audit(other, CLOCK));
            assertThat(people.nobodyYet()).isTrue();
            JobStore there = new JobStore(other, CLOCK);
            StoredJob job = there.open(there.list().get(0).id()).orElseThrow();
            there.edit(job.id(), job.version(), "Changed", "{}", "a change", "Odo");
            assertThatThrownBy(() -> Archive.read(first, other))
                    .isInstanceOf(NotTaken.class)
                    .hasMessageContaining("is here already and differs");
        }
        assertThat(new String(Files.readAllBytes(first), StandardCharsets.ISO_8859_1))
                .doesNotContain("$2a$");
    }

    @Test
    void mutatedArchivesAreRefusedWholeOrTakenWhole() throws Exception {
        Path file = folder.resolve("yard.zip");
        Archive.write(database, file);
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (Unsealed whole = Unsealed.open(file, Archive.FORMAT)) {
            for (String name : whole.names()) parts.put(name, whole.bytes(name));
        }
        String schema = database.version();
        List<String> names = List.copyOf(parts.keySet());
        Random random = new Random(SEED);
        int refused = 0;
        try (Database target = Database.open(emptyStore())) {
            Map<String, Backup.Sum> empty = sums(target);
            for (int i = 0; i < MUTATIONS; i++) {
                String changed = names.get(random.nextInt(names.size()));
                Path mutated = folder.resolve("mutated.zip");
                try (SealedZip zip = new SealedZip(mutated)) {
                    for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                        boolean here = part.getKey().equals(changed);
                        zip.put(part.getKey(), here ? Mutations.of(part.getValue(), random) : part.getValue());
                    }
                    zip.seal(Json.object()
                            .put("format", Archive.FORMAT)
                            .put("version", 1)
                            .put("schema", schema));
                }
                try {
                    Archive.read(mutated, target);
                    clear(target);
                } catch (NotTaken expected) {
                    refused++;
                }
                assertThat(sums(target)).as("mutation " + i + " of " + changed).isEqualTo(empty);
            }
        }
        assertThat(refused).isGreaterThan(MUTATIONS / 4);
    }

    private static void clear(Database target) throws Exception {
        try (Connection connection = target.dataSource().getConnection()) {
            Rows rows = new Rows(connection, Tables.of(connection));
            List<String> tables = rows.tables().names();
            for (int i = tables.size() - 1; i >= 0; i--) rows.clear(tables.get(i));
        }
    }

    private Path zip(Map<String, String> entries) throws IOException {
        Path file = folder.resolve("made.zip");
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return file;
    }

    /** A file that is sealed as ours are, by someone who knows how. */
    private Path resealed(String name, byte[] bytes) throws IOException {
        Path file = folder.resolve("resealed.zip");
        try (SealedZip zip = new SealedZip(file)) {
            zip.put(name, bytes);
            zip.seal(
                    Json.object().put("format", Backup.FORMAT).put("version", 1).put("schema", "2"));
        }
        return file;
    }

    static Map<String, Backup.Sum> sums(Database of) throws Exception {
        Map<String, Backup.Sum> sums = new LinkedHashMap<>();
        try (Connection connection = of.snapshot()) {
            Rows rows = new Rows(connection, Tables.of(connection));
            for (String table : rows.tables().names().stream().sorted().toList())
                sums.put(table, Backup.Sum.of(rows, table));
        }
        return sums;
    }
}
