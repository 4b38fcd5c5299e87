package plumbleaf.engine.line;

import plumbleaf.engine.support.Support;

/**
 * A place where a post stands, before it has its name.
 *
 * @param gate id of the gate whose post it is, or empty
 * @param setId name it has on an issued stake-out sheet, or empty
 * @param joins id of the run whose post is used here, or empty
 * @param leftIn how far to the left of the line it stands: a gate that is set back
 */
record Stop(
        double stationIn,
        PostRole role,
        String gate,
        double widthIn,
        double holeIn,
        Support support,
        String setId,
        String joins,
        double leftIn) {
    /** On the line. */
    Stop(
            double stationIn,
            PostRole role,
            String gate,
            double widthIn,
            double holeIn,
            Support support,
            String setId,
            String joins) {
        this(stationIn, role, gate, widthIn, holeIn, support, setId, joins, 0);
    }

    /** From post to post in plan, where one of them may stand off the line. */
    double levelTo(Stop next) {
        double along = next.stationIn - stationIn;
        double across = next.leftIn - leftIn;
        return across == 0 ? along : Math.sqrt(along * along + across * across);
    }

    boolean digs() {
        return holeIn > 0 && joins.isEmpty();
    }

    /** Whether it is a post between others that stands there already. */
    boolean stands() {
        return role == PostRole.LINE
                && support.match(
                        footing -> false, driven -> false, plate -> false, core -> false, wall -> false, old -> true);
    }

    Stop named(String id) {
        return new Stop(stationIn, role, gate, widthIn, holeIn, support, id, joins, leftIn);
    }

    /** How firmly it holds its place when two posts are wanted at one: gate posts before all others, line posts last. */
    int rank() {
        return switch (role) {
            case GATE, ROLLER -> 0;
            case WALL -> 1;
            case END -> 2;
            case CORNER -> 3;
            case LINE -> 4;
        };
    }
}
