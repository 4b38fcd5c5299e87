package plumbleaf.documents.paper;

import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.engine.quantity.WorkedLine;

/** One piece of a paper. */
public sealed interface Block
        permits Block.Heading,
                Block.Paragraph,
                Block.Note,
                Block.Caution,
                Block.Formula,
                Block.Worked,
                Block.Picture,
                Block.PageBreak,
                Block.TickList,
                Block.Blank,
                Table {
    /** One answer for each kind of block. */
    interface Cases<T> {
        T heading(Heading block);

        T paragraph(Paragraph block);

        T table(Table block);

        T note(Note block);

        T caution(Caution block);

        T formula(Formula block);

        T worked(Worked block);

        T picture(Picture block);

        T pageBreak(PageBreak block);

        T tickList(TickList block);

        T blank(Blank block);
    }

    <T> T match(Cases<T> cases);

    /** A line above what follows: level 1 opens a part, level 2 a piece of it. */
    record Heading(int level, String text) implements Block {
        @Override
        public <T> T match(Cases<T> cases) {
            return cases.heading(this);
        }
    }

    /** Plain words, in bold when they must not be missed. */
    record Paragraph(String text, boolean bold) implements Block {
        public static Paragraph of(String text) {
            return new Paragraph(text, false);
        }

        public static Paragraph bold(String text) {
            return new Paragraph(text, true);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.paragraph(this);
        }
    }

    /** Small print: a source, an assumption, a reason. */
    record Note(String text) implements Block {
        @Override
        public <T> T match(Cases<T> cases) {
            return cases.note(this);
        }
    }

    /** A boxed warning with the caution triangle. */
    record Caution(String title, List<String> lines) implements Block {
        public Caution {
            lines = List.copyOf(lines);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.caution(this);
        }
    }

    /**
     * One step of a calculation.
     *
     * @param what    what is computed
     * @param clause  where the formula stands
     * @param formula in letters
     * @param numbers the same with numbers put in
     * @param result  with its unit
     */
    record Formula(String what, String clause, String formula, String numbers, String result) implements Block {
        @Override
        public <T> T match(Cases<T> cases) {
            return cases.formula(this);
        }
    }

    /**
     * A calculation line by line, each with its numbers put in.
     *
     * @param what   is computed
     * @param clause where its formulas stand
     * @param where  what the letters are; empty where they speak for themselves
     */
    record Worked(String what, String clause, String where, List<WorkedLine> lines) implements Block {
        public Worked {
            lines = List.copyOf(lines);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.worked(this);
        }
    }

    /** A drawing within the text, at its own scale. */
    record Picture(Drawing drawing, String caption) implements Block {
        @Override
        public <T> T match(Cases<T> cases) {
            return cases.picture(this);
        }
    }

    /** What follows starts on a new page. */
    record PageBreak() implements Block {
        @Override
        public <T> T match(Cases<T> cases) {
            return cases.pageBreak(this);
        }
    }

    /** Things to tick off by hand; numbered when their order counts. */
    record TickList(List<String> items, boolean numbered) implements Block {
        public TickList {
            items = List.copyOf(items);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.tickList(this);
        }
    }

    /**
     * Room to write in.
     *
     * @param labels   one field beside the other, each with its line; a single label makes a box
     * @param heightIn of the box, or of the room above the line
     */
    record Blank(List<String> labels, double heightIn) implements Block {
        public Blank {
            labels = List.copyOf(labels);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.blank(this);
        }
    }
}
