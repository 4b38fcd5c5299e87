package plumbleaf.web.desk;

import jakarta.annotation.PreDestroy;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import org.springframework.stereotype.Component;
import plumbleaf.engine.design.Design;
import plumbleaf.web.books.HouseBooks;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;
import plumbleaf.web.yard.HouseYard;

/** Keeps the cards of the desk up to date: the few that a person waits for at once, the rest one after the other in the background. */
@Component
class DeskClerk {
    /** As many designs as nobody minds waiting for. */
    private static final int AT_ONCE = 12;

    private static final int A_ROUND = 50;

    private final JobStore store;
    private final Rooms rooms;
    private final DeskCards cards;
    private final HouseBooks books;
    private final HouseYard yard;
    private final AtomicBoolean working = new AtomicBoolean();
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "desk clerk");
        thread.setDaemon(true);
        return thread;
    });

    DeskClerk(JobStore store, Rooms rooms, DeskCards cards, HouseBooks books, HouseYard yard) {
        this.store = store;
        this.rooms = rooms;
        this.cards = cards;
        this.books = books;
        this.yard = yard;
    }

    /** Brings the latest changes up to date. How many jobs are left for the background. */
    long catchUp() {
        for (JobId job : cards.behind(AT_ONCE)) write(job);
        long left = cards.behind();
        if (left > 0) inTheBackground(this::catchUpAll);
        return left;
    }

    /** Works out again those of the shown that were priced from an older book or another yard. */
    void refresh(List<DeskCards.Laid> shown) {
        List<JobId> old = shown.stream()
                .filter(laid -> !isOfToday(laid.madeOf()))
                .map(DeskCards.Laid::id)
                .toList();
        if (!old.isEmpty()) inTheBackground(() -> old.forEach(this::write));
    }

    private boolean isOfToday(DeskCards.MadeOf madeOf) {
        return madeOf.yardVersion() == yard.version() && madeOf.bookVersion() == books.version(madeOf.book());
    }

    private void catchUpAll() {
        List<JobId> round = cards.behind(A_ROUND);
        while (!round.isEmpty() && !Thread.currentThread().isInterrupted()) {
            round.forEach(this::write);
            round = cards.behind(A_ROUND);
        }
    }

    private void inTheBackground(Runnable work) {
        if (!working.compareAndSet(false, true)) return;
        behind.execute(() -> {
            try {
                work.run();
            } finally {
                working.set(false);
            }
        });
    }

    private void write(JobId id) {
        Optional<StoredJob> stored = store.open(id);
        if (stored.isEmpty()) return;
        StoredJob job = stored.get();
        long yardNow = yard.version();
        Optional<Design> design = rooms.design(job);
        String book = design.map(made -> made.job().money().priceBook()).orElse("");
        DeskCard card =
                design.map(made -> DeskCard.of(job.title(), made)).orElseGet(() -> DeskCard.unreadable(job.title()));
        cards.put(id, new DeskCards.MadeOf(job.version(), book, books.version(book), yardNow), card);
    }

    @PreDestroy
    void stop() {
        behind.shutdownNow();
    }
}
