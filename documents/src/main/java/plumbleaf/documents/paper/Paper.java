package plumbleaf.documents.paper;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Letterhead;

/**
 * One paper.
 *
 * @param title   as on its first page
 * @param running what every page repeats
 * @param flag    printed on every page in a box, as {@code HOLD} or {@code must fix: see findings}; empty for none
 */
public record Paper(String title, Running running, String flag, List<Block> blocks) {
    public Paper {
        blocks = List.copyOf(blocks);
    }

    /**
     * What the top and foot of every page say.
     *
     * @param date given by the job, never the clock's
     * @param issuer whose mark and code stand beside the title of the first page
     */
    public record Running(String contractor, String job, String revision, String date, Letterhead issuer) {
        /** Without a mark. */
        public Running(String contractor, String job, String revision, String date) {
            this(contractor, job, revision, date, Letterhead.of(List.of(contractor)));
        }
    }

    public static Builder titled(String title, Running running) {
        return new Builder(title, running);
    }

    /** Collects blocks in order. */
    public static final class Builder {
        private final String title;
        private final Running running;
        private final List<Block> blocks = new ArrayList<>();
        private String flag = "";

        private Builder(String title, Running running) {
            this.title = title;
            this.running = running;
        }

        public Builder flag(String words) {
            flag = words;
            return this;
        }

        public Builder add(Block block) {
            blocks.add(block);
            return this;
        }

        public Builder addAll(List<? extends Block> more) {
            blocks.addAll(more);
            return this;
        }

        public Builder heading(String text) {
            return add(new Block.Heading(1, text));
        }

        public Builder subheading(String text) {
            return add(new Block.Heading(2, text));
        }

        public Builder say(String text) {
            return add(Block.Paragraph.of(text));
        }

        public Builder note(String text) {
            return add(new Block.Note(text));
        }

        public Paper paper() {
            return new Paper(title, running, flag, blocks);
        }
    }
}
