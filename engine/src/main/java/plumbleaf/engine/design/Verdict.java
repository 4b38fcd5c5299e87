package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;

/** What a design comes to. */
public enum Verdict {
    PASSES("passes"),
    /** Something cannot be said, and nothing must be fixed. */
    OPEN("open"),
    FAILS("fails");

    private final String key;

    Verdict(String key) {
        this.key = key;
    }

    static Verdict of(List<Finding> findings) {
        return switch (Findings.worst(findings)) {
            case MUST_FIX -> FAILS;
            case CANNOT_SAY -> OPEN;
            case CAUTION, PASS -> PASSES;
        };
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
