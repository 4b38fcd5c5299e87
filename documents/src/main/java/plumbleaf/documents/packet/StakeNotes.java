package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.job.ArcChord;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;

/** What a stake-out needs beyond stations: corners with a tape across them, curves from their center, runs that begin or end here, low ground. */
final class StakeNotes {
    /** A bend flatter than this is set out by eye along the string. Judgement. */
    private static final double LEAST_TURN_DEG = 0.5;

    private static final List<String> ABOUT =
            List.of("ground.low-point", "line.closure", "line.check-tape", "line.tie-in");

    private final PacketSubject subject;
    private final RunLayout laid;
    private final Run run;
    private final PlanLine line;

    private StakeNotes(PacketSubject subject, RunLayout laid) {
        this.subject = subject;
        this.laid = laid;
        this.run = subject.job().run(laid.run());
        this.line = laid.line().line();
    }

    static List<String> of(PacketSubject subject, RunLayout laid) {
        StakeNotes notes = new StakeNotes(subject, laid);
        List<String> all = new ArrayList<>();
        notes.corners(all);
        notes.curves(all);
        notes.tees(all);
        notes.setBacks(all);
        for (Finding finding : subject.findings()) {
            boolean here = finding.part().equals(laid.run()) && ABOUT.contains(finding.id());
            boolean quiet = finding.id().equals("line.tie-in") && finding.severity() == Severity.PASS;
            if (here && !quiet) all.add(finding.message());
        }
        return all;
    }

    /** Places that a tape settles: both ends, corners, and where a curve begins and ends; not the bends of a curve's chords. */
    static List<Integer> settled(PacketSubject subject, RunLayout laid) {
        StakeNotes notes = new StakeNotes(subject, laid);
        List<Integer> places = new ArrayList<>();
        for (int vertex = 0; vertex <= notes.line.legs(); vertex++) {
            boolean end = vertex == 0 || vertex == notes.line.legs();
            if (end || notes.isCorner(vertex)) places.add(vertex);
            else if (notes.chord(vertex - 1).isPresent() != notes.chord(vertex).isPresent()) places.add(vertex);
        }
        return places;
    }

    /** Between straight legs, and more than the eye would miss. */
    private boolean isCorner(int vertex) {
        return chord(vertex - 1).isEmpty()
                && chord(vertex).isEmpty()
                && Math.abs(line.turnAt(vertex).inDegrees()) >= LEAST_TURN_DEG;
    }

    private Optional<ArcChord> chord(int leg) {
        Leg is = run.legs().get(leg);
        return is.chord().value();
    }

    /** Turns between straight legs, each with the level tape that proves it. */
    private void corners(List<String> all) {
        for (int vertex = 1; vertex < line.legs(); vertex++) {
            if (!isCorner(vertex)) continue;
            double turn = line.turnAt(vertex).inDegrees();
            Length from = line.stationOfVertex(vertex - 1);
            Length to = line.stationOfVertex(vertex + 1);
            Length across = line.vertex(vertex - 1).distanceTo(line.vertex(vertex + 1));
            all.add("Corner at " + station(line.stationOfVertex(vertex)) + ": turns "
                    + DecimalText.fixed(Math.abs(turn), 1) + " degrees " + side(turn) + "; level tape across from "
                    + station(from) + " to " + station(to) + ": " + subject.length(across.inches()) + ".");
        }
    }

    private void curves(List<String> all) {
        for (int leg = 0; leg < line.legs(); leg++) {
            Optional<ArcChord> chord = chord(leg).filter(is -> is.index() == 0);
            if (chord.isEmpty()) continue;
            ArcChord is = chord.get();
            double turn = is.arc().left().inDegrees();
            Length start = line.stationOfVertex(leg);
            Length end = line.stationOfVertex(leg + is.count());
            all.add("Curve from " + station(start) + " to " + station(end) + ": radius "
                    + subject.length(is.arc().radius().inches()) + " from a pin square to the line, "
                    + subject.length(is.arc().radius().inches()) + " to its " + side(turn) + " at " + station(start)
                    + ". " + is.count() + (is.count() == 1 ? " chord of " : " chords of ")
                    + subject.length(line.lengths().get(leg).inches())
                    + "; every post between stands on the curve, the middle of a chord "
                    + subject.inches(is.arc().off(is.count()).inches()) + " inside it. Stations run along the chords.");
        }
    }

    /** Runs that begin or end at a post of this one. */
    private void tees(List<String> all) {
        for (RunLayout other : subject.layout().runs()) {
            if (other.run().equals(laid.run()) || other.bays().isEmpty()) continue;
            Run its = subject.job().run(other.run());
            String first = other.bays().get(0).from();
            String last = other.bays().get(other.bays().size() - 1).to();
            if (joinsHere(its.first())) tee(other.run(), "begins", first, all);
            if (joinsHere(its.last())) tee(other.run(), "ends", last, all);
        }
    }

    /** Gates off the string. */
    private void setBacks(List<String> all) {
        for (Gate gate : subject.job().gates()) {
            boolean here =
                    gate.run().equals(laid.run()) && !gate.ground().setBack().isZero();
            if (!here) continue;
            boolean left = gate.leftOfLine(run.outside()).inches() > 0;
            all.add("Gate " + gate.id() + " is set back: the centers of its posts stand "
                    + subject.inches(gate.ground().setBack().inches()) + " to the " + (left ? "left" : "right")
                    + " of the string, square to it at their stations.");
        }
    }

    private boolean joinsHere(RunEnd end) {
        return end.match(free -> false, wall -> false, joins -> joins.run().equals(laid.run()), theirs -> false);
    }

    private void tee(String other, String verb, String post, List<String> all) {
        for (Post own : laid.posts())
            if (own.id().equals(post))
                all.add("Run " + other + " " + verb + " at " + post + ", station "
                        + subject.length(own.station().inches()) + ": one post for both.");
    }

    private static String side(double turn) {
        return turn > 0 ? "left" : "right";
    }

    private String station(Length at) {
        return "station " + subject.length(at.inches());
    }
}
