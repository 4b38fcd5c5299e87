package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** The example gate on everything that may hold it: how it sags there, and what is said of it. */
@Tag("slow")
class HoldsTest {
    private static final String SUPPORT = "\"hingePost\": { \"support\": \"new-footing\" }";
    private static final String SHEET = ", \"anchorPull\": \"2000 lb\", \"anchorPush\": \"2000 lb\"";

    private static Design on(String support) {
        return Yard.nursery()
                .with(SUPPORT, "\"hingePost\": { \"support\": " + support + " }")
                .design();
    }

    private static PostDesign hingePost(Design design) {
        return design.post(Yard.gate(design).hingePost()).orElseThrow();
    }

    private static double footingShare(Design design) {
        return hung(design).sag().byCause().footing().inches();
    }

    private static HungLeaf hung(Design design) {
        return Yard.gate(design).hung().get(0);
    }

    private static Severity said(Design design, String id) {
        List<Finding> findings = Yard.findings(design, id);
        assertThat(findings).as(id).isNotEmpty();
        return findings.get(0).severity();
    }

    @Test
    void aPlateOnASlabNeedsItsAnchorsSheetAndItsSlabMeasured() {
        Design unknown = on("{ \"kind\": \"slab-plate\", \"slabThickness\": \"8\\\"\", \"edgeDistance\": \"14\\\"\" }");
        assertThat(said(unknown, "anchor.sheet")).isEqualTo(Severity.CANNOT_SAY);
        assertThat(said(unknown, "slab.tipping")).isEqualTo(Severity.CANNOT_SAY);
        Design known = on("{ \"kind\": \"slab-plate\", \"slabThickness\": \"8\\\"\", \"edgeDistance\": \"14\\\"\","
                + " \"slabLength\": \"12'\", \"slabWidth\": \"6'\"" + SHEET + " }");
        assertThat(said(known, "anchor.sheet")).isEqualTo(Severity.PASS);
        assertThat(said(known, "slab.tipping")).isEqualTo(Severity.PASS);
        assertThat(said(known, "plate.thickness")).isEqualTo(Severity.PASS);
        assertThat(footingShare(known)).isPositive();
        assertThat(hingePost(known).footing()).isEmpty();
        assertThat(hingePost(known).concrete().volume().isZero()).isTrue();
    }

    @Test
    void aSocketByAnEdgeBreaksOut() {
        Design near = on(
                "{ \"kind\": \"core-socket\", \"depth\": \"8\\\"\", \"slabThickness\": \"12\\\"\", \"edgeDistance\": \"3\\\"\" }");
        Design far = on(
                "{ \"kind\": \"core-socket\", \"depth\": \"8\\\"\", \"slabThickness\": \"12\\\"\", \"edgeDistance\": \"12\\\"\" }");
        assertThat(said(near, "socket.side")).isEqualTo(Severity.MUST_FIX);
        assertThat(said(far, "socket.side")).isEqualTo(Severity.PASS);
        assertThat(hingePost(far).length().inches())
                .isCloseTo(hingePost(far).post().outOfGround().inches() + 8, within(1e-9));
    }

    /** Left unsaid, a slab is 4 in. thick and its socket as deep; half of one of 8 in. would hang in the ground. */
    @Test
    void aSocketDeeperThanItsConcreteDoesNotPass() {
        assertThat(said(on("{ \"kind\": \"core-socket\" }"), "socket.depth")).isEqualTo(Severity.PASS);
        assertThat(said(on("{ \"kind\": \"core-socket\", \"depth\": \"8\\\"\" }"), "socket.depth"))
                .isEqualTo(Severity.MUST_FIX);
        assertThat(said(on("{ \"kind\": \"core-socket\", \"slabThickness\": \"8\\\"\" }"), "socket.depth"))
                .isEqualTo(Severity.PASS);
    }

