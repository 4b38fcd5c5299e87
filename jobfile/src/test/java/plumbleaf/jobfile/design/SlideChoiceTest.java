package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.HangingAsked;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** The cheapest build of a slide gate: what the search refuses fails when it is built, what it takes passes. Its frame is pinned, its posts and holes are open. */
class SlideChoiceTest {
    private static final Yard PINNED =
            Yard.fallow().with("\"hole\": \"18\\\"\", \"depth\": \"60\\\"\"", "\"hole\": \"18\\\"\"");

    private static GateChoice choose(Yard yard, HangingAsked asked) {
        Job job = yard.job();
        return Designs.choose(
                job,
                StandardCatalogue.load(),
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                "G1",
                asked);
    }

    @Test
    void whatIsChosenStandsAndWhatCostsLessDoesNot() {
        GateChoice choice = choose(PINNED, HangingAsked.NOTHING);
        assertThat(choice.choice().all()).isEqualTo(8);
        PickedGate best = choice.choice().best().get(0).build();
        assertThat(wrong(dug(best.hole().depth().inches()))).isEmpty();
        assertThat(choice.choice().rejected()).isNotEmpty();
        for (Rejected each : choice.choice().rejected()) {
            assertThat(each.price())
                    .isLessThanOrEqualTo(choice.choice().best().get(0).price());
            String depth = each.id().substring(each.id().lastIndexOf(' ') + 1).replace("\"", "");
            assertThat(wrong(dug(Double.parseDouble(depth)))).as(each.id()).isNotEmpty();
        }
    }

    @Test
    void rollersAndTailsAreSearchedWhereAsked() {
        Yard deep = PINNED.with("\"hole\": \"18\\\"\"", "\"hole\": \"18\\\"\", \"depth\": \"66\\\"\"");
        GateChoice choice = choose(deep, new HangingAsked(true, false, true));
        int rollers = StandardCatalogue.load().rollers().size();
        // One build on each set of rollers and each of four tails: 9 ft as it says, 6-1/2, 8 and 10 ft.
        assertThat(choice.choice().all()).isLessThanOrEqualTo(rollers * 4).isGreaterThanOrEqualTo(4);
        assertThat(choice.choice().best()).singleElement().satisfies(best -> {
            assertThat(best.build().hanging().orElseThrow().tail()).isPresent();
            assertThat(best.id()).contains("ROLLER-").contains(" tail ");
        });
    }

    private static Design dug(double depthIn) {
        return PINNED.with("\"hole\": \"18\\\"\"", "\"hole\": \"18\\\"\", \"depth\": \"" + depthIn + "\\\"\"")
                .design();
    }

    /** A must-fix of the gate or its posts, a nose that misses its receiver in a gust, or a hole less deep than asked. */
    private static List<String> wrong(Design design) {
        List<String> wrong = new ArrayList<>();
        for (Finding finding : design.findings()) {
            boolean own =
                    List.of("slide.", "leaf.", "post.", "footing.").stream().anyMatch(finding.id()::startsWith);
            boolean stands = finding.severity() == Severity.PASS || finding.severity() == Severity.CAUTION;
            if (own && !stands) wrong.add(finding.message());
        }
        design.posts().stream()
                .filter(post -> !post.post().gate().isEmpty())
                .forEach(post -> post.footing().ifPresent(footing -> {
                    if (footing.depthNeeded().compareTo(footing.hole().depth()) > 0)
                        wrong.add(post.footingId() + " too shallow");
                }));
        return wrong;
    }
}
