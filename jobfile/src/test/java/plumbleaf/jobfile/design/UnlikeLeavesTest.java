package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.job.JobFile;

/** A pair whose right leaf has a tube, braces, hinges and a filling of its own. */
class UnlikeLeavesTest {
    private static final String PINNED = "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"";

    private static Yard pair(String right) {
        return Yard.nursery()
                .with("\"kind\": \"swing\"", "\"kind\": \"pair\", \"swing\": \"in\"")
                .with(", \"hinge\": \"left\", \"swing\": \"in\", \"opens\": \"90 deg\"", "")
                .with(PINNED, PINNED + right);
    }

    private static final String OWN = ", \"rightLeaf\": { \"frame\": \"TUBE-1.5x1.5x0.083\", \"braces\": 0, \"hinge\":"
            + " \"HINGE-BALL-0.75\", \"fill\": { \"kind\": \"sheet\" } }";

    @Test
    void eachLeafIsMadeWeighedHungAndBoughtOfItsOwn() {
        Design alike = pair("").design();
        Design unlike = pair(OWN).design();
        GateDesign gate = Yard.gate(unlike);
        Leaf left = gate.plan().leaves().get(0);
        Leaf right = gate.plan().leaves().get(1);
        assertThat(left.of(MemberRole.BRACE)).hasSize(1);
        assertThat(right.of(MemberRole.BRACE)).isEmpty();
        assertThat(left.make().tube().id()).isEqualTo("TUBE-2x2x0.083");
        assertThat(right.members())
                .allSatisfy(member -> assertThat(member.section().id()).isEqualTo("TUBE-1.5x1.5x0.083"));
        assertThat(left.pickets()).isNotEmpty();
        assertThat(right.pickets()).isEmpty();
        assertThat(right.panels()).isNotEmpty();
        List<HungLeaf> hung = gate.hung();
        assertThat(hung.get(0).gate().hinge().id()).isEqualTo("HINGE-ADJ-0.625");
        assertThat(hung.get(1).gate().hinge().id()).isEqualTo("HINGE-BALL-0.75");
        HungLeaf before = Yard.gate(alike).hung().get(0);
        assertThat(left.weight()).isEqualTo(before.gate().leaf().weight());
        assertThat(hung.get(0).sag().total().inches())
                .isCloseTo(before.sag().total().inches(), within(1e-12));
        List<String> bought = unlike.quote().takeoff().lines().stream()
                .map(line -> line.sold().item())
                .toList();
        assertThat(bought).contains("TUBE-2x2x0.083", "TUBE-1.5x1.5x0.083", "HINGE-ADJ-0.625", "HINGE-BALL-0.75");
        assertThat(unlike.quote().price().total())
                .isNotEqualTo(alike.quote().price().total());
    }

    /** A right leaf that says of itself what the left one is changes nothing. */
    @Test
    void aRightLeafLikeTheLeftOneChangesNothing() {
        Design alike = pair("").design();
        Design said = pair(", \"rightLeaf\": { \"frame\": \"TUBE-2x2x0.083\", \"braces\": 1 }")
                .design();
        assertThat(Yard.gate(said).hung()).isEqualTo(Yard.gate(alike).hung());
        assertThat(said.quote().price().total()).isEqualTo(alike.quote().price().total());
    }

    @Test
    void whatCannotBeIsRefusedByName() {
        String single = Yard.nursery()
                .with(PINNED, PINNED + ", \"rightLeaf\": { \"braces\": 0 }")
                .text();
        assertThat(problems(single))
                .anySatisfy(text ->
                        assertThat(text).contains("builds.G1.rightLeaf", "G1 is no pair, and has but one leaf"));
        String unknown = pair(", \"rightLeaf\": { \"hinge\": \"HINGE-NONE\" }").text();
        assertThat(problems(unknown)).anySatisfy(text -> assertThat(text).contains("builds.G1.rightLeaf.hinge"));
    }

    private static List<String> problems(String text) {
        return JobFile.read("yard.json", text, StandardCatalogue.load())
                .match(
                        good -> List.<String>of(),
                        bad -> bad.all().stream().map(InputError::text).toList());
    }
}
