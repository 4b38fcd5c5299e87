package plumbleaf.engine.frame;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A frame that can move freely is refused by name. */
class FrameMechanismTest {
    private static final Stiffness TUBE = Stiffness.alike(29e6, 11.2e6, 0.9, 0.5, 1);
    private static final LoadCase NOTHING = LoadCase.of("nothing");

    @Test
    void aPostThatNothingHolds() {
        FrameModel post = FrameModel.of(
                List.of(new Node("foot", 0, 0, 0), new Node("top", 0, 0, 60)),
                List.of(Member.fixed("post", "foot", "top", TUBE, Vector.X)),
                List.of(new Support("foot", List.of(Dof.UX, Dof.UY, Dof.RX, Dof.RY, Dof.RZ))));
        assertThatThrownBy(() -> Frames.solve(post, NOTHING))
                .isInstanceOf(UnstableFrame.class)
                .hasMessage(
                        "Nothing holds the frame against moving: node foot moves freely along z. Brace it, hold it, or"
                                + " undo a release");
    }

    @Test
    void aLeafOnOneHingeSwings() {
        FrameModel leaf = FrameModel.of(
                        List.of(new Node("post", 0, 0, 0), new Node("stile", 0, 0, 0), new Node("latch", 48, 0, 0)),
                        List.of(Member.fixed("rail", "stile", "latch", TUBE, Vector.Z)),
                        List.of(Support.fixed("post")))
                .with(new Link("hinge", "post", "stile", Vector.ZERO, Vector.X, Vector.Y, 1e5, 1e5, 1e5, 1e5, 1e5, 0));
        assertThatThrownBy(() -> Frames.solve(leaf, NOTHING))
                .isInstanceOf(UnstableFrame.class)
                .hasMessageContaining("node latch moves freely along y");
    }

    @Test
    void aTrussNodeThatCanOnlyTurn() {
        FrameModel bar = FrameModel.of(
                List.of(new Node("a", 0, 0, 0), new Node("b", 48, 0, 0)),
                List.of(Member.bar("rod", "a", "b", TUBE, Vector.Z)),
                List.of(Support.fixed("a"), Support.pinned("b")));
        assertThatThrownBy(() -> Frames.solve(bar, NOTHING))
                .isInstanceOf(UnstableFrame.class)
                .hasMessageContaining("node b turns freely about");
    }

    @Test
    void aMemberLooseInItself() {
        Member loose = Member.fixed("rod", "a", "b", TUBE, Vector.Z).released(List.of(Dof.RX), List.of(Dof.RX));
        FrameModel rod = FrameModel.of(
                List.of(new Node("a", 0, 0, 0), new Node("b", 48, 0, 0)), List.of(loose), List.of(Support.fixed("a")));
        assertThatThrownBy(() -> Frames.solve(rod, NOTHING))
                .isInstanceOf(UnstableFrame.class)
                .hasMessageContaining("Member rod is free to move by its own releases, about x in its own axes");
    }

    @Test
    void namesThatDoNotExist() {
        assertThatThrownBy(() -> FrameModel.of(
                        List.of(new Node("a", 0, 0, 0)),
                        List.of(Member.fixed("rod", "a", "b", TUBE, Vector.Z)),
                        List.of()))
                .hasMessage("There is no node b, which member rod asks for");
    }
}
