package plumbleaf.engine.rule;

import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Length;

/** The height from which a building permit is usual. Zoning, pool, flood and neighbourhood rules apply all the same. */
public final class PermitHeight {
    private PermitHeight() {}

    /** Source: IRC R105.2(2); some places delete the exemption. */
    public static Finding of(String part, Length highest, RuleTable rules) {
        return rules.say()
                .atMost(
                        "height.permit",
                        Severity.CAUTION,
                        part,
                        "Fence " + part + ": its greatest height, above which a building permit is usual,",
                        highest,
                        rules.row("HT03"));
    }
}
