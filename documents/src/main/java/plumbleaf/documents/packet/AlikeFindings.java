package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;

/**
 * Findings that say the same of several parts: the worst of them speaks for all, the others give their ratios. What must be fixed always speaks for itself.
 *
 * @param findings worst first
 */
record AlikeFindings(List<Finding> findings) {
    /** So few of a kind are each said in full. */
    private static final int FEW = 3;

    AlikeFindings {
        findings = List.copyOf(findings);
    }

    /** In the order in which the worst of each kind comes. A kind has one id, severity and basis. */
    static List<AlikeFindings> of(List<Finding> all) {
        Map<String, List<Finding>> kinds = new LinkedHashMap<>();
        for (Finding finding : all)
            kinds.computeIfAbsent(
                            finding.id() + "|" + finding.severity() + "|"
                                    + finding.basis().words(),
                            none -> new ArrayList<>())
                    .add(finding);
        List<AlikeFindings> alike = new ArrayList<>();
        for (List<Finding> kind : kinds.values())
            if (kind.size() <= FEW || kind.get(0).severity() == Severity.MUST_FIX)
                kind.forEach(each -> alike.add(new AlikeFindings(List.of(each))));
            else alike.add(new AlikeFindings(kind));
        return List.copyOf(alike);
    }

    Finding worst() {
        return findings.get(0);
    }

    /** {@code P4 and 11 more}. */
    String part() {
        int others = findings.size() - 1;
        return others == 0 ? worst().part() : worst().part() + " and " + others + " more";
    }

    /** The others with their ratios, {@code P5 0.71, P6 0.70}; empty when there are none. */
    String others() {
        List<String> said = new ArrayList<>();
        for (Finding each : findings.subList(1, findings.size()))
            said.add(each.part()
                    + each.measure()
                            .map(Measure::ratioText)
                            .map(ratio -> " " + ratio)
                            .orElse(""));
        return String.join(", ", said);
    }
}
