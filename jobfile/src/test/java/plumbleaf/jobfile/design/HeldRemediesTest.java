package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;

/** Sixteen feet of low fence across a slab: posts cored too deep for it, or too near its edge, and old concrete where an end post is to stand. */
class HeldRemediesTest {
    private static Design yard(String infill, String more, String existing) {
        return Yard.ofBoards(
                        "customary",
                        "\"speed\": \"100 mph\", \"exposure\": \"B\"",
                        new int[][] {{0, 0}, {32, 0}},
                        "\"infill\": \"" + infill + "\", \"legs\": [ { \"length\": \"32'\" } ]" + more,
                        "")
                .with("\"builds\"", existing + "\"builds\"")
                .design();
    }

    private static String cored(String socket) {
        return ", \"otherPosts\": [ { \"from\": \"7'\", \"to\": \"17'\", \"support\": " + socket + " } ]";
    }

    private static String socket(String depth) {
        return "{ \"kind\": \"core-socket\", \"depth\": \"" + depth
                + "\", \"slabThickness\": \"6\\\"\", \"edgeDistance\": \"18\\\"\" }";
    }

    private static Remedy remedy(Design design, String finding, String id) {
        List<Finding> found = Yard.findings(design, finding);
        assertThat(found).as(finding).isNotEmpty();
        assertThat(found.get(0).severity()).isEqualTo(Severity.MUST_FIX);
        return found.get(0).remedies().stream()
                .filter(remedy -> remedy.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSocketDeeperThanItsConcreteIsCoredThroughItWithOnePress() {
        Design deep = yard("3'", cored(socket("8\\\"")), "");
        Remedy cure = remedy(deep, "socket.depth", "socket-depth");
        assertThat(cure.edit().orElseThrow()).isEqualTo("runs[R1].otherPosts[0].support.depth=6\"");
        Design made = yard("3'", cored(socket("6\\\"")), "");
        for (String id : List.of("socket.depth", "socket.bearing", "socket.side"))
            assertThat(Yard.findings(made, id)).as(id).isNotEmpty().allMatch(one -> one.severity() == Severity.PASS);
        assertThat(made.quote().price().total().minus(deep.quote().price().total()))
                .isEqualTo(cure.priceChange().orElseThrow());
    }

    @Test
    void holesInTheGroundAreOfferedInsteadWhereTheyHold() {
        Design deep = yard("3'", cored(socket("8\\\"")), "");
        Remedy cure = remedy(deep, "socket.depth", "dig-instead");
        assertThat(cure.edit().orElseThrow()).isEqualTo("runs[R1].otherPosts[0].support=new-footing");
        assertThat(cure.ratio().orElseThrow()).isLessThanOrEqualTo(1);
        Design made = yard("3'", "", "");
        assertThat(made.quote().price().total().minus(deep.quote().price().total()))
                .isEqualTo(cure.priceChange().orElseThrow());
    }

    /** The slab is why nobody may dig: holes there would be no cure. */
    @Test
    void whereNobodyMayDigNoHolesAreOffered() {
        String slab = ", \"noDig\": [ { \"from\": \"7'\", \"to\": \"17'\", \"why\": \"slab\" } ]";
        Design deep = yard("3'", slab + cored(socket("8\\\"")), "");
        assertThat(Yard.findings(deep, "socket.depth").get(0).remedies())
                .extracting(Remedy::id)
                .containsExactly("socket-depth");
    }

    /** Drawings and price follow: the end post stands where the old one stood, and its concrete is hauled off. */
    @Test
    void oldConcreteUnderAnEndPostIsPulledWithOnePress() {
        Design left = yard("3'", "", old("leave"));
        Remedy cure = remedy(left, "line.no-dig", "pull-plug");
        assertThat(cure.edit().orElseThrow()).isEqualTo("existing.plugs[0].fate=pull");
        Design pulled = yard("3'", "", old("pull"));
        assertThat(Yard.findings(pulled, "line.no-dig")).isEmpty();
        assertThat(pulled.quote().price().total().minus(left.quote().price().total()))
                .isEqualTo(cure.priceChange().orElseThrow());
    }

    /** A root in the same place stays a root. */
    @Test
    void pullingIsNoCureWhereSomethingElseIsInTheWayToo() {
        String root = ", \"noDig\": [ { \"from\": \"0'\", \"to\": \"1'\", \"why\": \"root\" } ]";
        Design left = yard("3'", root, old("leave"));
        assertThat(Yard.findings(left, "line.no-dig").get(0).remedies()).isEmpty();
    }

    private static String old(String fate) {
        return "\"existing\": { \"plugs\": [ { \"run\": \"R1\", \"station\": \"0'\", \"fate\": \"" + fate
                + "\" } ] }, ";
    }
}
