package plumbleaf.engine.frame;

import java.util.List;

/** Solves frames by the direct stiffness method. */
public final class Frames {
    private Frames() {}

    /**
     * Displacements and forces of a linear space frame: {@code K u = f}, stiffness by member, factored once ({@code L D L'}) for all
     * cases, each answer refined by one step. Holds while displacements are small and the material is elastic. Exact within the theory
     * of Euler and Bernoulli: loads on members are carried to the nodes by their exact held-end forces.
     * Source: McGuire, Gallagher, Ziemian, Matrix Structural Analysis, 2nd ed., chapters 3 to 5. Checks: package
     * {@code plumbleaf.reference.frame}.
     *
     * @param model what there is
     * @param cases what acts on it, each under a name of its own
     * @throws UnstableFrame when something is free to move, with the node and direction
     */
    public static FrameSolution solve(FrameModel model, List<LoadCase> cases) {
        return new FrameSolution(new Assembly(model), cases);
    }

    public static FrameSolution solve(FrameModel model, LoadCase only) {
        return solve(model, List.of(only));
    }
}
