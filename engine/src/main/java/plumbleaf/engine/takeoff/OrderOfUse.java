package plumbleaf.engine.takeoff;

import java.util.List;

/**
 * In which order a day's work takes things off the truck: gravel, post, concrete, cap; bracket, rail, picket, screw; hinge, leaf, latch, paint. Goods are told by how
 * their code begins; what is not named goes where {@code *} stands. Common practice, no source.
 */
final class OrderOfUse {
    /** The leaf itself among the things of its day. */
    static final String LEAF = "leaf";

    private static final String ANY = "*";
    private static final List<String> SET = List.of(
            "frost-sleeve", "socket", "base-plate", "gravel", ANY, "wall-anchor", "concrete", "grout", "post-cap");
    private static final List<String> BUILD = List.of(
            "rail-bracket",
            "bracket-screw",
            "panel-bracket",
            "brace-band",
            "rail-end",
            "loop-cap",
            "barb-arm",
            "rail-",
            "rail-screw",
            "SWAGED-",
            ANY,
            "truss-rod",
            "tension-wire",
            "metal-panel",
            "mesh-",
            "mesh-clip",
            "fabric-",
            "tension-bar",
            "tension-band",
            "band-bolt",
            "fabric-tie",
            "hog-ring",
            "slats",
            "barbed-wire",
            "kick-",
            "board-",
            "picket-",
            "picket-screw",
            "lattice",
            "fascia-",
            "cap-");
    /** What stretches fabric and holds its rail: on the posts, but not before the concrete is hard. Common practice, no source. */
    private static final List<String> STRETCHED = List.of(
            "brace-band", "tension-bar", "tension-band", "rail-end", "loop-cap", "truss-rod", "band-bolt", "barb-arm");

    private static final List<String> HANG = List.of(
            "HINGE-",
            "ROLLER-",
            "bolt-",
            "lag-",
            "sleeve-",
            "wide-washer-",
            "washer-",
            "cap-nut-",
            LEAF,
            "LATCH-",
            ANY,
            "zinc-paint");

    private OrderOfUse() {}

    static boolean isStretched(String item) {
        return STRETCHED.stream().anyMatch(item::startsWith);
    }

    /** The lower, the earlier it is used. */
    static int of(LoadStage stage, String item) {
        List<String> order = switch (stage) {
            case SET -> SET;
            case BUILD -> BUILD;
            case HANG -> HANG;
            case FINISH -> List.of(ANY);
        };
        int place = order.indexOf(ANY);
        int longest = 0;
        for (int i = 0; i < order.size(); i++) {
            String begins = order.get(i);
            if (begins.length() > longest && item.startsWith(begins)) {
                place = i;
                longest = begins.length();
            }
        }
        return place;
    }
}
