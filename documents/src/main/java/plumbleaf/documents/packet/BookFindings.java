package plumbleaf.documents.packet;

import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.quantity.DecimalText;

/** The findings of a job in their words, with what would cure them; of many that are alike the worst speaks for all. */
final class BookFindings {
    private BookFindings() {}

    static void add(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Findings, worst first");
        Table.Builder table =
                Table.with(Column.left("Says"), Column.left("Part"), Column.words("Finding"), Column.right("Ratio"));
        for (AlikeFindings alike : AlikeFindings.of(subject.findings())) {
            Finding finding = alike.worst();
            StringBuilder words = new StringBuilder(finding.message());
            for (Remedy remedy : finding.remedies()) {
                words.append("\nRemedy: ").append(remedy.words());
                if (remedy.ratio().isPresent())
                    words.append(", ratio then ")
                            .append(DecimalText.fixed(remedy.ratio().getAsDouble(), 2));
                words.append('.');
            }
            if (alike.findings().size() > 1)
                words.append("\nThe same of: ").append(alike.others()).append('.');
            words.append("\nBasis: ").append(finding.basis().words());
            table.rowAbout(
                    finding.part(),
                    finding.severity().words(),
                    alike.part(),
                    words.toString(),
                    finding.measure().map(Measure::ratioText).orElse(""));
        }
        if (table.isEmpty()) paper.say("None.");
        else paper.add(table.table());
    }
}
