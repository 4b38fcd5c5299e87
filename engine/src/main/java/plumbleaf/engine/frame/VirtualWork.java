package plumbleaf.engine.frame;

import java.util.List;
import java.util.function.Predicate;

/**
 * One displacement, split exactly over the parts that cause it: {@code d = sum of integral (N n / EA + T t / GJ + My my / EIy + Mz mz /
 * EIz) dx + sum of u'K u over springs - sum of r s over settlements}, capitals from the loads, small letters from the unit load.
 *
 * <p>Source: principle of virtual forces (unit load method), in any text on structural analysis. Check: {@code
 * FrameVirtualWorkTest}, where the parts add up to the displacement of the stiffness solution.
 *
 * @param displacement from the stiffness solution, inches or radians
 */
public record VirtualWork(double displacement, List<Part> parts) {
    public VirtualWork {
        parts = List.copyOf(parts);
    }

    /** One member, spring, link, or settled support, and its share by what strains it; {@code spring} holds all that is not a member's. */
    public record Part(String id, double axial, double torsion, double bendingY, double bendingZ, double spring) {
        public double total() {
            return axial + torsion + bendingY + bendingZ + spring;
        }
    }

    /** All parts together: the displacement again, by the other road. */
    public double sum() {
        return sumOf(id -> true);
    }

    /** The share of the parts with these names. */
    public double sumOf(Predicate<String> named) {
        double sum = 0;
        for (Part part : parts) if (named.test(part.id())) sum += part.total();
        return sum;
    }
}
