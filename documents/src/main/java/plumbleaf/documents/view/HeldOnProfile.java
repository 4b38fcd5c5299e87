package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.support.Slab;
import plumbleaf.engine.support.Support;

/** What holds a post of a run that no hole is dug for, on the profile: the slab with its socket or plate, how deep it is driven; and the same in a word or two. */
final class HeldOnProfile {
    /** So much of the concrete is shown beside a post. */
    private static final double SHOWN_IN = 9;

    private HeldOnProfile() {}

    /** Where a station and an elevation lie on the drawing, whichever way it runs. */
    interface Places {
        Point at(double stationIn, double elevationIn);
    }

    static List<Mark> of(PostDetail detail, Places places) {
        return detail.post()
                .support()
                .match(
                        footing -> List.of(),
                        driven -> below(detail, driven.depth().inches(), places),
                        plate -> slab(detail, plate.slab(), places),
                        socket -> {
                            List<Mark> marks = new ArrayList<>(slab(detail, socket.slab(), places));
                            marks.addAll(below(detail, socket.depth().inches(), places));
                            return marks;
                        },
                        wall -> List.of(),
                        existing -> List.of());
    }

    /** {@code core 8"}, {@code plate}, {@code driven 36"}: what stands in the row of holes. */
    static String words(Support support, DisplayUnits units) {
        return support.match(
                footing -> "\u2013",
                driven -> "driven " + Sizes.inches(units, driven.depth().inches()),
                plate -> "plate",
                socket -> "core " + Sizes.inches(units, socket.depth().inches()),
                wall -> "wall",
                existing -> "stands");
    }

    private static List<Mark> slab(PostDetail detail, Slab slab, Places places) {
        double station = detail.post().station().inches();
        double grade = detail.post().grade().inches();
        return List.of(Area.edged(
                Box.of(
                                places.at(
                                        station - SHOWN_IN,
                                        grade - slab.thickness().inches()),
                                places.at(station + SHOWN_IN, grade))
                        .corners(),
                Material.CONCRETE,
                Look.thin(Layer.FOOTINGS).of(detail.post().id())));
    }

    private static List<Mark> below(PostDetail detail, double depthIn, Places places) {
        double grade = detail.post().grade().inches();
        double half = detail.post().width().inches() / 2;
        List<Mark> marks = new ArrayList<>();
        for (double side : List.of(-half, half)) {
            double station = detail.post().station().inches() + side;
            marks.add(Stroke.line(
                    places.at(station, grade),
                    places.at(station, grade - depthIn),
                    Look.hidden(Layer.POSTS).of(detail.post().id())));
        }
        return marks;
    }
}
