package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.typeset.Column;
import plumbleaf.documents.view.JointDetail;

/** The joints of a leaf from close by, one of each make, and in what order they are tacked and welded. */
final class JointSheets {
    private static final double NOTES_SHARE = 0.36;

    /** No joint is drawn higher than this on paper. */
    private static final double JOINT_HIGH = 4.6;

    private JointSheets() {}

    /** Nothing where no joint of the leaf is welded. */
    static List<Sheet> of(PacketSubject subject, GatePaper gate) {
        List<JointDetail.Alike> kinds = JointDetail.kinds(gate.leaf());
        if (kinds.isEmpty()) return List.of();
        Box room = Sheet.room(subject.options().sheets(), true);
        if (GateSheets.isSmall(subject))
            return List.of(
                    sheet(subject, gate, "Joints", details(subject, gate, kinds, room), List.of()),
                    sheet(subject, gate, "How it is welded", List.of(), notes(subject, gate, room)));
        double split = room.maxX() - room.width() * NOTES_SHARE;
        Box left = new Box(room.minX(), room.minY(), split - 0.1, room.maxY());
        Box right = new Box(split + 0.1, room.minY(), room.maxX(), room.maxY());
        return List.of(
                sheet(subject, gate, "Joints", details(subject, gate, kinds, left), notes(subject, gate, right)));
    }

    private static List<Viewport> details(
            PacketSubject subject, GatePaper gate, List<JointDetail.Alike> kinds, Box room) {
        return details(subject, kinds, (kind, scale) -> JointDetail.of(gate.subject(), kind, scale), room);
    }

    /** Side by side, each as large as its share of the room allows. */
    static List<Viewport> details(
            PacketSubject subject,
            List<JointDetail.Alike> kinds,
            BiFunction<JointDetail.Alike, Scale, Drawing> drawn,
            Box room) {
        int across = kinds.size() == 1 ? 1 : kinds.size() > 4 ? 3 : 2;
        double longest = kinds.stream()
                .mapToDouble(kind ->
                        Text.medium(new Point(0, 0), kind.words()).bold().widthIn())
                .max()
                .orElse(0);
        while (across > 1 && longest > room.width() / across - 0.1) across--;
        int down = (kinds.size() + across - 1) / across;
        double wide = room.width() / across;
        double high = room.height() / down;
        List<Viewport> viewports = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            JointDetail.Alike kind = kinds.get(i);
            int row = i / across;
            double x = room.minX() + i % across * wide;
            double top = room.maxY() - row * high;
            Drawing detail = Scale.fitted(
                    subject.units(),
                    scale -> drawn.apply(kind, scale),
                    wide - 0.3,
                    Math.min(high - Viewport.TITLE_IN - 0.2, JOINT_HIGH));
            viewports.add(Viewport.centred(detail, new Box(x, top - high, x + wide, top), kind.words()));
        }
        return viewports;
    }

    private static List<Mark> notes(PacketSubject subject, GatePaper gate, Box room) {
        return Column.of(subject.said().blocks(WeldOrder.blocks(subject, gate)), room.width())
                .at(new Point(room.minX(), room.maxY() - 0.05));
    }

    private static Sheet sheet(
            PacketSubject subject, GatePaper gate, String title, List<Viewport> viewports, List<Mark> loose) {
        return GateSheets.sheet(
                subject,
                gate,
                title,
                viewports.isEmpty() ? "" : "as shown",
                List.of(
                        GateShopSheet.lifting(subject, gate.leaf()),
                        "Zinc off before the arc or a flame; fresh air; eyes and skin covered. Steel stays hot: hold a hand near, do not touch.",
                        "Sparks fly far: nothing that burns within 35 ft, a fire watch half an hour after the last arc (29 CFR 1910.252(a)(2)(iii)). Local code governs."),
                viewports,
                loose);
    }
}
