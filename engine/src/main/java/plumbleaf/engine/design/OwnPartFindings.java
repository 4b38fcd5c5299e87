package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** Parts that the user entered are taken at their word, and it is said that they are. */
final class OwnPartFindings {
    private OwnPartFindings() {}

    static Optional<Finding> of(OwnParts parts) {
        if (parts.isEmpty()) return Optional.empty();
        StringBuilder files = new StringBuilder();
        for (OwnParts.Table table : parts.tables())
            files.append(files.length() > 0 ? ", " : "").append(table.file());
        return Optional.of(Checked.note(
                "parts.own",
                Severity.CAUTION,
                "site",
                String.join(", ", parts.ids()) + ": sizes and ratings are as entered from " + files
                        + ". Hold them against the maker's sheet; a rating left out is unknown and never passes.",
                Basis.job("parts entered")));
    }
}