    @Test
    void onAWallThereIsNoPostToBend() {
        Design design = on("{ \"kind\": \"wall-anchor\", \"of\": \"masonry\"" + SHEET + " }");
        assertThat(hung(design).sag().byCause().post().inches()).isZero();
        assertThat(footingShare(design)).isZero();
        assertThat(hingePost(design).length().isZero()).isTrue();
        assertThat(said(design, "anchor.sheet")).isEqualTo(Severity.PASS);
        Design unknown = on("{ \"kind\": \"wall-anchor\", \"of\": \"masonry\" }");
        assertThat(said(unknown, "anchor.sheet")).isEqualTo(Severity.CANNOT_SAY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"brick-veneer", "siding"})
    void veneerAndSidingRefuseAHinge(String of) {
        Design design = on("{ \"kind\": \"wall-anchor\", \"of\": \"" + of + "\"" + SHEET + " }");
        assertThat(said(design, "wall.refuses")).isEqualTo(Severity.MUST_FIX);
    }

    /** Blocking gives beside a solid wall, so the hinges give more. */
    @Test
    void studsGiveMoreThanMasonry() {
        Design studs = on(
                "{ \"kind\": \"wall-anchor\", \"of\": \"stud\", \"anchorDiameter\": \"3/8\\\"\", \"anchorDepth\": \"3\\\"\" }");
        Design solid = on("{ \"kind\": \"wall-anchor\", \"of\": \"masonry\" }");
        assertThat(hung(studs).sag().byCause().hingeFlex())
                .isGreaterThan(hung(solid).sag().byCause().hingeFlex());
        assertThat(said(studs, "wall.lag")).isEqualTo(Severity.PASS);
        assertThat(said(studs, "wall.blocking")).isEqualTo(Severity.CAUTION);
    }

    @Test
    void aPullTestTakesThePlaceOfAGuess() {
        String test =
                "\"tests\": [{ \"force\": \"75 lb\", \"at\": \"54\\\"\", \"low\": \"3\\\"\", \"movedLow\": \"1/8\\\"\","
                        + " \"high\": \"60\\\"\", \"movedHigh\": \"9/16\\\"\", \"leftOver\": \"LEFT\" }]";
        Design pulled = on("{ \"kind\": \"existing\", \"feel\": \"firm\", " + test.replace("LEFT", "1/64\\\"") + " }");
        assertThat(said(pulled, "existing.loose")).isEqualTo(Severity.PASS);
        assertThat(hingePost(pulled).held().facts()).anyMatch(fact -> fact.key().equals("fittedNhLbPerIn3"));
        assertThat(Yard.findings(pulled, "existing.guess")).isEmpty();
        Design loose = on("{ \"kind\": \"existing\", \"feel\": \"firm\", " + test.replace("LEFT", "3/32\\\"") + " }");
        assertThat(said(loose, "existing.loose")).isEqualTo(Severity.MUST_FIX);
        Design guessed = on("{ \"kind\": \"existing\", \"feel\": \"firm\" }");
        assertThat(said(guessed, "existing.guess")).isEqualTo(Severity.CAUTION);
        assertThat(said(guessed, "existing.unknown")).isEqualTo(Severity.CANNOT_SAY);
        Design moves = on("{ \"kind\": \"existing\", \"feel\": \"moves\" }");
        assertThat(said(moves, "existing.moves")).isEqualTo(Severity.MUST_FIX);
        assertThat(footingShare(moves)).isGreaterThan(footingShare(guessed));
    }

    /** A driven post is held by its own width, and takes no concrete. */
    @Test
    void aDrivenPostTakesNoConcrete() {
        Design design = on("{ \"kind\": \"driven\", \"depth\": \"5'\" }");
        PostDesign post = hingePost(design);
        assertThat(post.concrete().volume().isZero()).isTrue();
        assertThat(post.footing().orElseThrow().hole().diameter())
                .isEqualTo(post.section().depth());
        assertThat(post.hole().isZero()).isTrue();
        assertThat(post.depth().inches()).isEqualTo(60);
        Design shallow = on("{ \"kind\": \"driven\", \"depth\": \"3'\" }");
        assertThat(footingShare(shallow)).isGreaterThan(footingShare(design));
    }

    /** A slab at grade and a bell: less depth needed, more concrete. */
    @Test
    void aSlabAtGradeHoldsAndABellTakesConcrete() {
        PostDesign plain = hingePost(on("\"new-footing\""));
        PostDesign held = hingePost(on("{ \"kind\": \"new-footing\", \"slabAtGrade\": true }"));
        PostDesign belled = hingePost(
                on(
                        "{ \"kind\": \"new-footing\", \"bell\": { \"diameter\": \"20\\\"\", \"height\": \"8\\\"\" }, \"sleeve\": true }"));
        assertThat(held.utilisation()).isLessThan(plain.utilisation());
        assertThat(belled.concrete().volume()).isGreaterThan(plain.concrete().volume());
    }

