package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Site;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;

/** How the calculation book opens: every check in one table, what the job rests on, and what is assumed. */
final class BookOpening {
    private BookOpening() {}

    static void summary(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Summary");
        Table.Builder table = Table.with(
                Column.words("Part"),
                Column.words("Check"),
                Column.right("Is"),
                Column.right("Limit"),
                Column.right("Ratio"),
                Column.left("Says"),
                Column.words("Clause"));
        List<Finding> measured = subject.findings().stream()
                .filter(finding -> finding.measure().isPresent())
                .toList();
        for (AlikeFindings alike : AlikeFindings.of(measured)) {
            Finding finding = alike.worst();
            finding.measure()
                    .ifPresent(measure -> table.rowAbout(
                            finding.part(),
                            alike.part(),
                            words(finding.id()),
                            number(measure.measured(), measure.unit()),
                            number(measure.limit(), measure.unit()),
                            measure.ratioText(),
                            finding.severity().words(),
                            finding.basis().words()));
        }
        if (table.isEmpty()) paper.say("No check compares two numbers here.");
        else paper.add(table.table());
        long cannot = subject.findings().stream()
                .filter(finding -> finding.severity() == Severity.CANNOT_SAY)
                .count();
        if (cannot > 0)
            paper.add(Block.Paragraph.bold(
                    cannot + " cannot be said: see the findings at the end. What cannot be said is not passed."));
    }

    /** {@code sag.latch} reads sag, latch. */
    static String words(String id) {
        return id.replace(".", ": ").replace('-', ' ');
    }

    private static String number(double value, String unit) {
        double size = Math.abs(value);
        int places = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        String text = size >= 1000 ? DecimalText.whole(value) : DecimalText.fixed(value, places);
        return unit.isEmpty() ? text : text + " " + unit;
    }

    static void basis(Paper.Builder paper, PacketSubject subject) {
        Site site = subject.job().site();
        paper.heading("Basis");
        if (subject.units() == DisplayUnits.METRIC)
            paper.note("Each formula is worked in the US units of the clause it stands in; its result is"
                    + " given in both. Everything else is metric, but for names by which things are sold.");
        Table.Builder table = Table.with(Column.left("What"), Column.words("Value"), Column.words("From"));
        table.row(
                "Basis of design",
                site.basis().key(),
                site.forcesEngineered() ? "the use of the place forces engineered" : "the job");
        table.row(
                "Wind",
                DecimalText.fixed(site.wind().speed().mph(), 0) + " mph, exposure "
                        + site.wind().exposure().key() + ", Kzt "
                        + DecimalText.upTo(site.wind().topographic(), 2) + ", Ke "
                        + DecimalText.upTo(site.wind().elevation(), 2),
                "ASCE " + site.wind().edition().key() + ", risk category "
                        + site.wind().risk().key());
        table.row(
                "Frost",
                subject.inches(site.frost().depth().inches()),
                site.frost().source());
        table.row(
                "Soil",
                site.soil().kind().key() + ", " + site.soil().state().key()
                        + (site.soil().belowWater() ? ", water in the hole" : "") + ", loose top "
                        + subject.inches(site.soil().looseTop().inches()),
                "IBC Table 1806.2 class " + site.soil().ibcClass() + "; band soft, likely, stiff by judgement");
        table.row(
                "Combinations",
                "D, D+L, D+0.6W, D+0.75L+0.45W, 0.6D+0.6W; leaf closed, worst, open",
                "ASCE 7-16 2.4.1, allowable stress; D+L+0.7Di and D+0.7Di+0.7Wi where the job asks for ice, 2.4.3 (from memory)");
        table.row(
                "Steel",
                "E 29,000 ksi, G 11,200 ksi, 490 pcf; section properties on the design wall where it counts",
                "AISC 360");
        table.row("Concrete", "150 pcf", "usual value");
        paper.add(table.table());
        for (String gust : subject.gusts()) paper.say(gust);
    }

    static void assumptions(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Assumed and judged");
        Table.Builder table = Table.with(Column.words("Value"), Column.left("Taken as"), Column.words("Rests on"));
        for (Assumption assumption : subject.job().assumed())
            table.row(assumption.field(), assumption.value(), assumption.why());
        if (!table.isEmpty()) paper.add(table.table());
        List<String> judged = new ArrayList<>();
        for (Finding finding : subject.findings()) {
            boolean soft = finding.basis().kind() != Basis.Kind.CLAUSE
                    && finding.basis().kind() != Basis.Kind.JOB;
            String line = words(finding.id()) + ": " + finding.basis().words() + ".";
            if (soft && !judged.contains(line)) judged.add(line);
        }
        if (!judged.isEmpty()) {
            paper.subheading("Checks that rest on judgement, common practice or memory");
            for (String line : judged) paper.say(line);
        }
    }
}
