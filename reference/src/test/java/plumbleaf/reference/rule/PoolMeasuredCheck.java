package plumbleaf.reference.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/**
 * A pool's barrier and its gate, measured as drawn: a yard that keeps every clause, then one thing changed at a time, and the clause it breaks. What nobody said is never a pass.
 *
 * Source: ISPSC 305 as summarised by county and city barrier pages (Rutherford County TN, Phoenix); CPSC barrier guideline.
 * Tolerance: the verdict of each clause exactly.
 */
class PoolMeasuredCheck {
    private static String yard() throws IOException {
        return PoolYard.text();
    }

    private static List<Finding> barrier(String text) {
        return PoolYard.findings(text).stream()
                .filter(finding -> finding.id().startsWith("barrier."))
                .toList();
    }

    @Test
    void aYardThatKeepsEveryClausePassesEach() throws IOException {
        List<Finding> findings = barrier(yard());
        assertThat(findings)
                .allSatisfy(finding -> assertThat(finding.severity()).isEqualTo(Severity.PASS));
        assertThat(findings)
                .extracting(Finding::id)
                .contains(
                        "barrier.height",
                        "barrier.ground",
                        "barrier.sphere",
                        "barrier.gap",
                        "barrier.rails",
                        "barrier.swing",
                        "barrier.closer",
                        "barrier.latch",
                        "barrier.release",
                        "barrier.lock",
                        "barrier.climb");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"swing\": \"out\"|\"swing\": \"in\"|barrier.swing|MUST_FIX",
                "\"swing\": \"out\",|``|barrier.swing|CANNOT_SAY",
                "HINGE-RISE-0.625|HINGE-ADJ-0.625|barrier.closer|MUST_FIX",
                "LATCH-GRAVITY|LATCH-THUMB|barrier.latch|MUST_FIX",
                "\"height\": \"54\\\"\"|\"height\": \"42\\\"\"|barrier.release|CANNOT_SAY",
                ", \"lockable\": \"yes\"|``|barrier.lock|CANNOT_SAY",
                "\"lockable\": \"yes\"|\"lockable\": \"no\"|barrier.lock|MUST_FIX",
                "\"lookedOutside\": true, |``|barrier.climb|CANNOT_SAY",
                "\"finishedFace\": \"out\"|\"finishedFace\": \"in\"|barrier.rails|MUST_FIX",
                "\"bottomGap\": \"2\\\"\", \"finishedFace\"|\"bottomGap\": \"2-1/2\\\"\", \"fit\": \"stepped\", \"finishedFace\"|barrier.ground|MUST_FIX",
                "\"infill\": \"5'\", \"bottomGap\"|\"infill\": \"45\\\"\", \"bottomGap\"|barrier.height|MUST_FIX",
                "\"runs\": [\"R1\"]|\"runs\": [\"R1\"], \"height\": \"6'\"|barrier.height|MUST_FIX",
                "{ \"kind\": \"wall\", \"of\": \"masonry\" } ]|\"free\" ]|barrier.closed|CANNOT_SAY",
                "\"out\": \"8'\", \"elevation\": \"0\\\"\"|\"out\": \"8'\", \"elevation\": \"15' 1\\\"\"|barrier.height|MUST_FIX",
            })
    void oneThingChangedBreaksItsClause(String from, String to, String id, Severity severity) throws IOException {
        String yard = yard();
        assertThat(yard).contains(from);
        assertThat(barrier(yard.replace(from, to)))
                .filteredOn(finding -> finding.id().equals(id))
                .extracting(Finding::severity)
                .contains(severity);
    }

    /**
     * What fills the bays, kind by kind, on the same yard: boards that close and boards that stand apart, by turns on both faces, lying ones that make a ladder when they dry,
     * a panel, open and slatted fabric, welded mesh. The widest opening is what the sphere is held to.
     */
    @ParameterizedTest
    @CsvSource({
        "wood-side-by-side, barrier.gap, PASS",
        "wood-shadowbox, barrier.gap, PASS",
        "wood-board-on-board, barrier.gap, PASS",
        "wood-spaced-picket, barrier.gap, MUST_FIX",
        "wood-horizontal, barrier.rails, MUST_FIX",
        "metal-panel, barrier.sphere, PASS",
        "chain-link, barrier.mesh, MUST_FIX",
        "chain-link, barrier.sphere, PASS",
        "chain-link-slats, barrier.mesh, PASS",
        "pipe-and-mesh, barrier.mesh, MUST_FIX",
        "pipe-and-mesh, barrier.sphere, PASS",
    })
    void everyKindOfFillingIsHeldToItsClause(String style, String id, Severity severity) throws IOException {
        String built = yard().replace("wood-side-by-side", style);
        assertThat(barrier(built))
                .filteredOn(finding -> finding.id().equals(id) && finding.part().startsWith("B"))
                .extracting(Finding::severity)
                .as(() -> barrier(built).stream()
                        .map(finding -> finding.severity() + " " + finding.message())
                        .toList()
                        .toString())
                .containsExactly(severity);
    }

    /** The climbable thing 20 in. off, and the low release on the pool's side with a shield round it. */
    @Test
    void whatIsSaidIsUsed() throws IOException {
        String climb = yard().replace(
                        "\"lookedOutside\": true",
                        "\"lookedOutside\": true, \"climbables\": [ { \"what\": \"heat pump\", \"run\": \"R1\", \"station\": \"9'\", \"away\": \"20\\\"\" } ]");
        assertThat(barrier(climb))
                .filteredOn(finding -> finding.id().equals("barrier.climb"))
                .extracting(Finding::severity)
                .containsExactly(Severity.MUST_FIX);
        String shielded = yard().replace("\"height\": \"54\\\"\"", "\"height\": \"42\\\"\"")
                .replace(
                        "\"lockable\": \"yes\"",
                        "\"lockable\": \"yes\", \"releaseOnPoolSide\": \"yes\", \"shielded\": true");
        assertThat(barrier(shielded))
                .filteredOn(finding -> finding.id().equals("barrier.release"))
                .extracting(Finding::severity)
                .containsExactly(Severity.PASS);
    }

    @Test
    void withoutGroundOutsideTheHeightThereIsNotKnown() throws IOException {
        String yard = yard();
        int from = yard.indexOf(",\n      { \"id\": \"S3\"");
        String blind = yard.substring(0, from) + yard.substring(yard.indexOf(" ] }", from));
        assertThat(blind).doesNotContain("S3", "S6");
        assertThat(barrier(blind))
                .filteredOn(finding -> finding.id().equals("barrier.height-side"))
                .extracting(Finding::severity)
                .containsOnly(Severity.CANNOT_SAY);
    }
}
