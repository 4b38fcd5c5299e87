package plumbleaf.web.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.survey.PointFile;
import plumbleaf.web.Mutations;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.files.FileKind;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.room.Veil;

/**
 * Job files, price books, survey point files and uploads, spoilt by a seeded die: each is read or refused with its errors named, and none crashes or hangs a
 * reader. {@code -Dplumbleaf.mutations=1000000} is the long form.
 */
@Tag("slow")
class MutatedFilesTest {
    private static final int MUTATIONS = Integer.getInteger("plumbleaf.mutations", 1500);
    private static final long SEED = 4711;

    /** Of this thread's own work: what else the machine does meanwhile does not count. */
    private static final Duration LONGEST = Duration.ofSeconds(5);

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    @Test
    void jobFilesAreReadOrRefused() throws IOException {
        Catalogue catalogue = StandardCatalogue.load();
        List<byte[]> good = List.of(example("kiln-yard"), example("nursery-lane"));
        Random random = new Random(SEED);
        int refused = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            byte[] bad = Mutations.of(good.get(i % good.size()), random);
            long start = CLOCK.getCurrentThreadCpuTime();
            boolean isBad =
                    !JobFile.read("mutated.json", bad, catalogue).errors().isEmpty();
            String text = new String(bad, StandardCharsets.UTF_8);
            Veil.json(text);
            if (!isBad) Rooms.titleOf(text);
            assertThat(Duration.ofNanos(CLOCK.getCurrentThreadCpuTime() - start))
                    .as("mutation " + i)
                    .isLessThan(LONGEST);
            if (isBad) refused++;
        }
        assertThat(refused).isBetween(MUTATIONS / 4, MUTATIONS);
    }

    @Test
    void priceBooksAreReadOrRefused() {
        List<PriceBooks.Source> good = PriceBooks.tables("example-2027");
        Random random = new Random(SEED);
        int refused = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            List<PriceBooks.Source> tables = new ArrayList<>(good);
            int which = random.nextInt(tables.size());
            byte[] bad = Mutations.of(good.get(which).text().getBytes(StandardCharsets.UTF_8), random);
            tables.set(which, new PriceBooks.Source("mutated.csv", new String(bad, StandardCharsets.UTF_8)));
            if (!PriceBooks.read("mutated", tables.get(0), tables.get(1), tables.get(2), tables.get(3))
                    .errors()
                    .isEmpty()) refused++;
        }
        assertThat(refused).isBetween(MUTATIONS / 8, MUTATIONS);
    }

    @Test
    void pointFilesAreReadOrRefused() {
        List<String> good = List.of(
                "P,N,E,Z,D\n1,500123.25,1200456.5,812.34,corner\n2,500131.5,1200470.1,811.9,fence line\n",
                "901 10.5 20.25 1.5 TOP\n902 11.5 30 -0.5 GROUND\n\n# a remark\n903 12 40 .25\n",
                "name;east (m);north (m);elevation (m);note\nS1;1.5;2.25;0.1;\nS2;7,5;2;0.2;post\n",
                "1\t0\t0\t0\tbench mark\r\n2\t12.5\t-3\t0.75\tcurb\r\n",
                "1,0,0,0\n2,+4.25,8,-1.125\n3,1e3,8,2\n");
        Random random = new Random(SEED);
        int refused = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            byte[] bad = Mutations.of(good.get(i % good.size()).getBytes(StandardCharsets.UTF_8), random);
            PointFile read =
                    PointFile.read("mutated.csv", new String(bad, StandardCharsets.UTF_8), PointFile.Said.NOTHING);
            // A file is points or errors, never neither in silence.
            assertThat(read.shots().isEmpty() && read.errors().isEmpty())
                    .as("mutation " + i)
                    .isFalse();
            for (InputError error : read.errors())
                assertThat(error.text()).startsWith("mutated.csv").contains(";");
            if (!read.errors().isEmpty()) refused++;
        }
        assertThat(refused).isBetween(MUTATIONS / 8, MUTATIONS);
    }

    @Test
    void uploadsAreKnownByTheirBytesOrRefused() throws IOException {
        List<byte[]> good = List.of(
                Trial.pixel(),
                "%PDF-1.7\n%\u00e2".getBytes(StandardCharsets.ISO_8859_1),
                "station,elevation\n0,0\n".getBytes(StandardCharsets.UTF_8),
                example("kiln-yard"));
        Random random = new Random(SEED);
        for (int i = 0; i < MUTATIONS; i++) FileKind.of(Mutations.of(good.get(i % good.size()), random));
        assertThat(FileKind.of("<svg onload=x>".getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(FileKind.of("\ufeff  <html>".getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(FileKind.of(new byte[] {'M', 'Z', 0, 1})).isEmpty();
        assertThat(FileKind.of(new byte[0])).isEmpty();
    }

    private static byte[] example(String name) throws IOException {
        try (InputStream file = Objects.requireNonNull(
                Workspace.class.getResourceAsStream("/plumbleaf/web/examples/" + name + ".json"))) {
            return file.readAllBytes();
        }
    }
}
