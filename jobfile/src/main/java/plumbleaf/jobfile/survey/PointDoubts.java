package plumbleaf.jobfile.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.ground.Benchmark;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.GroundBook;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.jobfile.input.InputError;

/** What the ground itself says against points that read well: a shot off its neighbours or far off them all, two at one place. They are kept as they are. */
final class PointDoubts {
    private static final List<String> ABOUT =
            List.of("ground.blunder", "ground.far", "ground.one-place", "ground.same-id");

    /** In a file that is refused a number that is there twice is said already. */
    private static final List<String> BESIDE_ERRORS = List.of("ground.blunder", "ground.far", "ground.one-place");

    private PointDoubts() {}

    static List<InputError> of(String file, List<SurveyPoint> points, List<Shot> shots, List<InputError> errors) {
        List<String> about = errors.isEmpty() ? ABOUT : BESIDE_ERRORS;
        Ground ground = Ground.of(
                new GroundBook(new Benchmark("", Offset.ZERO), List.of(), shots, List.of(), List.of()), List.of());
        List<InputError> doubts = new ArrayList<>();
        for (Finding finding : ground.findings()) {
            if (!about.contains(finding.id()) || finding.severity() == Severity.PASS) continue;
            doubts.add(new InputError(
                    file,
                    lineOf(finding.part(), points, shots),
                    0,
                    finding.id().equals("ground.far") ? "northing, easting" : "elevation",
                    "",
                    withoutStop(finding.message()),
                    "nothing is smoothed: the point is kept as it was read"));
        }
        doubts.sort(Comparator.comparingInt(InputError::line));
        return doubts;
    }

    /** The cure follows in the same sentence. */
    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private static int lineOf(String shot, List<SurveyPoint> points, List<Shot> shots) {
        for (int i = 0; i < shots.size(); i++)
            if (shots.get(i).id().equals(shot)) return points.get(i).line();
        return 0;
    }
}
