package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.typeset.Pages;

/** For whoever reviews the numbers: a summary first, what is assumed apart, then each check with its formula, its numbers and its result. */
public final class CalculationBook {
    private CalculationBook() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper =
                Paper.titled("Calculation book", subject.running()).flag(subject.flag());
        paper.say(
                "For review by a licensed engineer where one is required. Nothing here is an approval; local code governs.");
        if (!subject.options().input().isEmpty())
            paper.note(
                    "Input: the job file, SHA-256 " + grouped(subject.options().input())
                            + ". Another file gives another number; the same file gives this book again.");
        BookOpening.summary(paper, subject);
        BookOpening.basis(paper, subject);
        BookOpening.assumptions(paper, subject);
        SectionCalculation.add(paper, subject);
        for (GatePaper gate : subject.gates()) GateCalculation.add(paper, subject, gate);
        for (SlidePaper gate : subject.slides())
            SlideCalculation.add(
                    paper, subject, gate, Pages.columnWidth(subject.options().size()));
        PostsCalculation.add(paper, subject);
        byHand(paper, "a post and its footing");
        BookFindings.add(paper, subject);
        paper.heading("Review");
        paper.add(new Block.Blank(List.of("Seal and signature, where one is required"), 1.8));
        paper.add(new Block.Blank(List.of("Reviewed by", "License", "Date"), 0.4));
        return paper.paper();
    }

    /** In groups of eight that a person can read aloud. */
    private static String grouped(String digits) {
        return digits.replaceAll("(.{8})(?!$)", "$1 ");
    }

    /** Room for whoever checks a topic by hand: initials, the number found, the date. */
    static void byHand(Paper.Builder paper, String topic) {
        paper.add(new Block.Blank(List.of("By hand, " + topic, "Found", "Initials, date"), 0.3));
    }
}
