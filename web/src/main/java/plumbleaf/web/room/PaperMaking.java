package plumbleaf.web.room;

import java.util.function.Consumer;

/** Papers that are being made behind a page: the last one set, and how many so far. */
final class PaperMaking {
    /** Posts above which papers take long enough to say how far they are. */
    static final int LARGE = 150;

    private int set;
    private String last = "";
    private boolean over;

    /** Begins on a thread of its own; whoever asks for a paper meanwhile waits for the same making. */
    void begin(Consumer<Consumer<String>> work) {
        Thread behind = new Thread(
                () -> {
                    try {
                        work.accept(this::tell);
                    } finally {
                        end();
                    }
                },
                "papers");
        behind.setDaemon(true);
        behind.start();
    }

    private synchronized void tell(String title) {
        set++;
        last = title;
    }

    private synchronized void end() {
        over = true;
    }

    synchronized boolean isOver() {
        return over;
    }

    /** {@code 7 papers set, the last: Unrolled profile, 61 pages}. */
    synchronized String words() {
        if (set == 0) return "The first paper is being set.";
        return set + (set == 1 ? " paper" : " papers") + " set, the last: " + last + ".";
    }
}
