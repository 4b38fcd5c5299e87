package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.RunSides;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Length;

/** A septic tank keeps posts of one side of a yard far apart: there they bend too much, on the other side they do not. */
class SideRemediesTest {
    private static final String NO_DIG =
            ", \"noDig\": [ { \"from\": \"20'\", \"to\": \"26' 6\\\"\", \"why\": \"septic\" } ]";

    private static Design yard(String run, String build) {
        return Yard.ofBoards(
                        "engineered",
                        "\"speed\": \"115 mph\", \"exposure\": \"C\"",
                        new int[][] {{0, 0}, {96, 0}},
                        "\"infill\": \"5'\", \"legs\": [ { \"length\": \"48'\" }, { \"length\": \"48'\", \"turn\": \"90 deg left\" } ]"
                                + run,
                        build)
                .design();
    }

    private static Finding failing(Design design, String id) {
        return Yard.findings(design, id).stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .findFirst()
                .orElseThrow();
    }

    private static Remedy remedy(Finding finding, String id) {
        return finding.remedies().stream()
                .filter(remedy -> remedy.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<RunSide> sides(Remedy remedy) {
        String edit = remedy.edit().orElseThrow();
        return RunSides.of(edit.substring("runs[R1].sides=".length())).orElseThrow();
    }

    private static String typed(List<RunSide> sides) {
        StringBuilder typed = new StringBuilder(", \"sides\": [ ");
        for (RunSide side : sides) {
            if (!side.equals(sides.get(0))) typed.append(", ");
            typed.append("{ \"from\": \"" + side.from().inches() + "\\\"\", \"to\": \""
                    + side.to().inches() + "\\\"\"");
            side.post().value().ifPresent(post -> typed.append(", \"post\": \"" + post + "\""));
            side.depth().value().ifPresent(depth -> typed.append(", \"depth\": \"" + depth.inches() + "\\\"\""));
            typed.append(" }");
        }
        return typed + " ]";
    }

    @Test
    void biggerPostsAreOfferedThereAndPricedAgainstBiggerOnesAllAlong() {
        Design now = yard(NO_DIG, "");
        Finding bends = failing(now, "post.wind");
        Remedy there = remedy(bends, "bigger-post-there");
        Remedy everywhere = remedy(bends, "bigger-post");
        assertThat(there.words()).startsWith("set P").contains("the rest as it is: then ");
        assertThat(there.ratio().orElseThrow()).isLessThanOrEqualTo(1);
        assertThat(sides(there))
                .allSatisfy(side -> assertThat(side.to().inFeet()).isLessThan(48));
        assertThat(there.priceChange()).isPresent();
        assertThat(everywhere.priceChange()).isPresent().isNotEqualTo(there.priceChange());
    }

    /** Typed into the job by hand the remedy does what it said, to the cent. */
    @Test
    void madeItHoldsAndCostsWhatItSaid() {
        Design now = yard(NO_DIG, "");
        Remedy there = remedy(failing(now, "post.wind"), "bigger-post-there");
        Design made = yard(NO_DIG + typed(sides(there)), "");
        assertThat(Yard.findings(made, "post.wind"))
                .isNotEmpty()
                .allMatch(finding -> finding.severity() == Severity.PASS);
        assertThat(made.quote().price().total().minus(now.quote().price().total()))
                .isEqualTo(there.priceChange().orElseThrow());
        Remedy everywhere = remedy(failing(now, "post.wind"), "bigger-post");
        String section = everywhere.edit().orElseThrow().substring("builds.R1.post=".length());
        Design all = yard(NO_DIG, "\"post\": \"" + section + "\"");
        assertThat(all.quote().price().total().minus(now.quote().price().total()))
                .isEqualTo(everywhere.priceChange().orElseThrow());
    }

    @Test
    void deeperHolesAreOfferedForADepthThatWasPinned() {
        Finding shallow = failing(yard("", "\"depth\": \"36\\\"\""), "footing.depth");
        Remedy everywhere = remedy(shallow, "deeper-hole");
        assertThat(everywhere.edit().orElseThrow()).startsWith("builds.R1.depth=");
        assertThat(everywhere.priceChange().orElseThrow()).isGreaterThan(Money.ZERO);
    }

    /** Each post's share of the side that fails is the same; the side's own depth is given up, the rest keeps its own. */
    @Test
    void aSideThatWasPinnedTooShallowAloneIsDugDeeperAlone() {
        String pinned = ", \"sides\": [ { \"from\": \"0'\", \"to\": \"47'\", \"depth\": \"30\\\"\" } ]";
        Remedy there = remedy(failing(yard(pinned, ""), "footing.depth"), "deeper-hole-there");
        Optional<RunSide> deep = sides(there).stream()
                .filter(side -> side.depth().or(Length.ZERO).inches() > 30)
                .findFirst();
        assertThat(deep).isPresent();
        assertThat(Yard.findings(yard(typed(sides(there)), ""), "footing.depth"))
                .allMatch(finding -> finding.severity() == Severity.PASS);
    }
}
