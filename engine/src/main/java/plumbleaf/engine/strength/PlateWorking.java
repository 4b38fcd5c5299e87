package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;

/** What a post's wall may carry under a plate, line by line for the calculation book. The same numbers as {@link HingePlate}. */
public final class PlateWorking {
    private PlateWorking() {}

    /** {@link HingePlate#allowable}; the last line is {@code Ra}. */
    static List<WorkedLine> pull(HingePlate plate, Section post, double chordStress) {
        boolean near = plate.isNearOpenEnd(post);
        WorkedLine.Open nominal = post.isRound()
                ? WorkedLine.of(
                                "Rn",
                                "5.5 \u00d7 Fy \u00d7 tw\u00b2 \u00d7 (1 + 0.25 \u00d7 lb / D) \u00d7 Qf" + half(near))
                        .put("D", post.depth())
                        .note("Table K2.1")
                : WorkedLine.of(
                                "Rn",
                                "Fy \u00d7 tw\u00b2 / (1 - tp / B) \u00d7 (2 \u00d7 lb / B + 4 \u00d7 sqrt(1 - tp / B) \u00d7 Qf)"
                                        + half(near))
                        .put("B", post.depth())
                        .put("tp", plate.thickness())
                        .note("K1-12");
        WorkedLine rn = nominal.put("Fy", post.yieldStress().psi(), "psi")
                .put("tw", post.designWall())
                .put("lb", plate.height())
                .put("Qf", chordStress)
                .gives(plate.nominal(post, chordStress));
        return List.of(
                rn,
                WorkedLine.of("Ra", "Rn / " + (post.isRound() ? "1.67" : "1.5"))
                        .put(rn)
                        .note(near ? "halved near the open top, K1.4" : "")
                        .gives(plate.allowable(post, chordStress)));
    }

    private static String half(boolean near) {
        return near ? " / 2" : "";
    }

    /** {@link HingePlate#allowableTilt}; the last line is {@code Ma}. */
    private static List<WorkedLine> tilt(HingePlate plate, Section post, double chordStress, WorkedLine nominal) {
        double allowed = plate.allowableTilt(post, chordStress).poundInches();
        if (post.isRound())
            return List.of(WorkedLine.of("Ma", "0.8 \u00d7 lb \u00d7 Rn / 1.67")
                    .put("lb", plate.height())
                    .put(nominal)
                    .note("Table K2.1")
                    .gives(allowed, "lb-in"));
        WorkedLine tab = WorkedLine.of(
                        "Mt",
                        "Fy \u00d7 tw\u00b2 \u00d7 lb \u00d7 (B / (2 \u00d7 lb) + 2 / sqrt(1 - tp / B) + lb / B / (1 - tp / B))")
                .put("Fy", post.yieldStress().psi(), "psi")
                .put("tw", post.designWall())
                .put("lb", plate.height())
                .put("B", post.depth())
                .put("tp", plate.thickness())
                .note("K3-6")
                .gives(plate.nominalMomentOnSquare(post).poundInches(), "lb-in");
        WorkedLine punch = WorkedLine.of("Mp", "Fu \u00d7 tw \u00d7 lb\u00b2 / 5")
                .put("Fu", post.ultimateStress().psi(), "psi")
                .put("tw", post.designWall())
                .put("lb", plate.height())
                .note("Manual 10-7a")
                .gives(plate.nominalPunchingMoment(post).poundInches(), "lb-in");
        return List.of(
                tab,
                punch,
                WorkedLine.of("Ma", "min(Mt / 1.5; Mp / 2)" + half(plate.isNearOpenEnd(post)))
                        .put(tab)
                        .put(punch)
                        .gives(allowed, "lb-in"));
    }

    /**
     * A hinge's plate on its post; the last line is {@code ratio}.
     *
     * @param along pull off the face
     * @param across pull sideways
     * @param down weight on the pin
     * @param off how far the pin stands off the face
     * @param pressed U
     */
    public static List<WorkedLine> of(
            HingePlate plate, Section post, double along, double across, double down, double off, double pressed) {
        List<WorkedLine> lines = new ArrayList<>();
        WorkedLine sideways = WorkedLine.of("H", "sqrt(Ha\u00b2 + Hb\u00b2)")
                .put("Ha", Math.abs(along), "lb")
                .put("Hb", Math.abs(across), "lb")
                .gives(Math.sqrt(along * along + across * across), "lb");
        WorkedLine tilt = WorkedLine.of("M", "V \u00d7 e")
                .put("V", Math.abs(down), "lb")
                .put("e", off, "in.")
                .note("e from the post's face to the pin")
                .gives(Math.abs(down) * off, "lb-in");
        lines.add(sideways);
        lines.add(tilt);
        double qf = HingePlate.chordStress(pressed);
        if (pressed > 0)
            lines.add(WorkedLine.of("Qf", "1 - 0.3 \u00d7 U \u00d7 (1 + U)")
                    .put("U", pressed)
                    .note("K1.3; U the post's bending stress here over 0.6 Fy")
                    .gives(qf));
        List<WorkedLine> pull = pull(plate, post, qf);
        List<WorkedLine> may = tilt(plate, post, qf, pull.get(0));
        lines.addAll(pull);
        lines.addAll(may);
        WorkedLine ra = pull.get(1);
        WorkedLine ma = may.get(may.size() - 1);
        lines.add(WorkedLine.of("ratio", "H / Ra + M / Ma")
                .put(sideways)
                .put(ra)
                .put(tilt)
                .put(ma)
                .gives(sideways.value() / ra.value() + tilt.value() / ma.value()));
        return List.copyOf(lines);
    }
}
