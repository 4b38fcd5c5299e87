package plumbleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;

/** Findings for a terminal: the bad ones in full with their remedies, the passed checks counted. */
final class FindingText {
    private FindingText() {}

    static List<String> lines(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        long passed = 0;
        for (Finding finding : findings) {
            if (finding.severity() == Severity.PASS) {
                passed++;
                continue;
            }
            String ratio = finding.measure()
                    .map(measure -> " (" + measure.ratioText() + ")")
                    .orElse("");
            lines.add(finding.severity().words().toUpperCase(Locale.ROOT) + "  " + finding.part() + ratio + ": "
                    + finding.message());
            lines.add("    " + finding.id() + "; " + finding.basis().words());
            for (Remedy remedy : finding.remedies()) lines.add("    - " + remedy(remedy));
        }
        lines.add(passed + " checks passed.");
        return lines;
    }

    private static String remedy(Remedy remedy) {
        String price = remedy.priceWords();
        return price.isEmpty() ? remedy.words() : remedy.words() + ", " + price;
    }

    /** {@code 2 must fix, 1 cannot say, 3 cautions}, or that nothing stands. */
    static String count(List<Finding> findings) {
        List<String> parts = new ArrayList<>();
        for (Severity severity : List.of(Severity.MUST_FIX, Severity.CANNOT_SAY, Severity.CAUTION)) {
            long count = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .count();
            if (count > 0) parts.add(count + " " + severity.words());
        }
        return parts.isEmpty() ? "nothing to fix" : String.join(", ", parts);
    }
}