    /** The first post on the site, pulled, takes the place of the guess about the soil, and narrows the band. */
    @Test
    void aPullOnTheFirstPostTellsOfAllTheOthers() {
        String soil = "\"looseTop\": \"3\\\"\" }";
        Design guessed = Yard.nursery().design();
        Design pulled = Yard.nursery()
                .with(
                        soil,
                        "\"looseTop\": \"3\\\"\", \"pulls\": [{ \"force\": \"75 lb\", \"at\": \"54\\\"\", \"low\": \"3\\\"\", \"movedLow\": \"1/8\\\"\","
                                + " \"high\": \"60\\\"\", \"movedHigh\": \"9/16\\\"\", \"post\": \"F1083-REG-2.5\", \"depth\": \"36\\\"\" }] }")
                .design();
        assertThat(said(pulled, "soil.pulled")).isEqualTo(Severity.PASS);
        assertThat(hung(pulled).sag().total()).isNotEqualTo(hung(guessed).sag().total());
        double before = hung(guessed).sag().soil().soft().inches()
                / hung(guessed).sag().soil().stiff().inches();
        double after = hung(pulled).sag().soil().soft().inches()
                / hung(pulled).sag().soil().stiff().inches();
        assertThat(after).isLessThan(before);
    }

    /** Beside a retaining wall the ground within its height holds nothing: like a loose top of that depth. */
    @Test
    void besideAWallTheGroundHoldsNothing() {
        String soil = "\"looseTop\": \"3\\\"\"";
        Design wall =
                Yard.nursery().with(soil, soil + ", \"besideDrop\": \"18\\\"\"").design();
        Design loose = Yard.nursery().with(soil, "\"looseTop\": \"18\\\"\"").design();
        assertThat(hung(wall).sag().total()).isEqualTo(hung(loose).sag().total());
    }

    /** Typed numbers take the place of the table. */
    @Test
    void aSoilsReportCounts() {
        String soil = "\"looseTop\": \"3\\\"\"";
        PostDesign table = hingePost(Yard.nursery().design());
        PostDesign report = hingePost(Yard.nursery()
                .with(soil, soil + ", \"lateralPerFoot\": \"300 psf\"")
                .design());
        assertThat(report.utilisation()).isLessThan(table.utilisation());
    }

    /** Rock at 20 in. ends a hole of 36: a core into it is sized. */
    @Test
    void rockEndsAHoleAndACoreTakesItsPlace() {
        String soil = "\"looseTop\": \"3\\\"\"";
        Design rock =
                Yard.nursery().with(soil, soil + ", \"rockAt\": \"20\\\"\"").design();
        assertThat(said(rock, "footing.rock")).isEqualTo(Severity.CAUTION);
        assertThat(Yard.findings(rock, "footing.rock").get(0).message()).contains("into the rock");
        Design deep = Yard.nursery().with(soil, soil + ", \"rockAt\": \"6'\"").design();
        assertThat(Yard.findings(deep, "footing.rock")).isEmpty();
    }

    /** A depth that is chosen is taken from all that governs it, frost too, though on the customary basis frost alone is a caution. */
    @Test
    void aChosenDepthGoesBelowFrost() {
        Design chosen = Yard.nursery()
                .with("\"frost\": { \"depth\": \"30\\\"\"", "\"frost\": { \"depth\": \"44\\\"\"")
                .with(
                        "\"hingePost\": \"F1083-REG-2.5\", \"latchPost\": \"F1083-REG-2.5\",",
                        "\"hingePost\": \"F1083-REG-2.5\", \"latchPost\": \"F1083-REG-2.5\"")
                .with("\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"\n    }\n", "}\n")
                .design();
        assertThat(hingePost(chosen).depth().inches()).isGreaterThanOrEqualTo(44);
        assertThat(hingePost(chosen).depth().inches() % 6).isZero();
    }
}
