package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.ground.Shot;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.survey.ColumnOrder;
import plumbleaf.jobfile.survey.PointFile;
import plumbleaf.jobfile.survey.ShotNode;
import plumbleaf.jobfile.survey.SurveyUnit;

/** A survey's points, pasted: all of them shots of the job, or none and every bad line named. */
final class PointPaste {
    /** The form's name of this list; what it makes are shots. */
    static final String LIST = "ground.points";

    /** Lines that are told of at once. Judgement: a file with more is another file. */
    private static final int MOST_SHOWN = 400;

    private PointPaste() {}

    static Edited into(DocumentText before, String title, Map<String, String> typed) {
        String order = typed.getOrDefault("order", "").strip();
        Optional<ColumnOrder> said = order.isEmpty() ? Optional.empty() : ColumnOrder.of(order);
        if (!order.isEmpty() && said.isEmpty())
            return new Edited.Refused(
                    LIST, order + " is no order of columns; write N, E and Z once each, P and D where there are any.");
        PointFile file = PointFile.read(
                "points", typed.getOrDefault("text", ""), new PointFile.Said(Optional.empty(), said, unit(typed)));
        List<String> problems = new ArrayList<>();
        for (InputError error : file.problems()) problems.add(line(error));
        List<String> taken = file.shots().stream()
                .map(Shot::id)
                .filter(names(before)::contains)
                .toList();
        if (!taken.isEmpty())
            problems.add("There are shots of these names already: " + String.join(", ", taken)
                    + ". Give the points other numbers.");
        if (!problems.isEmpty()) {
            problems.add(0, "Read so: " + String.join("; ", file.found()) + ".");
            int more = problems.size() - MOST_SHOWN;
            if (more > 0) {
                problems.subList(MOST_SHOWN, problems.size()).clear();
                problems.add("And " + more + " more.");
            }
            return new Edited.Refused(LIST, String.join("\n", problems));
        }
        List<String> shots = new ArrayList<>();
        for (Shot shot : file.shots())
            shots.add(JsonWriter.compact(ShotNode.of(shot)).strip());
        DocumentText text = before.appended("ground.shots", String.join(",\n      ", shots));
        String doubts = file.doubts().isEmpty() ? "" : ", " + file.doubts().size() + " doubtful";
        return new Edited.Fine(
                title,
                text.text(),
                file.shots().size() + " points as shots (" + file.separator().key() + "; "
                        + file.order().text() + "; " + file.unit().words() + doubts + ")");
    }

    private static Set<String> names(DocumentText job) {
        Set<String> names = new LinkedHashSet<>();
        for (int i = 0; i < job.count("ground.shots"); i++)
            job.value("ground.shots[" + i + "].id").ifPresent(names::add);
        return names;
    }

    private static Optional<SurveyUnit> unit(Map<String, String> typed) {
        String key = typed.getOrDefault("units", "");
        for (SurveyUnit unit : SurveyUnit.values()) if (unit.key().equals(key)) return Optional.of(unit);
        return Optional.empty();
    }

    private static String line(InputError error) {
        String place = error.line() > 0 ? "Line " + error.line() + ": " : "";
        String found = error.value().isEmpty() ? "" : " \"" + error.value() + "\"";
        String field = error.field().isEmpty() ? "" : error.field() + found + ": ";
        return place + field + error.problem() + "; " + error.cure() + ".";
    }
}
