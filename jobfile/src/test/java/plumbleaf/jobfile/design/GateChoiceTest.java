package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Choice;
import plumbleaf.engine.choose.Finer;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.HangingAsked;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** The cheapest build is the cheapest: what the search refuses fails when it is built and worked out in full, what it takes passes. */
@Tag("slow")
class GateChoiceTest {
    private static final Yard YARD = Yard.nursery();

    private static Job open() {
        Job job = YARD.job();
        return job.withBuilds(new Builds(job.builds().runs(), List.of()));
    }

    private static GateChoice choose(Job job, HangingAsked asked) {
        return Designs.choose(
                job,
                StandardCatalogue.load(),
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                "G1",
                asked);
    }

    @Test
    void everyCheaperBuildFailsAndTheChosenOnePassesWhenBuilt() {
        Choice<PickedGate> choice = choose(open(), HangingAsked.NOTHING).choice();
        assertThat(choice.all()).isGreaterThan(5_000);
        assertThat(choice.next()).hasSize(3);
        PickedGate best = choice.best().get(0).build();
        assertThat(wrong(pinned(best.id()))).isEmpty();
        Map<String, List<Rejected>> byReason = new LinkedHashMap<>();
        for (Rejected each : choice.rejected())
            byReason.computeIfAbsent(each.because().id(), key -> new ArrayList<>())
                    .add(each);
        assertThat(byReason).isNotEmpty();
        for (List<Rejected> alike : byReason.values())
            for (Rejected each : List.of(alike.get(0), alike.get(alike.size() / 2), alike.get(alike.size() - 1)))
                assertThat(wrong(pinned(each.id())))
                        .as(each.id() + ": " + each.because().message())
                        .isNotEmpty();
    }

    @Test
    void theSearchTriesEveryBraceAndJointAndGoesByPrice() {
        Choice<PickedGate> choice = choose(open(), HangingAsked.NOTHING).choice();
        List<String> marks = choice.rejected().stream().map(each -> each.id()).toList();
        assertThat(marks).anyMatch(id -> id.contains(" butted ")).anyMatch(id -> id.contains(" mitered "));
        for (int i = 1; i < choice.rejected().size(); i++)
            assertThat(choice.rejected().get(i).price())
                    .isGreaterThanOrEqualTo(choice.rejected().get(i - 1).price());
    }

    @Test
    void lessDropHasItsPrice() {
        GateChoice choice = choose(open(), HangingAsked.NOTHING);
        Candidate<PickedGate> best = choice.choice().best().get(0);
        double step = GateChoice.STEP.inches();
        double last = Double.POSITIVE_INFINITY;
        for (Finer<PickedGate> each : choice.finer()) {
            assertThat(each.measure()).isLessThanOrEqualTo(each.limit());
            assertThat(each.limit()).isLessThan(last);
            if (last < Double.POSITIVE_INFINITY) assertThat(last - each.limit()).isBetween(step - 1e-9, step + 1e-9);
            assertThat(each.candidate().price()).isGreaterThanOrEqualTo(best.price());
            assertThat(wrong(pinned(each.candidate().id()))).isEmpty();
            last = each.limit();
        }
    }

    @Test
    void hingesAndSidesAreSearchedWhereAsked() {
        GateChoice plain = choose(open(), HangingAsked.NOTHING);
        GateChoice wide = choose(open(), new HangingAsked(true, true));
        long hinges = StandardCatalogue.load().hinges().stream()
                .filter(hinge -> hinge.fixing().toPost().match(weld -> true, bolts -> true, intoWoodAlone -> false))
                .count();
        assertThat(wide.choice().all()).isEqualTo((int) (plain.choice().all() * hinges * 2));
        assertThat(wide.choice().best()).hasSize(1);
        assertThat(wide.choice().best().get(0).build().hanging()).isPresent();
    }

    private static Design pinned(String id) {
        String[] words = id.split(" ", -1);
        int n = words.length;
        String braces = words[1];
        String said = switch (braces) {
            case "0", "1", "2" -> braces;
            default -> "\"" + braces + "\"";
        };
        String build = "{\"frame\":\"" + words[0] + "\",\"braces\":" + said + ",\"joint\":\"" + words[n - 6]
                + "\",\"hingePost\":\"" + words[n - 5] + "\",\"latchPost\":\"" + words[n - 4] + "\",\"hole\":\""
                + words[n - 3].replace("\"", "\\\"") + "\",\"depth\":\"" + words[n - 1].replace("\"", "\\\"") + "\"}";
        String text = "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"draft\": true, \"builds\": { \"G1\": " + build
                + " }, \"runs\": [ { \"id\": \"R1\", \"style\": \"none\", \"legs\": [ { \"length\": \"30'\" } ] } ],"
                + " \"gates\": [ { \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"9'\","
                + " \"opening\": \"4'\" } ] }";
        Job carrier = JobFile.read("build", text, StandardCatalogue.load()).match(good -> good.is(), bad -> {
            throw new IllegalArgumentException(bad.all().toString());
        });
        Job job = open();
        return YARD.designOf(
                job.withBuilds(new Builds(job.builds().runs(), carrier.builds().gates())));
    }

    /** What keeps a gate from standing: a finding of its own parts, or a hole less deep than it must be. */
    private static List<String> wrong(Design design) {
        List<String> wrong = new ArrayList<>();
        for (Finding finding : design.findings()) {
            boolean own = List.of("sag.", "hinge.", "leaf.", "post.", "footing.").stream()
                    .anyMatch(finding.id()::startsWith);
            boolean stands = finding.severity() == Severity.PASS || finding.severity() == Severity.CAUTION;
            if (own && !stands) wrong.add(finding.message());
        }
        for (PostDesign post : design.posts())
            post.footing().ifPresent(footing -> {
                boolean atGate = !post.post().gate().isEmpty();
                if (atGate && footing.depthNeeded().compareTo(footing.hole().depth()) > 0)
                    wrong.add(post.footingId() + " too shallow");
            });
        return wrong;
    }
}
