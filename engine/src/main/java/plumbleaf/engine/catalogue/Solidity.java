package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * How much of a style's face stops the wind, and by what members.
 *
 * @param share solid area over gross area
 * @param round whether its members are round
 * @param member their size across the wind; counts for round ones
 */
public record Solidity(double share, boolean round, Length member) {
    private static final Solidity WALL = new Solidity(1, false, Length.ZERO);

    public Solidity {
        if (!(share > 0 && share <= 1)) throw new IllegalArgumentException("A solid share is above 0, at most 1");
    }

    /**
     * Boards: all of it, or their width over their pitch. Panel: pickets over their pitch, and rails over the height where no picket stands before them.
     * Woven wire {@code d} with a clear mesh {@code m}: {@code 1 - (m/(m + d))^2}, slats close a share of the rest; welded wire likewise, its meshes from wire to
     * wire. Rails of an open fence count beside. Geometry. Check: OpenFenceWindCheck.
     *
     * @param infill height
     */
    public static Solidity of(FenceStyle style, Catalogue catalogue, Length infill) {
        double rails =
                style.rails().match(none -> 0.0, wood -> 0.0, steel -> railShare(style, steel, catalogue, infill));
        return style.infill()
                .match(
                        upright -> flat(trimmed(FenceStyle.solidOf(upright.board(), upright.spacing()), style, infill)),
                        both -> WALL,
                        lying -> flat(FenceStyle.solidOf(lying.board(), lying.spacing())),
                        panel -> flat(1 - (1 - pickets(panel, catalogue)) * (1 - rails)),
                        fabric -> woven(fabric, rails),
                        mesh -> new Solidity(
                                1 - open(mesh.wire(), mesh.across()) * open(mesh.wire(), mesh.upright()) * (1 - rails),
                                true,
                                mesh.wire()));
    }

    /** Lattice at the top is as solid as it is; cap and kick boards wholly. */
    private static double trimmed(double boards, FenceStyle style, Length infill) {
        double high = infill.inches();
        double band = style.trim()
                .lattice()
                .map(lattice -> Math.min(high, lattice.height().inches()))
                .orElse(0.0);
        double solid = style.trim().lattice().map(FenceTrim.Lattice::solid).orElse(0.0);
        double whole = Math.min(
                high - band,
                style.trim().above().inches() - band + style.trim().below().inches());
        return (band * solid + whole + (high - band - whole) * boards) / high;
    }

    private static Solidity flat(double share) {
        return share == 1 ? WALL : new Solidity(share, false, Length.ZERO);
    }

    /** Slats make flat members of it; bare wire is round. */
    private static Solidity woven(FenceInfill.Fabric fabric, double rails) {
        double open =
                fabric.mesh().inches() / (fabric.mesh().inches() + fabric.wire().inches());
        double bare = open * open;
        double share = 1 - bare * (1 - fabric.slats()) * (1 - rails);
        return fabric.slats() > 0 ? flat(share) : new Solidity(share, true, fabric.wire());
    }

    private static double open(Length wire, Length mesh) {
        return Math.max(0, 1 - wire.inches() / mesh.inches());
    }

    private static double pickets(FenceInfill.Panel panel, Catalogue catalogue) {
        double width = width(panel.picket(), catalogue);
        return width / (width + panel.gap().inches());
    }

    private static double railShare(FenceStyle style, FenceRails.Steel steel, Catalogue catalogue, Length infill) {
        double depth = catalogue
                .section(steel.section())
                .map(Section::depth)
                .orElse(Length.ZERO)
                .inches();
        return Math.min(1, depth * style.railsFor(infill) / infill.inches());
    }

    private static double width(String section, Catalogue catalogue) {
        return catalogue
                .section(section)
                .map(Section::width)
                .orElse(Length.inches(1))
                .inches();
    }
}
