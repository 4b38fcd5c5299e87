package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/**
 * The posts that woven fabric ends on: ends, gates, corners, sharp changes of grade, and a pull post in any long straight stretch. Common practice, no source.
 */
public final class Terminals {
    /** Fabric runs round a smaller turn than this; field guides say 10 to 15. */
    private static final Angle CORNER = Angle.degrees(12);

    /** Fabric takes a smaller change of grade than this from bay to bay. Judgement. */
    private static final double GRADE_CHANGE = 0.15;

    /** The longest stretch that is pulled in one. */
    private static final Length LONGEST_PULL = Length.feet(330);

    private final Map<String, Terminal> posts = new LinkedHashMap<>();

    /** Why a post is one. */
    public enum Reason {
        END("end"),
        GATE("gate"),
        CORNER("corner"),
        GRADE("grade change"),
        PULL("pull post");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param sides how many pieces of fabric end on it
     * @param turn of the line there
     */
    public record Terminal(String post, Reason reason, int sides, Angle turn) {}

    private Terminals() {}

    public static Terminals of(RunLayout run) {
        Terminals found = new Terminals();
        List<Post> stretch = new ArrayList<>();
        for (Post post : run.posts()) {
            Optional<Terminal> terminal = terminal(run, post);
            stretch.add(post);
            if (terminal.isEmpty()) continue;
            found.pulls(stretch);
            found.posts.put(post.id(), terminal.get());
            stretch = new ArrayList<>(List.of(post));
        }
        return found;
    }

    private static Optional<Terminal> terminal(RunLayout run, Post post) {
        return switch (post.role()) {
            case END, WALL -> Optional.of(new Terminal(post.id(), Reason.END, 1, Angle.ZERO));
            case GATE -> Optional.of(new Terminal(post.id(), Reason.GATE, 1, Angle.ZERO));
            case CORNER -> corner(run.line().line(), post);
            case LINE, ROLLER -> grade(run, post);
        };
    }

    private static Optional<Terminal> corner(PlanLine line, Post post) {
        for (int vertex = 1; vertex < line.legs(); vertex++) {
            boolean here = Math.abs(line.stationOfVertex(vertex).inches()
                            - post.station().inches())
                    < 1e-6;
            double turn = Math.abs(line.turnAt(vertex).radians());
            if (here && turn > CORNER.radians())
                return Optional.of(new Terminal(post.id(), Reason.CORNER, 2, new Angle(turn)));
        }
        return Optional.empty();
    }

    private static Optional<Terminal> grade(RunLayout run, Post post) {
        double before = Double.NaN;
        double after = Double.NaN;
        for (Bay bay : run.bays()) {
            if (bay.to().equals(post.id())) before = bay.grade().ratio();
            if (bay.from().equals(post.id())) after = bay.grade().ratio();
        }
        if (!(Math.abs(after - before) > GRADE_CHANGE)) return Optional.empty();
        return Optional.of(new Terminal(post.id(), Reason.GRADE, 2, Angle.ZERO));
    }

    /** Pull posts at equal parts of a stretch that is too long, at the nearest line posts. */
    private void pulls(List<Post> stretch) {
        double from = stretch.get(0).station().inches();
        double length = stretch.get(stretch.size() - 1).station().inches() - from;
        int parts = (int) Math.ceil(length / LONGEST_PULL.inches() - 1e-9);
        for (int part = 1; part < parts; part++) {
            double wanted = from + length * part / parts;
            Post nearest = stretch.get(0);
            for (Post post : stretch) {
                if (Math.abs(post.station().inches() - wanted)
                        < Math.abs(nearest.station().inches() - wanted)) nearest = post;
            }
            posts.putIfAbsent(nearest.id(), new Terminal(nearest.id(), Reason.PULL, 2, Angle.ZERO));
        }
    }

    public Optional<Terminal> at(String post) {
        return Optional.ofNullable(posts.get(post));
    }

    /** In the order of the walk, but for pull posts, which come before the terminal that ends their stretch. */
    public List<Terminal> all() {
        return List.copyOf(posts.values());
    }
}
