package plumbleaf.engine.design;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.FilletWeld;

/** What an inch of fillet on a tube may carry. */
final class WallWeld {
    private WallWeld() {}

    /**
     * The least of fillet, wall on the design wall, and, for tube that no tube standard vouches for, the sheet rule. No more for a load across the weld: at the
     * ends of tube in tension none is allowed. Source: AISC 360-22 J2.4, J4.2(b), B4.2; AISI S100 as in NSR-10 F.4.5.2, its omega from memory. Check: FilletWeldCheck.
     */
    static Force allowablePerInch(Length leg, Stress electrode, Section tube, Length along) {
        return of(leg, electrode, tube, along).perInch();
    }

    /** The least of the three, and which one it is. */
    static Governing of(Length leg, Stress electrode, Section tube, Length along) {
        FilletWeld fillet = new FilletWeld(leg, electrode);
        Force weld = fillet.nominalPerInch().times(1 / FilletWeld.SAFETY);
        Force steel = fillet.allowablePerInch(tube.ultimateStress(), tube.designWall());
        Asked asked = new Asked(leg, electrode, tube, along);
        Governing least = steel.compareTo(weld) < 0
                ? new Governing(steel, Limit.WALL, asked)
                : new Governing(weld, Limit.FILLET, asked);
        if (tube.yieldIsVouchedFor()) return least;
        Force sheet = FilletWeld.allowableSheetAlong(along, tube.nominalWall(), tube.ultimateStress());
        return sheet.compareTo(least.perInch()) < 0 ? new Governing(sheet, Limit.SHEET, asked) : least;
    }

    /** What gives first. */
    private enum Limit {
        FILLET,
        WALL,
        SHEET
    }

    private record Asked(Length leg, Stress electrode, Section tube, Length along) {
        boolean slender() {
            return along.inches() / tube.nominalWall().inches() >= 25;
        }
    }

    /** Its number, and its words for whoever reads them: a gust tries the number a hundred times for once that they are. */
    static final class Governing {
        private final Force perInch;
        private final Limit limit;
        private final Asked asked;

        private Governing(Force perInch, Limit limit, Asked asked) {
            this.perInch = perInch;
            this.limit = limit;
            this.asked = asked;
        }

        /** What an inch may carry. */
        Force perInch() {
            return perInch;
        }

        /** What gives first. */
        String limit() {
            return switch (limit) {
                case FILLET -> "the fillet itself";
                case WALL -> "the wall of " + asked.tube().name();
                case SHEET -> "the sheet of " + asked.tube().name();
            };
        }

        String formula() {
            return switch (limit) {
                case FILLET -> "0.60 Fexx 0.707 w / 2";
                case WALL -> "0.60 Fu t / 2, t the design wall";
                case SHEET -> asked.slender() ? "0.75 t Fu / 3.05, L/t from 25 up" : "(1 - 0.01 L/t) t Fu / 2.55";
            };
        }

        /** Where the formula stands. */
        String clause() {
            return switch (limit) {
                case FILLET -> "J2.4";
                case WALL -> "J4.2(b)";
                case SHEET -> "AISI S100 as in NSR-10 F.4.5.2, its omega from memory";
            };
        }

        /** Of the calculation book, {@code fa}. */
        WorkedLine line() {
            return switch (limit) {
                case FILLET -> metal(perInch, asked.leg(), asked.electrode());
                case WALL -> wall(perInch, asked.tube());
                case SHEET -> sheet(perInch, asked.along(), asked.tube(), asked.slender());
            };
        }
    }

    private static WorkedLine wall(Force perInch, Section tube) {
        return WorkedLine.of("fa", "0.60 \u00d7 Fu \u00d7 tw / 2")
                .put("Fu", tube.ultimateStress().psi(), "psi")
                .put("tw", tube.designWall())
                .note("the wall beside the weld, J4.2(b)")
                .gives(perInch.pounds(), "lb/in.");
    }

    private static WorkedLine metal(Force perInch, Length leg, Stress electrode) {
        return WorkedLine.of("fa", "0.60 \u00d7 Fexx \u00d7 w / sqrt(2) / 2")
                .put("Fexx", electrode.psi(), "psi")
                .put("w", leg)
                .note("the fillet, J2.4")
                .gives(perInch.pounds(), "lb/in.");
    }

    private static WorkedLine sheet(Force perInch, Length along, Section tube, boolean slender) {
        WorkedLine.Open line = slender
                ? WorkedLine.of("fa", "0.75 \u00d7 tn \u00d7 Fu / 3.05")
                : WorkedLine.of("fa", "(1 - 0.01 \u00d7 L / tn) \u00d7 tn \u00d7 Fu / 2.55")
                        .put("L", along);
        return line.put("tn", tube.nominalWall())
                .put("Fu", tube.ultimateStress().psi(), "psi")
                .note("the sheet along the fillet, F.4.5.2")
                .gives(perInch.pounds(), "lb/in.");
    }
}
