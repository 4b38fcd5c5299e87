package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.job.OfferKind;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DecimalText;

/** The choices of a proposal: other builds of the whole job side by side, and extras to tick. An option that fails a check is not put before a customer. */
final class OfferBlocks {
    private OfferBlocks() {}

    static void add(Paper.Builder paper, PacketSubject subject, Money total) {
        List<Offered> fit = subject.options().offered().stream()
                .filter(offered -> offered.design().verdict() != Verdict.FAILS)
                .toList();
        List<Offered> builds = of(fit, OfferKind.BUILD);
        List<Offered> extras = of(fit, OfferKind.EXTRA);
        if (builds.isEmpty() && extras.isEmpty()) return;
        paper.heading("Your choices");
        if (!builds.isEmpty()) {
            Table.Builder table = Table.with(
                    Column.words("Tick one"),
                    Column.words("The whole job"),
                    Column.words("Stands"),
                    Column.right("Total"));
            table.row("☐", "As described above", gust(subject.gusts()), total.text());
            for (Offered build : builds)
                table.row(
                        "☐",
                        build.option().name(),
                        rated(build),
                        build.design().quote().price().total().text());
            paper.add(table.table());
        }
        if (!extras.isEmpty()) {
            Table.Builder table =
                    Table.with(Column.words("Tick any"), Column.words("Added to it"), Column.right("Adds"));
            for (Offered extra : extras)
                table.row("☐", extra.option().name(), extra.difference().price().signedText());
            paper.add(table.table());
            paper.note(
                    "Each is priced by itself beside the job as described. Several together are designed and priced as one before you sign; they may share trips and material.");
        }
        paper.add(new Block.Blank(List.of("Total with what is ticked", "Initials"), 0.3));
    }

    private static List<Offered> of(List<Offered> offered, OfferKind kind) {
        return offered.stream().filter(each -> each.option().kind() == kind).toList();
    }

    private static String gust(List<String> gusts) {
        return gusts.isEmpty() ? "" : "as said above";
    }

    private static String rated(Offered build) {
        return build.design()
                .rated()
                .map(gust -> "gusts to " + DecimalText.whole(gust.allowable().mph()) + " mph")
                .orElse("");
    }
}
