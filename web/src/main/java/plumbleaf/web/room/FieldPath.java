package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a value stands in a job file: {@code gates[G1].leaf.hingeGap}. An item of a list is named by its id or its place.
 */
public record FieldPath(List<Step> steps) {
    private static final Pattern STEP = Pattern.compile("(?:^|\\.)([A-Za-z][A-Za-z0-9-]*)|\\[([A-Za-z0-9._-]{1,20})]");
    private static final int LONGEST = 200;

    public FieldPath {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) throw new IllegalArgumentException("A path names at least one thing");
    }

    /** @param item whether {@code name} is an item of a list */
    record Step(String name, boolean item) {}

    static FieldPath of(String text) {
        if (text.length() > LONGEST) throw new IllegalArgumentException("Not a path in a job file");
        List<Step> steps = new ArrayList<>();
        Matcher matcher = STEP.matcher(text);
        int end = 0;
        while (end < text.length() && matcher.find(end) && matcher.start() == end) {
            steps.add(matcher.group(1) != null ? new Step(matcher.group(1), false) : new Step(matcher.group(2), true));
            end = matcher.end();
        }
        if (end < text.length()) throw new IllegalArgumentException("Not a path in a job file: " + text);
        return new FieldPath(steps);
    }

    Step last() {
        return steps.get(steps.size() - 1);
    }
}
