package plumbleaf.documents.packet;

import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;

/** The cut list of boards whose tops are shaped: how many, how far down the shape reaches, how the saw is set. */
final class ShapedTops {
    private ShapedTops() {}

    static void on(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.left("Run"),
                Column.right("Boards"),
                Column.left("Top"),
                Column.right("Board"),
                Column.right("Reaches down"),
                Column.words("How"));
        for (RunLayout run : subject.layout().runs())
            run.style()
                    .flatMap(FenceStyle::boarding)
                    .filter(boards -> boards.top() != BoardTop.FLAT)
                    .ifPresent(boards -> row(table, subject, run, boards));
        if (table.isEmpty()) return;
        paper.heading("Shaped tops");
        paper.add(table.table());
        paper.note(
                "Cut boards to length first: the length is to the highest point. Cut one, lay it on the fence, then cut the rest along it.");
    }

    private static void row(Table.Builder table, PacketSubject subject, RunLayout run, Boarding boards) {
        int count = 0;
        for (Bay bay : run.bays()) count += bay.pickets().count();
        double width = boards.boardWidth().inches();
        double down = boards.top().depthOverWidth() * width;
        table.row(
                run.run(),
                Integer.toString(count),
                boards.top().key(),
                subject.inches(width),
                subject.inches(down),
                how(boards.top(), subject, width, down));
    }

    private static String how(BoardTop top, PacketSubject subject, double width, double down) {
        return switch (top) {
            case FLAT -> "square";
            case DOG_EAR ->
                "both corners at 45 degrees, " + subject.inches(down)
                        + " along each edge; bought so where the yard has them";
            case POINTED -> "two cuts at 45 degrees from square that meet on the middle";
            case GOTHIC -> "two arcs of radius " + subject.inches(width) + ", each from the other edge's shoulder";
            case ROUND -> "a half circle of radius " + subject.inches(width / 2);
        };
    }
}
