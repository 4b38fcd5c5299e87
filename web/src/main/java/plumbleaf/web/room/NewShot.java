package plumbleaf.web.room;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;

/**
 * A shot to be filled in: in the middle of the widest stretch that nobody has measured, at the height the ground is taken to have there,
 * so that nothing moves until someone reads the rod.
 */
record NewShot(String id, String run, String station, String elevation) {
    private static final double INCHES_PER_FOOT = 12;
    private static final double QUARTERS = 4;

    static Optional<NewShot> in(Opened opened) {
        return opened.design().flatMap(design -> widest(design, nextId(opened.text())));
    }

    private static Optional<NewShot> widest(Design design, String id) {
        Optional<NewShot> found = Optional.empty();
        double widest = 0;
        for (Profile profile : design.ground().profiles()) {
            List<ProfilePoint> points = profile.points();
            for (int i = 1; i < points.size(); i++) {
                double from = points.get(i - 1).station().inches();
                double gap = points.get(i).station().inches() - from;
                double middle = Math.rint((from + gap / 2) / INCHES_PER_FOOT) * INCHES_PER_FOOT;
                if (gap <= widest || middle <= from || middle >= from + gap) continue;
                widest = gap;
                double height = profile.elevationAt(Offset.inches(middle)).inches();
                found = Optional.of(new NewShot(
                        id,
                        profile.run(),
                        LengthText.exact(middle),
                        LengthText.exact(Math.rint(height * QUARTERS) / QUARTERS)));
            }
        }
        return found;
    }

    /** One more than the largest number in use: no id is used twice. */
    private static String nextId(DocumentText text) {
        int largest = 0;
        for (int i = 0; i < text.count("ground.shots"); i++) {
            String id = text.value("ground.shots[" + i + "].id").orElse("");
            if (id.matches("S\\d{1,6}")) largest = Math.max(largest, Integer.parseInt(id.substring(1)));
        }
        return "S" + (largest + 1);
    }

    /** As the job file holds it. */
    String json() {
        return "{ \"id\": " + DocumentText.quoted(id) + ", \"run\": " + DocumentText.quoted(run) + ", \"station\": "
                + DocumentText.quoted(station) + ", \"elevation\": " + DocumentText.quoted(elevation) + " }";
    }
}
